// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * The body of {@link SyntheticRun}: tail bulb, neck, large bulb, gate and sprue along one axis.
 *
 * @param axis 0 x, 1 y, 2 z: along which it lies
 */
record SyntheticShape(int axis) {
  static final double MM = 1e-3;
  static final double LENGTH = 88 * MM;
  static final double NECK = 2.2 * MM;
  static final double GATE = 2.5 * MM;
  private static final Vec3 OFFSET = new Vec3(0.010, -0.005, 0.003);

  /** Radius at distance u from the tip of the tail, metres. */
  static double radius(double u) {
    double x = u / MM;
    double r = Math.max(bulb(x, 14, 14, 5.5), bulb(x, 45, 17, 9.5));
    if (x > 20 && x < 40) {
      r = Math.max(r, NECK / MM);
    }
    if (x > 50) {
      r = Math.max(r, Math.max(GATE / MM, Math.min(3.6 + (x - 66) * 0.06, 2.5 + (x - 64))));
    }
    return r * MM;
  }

  private static double bulb(double x, double centre, double half, double most) {
    double s = (x - centre) / half;
    return s * s < 1 ? most * Math.sqrt(1 - s * s) : 0;
  }

  Vec3 place(double u, double a, double b) {
    return switch (axis) {
      case 0 -> new Vec3(u, a, b).plus(OFFSET);
      case 1 -> new Vec3(b, u, a).plus(OFFSET);
      default -> new Vec3(a, b, u).plus(OFFSET);
    };
  }

  double along(Vec3 p) {
    Vec3 q = p.minus(OFFSET);
    return axis == 0 ? q.x() : axis == 1 ? q.y() : q.z();
  }

  boolean holds(Vec3 p) {
    double u = along(p);
    return u > 0 && u < LENGTH && fromAxis(p) < radius(u);
  }

  double fromAxis(Vec3 p) {
    return p.minus(place(along(p), 0, 0)).length();
  }

  /**
   * @param round corners round the axis
   */
  TriangleMesh surface(int round) {
    int rings = Math.max(40, round * 3);
    double[] v = new double[3 * (rings * round + 2)];
    for (int i = 0; i < rings; i++) {
      double u = LENGTH * (i + 0.5) / rings;
      double shown = i == rings - 1 ? LENGTH : u;
      for (int j = 0; j < round; j++) {
        double angle = 2 * Math.PI * j / round;
        put(
            v,
            i * round + j,
            place(shown, radius(u) * Math.cos(angle), radius(u) * Math.sin(angle)));
      }
    }
    put(v, rings * round, place(0, 0, 0));
    put(v, rings * round + 1, place(LENGTH, 0, 0));
    return new TriangleMesh(v, corners(rings, round));
  }

  private static int[] corners(int rings, int round) {
    List<Integer> t = new ArrayList<>();
    for (int j = 0; j < round; j++) {
      int k = (j + 1) % round;
      t.addAll(List.of(rings * round, k, j));
      int last = (rings - 1) * round;
      t.addAll(List.of(rings * round + 1, last + j, last + k));
      for (int i = 0; i + 1 < rings; i++) {
        int a = i * round;
        t.addAll(List.of(a + j, a + k, a + round + j));
        t.addAll(List.of(a + k, a + round + k, a + round + j));
      }
    }
    return t.stream().mapToInt(Integer::intValue).toArray();
  }

  private static void put(double[] v, int at, Vec3 p) {
    v[3 * at] = p.x();
    v[3 * at + 1] = p.y();
    v[3 * at + 2] = p.z();
  }
}
