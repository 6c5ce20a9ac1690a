// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.FeedSystem;
import gelfront.setup.Placement;
import gelfront.setup.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What feeds one cavity: land, runner and reservoir, one after the other.
 *
 * <pre>
 *   part | land | runner (reservoir in its middle) | end
 *   ====(|======|==================================|
 *      ^ the land begins inside the part, so that the joint is whole
 * </pre>
 *
 * @param solids gate, runner, reservoir; they overlap at their joints
 * @param middle centre of the land, metres
 * @param end centre of the far end, metres
 */
record FeedBranch(List<Labelled> solids, Vec3 middle, Vec3 end) {
  /** How far off the part's surface a gate may be stated, metres. */
  private static final double OFF = 2e-3;

  /**
   * @param part the part's mesh, closed
   * @throws VoxelException if the gate does not meet the part
   */
  static FeedBranch of(
      FeedSystem.Gate gate,
      Optional<FeedSystem.Runner> runner,
      Optional<FeedSystem.Reservoir> bulge,
      TriangleMesh part) {
    Vec3 d = gate.direction();
    Vec3 start = gate.at().plus(d.times(surface(part, gate)));
    Vec3 inside = start.minus(d.times(inside(part, start, d, gate.section().width())));
    List<Labelled> solids = new ArrayList<>();
    Vec3 end = start.plus(d.times(gate.land()));
    Vec3 overlap = d.times(0.25 * gate.section().narrowest());
    solids.add(
        new Labelled(
            Cavity.Region.GATE,
            Bars.along(gate.section(), inside, end.plus(overlap)),
            gate.section().narrowest()));
    double length =
        Math.max(
            bulge.map(FeedSystem.Reservoir::length).orElse(0.0),
            runner.map(FeedSystem.Runner::length).orElse(0.0));
    Vec3 to = end.plus(d.times(length));
    if (length > 0) {
      Section section = runner.map(FeedSystem.Runner::section).orElse(gate.section());
      TriangleMesh bar = Bars.along(section, end, to.plus(overlap));
      solids.add(new Labelled(Cavity.Region.RUNNER, bar, section.narrowest()));
    }
    Vec3 middle = end.plus(d.times(0.5 * length));
    bulge.ifPresent(r -> solids.add(reservoir(r, middle, d)));
    return new FeedBranch(List.copyOf(solids), start.plus(d.times(0.5 * gate.land())), to);
  }

  /** The same at a copy of the part. */
  FeedBranch placed(Placement p) {
    return new FeedBranch(
        solids.stream().map(s -> new Labelled(s.region(), p.of(s.mesh()), s.width())).toList(),
        p.point(middle),
        p.point(end));
  }

  private static Labelled reservoir(FeedSystem.Reservoir r, Vec3 middle, Vec3 d) {
    Vec3 half = d.times(0.5 * r.length());
    double radius = 0.5 * r.diameter();
    return new Labelled(
        Cavity.Region.RUNNER,
        Solids.cylinder(middle.minus(half), middle.plus(half), radius, radius, Bars.SEGMENTS),
        r.diameter());
  }

  /** Distance from the stated place along the direction to the part's surface. */
  private static double surface(TriangleMesh part, FeedSystem.Gate gate) {
    double best = Double.POSITIVE_INFINITY;
    for (double[] hit : RayCast.along(part, gate.at(), gate.direction())) {
      if (hit[1] > 0 && Math.abs(hit[0]) < Math.abs(best)) {
        best = hit[0];
      }
    }
    double allowed = Math.max(OFF, gate.land());
    if (!(Math.abs(best) <= allowed)) {
      throw new VoxelException(
          "gate.at",
          Double.isInfinite(best)
              ? "the gate does not meet the part: no surface along its direction at "
                  + FeedShapes.mm(gate.at())
              : String.format(
                  java.util.Locale.ROOT,
                  "the gate at %s is %.1f mm off the part's surface along its direction",
                  FeedShapes.mm(gate.at()),
                  Math.abs(best) * 1e3));
    }
    return best;
  }

  /** How far the land may reach into the part without coming out on its other side. */
  private static double inside(TriangleMesh part, Vec3 start, Vec3 d, double width) {
    OptionalDouble thickness =
        RayCast.along(part, start, d.times(-1)).stream()
            .filter(h -> h[1] > 0 && h[0] > 1e-6)
            .mapToDouble(h -> h[0])
            .min();
    return Math.min(width, 0.5 * thickness.orElse(2 * width));
  }
}
