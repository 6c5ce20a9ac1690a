// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import java.util.List;

/**
 * Can this run be trusted: what the run found out about itself.
 *
 * @param lines one per check
 */
public record Health(List<Line> lines) {
  /** A verdict on one check. */
  public enum Mark {
    GOOD,
    LOOK_AT_IT,
    BAD
  }

  /**
   * @param check what was checked, for people
   * @param result the figure with its unit
   * @param mark the verdict
   */
  public record Line(String check, String result, Mark mark) {}

  public Health {
    lines = List.copyOf(lines);
  }
}
