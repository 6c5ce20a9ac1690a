package gelfront.run;

import gelfront.base.Quantities;
import gelfront.grid.Cavity;
import gelfront.grid.UniformGrid;
import gelfront.setup.Case;
import gelfront.voxelize.CaseVoxels;
import java.util.BitSet;
import java.util.Optional;

/**
 * Whether the plunger's pressure opens the mould while it holds.
 *
 * <pre>  F = p A,  A: the cavity's shadow on the parting plane</pre>
 *
 * <p>The case doesn't say where the halves part: of the two planes along the sprue the one with the
 * larger shadow is taken.
 */
public final class Clamping {
  /** N that a pair of small screw clamps or a bench vice surely bears: estimate, from memory. */
  private static final double BY_HAND = 1000;

  private Clamping() {}

  /** N that the plunger's pressure pushes the halves apart with. */
  public static double force(Case c, CaseVoxels voxels) {
    return c.shot().holdPressure() * shadow(voxels);
  }

  /** In words; empty where the halves stay shut. */
  static Optional<String> warning(Case c, CaseVoxels voxels) {
    double area = shadow(voxels);
    double force = force(c, voxels);
    double held = c.clampingForce().orElse(BY_HAND);
    if (force <= held) {
      return Optional.empty();
    }
    String bears =
        c.clampingForce().isPresent()
            ? Quantities.say("the %.0f N that hold it", held)
            : Quantities.say("the %.0f N or so that clamps tightened by hand bear", held);
    return Optional.of(
        Quantities.say(
            "A plunger pressure of %.0f kPa on %.0f cm2 of cavity pushes the halves apart with %.0f N,"
                + " more than %s: hot plastisol sprays out of the parting line. Press less, at most"
                + " %.0f kPa, or clamp harder.",
            c.shot().holdPressure() * 1e-3, area * 1e4, force, bears, held / area * 1e-3));
  }

  /** m2. */
  private static double shadow(CaseVoxels voxels) {
    Cavity cavity = voxels.model().cavity();
    double[] out = {
      Math.abs(voxels.mouth().direction().x()),
      Math.abs(voxels.mouth().direction().y()),
      Math.abs(voxels.mouth().direction().z())
    };
    int sprue = out[0] >= out[1] && out[0] >= out[2] ? 0 : out[1] >= out[2] ? 1 : 2;
    int most = 0;
    for (int a = 0; a < 3; a++) {
      most = a == sprue ? most : Math.max(most, columns(cavity, a));
    }
    return most * cavity.grid().spacing() * cavity.grid().spacing();
  }

  private static int columns(Cavity cavity, int axis) {
    UniformGrid grid = cavity.grid();
    int b = (axis + 1) % 3;
    int c = (axis + 2) % 3;
    BitSet seen = new BitSet();
    for (int cell = 0; cell < cavity.count(); cell++) {
      seen.set(cavity.position(cell, b) + grid.count(b) * cavity.position(cell, c));
    }
    return seen.cardinality();
  }
}
