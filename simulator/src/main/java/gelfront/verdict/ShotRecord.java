// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.dent.TemperatureHistory;
import gelfront.fill.FillRecord;
import java.util.Optional;

/**
 * What the observers of a shot saw.
 *
 * @param set s at which each plastisol cell passed the no-flow temperature, +infinity if never
 * @param firm s at which it passed the temperature at which it is firm
 * @param history temperatures over time
 * @param mouldAtWall °C, mean over the wall, per time of the history
 * @param flow of the liquid; empty where conduction alone was calculated
 * @param fill what the shot itself left; empty where the cavity was taken to start full
 */
public record ShotRecord(
    float[] set,
    float[] firm,
    TemperatureHistory history,
    double[] mouldAtWall,
    Optional<FlowRecord> flow,
    Optional<FillRecord> fill) {}
