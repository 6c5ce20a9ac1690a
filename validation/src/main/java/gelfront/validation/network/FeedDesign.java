// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.network;

import java.util.ArrayList;
import java.util.List;

/**
 * A part turned about its axis, its gate at x = 0 on that axis, a sprue behind the gate's land.
 *
 * @param x metres along the part, rising from 0
 * @param r metres, its radius there
 * @param gate metres across
 * @param land metres
 * @param sprue metres across
 * @param sprueLength metres
 */
public record FeedDesign(
    double[] x, double[] r, double gate, double land, double sprue, double sprueLength) {
  private static final double SLICE = 0.5e-3;

  public FeedDesign {
    x = x.clone();
    r = r.clone();
    if (x.length != r.length || x.length < 2 || x[0] != 0) {
      throw new IllegalArgumentException("a radius for each place, from 0 on");
    }
  }

  /** What a slice belongs to. */
  enum Kind {
    SPRUE,
    GATE,
    PART
  }

  /**
   * A short piece of tube.
   *
   * @param length metres
   * @param radius metres, in its middle
   * @param slope by how much its wall is longer than itself
   */
  record Slice(Kind kind, double length, double radius, double slope) {}

  /** From the sprue's mouth to the part's tip. */
  List<Slice> slices() {
    List<Slice> all = new ArrayList<>();
    tube(all, Kind.SPRUE, sprueLength, sprue / 2);
    tube(all, Kind.GATE, land, gate / 2);
    double length = x[x.length - 1];
    int n = (int) Math.round(length / SLICE);
    for (int i = 0; i < n; i++) {
      double at = (i + 0.5) * length / n;
      double steep = (radius(at + 1e-6) - radius(at - 1e-6)) / 2e-6;
      all.add(new Slice(Kind.PART, length / n, radius(at), Math.hypot(1, steep)));
    }
    return all;
  }

  private static void tube(List<Slice> all, Kind kind, double length, double radius) {
    int n = Math.max(4, (int) Math.round(length / SLICE));
    for (int i = 0; i < n; i++) {
      all.add(new Slice(kind, length / n, radius, 1));
    }
  }

  private double radius(double at) {
    int i = 0;
    while (i < x.length - 2 && at > x[i + 1]) {
      i++;
    }
    return r[i] + (r[i + 1] - r[i]) * (at - x[i]) / (x[i + 1] - x[i]);
  }
}
