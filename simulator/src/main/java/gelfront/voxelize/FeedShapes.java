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
import java.util.Locale;
import java.util.Optional;

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
 * @param gates middle of each land, the cavities' first gates before their others
 */
record FeedShapes(
    List<Labelled> solids,
    List<Resolution.Channel> channels,
    Mouth mouth,
    Mouth atBlock,
    List<GatePlace> gates) {
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
    branches.add(FeedBranch.of(feed.gate(), feed.runner(), feed.reservoir(), parts.get(0)));
    copies.forEach(p -> branches.add(branches.get(0).placed(p)));
    Vec3 inner = feed.sprue().at().orElse(branches.get(0).end());
    List<Labelled> solids = new ArrayList<>();
    for (int i = 0; i < branches.size(); i++) {
      solids.addAll(branches.get(i).solids());
      if (branches.get(i).end().distance(inner) > MEET) {
        solids.add(join(feed, i + 1, branches.get(i).end(), inner, parts));
      }
    }
    List<GatePlace> gates = new ArrayList<>();
    double width = feed.gate().section().narrowest();
    for (FeedBranch b : branches) {
      gates.add(new GatePlace(b.middle(), width, gates.size() + 1));
    }
    List<Labelled> further = new ArrayList<>();
    for (int i = 0; i < feed.others().size(); i++) {
      further.addAll(other(feed, i, inner, parts, copies, gates));
    }
    solids.addAll(further);
    FeedSystem.Sprue sprue = feed.sprue();
    Vec3 mouth = inner.plus(sprue.direction().times(sprue.length()));
    clear("the sprue", inner, mouth, parts);
    solids.add(sprue(sprue, feed.gate().direction(), inner, mouth));
    Mouth atBlock = new Mouth(mouth, sprue.direction(), sprue.mouthDiameter() / 2);
    sprue.extender().ifPresent(e -> solids.add(tube(e, atBlock)));
    return new FeedShapes(
        List.copyOf(solids),
        solids.stream().map(Labelled::channel).toList(),
        sprue.extender().map(e -> above(e, atBlock)).orElse(atBlock),
        atBlock,
        List.copyOf(gates));
  }

  /** A further gate at the part and each copy, with runners to the sprue. */
  private static List<Labelled> other(
      FeedSystem.Declared feed,
      int number,
      Vec3 inner,
      List<TriangleMesh> parts,
      List<Placement> copies,
      List<GatePlace> gates) {
    FeedSystem.Branch branch = feed.others().get(number);
    BranchWay way = new BranchWay(branch, parts, "the runner of gate " + (number + 2));
    FeedBranch land = way.land();
    List<Labelled> solids = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Optional<Placement> where = i == 0 ? Optional.empty() : Optional.of(copies.get(i - 1));
      FeedBranch here = where.map(land::placed).orElse(land);
      solids.addAll(here.solids());
      solids.addAll(way.runner(here, where, inner, feed.sprue()));
      gates.add(new GatePlace(here.middle(), branch.gate().section().narrowest(), i + 1));
    }
    return solids;
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
    return new Labelled(Cavity.Region.RUNNER, Bars.along(section, from, to), section.narrowest());
  }

  /** Refuses a channel whose middle line runs through a part. */
  static void clear(String name, Vec3 from, Vec3 to, List<TriangleMesh> parts) {
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
        Cavity.Region.SPRUE,
        Solids.cylinder(from, above(e, foot).centre(), r, r, Bars.SEGMENTS),
        e.bore());
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
        Solids.cylinder(from, mouth, radius, s.mouthDiameter() / 2, Bars.SEGMENTS),
        s.narrowest());
  }

  static String mm(Vec3 p) {
    return String.format(
        Locale.ROOT, "(%.2f, %.2f, %.2f) mm", p.x() * 1e3, p.y() * 1e3, p.z() * 1e3);
  }
}
