// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The recipe.
 *
 * @param temperature °C of the plastisol as it enters
 * @param fillTime s
 * @param holdTime s that the injector stays on the mouth under pressure after filling
 * @param holdPressure Pa above the air
 * @param topUps s after the start at which the sprue is filled up again
 * @param injectorCapacity m3
 * @param openAt s after the start at which the mould is opened; absent: when the part is firm
 */
public record Shot(
    double temperature,
    double fillTime,
    double holdTime,
    double holdPressure,
    List<Double> topUps,
    OptionalDouble injectorCapacity,
    OptionalDouble openAt) {
  public Shot {
    topUps = List.copyOf(topUps);
    if (!(fillTime >= 0 && holdTime >= 0 && holdPressure >= 0)) {
      throw new IllegalArgumentException("fill time, hold time and pressure must not be negative");
    }
  }

  /** The same at another temperature, °C. */
  public Shot at(double celsius) {
    return new Shot(celsius, fillTime, holdTime, holdPressure, topUps, injectorCapacity, openAt);
  }

  /** The same without a time at which the mould is opened. */
  Shot openedWhenFirm() {
    return new Shot(
        temperature,
        fillTime,
        holdTime,
        holdPressure,
        topUps,
        injectorCapacity,
        OptionalDouble.empty());
  }
}
