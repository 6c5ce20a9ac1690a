// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import gelfront.base.Told;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * The smallest feed system that leaves neither a dent to be seen nor, where a clock opens the
 * mould, an oval.
 *
 * @param name of the case
 * @param visible metres from which a dent or an oval is seen
 * @param places where gates were sized, the case's own or its list first
 * @param chosen number of the place that is proposed, from 0; -1: none will do
 * @param told one or two sentences
 * @param runs that were wanted, those kept from earlier included
 */
public record Sizing(
    String name, double visible, List<Place> places, int chosen, Told told, int runs) {
  public Sizing {
    places = List.copyOf(places);
  }

  /** In words, as files and command line have them. */
  public String verdict() {
    return told.metric();
  }

  /** The place that is proposed. */
  public Optional<Place> best() {
    return chosen < 0 ? Optional.empty() : Optional.of(places.get(chosen));
  }

  /**
   * @param label for people
   * @param at on the part's surface, metres
   * @param direction away from the part
   * @param thickness of the part there, metres
   * @param curve all sizes that were run to find the answer, rising
   * @param choices the answer and what it is rounded up to; empty where no gate will do
   * @param told what came of it
   * @param cure what else was run to make it possible; absent where nothing had to be
   */
  public record Place(
      String label,
      Vec3 at,
      Vec3 direction,
      double thickness,
      List<Point> curve,
      List<Choice> choices,
      Told told,
      Optional<Cure> cure) {
    public Place {
      curve = List.copyOf(curve);
      choices = List.copyOf(choices);
    }

    /** The gate's own place. */
    public static final String AS_IT_IS = "as it is";

    /** Whether the gate would have to be moved there. */
    public boolean elsewhere() {
      return !label.equals(AS_IT_IS);
    }

    /** What came of it, as files and command line have it. */
    public String words() {
      return told.metric();
    }
  }

  /**
   * @param gate its size, metres
   * @param sprue its diameter, metres
   * @param level that was calculated at
   * @param ran what came out
   */
  public record Point(double gate, double sprue, String level, Ran ran) {}

  /**
   * @param label "as calculated", "cutters in mm", "cutters in inch"
   * @param gate its size, metres
   * @param size the same as a maker says it: that of a cutter by its name
   * @param sprue its diameter, metres
   * @param normal what came out at level normal
   * @param sheet what to cut
   */
  public record Choice(
      String label, double gate, Told size, double sprue, Ran normal, List<SheetLine> sheet) {
    public Choice {
      sheet = List.copyOf(sheet);
    }

    /** The size as a maker says it, in files and on the command line. */
    public String gateWords() {
      return size.metric();
    }

    /** Whether neither a dent nor an oval is seen. */
    public boolean holds(double visible) {
      return normal.outcome().filter(o -> o.clean(visible)).isPresent();
    }
  }

  /**
   * A change of the part without which no gate will do.
   *
   * @param neck its middle, metres
   * @param was metres wide
   * @param wanted metres wide; absent where not even twice its width will do
   * @param gate metres, that this was found with
   * @param ran what came out with it, level quick
   * @param normal the same at level normal; absent where it doesn't do at level quick
   * @param second a second gate instead; absent where there is no place for one
   */
  public record Cure(
      Vec3 neck,
      double was,
      Optional<Double> wanted,
      double gate,
      Ran ran,
      Optional<Ran> normal,
      Optional<Second> second) {

    /** Confirmed or refuted. */
    public Cure at(Ran confirmed) {
      return new Cure(neck, was, wanted, gate, ran, Optional.of(confirmed), second);
    }

    /** With a second gate instead. */
    public Cure beside(Optional<Second> gate2) {
      return new Cure(neck, was, wanted, gate, ran, normal, gate2);
    }
  }

  /**
   * A second gate, with a runner of its own to the sprue.
   *
   * @param at on the part's surface, metres
   * @param gate its size, metres
   * @param first size of the first gate beside it, metres
   * @param ran what came out, level quick
   * @param normal the same at level normal; absent where it doesn't do at level quick, or where
   *     another change was confirmed
   */
  public record Second(Vec3 at, double gate, double first, Ran ran, Optional<Ran> normal) {}

  /**
   * @param name of the dimension
   * @param value metres
   * @param note in words; empty where there is nothing to say
   */
  public record SheetLine(String name, double value, String note) {}
}
