// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import java.util.List;

/**
 * What a cooling curve tells of a plastisol.
 *
 * @param name of the case
 * @param log name of the file
 * @param hash of what was logged, hexadecimal digits
 * @param found properties that the data tell
 * @param untold properties that they don't, left as they were
 * @param correlation of each pair of those looked for
 * @param times s of the readings used
 * @param readings °C
 * @param fitted °C of the model
 * @param rms K that is left over, root of the mean square
 * @param follows correlation of each residual with the next
 * @param notes on the log, in words
 */
public record Calibrated(
    String name,
    String log,
    String hash,
    List<Found> found,
    List<Untold> untold,
    double[][] correlation,
    double[] times,
    double[] readings,
    double[] fitted,
    double rms,
    double follows,
    List<String> notes) {
  public Calibrated {
    found = List.copyOf(found);
    untold = List.copyOf(untold);
    notes = List.copyOf(notes);
  }

  /** Correlation from one residual to the next beyond which something else than chance is left. */
  private static final double PATTERN = 0.5;

  /**
   * @param key of the case file, with its table
   * @param name in words
   * @param unit of the values
   * @param value that fits best
   * @param low end of the interval that holds it with 90 %
   * @param high other end
   * @param before what the case has
   */
  public record Found(
      String key, String name, String unit, double value, double low, double high, double before) {}

  /**
   * @param name in words
   * @param why in words
   * @param advice what to measure instead
   */
  public record Untold(String name, String why, String advice) {}

  /** Whether the model misses something that the log shows. */
  public boolean patterned() {
    return follows > PATTERN;
  }
}
