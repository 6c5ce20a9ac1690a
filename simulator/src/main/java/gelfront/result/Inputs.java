// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import java.util.List;

/**
 * What went in, in words for the report, given and assumed apart.
 *
 * @param given what the case states
 * @param assumed what the tool filled in, each with its source
 */
public record Inputs(List<Line> given, List<Line> assumed) {
  /**
   * @param name what it is
   * @param value with its unit, as a maker would write it
   * @param source where an assumed value comes from; empty where given
   */
  public record Line(String name, String value, String source) {}

  public Inputs {
    given = List.copyOf(given);
    assumed = List.copyOf(assumed);
  }
}
