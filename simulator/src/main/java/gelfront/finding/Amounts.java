// SPDX-License-Identifier: Apache-2.0
package gelfront.finding;

import java.util.OptionalDouble;

/**
 * What to melt. All cavities together.
 *
 * @param partVolume m3 of one cavity's part as filled hot
 * @param feedVolume m3 of gate, runner and sprue
 * @param topUpVolume m3 that shrinkage can draw in before the feed sets
 * @param partMass kg of one part
 * @param feedMass kg
 * @param topUpMass kg
 * @param cavities parts a shot
 * @param injectorCapacity m3, absent if not stated
 */
public record Amounts(
    double partVolume,
    double feedVolume,
    double topUpVolume,
    double partMass,
    double feedMass,
    double topUpMass,
    int cavities,
    OptionalDouble injectorCapacity) {
  /** m3 for one shot with its top-up. */
  public double shotVolume() {
    return cavities * partVolume + feedVolume + topUpVolume;
  }

  /** Whether the injector holds the shot; true where its size is unknown. */
  public boolean injectorHoldsIt() {
    return shotVolume() <= injectorCapacity.orElse(Double.POSITIVE_INFINITY);
  }
}
