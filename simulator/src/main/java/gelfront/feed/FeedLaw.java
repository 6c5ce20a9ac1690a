// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.material.Plastisol;
import gelfront.material.ViscosityCurve;
import gelfront.mesh.Vec3;
import java.util.Arrays;

/**
 * What the feeding flow goes by.
 *
 * @param viscosity of the liquid
 * @param noFlow °C below which it doesn't flow
 * @param expansion 1/K, volumetric, above {@code noFlow}
 * @param skinBears Pa of suction that it takes at least to draw the plastisol off its wall
 * @param entering °C of what the injector or a top-up brings
 * @param carriesHeat whether the flow moves heat; false only to see what that does
 * @param weight Pa/m that pressure rises with depth, pointing up; zero: no gravity
 */
public record FeedLaw(
    ViscosityCurve viscosity,
    double noFlow,
    double expansion,
    double skinBears,
    double entering,
    boolean carriesHeat,
    Vec3 weight) {
  /**
   * Pa. Before anything leaves its wall, air must come between, through the parting line and vents:
   * 2 sigma / w with sigma = 0.03 N/m in a gap of 0.1 mm is 600 Pa. Estimate, no source.
   */
  private static final double SKIN_BEARS = 500;

  private static final double GRAVITY = 9.81;

  public FeedLaw {
    if (!(expansion >= 0) || !(skinBears > 0) || !(entering > noFlow)) {
      throw new IllegalArgumentException(
          "feeding needs liquid hotter than it sets, which shrinks as it cools, and a skin");
    }
  }

  /**
   * @param shot °C
   * @param up unit vector, up while it cools
   */
  public static FeedLaw of(Plastisol p, double shot, Vec3 up) {
    return new FeedLaw(
        ViscosityCurve.of(p),
        p.noFlow(),
        p.expansionHot(),
        SKIN_BEARS,
        shot,
        true,
        up.times(GRAVITY * p.densityHot()));
  }

  /** A skin without stiffness of its own. */
  SkinStrength skin(int cells) {
    double[] bears = new double[cells];
    Arrays.fill(bears, skinBears);
    return (temperature, given) -> bears;
  }
}
