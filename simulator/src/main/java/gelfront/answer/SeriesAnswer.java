// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import gelfront.finding.Severity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Shots in a row, until they repeat.
 *
 * @param name of the case
 * @param level that was calculated at, in a word
 * @param visible metres from which a dent is seen
 * @param idle s from opening to the next shot
 * @param open s of it that the halves lie apart
 * @param clock s from shot to shot as stated; absent: opened when firm
 * @param shots one after another, from the first
 * @param settled what all later ones repeat; absent where none was found
 * @param fastest the settled shot if the mould is opened as soon as all of it is firm
 * @param imbalance of all joules moved, as a share of them
 */
public record SeriesAnswer(
    String name,
    String level,
    double visible,
    double idle,
    double open,
    OptionalDouble clock,
    List<ShotRow> shots,
    Optional<ShotRow> settled,
    Optional<ShotRow> fastest,
    double imbalance) {
  /** K from where it settles that a mould counts as settled. */
  public static final double SETTLED = 1;

  public SeriesAnswer {
    shots = List.copyOf(shots);
    if (shots.isEmpty()) {
      throw new IllegalArgumentException("a row has one shot at least");
    }
  }

  /** The settled shot, or the last that was made. */
  public ShotRow last() {
    return settled.orElse(shots.get(shots.size() - 1));
  }

  /** Number of the first shot whose mould is within 1 K of where it settles; 0: none of these. */
  public int repeatsFrom() {
    if (settled.isEmpty()) {
      return 0;
    }
    double end = settled.get().mouldBefore();
    for (ShotRow s : shots) {
      if (Math.abs(s.mouldBefore() - end) <= SETTLED) {
        return s.number();
      }
    }
    return 0;
  }

  /** Shots from the first on that come out worse than the last. */
  public int throwAway() {
    return leading(last().severity(), true);
  }

  /** Shots from the first on that come out better than the last. */
  public int better() {
    return leading(last().severity(), false);
  }

  private int leading(Severity end, boolean worse) {
    int n = 0;
    while (n < shots.size()) {
      int by = shots.get(n).severity().compareTo(end);
      if (worse ? by <= 0 : by >= 0) {
        break;
      }
      n++;
    }
    return n;
  }
}
