// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Section;
import java.util.ArrayList;
import java.util.List;

/** Straight pieces of gate and runner as solids. */
final class Bars {
  static final int SEGMENTS = 96;

  private Bars() {}

  /** A bar of one cross-section between two places, metres; its height looks to +z where it can. */
  static TriangleMesh along(Section s, Vec3 from, Vec3 to) {
    Vec3 across = across(to.minus(from).unit());
    return switch (s.kind()) {
      case ROUND -> Solids.cylinder(from, to, s.width() / 2, s.width() / 2, SEGMENTS);
      case HALF_ROUND -> Solids.prism(halfRound(s.width() / 2), from, to, across);
      case RECTANGULAR -> Solids.prism(rectangle(s), from, to, across);
    };
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
}
