// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.base.Caution;
import gelfront.base.Quantities;
import gelfront.setup.Case;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.PartingPlane;
import java.util.Optional;

/**
 * Whether the plunger's pressure opens the mould while it holds.
 *
 * <pre>  F = p A,  A: the cavity's shadow on the parting plane</pre>
 *
 * <p>Which plane that is {@link PartingPlane} tells.
 */
public final class Clamping {
  /** N that a pair of small screw clamps or a bench vice surely bears: estimate, from memory. */
  private static final double BY_HAND = 1000;

  private Clamping() {}

  /** N that the plunger's pressure pushes the halves apart with. */
  public static double force(Case c, CaseVoxels voxels) {
    return c.shot().holdPressure() * PartingPlane.of(voxels).shadow();
  }

  /** In words; empty where the halves stay shut. */
  static Optional<Caution> warning(Case c, CaseVoxels voxels) {
    double area = PartingPlane.of(voxels).shadow();
    double force = c.shot().holdPressure() * area;
    double held = c.clampingForce().orElse(BY_HAND);
    if (force <= held) {
      return Optional.empty();
    }
    String bears =
        c.clampingForce().isPresent()
            ? Quantities.say("the %.0f N that hold it", held)
            : Quantities.say("the %.0f N or so that clamps tightened by hand bear", held);
    return Optional.of(
        Caution.of(
            Quantities.say(
                "A plunger pressure of %.0f kPa on %.0f cm2 of cavity pushes the halves apart with %.0f N,"
                    + " more than %s: hot plastisol sprays out of the parting line. Press less, at most"
                    + " %.0f kPa, or clamp harder.",
                c.shot().holdPressure() * 1e-3, area * 1e4, force, bears, held / area * 1e-3)));
  }
}
