// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import gelfront.base.Told;
import java.util.List;
import java.util.Optional;

/**
 * Remedies for a dent, each calculated.
 *
 * @param name of the case
 * @param visible metres from which a dent is seen
 * @param level that remedies were tried at, in a word
 * @param before the case as it is, at that level
 * @param beforeNormal the same at level normal; absent where nothing was confirmed
 * @param lines in order of effort
 * @param pairs two remedies at once
 * @param notRun what was left out, and why
 * @param chosen what the answer rests on: a line or a pair that was confirmed; absent where none
 *     cures
 * @param told in words
 */
public record Remedies(
    String name,
    double visible,
    String level,
    Ran before,
    Optional<Ran> beforeNormal,
    List<Line> lines,
    List<Line> pairs,
    List<Left> notRun,
    Optional<Line> chosen,
    Told told) {
  public Remedies {
    lines = List.copyOf(lines);
    pairs = List.copyOf(pairs);
    notRun = List.copyOf(notRun);
  }

  /** In words, as files and command line have them. */
  public String verdict() {
    return told.metric();
  }

  /** In whose hands it is, least effort first. */
  public enum Effort {
    /** At the bench, with the mould as it is. */
    RECIPE,
    /** With file or cutter, in the mould that is there. */
    FILE_WORK,
    /** Another mould, or most of one. */
    REDESIGN
  }

  /**
   * @param effort that it takes
   * @param what is done
   * @param caution that goes with it; may be empty
   * @param quick what came of it at the level that it was tried at
   * @param normal what came of it at level normal; absent where it wasn't confirmed
   * @param doubt why it is not recommended whatever came out; empty: it may be
   */
  public record Line(
      Effort effort, Told what, String caution, Ran quick, Optional<Ran> normal, String doubt) {

    /** What is done, as files and command line have it. */
    public String label() {
      return what.metric();
    }

    /** The same, confirmed or refuted. */
    public Line at(Ran confirmed) {
      return new Line(effort, what, caution, quick, Optional.of(confirmed), doubt);
    }

    /** The finer of the runs. */
    public Ran best() {
      return normal.orElse(quick);
    }

    /** Whether a run went well and left neither dent nor oval that is seen. */
    public static boolean cures(Ran ran, double visible) {
      return ran.outcome().filter(o -> o.clean(visible)).isPresent();
    }
  }

  /**
   * @param what was not run
   * @param why in words
   */
  public record Left(Told what, String why) {
    /** What was not run, as files and command line have it. */
    public String label() {
      return what.metric();
    }
  }
}
