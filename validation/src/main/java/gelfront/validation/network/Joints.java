// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.network;

import java.util.Arrays;
import java.util.List;

/** Where one slice of a chain ends in a face, since the next is narrower; and what that does. */
final class Joints {
  /** Of a slice's length: from so much wider on, a part's slice ends in a face. */
  private static final double STEP = 1.3;

  private final List<FeedDesign.Slice> slices;
  private final Melt melt;

  /**
   * Metres from the axis that the flow keeps within, per slice: towards a narrower tube its radius
   * and the way to it. Nine tenths of Sampson's flow into a hole keep within that cone.
   */
  final double[] funnel;

  Joints(List<FeedDesign.Slice> slices, Melt melt) {
    this.slices = slices;
    this.melt = melt;
    funnel = slices.stream().mapToDouble(FeedDesign.Slice::radius).toArray();
    for (int i = 0; i + 1 < funnel.length; i++) {
      if (endsInFace(i)) {
        boolean onwards = slices.get(i).radius() < slices.get(i + 1).radius();
        narrow(onwards ? i : i + 1, onwards ? 1 : -1);
      }
    }
  }

  private void narrow(int from, int way) {
    double wide = slices.get(from).radius();
    for (int i = from + way; i >= 0 && i < funnel.length; i += way) {
      double length = slices.get(i).length();
      funnel[i] = Math.min(funnel[i], wide + 0.5 * length);
      wide += length;
    }
  }

  /** Whether slice {@code i} or the next ends in a face towards the other. */
  boolean endsInFace(int i) {
    FeedDesign.Slice a = slices.get(i);
    FeedDesign.Slice b = slices.get(i + 1);
    double jump = Math.abs(a.radius() - b.radius());
    double counts = a.kind() == b.kind() ? STEP * Math.max(a.length(), b.length()) : 0;
    return jump > counts;
  }

  /** W that each ring gains by conduction along the axis and at end faces; the mouth insulates. */
  double[][] along(Rings[] rings) {
    double[][] gains = new double[rings.length][Rings.COUNT];
    int last = rings.length - 1;
    for (int i = 0; i < last; i++) {
      exchange(rings[i], rings[i + 1], gains[i], gains[i + 1]);
      if (endsInFace(i)) {
        int wide = rings[i].radius > rings[i + 1].radius ? i : i + 1;
        face(rings[wide], Math.min(rings[i].radius, rings[i + 1].radius), gains[wide]);
      }
    }
    face(rings[last], 0, gains[last]);
    return gains;
  }

  private void exchange(Rings a, Rings b, double[] toA, double[] toB) {
    double way = 0.5 * (a.length + b.length) / melt.conductivity();
    int k = 0;
    int l = 0;
    double from = 0;
    while (k < Rings.COUNT && l < Rings.COUNT) {
      double endA = (k + 1) * a.radius / Rings.COUNT;
      double endB = (l + 1) * b.radius / Rings.COUNT;
      double to = Math.min(endA, endB);
      double w = Math.PI * (to * to - from * from) / way * (a.t[k] - b.t[l]);
      toA[k] -= w;
      toB[l] += w;
      from = to;
      k += endA <= to ? 1 : 0;
      l += endB <= to ? 1 : 0;
    }
  }

  /** Heat lost at an end face beyond radius {@code from}. */
  private void face(Rings rings, double from, double[] gains) {
    double way = 0.5 * rings.length / melt.conductivity() + 1 / melt.film();
    for (int k = 0; k < Rings.COUNT; k++) {
      double inner = Math.max(from, k * rings.radius / Rings.COUNT);
      double outer = Math.max(from, (k + 1) * rings.radius / Rings.COUNT);
      double area = Math.PI * (outer * outer - inner * inner);
      gains[k] -= area / way * (rings.t[k] - melt.wall());
    }
  }

  /**
   * Pa s/m3 that a joint adds between slices {@code i} and {@code i + 1}: half of Sampson's 3 eta /
   * R^3, by the viscosity of the wide side's core, where the liquid turns.
   */
  double end(int i, Rings[] rings, Stream[] streams) {
    if (!endsInFace(i)) {
      return 0;
    }
    boolean onwards = rings[i].radius < rings[i + 1].radius;
    double core = rings[onwards ? i + 1 : i].t[0];
    double viscosity = Math.exp(melt.lnViscosity().applyAsDouble(core));
    return 1.5 * viscosity / Math.pow(streams[onwards ? i : i + 1].open, 3);
  }

  /** How far the chain flows, from the mouth on: its first set slice. */
  static int joined(Rings[] rings) {
    return (int) Arrays.stream(rings).takeWhile(Rings::flows).count();
  }
}
