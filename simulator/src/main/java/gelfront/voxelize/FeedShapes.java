package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.FeedSystem;
import gelfront.setup.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A declared feed system as solids: land, runner, reservoir and sprue one after the other.
 *
 * <pre>
 *   part | land | runner (reservoir in its middle) | sprue &gt; open end
 *   ====(|======|==================================|-----------------
 *      ^ the land begins inside the part, so that the joint is whole
 * </pre>
 *
 * @param solids gate, runner, reservoir, sprue; they overlap at their joints
 * @param mouth the sprue's open end
 * @param gate centre of the land where it meets the part, metres
 * @param gateMiddle centre of the land, metres
 */
record FeedShapes(List<Labelled> solids, Mouth mouth, Vec3 gate, Vec3 gateMiddle) {
  private static final int SEGMENTS = 96;

  /** How far off the part's surface a gate may be stated, metres. */
  private static final double OFF = 2e-3;

  /**
   * @param part the part's mesh, closed
   * @throws VoxelException if the gate does not meet the part
   */
  static FeedShapes of(FeedSystem.Declared feed, TriangleMesh part) {
    FeedSystem.Gate gate = feed.gate();
    Vec3 d = gate.direction();
    double surface = surface(part, gate);
    Vec3 start = gate.at().plus(d.times(surface));
    double inside = inside(part, start, d, gate.section().width());
    List<Labelled> solids = new ArrayList<>();
    Vec3 end = start.plus(d.times(gate.land()));
    double overlap = 0.25 * gate.section().narrowest();
    bar(
        solids,
        Cavity.Region.GATE,
        gate.section(),
        start.minus(d.times(inside)),
        end.plus(d.times(overlap)),
        d);
    Vec3 at = end;
    double bulge = feed.reservoir().map(FeedSystem.Reservoir::length).orElse(0.0);
    if (feed.runner().isPresent() || bulge > 0) {
      Section section = feed.runner().map(FeedSystem.Runner::section).orElse(gate.section());
      double length = Math.max(bulge, feed.runner().map(FeedSystem.Runner::length).orElse(0.0));
      Vec3 to = at.plus(d.times(length));
      bar(solids, Cavity.Region.RUNNER, section, at, to.plus(d.times(overlap)), d);
      Vec3 middle = at.plus(d.times(0.5 * length));
      feed.reservoir().ifPresent(r -> solids.add(reservoir(r, middle, d)));
      at = to;
    }
    FeedSystem.Sprue sprue = feed.sprue();
    Vec3 mouth = at.plus(sprue.direction().times(sprue.length()));
    boolean straight = sprue.direction().dot(d) > 1 - 1e-9;
    Vec3 from = straight ? at : at.minus(sprue.direction().times(0.5 * sprue.innerDiameter()));
    solids.add(
        new Labelled(
            Cavity.Region.SPRUE,
            Solids.cylinder(
                from, mouth, sprue.innerDiameter() / 2, sprue.mouthDiameter() / 2, SEGMENTS)));
    return new FeedShapes(
        List.copyOf(solids),
        new Mouth(mouth, sprue.direction(), sprue.mouthDiameter() / 2),
        start,
        start.plus(d.times(0.5 * gate.land())));
  }

  private static Labelled reservoir(FeedSystem.Reservoir r, Vec3 middle, Vec3 d) {
    Vec3 half = d.times(0.5 * r.length());
    double radius = 0.5 * r.diameter();
    return new Labelled(
        Cavity.Region.RUNNER,
        Solids.cylinder(middle.minus(half), middle.plus(half), radius, radius, SEGMENTS));
  }

  private static void bar(
      List<Labelled> solids, Cavity.Region region, Section s, Vec3 from, Vec3 to, Vec3 d) {
    TriangleMesh mesh =
        switch (s.kind()) {
          case ROUND -> Solids.cylinder(from, to, s.width() / 2, s.width() / 2, SEGMENTS);
          case HALF_ROUND -> Solids.prism(halfRound(s.width() / 2), from, to, across(d));
          case RECTANGULAR -> Solids.prism(rectangle(s), from, to, across(d));
        };
    solids.add(new Labelled(region, mesh));
  }

  /** The height's direction: as near to +z as a bar along {@code d} allows. */
  private static Vec3 across(Vec3 d) {
    Vec3 z = Math.abs(d.z()) < 0.9 ? new Vec3(0, 0, 1) : new Vec3(1, 0, 0);
    return z.minus(d.times(z.dot(d))).unit();
  }

  /** Flat side on the parting line (v = 0), round side above. */
  private static List<double[]> halfRound(double r) {
    List<double[]> outline = new ArrayList<>();
    for (int i = 0; i <= SEGMENTS / 2; i++) {
      double a = Math.PI * i / (SEGMENTS / 2.0);
      outline.add(new double[] {r * Math.cos(a), r * Math.sin(a)});
    }
    return outline;
  }

  private static List<double[]> rectangle(Section s) {
    double u = s.width() / 2;
    double v = s.height() / 2;
    return List.of(
        new double[] {-u, -v}, new double[] {u, -v}, new double[] {u, v}, new double[] {-u, v});
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
          Double.isInfinite(best)
              ? "the gate does not meet the part: no surface along its direction at "
                  + mm(gate.at())
              : String.format(
                  java.util.Locale.ROOT,
                  "the gate at %s is %.1f mm off the part's surface along its direction",
                  mm(gate.at()),
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

  static String mm(Vec3 p) {
    return String.format(
        java.util.Locale.ROOT, "(%.2f, %.2f, %.2f) mm", p.x() * 1e3, p.y() * 1e3, p.z() * 1e3);
  }
}
