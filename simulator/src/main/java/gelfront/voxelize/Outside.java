// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.base.Progress;
import gelfront.grid.RectilinearGrid;
import gelfront.grid.UniformGrid;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.ArrayDeque;

/**
 * Where the block's box holds no metal, because the mould's own solids leave it out: a milled-off
 * corner, a hole for a bolt, a channel. Samples in a lattice of cubes are metal if two of three
 * axis lines through them say so, of the solids and of the cavity united; what lies between two of
 * those along a line no wider than a slit counts as metal, too.
 *
 * <p>All shares are exactly 1 where no sample of air lies.
 */
final class Outside {
  /** Metres between two solids, or a solid and the cavity, that count as closed. */
  static final double SLIT = 0.25e-3;

  private static final double FINEST = 0.25e-3;
  private static final double MOST_SAMPLES = 8e6;

  /** Share of a sample that two edges may lie apart and still be one. */
  private static final double SNAP = 1e-6;

  /** So that slopes of round measures don't run along rows of samples. */
  private static final double ODD = 1.013;

  private static final double[] ONE = {1};

  /** Share of a cell's box under which what metal is in it is left out. */
  static final double LEAST = 0.02;

  private final RectilinearGrid coarse;
  private final UniformGrid samples;
  private final boolean[] air;
  private final Span[][] spans;

  private Outside(RectilinearGrid coarse, UniformGrid samples, boolean[] air) {
    this.coarse = coarse;
    this.samples = samples;
    this.air = air;
    this.spans = spans(coarse, samples);
  }

  /**
   * @param solids of the mould, closed and wound outwards, metres
   * @param cavity part and feed system, likewise
   * @param coarse the mould's grid, as large as the block's box
   */
  static Outside of(
      TriangleMesh solids, TriangleMesh cavity, RectilinearGrid coarse, Progress progress) {
    UniformGrid samples = samples(coarse);
    TriangleMesh both = solids.plus(cavity);
    byte[] votes = new byte[samples.cellCount()];
    boolean[] slit = new boolean[votes.length];
    for (int axis = 0; axis < 3; axis++) {
      vote(Crossings.of(both, samples, axis, progress), samples, axis, votes, slit);
    }
    boolean[] air = new boolean[votes.length];
    for (int s = 0; s < air.length; s++) {
      air[s] = votes[s] < 2 && !slit[s];
    }
    return new Outside(coarse, samples, air);
  }

  /** Cubes that fill the box; at its upper sides they may stand out by less than one. */
  private static UniformGrid samples(RectilinearGrid g) {
    Vec3 low = new Vec3(g.edge(0, 0), g.edge(1, 0), g.edge(2, 0));
    double[] size = new double[3];
    for (int a = 0; a < 3; a++) {
      size[a] = g.edge(a, g.count(a)) - g.edge(a, 0);
    }
    double h = ODD * Math.max(FINEST, Math.cbrt(size[0] * size[1] * size[2] / MOST_SAMPLES));
    int[] n = new int[3];
    for (int a = 0; a < 3; a++) {
      n[a] = (int) Math.max(1, Math.floor(size[a] / h + 1e-6));
    }
    return new UniformGrid(low, h, n[0], n[1], n[2]);
  }

  private static void vote(Crossings x, UniformGrid g, int axis, byte[] votes, boolean[] slit) {
    int e = (axis + 1) % 3;
    int f = (axis + 2) % 3;
    for (int jf = 0; jf < g.count(f); jf++) {
      for (int je = 0; je < g.count(e); je++) {
        int column = je + g.count(e) * jf;
        int base = je * g.stride(e) + jf * g.stride(f);
        int winding = 0;
        double left = Double.NEGATIVE_INFINITY;
        for (int k = x.first(column); k < x.end(column); k++) {
          boolean in = x.normal(k) < 0;
          if (in && winding == 0 && x.at(k) - left <= SLIT) {
            for (int i = first(g, axis, left); i < first(g, axis, x.at(k)); i++) {
              slit[base + i * g.stride(axis)] = true;
            }
          }
          double from = x.at(k);
          winding += in ? 1 : -1;
          left = winding == 0 ? from : left;
          double to = k + 1 < x.end(column) ? x.at(k + 1) : from;
          for (int i = first(g, axis, from); winding > 0 && i < first(g, axis, to); i++) {
            votes[base + i * g.stride(axis)]++;
          }
        }
      }
    }
  }

  /** The first sample at or above a coordinate. */
  private static int first(UniformGrid g, int axis, double at) {
    double i = Math.ceil((at - g.edge(axis, 0)) / g.spacing() - 0.5);
    return (int) Math.max(0, Math.min(g.count(axis), i));
  }

  /** Share of a mould grid cell that isn't air; 0 where that is next to nothing. */
  double share(int cell) {
    Span[] spans = new Span[3];
    for (int a = 0; a < 3; a++) {
      spans[a] = this.spans[a][coarse.position(cell, a)];
    }
    double metal = metal(spans);
    return metal < LEAST ? 0 : metal;
  }

  /** Share of the face between a mould grid cell and the next one along an axis. */
  double upper(int cell, int axis) {
    int i = coarse.position(cell, axis);
    int below = spans[axis][i].last();
    int above = spans[axis][i + 1].first;
    return Math.min(face(cell, axis, below), face(cell, axis, above));
  }

  /** Share of a mould grid cell's face on one of the box's sides. */
  double side(int cell, int face) {
    return face(cell, face / 2, face % 2 == 0 ? 0 : samples.count(face / 2) - 1);
  }

  private double face(int cell, int axis, int layer) {
    Span[] across = new Span[3];
    for (int a = 0; a < 3; a++) {
      boolean along = a == axis;
      across[a] = along ? new Span(layer, ONE) : spans[a][coarse.position(cell, a)];
    }
    return metal(across);
  }

  private double metal(Span[] s) {
    double all = 0;
    double none = 0;
    for (int k = 0; k < s[2].weight.length; k++) {
      for (int j = 0; j < s[1].weight.length; j++) {
        double w = s[2].weight[k] * s[1].weight[j];
        int row = samples.index(s[0].first, s[1].first + j, s[2].first + k);
        for (int i = 0; i < s[0].weight.length; i++) {
          none += air[row + i] ? w * s[0].weight[i] : 0;
          all += w * s[0].weight[i];
        }
      }
    }
    return 1 - none / all;
  }

  /** Samples that a mould grid cell reaches along an axis, and how much of each. */
  private static final class Span {
    private final int first;
    private final double[] weight;

    Span(int first, double[] weight) {
      this.first = first;
      this.weight = weight;
    }

    int last() {
      return first + weight.length - 1;
    }
  }

  private static Span[][] spans(RectilinearGrid coarse, UniformGrid samples) {
    Span[][] spans = new Span[3][];
    for (int a = 0; a < 3; a++) {
      spans[a] = new Span[coarse.count(a)];
      for (int i = 0; i < spans[a].length; i++) {
        spans[a][i] = span(samples, a, coarse.edge(a, i), coarse.edge(a, i + 1));
      }
    }
    return spans;
  }

  private static Span span(UniformGrid g, int axis, double low, double high) {
    double h = g.spacing();
    double from = (low - g.edge(axis, 0)) / h;
    double to = (high - g.edge(axis, 0)) / h;
    int last = g.count(axis) - 1;
    int first = (int) Math.min(last, Math.floor(from + SNAP));
    int end = (int) Math.max(first, Math.min(last, Math.ceil(to - SNAP) - 1));
    double[] weight = new double[end - first + 1];
    for (int i = first; i <= end; i++) {
      double upper = i == last ? Math.max(to, i + 1) : i + 1;
      weight[i - first] = Math.max(SNAP, Math.min(to, upper) - Math.max(from, i));
    }
    return new Span(first, weight);
  }

  /** Marks the air that joins the air round the box; hollows that are closed lose no heat. */
  boolean[] open() {
    boolean[] open = new boolean[air.length];
    ArrayDeque<Integer> next = new ArrayDeque<>();
    for (int s = 0; s < air.length; s++) {
      if (air[s] && atSide(s)) {
        open[s] = true;
        next.add(s);
      }
    }
    while (!next.isEmpty()) {
      int s = next.remove();
      for (int face = 0; face < 6; face++) {
        int a = face / 2;
        int p = samples.position(s, a);
        boolean end = face % 2 == 0 ? p == 0 : p == samples.count(a) - 1;
        int to = end ? s : s + (face % 2 == 0 ? -1 : 1) * samples.stride(a);
        if (air[to] && !open[to]) {
          open[to] = true;
          next.add(to);
        }
      }
    }
    return open;
  }

  private boolean atSide(int s) {
    for (int a = 0; a < 3; a++) {
      int p = samples.position(s, a);
      if (p == 0 || p == samples.count(a) - 1) {
        return true;
      }
    }
    return false;
  }

  /** Metres between samples. */
  double spacing() {
    return samples.spacing();
  }

  /** The sample nearest to a place; -1 outside the box. */
  int at(Vec3 p) {
    double[] c = {p.x(), p.y(), p.z()};
    int[] i = new int[3];
    for (int a = 0; a < 3; a++) {
      double last = coarse.edge(a, coarse.count(a));
      if (c[a] < samples.edge(a, 0) || c[a] > last) {
        return -1;
      }
      int at = (int) Math.floor((c[a] - samples.edge(a, 0)) / samples.spacing());
      i[a] = Math.min(samples.count(a) - 1, at);
    }
    return samples.index(i[0], i[1], i[2]);
  }
}
