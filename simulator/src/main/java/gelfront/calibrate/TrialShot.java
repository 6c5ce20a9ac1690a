// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import gelfront.setup.Change;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A shot of a log, and what became of the part.
 *
 * @param line of the log, 1 the first
 * @param caseName as the log has it; empty: the log has none
 * @param recipe what was otherwise than in the case, in the log's order
 * @param cavity number of the cavity the part is from, from 1; 0: the log has none
 * @param dented whether a dent is seen
 * @param depth metres of the deepest dent, measured
 * @param froze whether the gate had frozen before the plunger was released
 */
public record TrialShot(
    int line,
    String caseName,
    List<Change> recipe,
    int cavity,
    Optional<Boolean> dented,
    OptionalDouble depth,
    Optional<Boolean> froze) {
  public TrialShot {
    recipe = List.copyOf(recipe);
  }

  /** What was shot: shots with the same setting are one run. */
  public record Setting(String caseName, List<Change> recipe) {}

  /** Its setting. */
  public Setting setting() {
    return new Setting(caseName, recipe);
  }

  /** Whether the same part of the same shot is meant. */
  boolean repeats(TrialShot other) {
    return setting().equals(other.setting()) && cavity == other.cavity;
  }
}
