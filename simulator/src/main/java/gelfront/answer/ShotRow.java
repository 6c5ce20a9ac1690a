// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import gelfront.finding.Severity;

/**
 * One shot of a row, SI and °C.
 *
 * @param number from 1; 0: the shot that all later ones repeat
 * @param mouldBefore °C at the wall, mean, as the shot enters
 * @param mouldOpened °C of the whole block, mean, as it is opened
 * @param severity of its worst pocket
 * @param dentLow metres, the deepest dent's low bound
 * @param dentHigh metres, its high bound
 * @param gateSets s
 * @param firmAt s at which all of the shot is firm, the sprue included
 * @param openedAt s at which the mould is opened
 * @param cycle s from this shot to the next
 */
public record ShotRow(
    int number,
    double mouldBefore,
    double mouldOpened,
    Severity severity,
    double dentLow,
    double dentHigh,
    double gateSets,
    double firmAt,
    double openedAt,
    double cycle) {
  /** s of clock that an opening may be early and still count as firm. */
  private static final double ROUNDING = 0.05;

  /** Whether the part is firm when the mould is opened. */
  public boolean firm() {
    return openedAt >= firmAt - ROUNDING;
  }

  /** The same under another number. */
  public ShotRow numbered(int other) {
    return new ShotRow(
        other,
        mouldBefore,
        mouldOpened,
        severity,
        dentLow,
        dentHigh,
        gateSets,
        firmAt,
        openedAt,
        cycle);
  }
}
