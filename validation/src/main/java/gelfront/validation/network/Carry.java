// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.network;

import java.util.Arrays;

/**
 * Heat that the flow takes along and outwards: upwind and implicit, slice by slice from the mouth.
 * From slice to slice a streamline keeps its share of the rate: what flows nearest to the axis of a
 * sprue flows nearest to the axis of the gate.
 */
final class Carry {
  private final double[] in = new double[Rings.COUNT];
  private final double[] heat = new double[Rings.COUNT];

  /** The first slice's, from the mouth. */
  static Carry fromMouth(Stream to, double rate, double hot) {
    Carry c = new Carry();
    for (int k = 0; k < Rings.COUNT; k++) {
      c.add(k, to.share[k] * rate, hot);
    }
    return c;
  }

  /** By equal shares of the rate from the axis on. */
  static Carry fromSlice(Rings before, Stream from, Stream to, double rate) {
    Carry c = new Carry();
    int k = 0;
    double left = from.share[0];
    for (int l = 0; l < Rings.COUNT; l++) {
      double wants = to.share[l];
      while (wants > 0) {
        boolean last = k == Rings.COUNT - 1;
        double part = last ? wants : Math.min(wants, left);
        c.add(l, part * rate, before.t[k]);
        wants -= part;
        left -= part;
        if (left <= 0 && !last) {
          left = from.share[++k];
        }
      }
    }
    return c;
  }

  private void add(int ring, double rate, double t) {
    in[ring] += rate;
    heat[ring] += rate * t;
  }

  /**
   * What a ring doesn't pass on or draw itself, it gives to the next one outwards, or takes from
   * it.
   *
   * @param rings modified: temperatures and masses
   * @param onwards m3/s into the next slice
   * @param draws m3/s per ring, all that comes for it
   */
  void into(Rings rings, Stream stream, double onwards, double[] draws, double dt) {
    double[] fromInner = new double[Rings.COUNT + 1];
    double[] fromOuter = new double[Rings.COUNT];
    double[] own = new double[Rings.COUNT];
    double[] right = heat.clone();
    double across = 0;
    for (int k = 0; k < Rings.COUNT; k++) {
      double v = rings.volume[k] * rings.mass[k] / dt;
      fromInner[k] = Math.max(0, across);
      across += in[k] - stream.share[k] * onwards - draws[k];
      fromOuter[k] = k < Rings.COUNT - 1 ? Math.max(0, -across) : 0;
      own[k] = v + in[k] + fromInner[k] + fromOuter[k];
      right[k] += v * rings.t[k];
      rings.mass[k] += dt * draws[k] / rings.volume[k];
    }
    Tridiagonal.solve(Arrays.copyOfRange(fromInner, 1, Rings.COUNT), own, fromOuter, right);
    System.arraycopy(right, 0, rings.t, 0, Rings.COUNT);
  }
}
