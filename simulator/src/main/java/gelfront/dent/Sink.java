// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import gelfront.finding.Dent;
import java.util.List;

/**
 * What a pocket does to the part.
 *
 * @param unfedLow m3 of contraction that nothing replaces, while it still flows
 * @param unfedHigh m3, gelled core included, down to the skin's temperature
 * @param temperature °C mean of the pocket at cut-off
 * @param dents per hot spot of the pocket, in their order
 * @param openUntil s that the way in would have had to stay open for no dent to be seen; the
 *     cut-off where none is
 * @param lobes where on the surface
 */
public record Sink(
    double unfedLow,
    double unfedHigh,
    double temperature,
    List<Dent> dents,
    double openUntil,
    DentLobes lobes) {
  public Sink {
    dents = List.copyOf(dents);
  }
}
