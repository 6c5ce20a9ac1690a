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
import java.util.Locale;

/**
 * A declared feed system as solids: a branch from each cavity, straight pieces of runner from the
 * branches' ends to the sprue where they don't end there, and the sprue.
 *
 * <pre>
 *   part 1 | land | runner |
 *                          | join
 *   part 2 | land | runner |- sprue &gt; open end</pre>
 *
 * @param solids gates, runners, reservoirs, sprue; they overlap at their joints
 * @param channels the same as boxes, to see where cells must be small
 * @param mouth the sprue's open end, or that of the tube on it
 * @param atBlock the sprue's end on the block's face
 * @param gates centre of each land, metres
 */
record FeedShapes(
    List<Labelled> solids,
    List<Resolution.Channel> channels,
    Mouth mouth,
    Mouth atBlock,
    List<Vec3> gates) {
  /** Metres that two ends may lie apart and still meet. */
  private static final double MEET = 1e-6;

  /**
   * @param feed of the part
   * @param parts the part's mesh, closed, and its copies
   * @param copies where these lie
   * @throws VoxelException if the gate does not meet the part, or a runner meets what it must not
   */
  static FeedShapes of(FeedSystem.Declared feed, List<TriangleMesh> parts, List<Placement> copies) {
    List<FeedBranch> branches = new ArrayList<>();
    branches.add(FeedBranch.of(feed, parts.get(0)));
    copies.forEach(p -> branches.add(branches.get(0).placed(p)));
    Vec3 inner = feed.sprue().at().orElse(branches.get(0).end());
    List<Labelled> solids = new ArrayList<>();
    for (int i = 0; i < branches.size(); i++) {
      solids.addAll(branches.get(i).solids());
      if (branches.get(i).end().distance(inner) > MEET) {
        solids.add(join(feed, i + 1, branches.get(i).end(), inner, parts));
      }
    }
    FeedSystem.Sprue sprue = feed.sprue();
    Vec3 mouth = inner.plus(sprue.direction().times(sprue.length()));
    clear("the sprue", inner, mouth, parts);
    solids.add(sprue(sprue, feed.gate().direction(), inner, mouth));
    Mouth atBlock = new Mouth(mouth, sprue.direction(), sprue.mouthDiameter() / 2);
    sprue.extender().ifPresent(e -> solids.add(tube(e, atBlock)));
    return new FeedShapes(
        List.copyOf(solids),
        solids.stream().map(s -> channel(s, feed)).toList(),
        sprue.extender().map(e -> above(e, atBlock)).orElse(atBlock),
        atBlock,
        branches.stream().map(FeedBranch::middle).toList());
  }

  private static Resolution.Channel channel(Labelled solid, FeedSystem.Declared feed) {
    double gate = feed.gate().section().narrowest();
    double width =
        switch (solid.region()) {
          case SPRUE -> feed.sprue().narrowest();
          case RUNNER -> feed.runner().map(r -> r.section().narrowest()).orElse(gate);
          default -> gate;
        };
    return new Resolution.Channel(solid.mesh().box(), width);
  }

  private static Labelled join(
      FeedSystem.Declared feed, int cavity, Vec3 end, Vec3 inner, List<TriangleMesh> parts) {
    String name = parts.size() == 1 ? "the runner" : "the runner of cavity " + cavity;
    if (feed.runner().isEmpty()) {
      throw new VoxelException(
          "runner.length",
          String.format(
              Locale.ROOT,
              "%s must lead from %s to the sprue at %s: add a [runner] with size and length",
              name,
              mm(end),
              mm(inner)));
    }
    clear(name, end, inner, parts);
    FeedSystem.Runner runner = feed.runner().get();
    Section section = runner.section();
    Vec3 along = inner.minus(end).unit();
    double before = Math.min(0.5 * section.width(), runner.length() + 0.5 * feed.gate().land());
    Vec3 from = end.minus(along.times(before));
    Vec3 to = inner.plus(along.times(0.5 * section.width()));
    return new Labelled(Cavity.Region.RUNNER, Bars.along(section, from, to));
  }

  /** Refuses a channel whose middle line runs through a part. */
  private static void clear(String name, Vec3 from, Vec3 to, List<TriangleMesh> parts) {
    double length = to.distance(from);
    Vec3 along = to.minus(from).unit();
    for (int i = 0; i < parts.size(); i++) {
      boolean meets =
          RayCast.along(parts.get(i), from, along).stream()
              .anyMatch(hit -> hit[0] >= 0 && hit[0] <= length);
      if (meets) {
        String which = parts.size() == 1 ? "the part" : "cavity " + (i + 1);
        throw new VoxelException(
            name.startsWith("the runner") ? "runner" : "sprue",
            name + " from " + mm(from) + " to " + mm(to) + " runs through " + which);
      }
    }
  }

  /** Begins a little inside the sprue, so that the joint is whole. */
  private static Labelled tube(FeedSystem.Extender e, Mouth foot) {
    double r = e.bore() / 2;
    Vec3 from = foot.centre().minus(foot.direction().times(0.05 * Math.min(r, foot.radius())));
    return new Labelled(
        Cavity.Region.SPRUE, Solids.cylinder(from, above(e, foot).centre(), r, r, Bars.SEGMENTS));
  }

  private static Mouth above(FeedSystem.Extender e, Mouth foot) {
    Vec3 top = foot.centre().plus(foot.direction().times(e.height()));
    return new Mouth(top, foot.direction(), e.bore() / 2);
  }

  private static Labelled sprue(FeedSystem.Sprue s, Vec3 gate, Vec3 inner, Vec3 mouth) {
    boolean straight = s.direction().dot(gate) > 1 - 1e-9;
    Vec3 from = straight ? inner : inner.minus(s.direction().times(0.5 * s.innerDiameter()));
    double radius = s.innerDiameter() / 2;
    return new Labelled(
        Cavity.Region.SPRUE,
        Solids.cylinder(from, mouth, radius, s.mouthDiameter() / 2, Bars.SEGMENTS));
  }

  static String mm(Vec3 p) {
    return String.format(
        Locale.ROOT, "(%.2f, %.2f, %.2f) mm", p.x() * 1e3, p.y() * 1e3, p.z() * 1e3);
  }
}
