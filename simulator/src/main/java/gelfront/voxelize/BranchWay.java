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

/**
 * A further gate of a part, and its runner to the sprue: straight pieces through the places of its
 * way, with a ball at each bend so that the joints are whole.
 *
 * <pre>
 *   part | land |----- place
 *                        |
 *        sprue &gt; -------'   the last piece ends in the sprue, half a runner's width up</pre>
 */
final class BranchWay {
  private static final int RINGS = 24;

  /** Lines round a runner that must not meet a part. */
  private static final int LINES = 8;

  private final FeedSystem.Branch branch;
  private final List<TriangleMesh> parts;
  private final String name;

  /**
   * @param parts the part's mesh, closed, and its copies
   * @param name of its runner
   */
  BranchWay(FeedSystem.Branch branch, List<TriangleMesh> parts, String name) {
    this.branch = branch;
    this.parts = parts;
    this.name = name;
  }

  /** The land and its place on the part itself, without runner. */
  FeedBranch land() {
    return FeedBranch.of(branch.gate(), Optional.empty(), Optional.empty(), parts.get(0));
  }

  /**
   * @param land of the part or of a copy
   * @param placement of that copy; absent for the part itself
   * @param sprue end of it towards the part
   * @return the runner's solids
   * @throws VoxelException if it would meet a part
   */
  List<Labelled> runner(
      FeedBranch land, Optional<Placement> placement, Vec3 sprue, FeedSystem.Sprue of) {
    List<Vec3> way = new ArrayList<>(List.of(land.end()));
    branch.way().forEach(p -> way.add(placement.map(m -> m.point(p)).orElse(p)));
    double up = Math.min(0.5 * branch.runner().width(), 0.5 * of.length());
    way.add(sprue.plus(of.direction().times(up)));
    List<Labelled> solids = new ArrayList<>();
    for (int i = 1; i < way.size(); i++) {
      Vec3 from = way.get(i - 1);
      Vec3 to = way.get(i);
      if (from.distance(to) > 1e-6) {
        clear(from, to);
        solids.add(
            new Labelled(
                Cavity.Region.RUNNER,
                Bars.along(branch.runner(), from, to),
                branch.runner().narrowest()));
      }
      if (i > 1) {
        solids.add(bend(from));
      }
    }
    return solids;
  }

  private Labelled bend(Vec3 at) {
    double r = 0.5 * branch.runner().narrowest();
    return new Labelled(Cavity.Region.RUNNER, Solids.sphere(at, r, RINGS), 2 * r);
  }

  /** Refuses a runner that touches a part on its way: it would be a gate of its own. */
  private void clear(Vec3 from, Vec3 to) {
    Section s = branch.runner();
    Vec3 along = to.minus(from).unit();
    Vec3 any = Math.abs(along.z()) < 0.9 ? new Vec3(0, 0, 1) : new Vec3(1, 0, 0);
    Vec3 u = any.minus(along.times(any.dot(along))).unit();
    Vec3 v = along.cross(u);
    FeedShapes.clear(name, from, to, parts);
    for (int k = 0; k < LINES; k++) {
      double a = 2 * Math.PI * k / LINES;
      Vec3 off = u.times(Math.cos(a)).plus(v.times(Math.sin(a))).times(0.5 * s.width());
      FeedShapes.clear(name, from.plus(off), to.plus(off), parts);
    }
  }
}
