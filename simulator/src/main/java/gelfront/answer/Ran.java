// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import java.util.Optional;

/**
 * What became of a run: an outcome, or the reason why there is none.
 *
 * @param outcome absent where it failed
 * @param error in words; empty where it went well
 */
public record Ran(Optional<RunOutcome> outcome, String error) {
  public Ran {
    if (outcome.isPresent() != error.isEmpty()) {
      throw new IllegalArgumentException("an outcome or an error, one of them");
    }
  }

  public static Ran well(RunOutcome outcome) {
    return new Ran(Optional.of(outcome), "");
  }

  public static Ran failed(String error) {
    return new Ran(Optional.empty(), error.isBlank() ? "no reason given" : error);
  }
}
