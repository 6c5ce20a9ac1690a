// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import org.jspecify.annotations.Nullable;

/**
 * Areas and centres of a solid's cross-sections along the longest side of its box.
 *
 * <p>The part of the solid above a plane x = c is closed; the field (1, 0, 0) has no sources; so
 * the section's area is the sum of n_x dA over the skin above c, and the section's moments are the
 * same sum weighted by y and z.
 */
final class SectionProfile {
  /** Sections along the solid. */
  static final int STATIONS = 400;

  private final int axis;
  private final double from;
  private final double step;
  private final double[] area = new double[STATIONS];
  private final double[] momentU = new double[STATIONS];
  private final double[] momentV = new double[STATIONS];
  private final double[] @Nullable [] pending = new double[STATIONS][];

  private SectionProfile(int axis, double from, double step) {
    this.axis = axis;
    this.from = from;
    this.step = step;
  }

  /**
   * @param mesh closed, wound outwards
   */
  static SectionProfile of(TriangleMesh mesh) {
    Box box = mesh.box();
    Vec3 s = box.size();
    int axis = s.x() >= s.y() && s.x() >= s.z() ? 0 : s.y() >= s.z() ? 1 : 2;
    double length = axis == 0 ? s.x() : axis == 1 ? s.y() : s.z();
    SectionProfile p = new SectionProfile(axis, along(box.min(), axis), length / STATIONS);
    for (int t = 0; t < mesh.triangleCount(); t++) {
      p.add(new Vec3[] {corner(mesh, t, 0), corner(mesh, t, 1), corner(mesh, t, 2)});
    }
    p.sumUp();
    return p;
  }

  private static Vec3 corner(TriangleMesh mesh, int t, int c) {
    return mesh.vertex(mesh.corner(t, c));
  }

  private static double along(Vec3 p, int axis) {
    return axis == 0 ? p.x() : axis == 1 ? p.y() : p.z();
  }

  private double plane(int station) {
    return from + (station + 0.5) * step;
  }

  /** Whole triangles go to the last station below them and are summed up later. */
  private void add(Vec3[] triangle) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Vec3 v : triangle) {
      low = Math.min(low, along(v, axis));
      high = Math.max(high, along(v, axis));
    }
    int whole = Math.min(STATIONS - 1, (int) Math.floor((low - from) / step - 0.5));
    if (whole >= 0) {
      pending[whole] = plus(pending[whole], triangle, 3);
    }
    for (int s = Math.max(0, whole + 1); s < STATIONS && plane(s) < high; s++) {
      Vec3[] clipped = new Vec3[4];
      int n = clip(triangle, plane(s), clipped);
      double[] sum = plus(null, clipped, n);
      area[s] += sum[0];
      momentU[s] += sum[1];
      momentV[s] += sum[2];
    }
  }

  private void sumUp() {
    double[] sum = new double[3];
    for (int s = STATIONS - 1; s >= 0; s--) {
      if (pending[s] != null) {
        for (int i = 0; i < 3; i++) {
          sum[i] += pending[s][i];
        }
      }
      area[s] += sum[0];
      momentU[s] += sum[1];
      momentV[s] += sum[2];
    }
  }

  /** Adds a polygon's projected area and its moments. */
  private double[] plus(double @Nullable [] sum, Vec3[] polygon, int n) {
    double[] s = sum == null ? new double[3] : sum;
    for (int i = 1; i + 1 < n; i++) {
      double u0 = u(polygon[0]);
      double v0 = v(polygon[0]);
      double u1 = u(polygon[i]);
      double v1 = v(polygon[i]);
      double u2 = u(polygon[i + 1]);
      double v2 = v(polygon[i + 1]);
      double a = 0.5 * ((u1 - u0) * (v2 - v0) - (v1 - v0) * (u2 - u0));
      s[0] += a;
      s[1] += a * (u0 + u1 + u2) / 3;
      s[2] += a * (v0 + v1 + v2) / 3;
    }
    return s;
  }

  private double u(Vec3 p) {
    return along(p, (axis + 1) % 3);
  }

  private double v(Vec3 p) {
    return along(p, (axis + 2) % 3);
  }

  /** The polygon's part above the plane. */
  private int clip(Vec3[] polygon, double plane, Vec3[] out) {
    int n = 0;
    for (int i = 0; i < polygon.length; i++) {
      Vec3 p = polygon[i];
      Vec3 q = polygon[(i + 1) % polygon.length];
      double a = along(p, axis) - plane;
      double b = along(q, axis) - plane;
      if (a >= 0) {
        out[n++] = p;
      }
      if ((a < 0 && b > 0) || (a > 0 && b < 0)) {
        out[n++] = p.plus(q.minus(p).times(a / (a - b)));
      }
    }
    return n;
  }

  /** m2, at a station from the low end. */
  double area(int station) {
    return area[station];
  }

  /** Diameter of the circle of a section's area, metres. */
  double diameter(int station) {
    return Math.sqrt(4 / Math.PI * Math.max(0, area[station]));
  }

  /** Middle of the section, metres. */
  Vec3 centre(int station) {
    return at(plane(station), station);
  }

  /** The section's middle, moved to the solid's very end. */
  Vec3 end(boolean high) {
    return high ? at(from + STATIONS * step, STATIONS - 1) : at(from, 0);
  }

  private Vec3 at(double place, int station) {
    double u = momentU[station] / area[station];
    double v = momentV[station] / area[station];
    return switch (axis) {
      case 0 -> new Vec3(place, u, v);
      case 1 -> new Vec3(v, place, u);
      default -> new Vec3(u, v, place);
    };
  }

  /** Out of the solid at one of its ends, length one. */
  Vec3 outwards(boolean high) {
    double d = high ? 1 : -1;
    return new Vec3(axis == 0 ? d : 0, axis == 1 ? d : 0, axis == 2 ? d : 0);
  }
}
