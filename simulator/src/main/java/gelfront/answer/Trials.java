// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import java.util.List;

/**
 * What trial shots tell of a plastisol.
 *
 * @param name of the case
 * @param log name of the file
 * @param hash of what was logged, hexadecimal digits
 * @param noFlow no-flow temperature, °C
 * @param before low, likely and high of it without the log, °C
 * @param skin how the skin gives way, from 0, the milder reading, to 1, the other
 * @param correlation of both
 * @param inseparable whether one can't be told without the other
 * @param shots as logged and as calculated
 * @param visible metres from which a dent is seen
 * @param notes in words
 */
public record Trials(
    String name,
    String log,
    String hash,
    Known noFlow,
    double[] before,
    Known skin,
    double correlation,
    boolean inseparable,
    List<Shot> shots,
    double visible,
    List<String> notes) {
  public Trials {
    shots = List.copyOf(shots);
    notes = List.copyOf(notes);
  }

  /**
   * @param value as much lies below it as above
   * @param low end of the interval that holds it with 90 %
   * @param high other end
   * @param told whether the log tells it at all
   */
  public record Known(double value, double low, double high, boolean told) {}

  /**
   * @param line of the log
   * @param what was shot, in words
   * @param seen in words
   * @param low metres, the dent's low bound at the no-flow temperature that was found
   * @param high metres, its high bound
   * @param closes s at which the gate closes then
   * @param chance of what was seen, 0 to 1
   */
  public record Shot(
      int line, String what, String seen, double low, double high, double closes, double chance) {}
}
