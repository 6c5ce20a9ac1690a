// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.fill.FillRecord;
import gelfront.fill.Vents;
import gelfront.finding.Filled;
import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import gelfront.setup.Case;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.PartingPlane;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

/**
 * Which air stays in the part, and where a vent would let it out. Under the pressure that holds its
 * volume is what Boyle's law makes of it, but never more than was cut off.
 */
final class TrappedAir {
  private static final double OUTSIDE = 101_325;

  /** Pa and s that a proposed vent lets the air out with and in. */
  private static final double DRIVES = 5e3;

  private static final double WITHIN = 0.3;
  private static final double NARROWEST = 2e-3;

  private final Case setup;
  private final CaseVoxels voxels;
  private final FillRecord fill;
  private final double least;

  /**
   * @param least m3 of air that is told
   */
  TrappedAir(Case setup, CaseVoxels voxels, FillRecord fill, double least) {
    this.setup = setup;
    this.voxels = voxels;
    this.fill = fill;
    this.least = least;
  }

  /**
   * Largest first.
   *
   * @param told gets the cells of each
   */
  List<Filled.TrappedAir> list(Consumer<int[]> told) {
    List<FillRecord.AirBody> bodies = new ArrayList<>(fill.bodies());
    bodies.removeIf(b -> !traps(b));
    bodies.sort(Comparator.comparingDouble((FillRecord.AirBody b) -> -held(b)));
    List<Filled.TrappedAir> all = new ArrayList<>();
    for (FillRecord.AirBody b : bodies) {
      told.accept(b.cells());
      all.add(of(all.size() + 1, b));
    }
    return all;
  }

  /** Whether it is air, not cold, that keeps liquid out: it is denser than outside. */
  private boolean traps(FillRecord.AirBody b) {
    boolean dense = fill.end() == FillRecord.End.AIR_HOLDS || b.pressure() > 1.02 * OUTSIDE;
    return held(b) >= least && dense;
  }

  private double held(FillRecord.AirBody b) {
    double under = OUTSIDE + setup.shot().holdPressure();
    return Math.min(b.began(), b.pressure() * b.volume() / under);
  }

  private Filled.TrappedAir of(int number, FillRecord.AirBody b) {
    Cavity cavity = voxels.model().cavity();
    int axis = PartingPlane.of(voxels).axis();
    double[] face = Vents.faceOf(voxels);
    Vec3 middle = Vec3.ZERO;
    int nearest = b.cells()[0];
    double off = Double.POSITIVE_INFINITY;
    for (int c : b.cells()) {
      middle = middle.plus(cavity.centre(c));
      double away = Math.abs(cavity.centre(c, axis) - face[voxels.cavities().of()[c]]);
      if (away < off) {
        off = away;
        nearest = c;
      }
    }
    boolean on = off <= 0.75 * cavity.edge(nearest);
    Vec3 at = cavity.centre(nearest);
    return new Filled.TrappedAir(
        number,
        middle.times(1.0 / b.cells().length),
        held(b),
        b.began(),
        b.since(),
        b.pressure() - OUTSIDE,
        at,
        on ? 0 : off,
        on ? ventWidth(b, nearest, axis) : 0,
        "");
  }

  private double ventWidth(FillRecord.AirBody b, int cell, int axis) {
    double land = Double.POSITIVE_INFINITY;
    for (int f = 0; f < 6; f++) {
      land = f / 2 == axis ? land : Math.min(land, Vents.land(voxels, cell, f));
    }
    double needed = b.began() / (DRIVES * WITHIN);
    return Math.max(NARROWEST, Vents.width(needed, Filled.TrappedAir.VENT_DEPTH, land));
  }
}
