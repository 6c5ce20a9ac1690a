// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Cavity;
import gelfront.linear.ConjugateGradients;
import gelfront.linear.Multigrid;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The liquid that is joined to the mouth, in blocks, and what its blocks share with each other now.
 * Blocks are made anew when a tenth of their cells has set, or when cells flow again.
 */
public final class Liquid {
  private static final double STALE = 0.9;

  final CellFaces faces;
  private final Cavity cavity;
  private final Gathering gathering;
  private final HalfWidth halfWidth;

  // made by the first update
  @SuppressWarnings("NullAway.Init")
  private Blocks blocks;

  @SuppressWarnings("NullAway.Init")
  private ConjugateGradients solver;

  @SuppressWarnings("NullAway.Init")
  private Multigrid grid;

  private int flowingWhenMade;
  private double[] shape = {};
  private final int[] edgeFaces;
  private int edgeCount;

  /**
   * @param gathered false: every cell is a block of its own, to see what blocks cost
   */
  public Liquid(Cavity cavity, boolean gathered) {
    this(cavity, gathered ? Gathering.FEEDING : Gathering.SINGLE);
  }

  public Liquid(Cavity cavity, Gathering gathering) {
    this.cavity = cavity;
    this.gathering = gathering;
    faces = new CellFaces(cavity);
    edgeFaces = new int[faces.count()];
    halfWidth = new HalfWidth(cavity, faces);
  }

  /**
   * @param flowing per cell
   */
  public void update(boolean[] flowing) {
    if (stale(flowing)) {
      gather(flowing);
    }
    share(flowing);
  }

  private void gather(boolean[] flowing) {
    blocks = new Blocks(cavity, faces, flowing, halfWidth.of(flowing), gathering);
    grid = new Multigrid(blocks.graph, blocks.cubes);
    solver = new ConjugateGradients(grid);
    shape = new double[blocks.graph.edges()];
  }

  /** What blocks have open towards each other, and where liquid ends. */
  private void share(boolean[] flowing) {
    Arrays.fill(shape, 0);
    edgeCount = 0;
    for (int f = 0; f < edgeFaces.length; f++) {
      boolean a = flowing[faces.a[f]];
      boolean b = flowing[faces.b[f]];
      int e = blocks.edge[f];
      if (a != b) {
        edgeFaces[edgeCount++] = f;
      } else if (a && e >= 0) {
        shape[e] += blocks.reach[f];
      }
    }
  }

  private boolean stale(boolean[] flowing) {
    int now = 0;
    boolean again = blocks == null;
    for (int c = 0; c < flowing.length; c++) {
      if (flowing[c]) {
        now++;
        again |= blocks != null && blocks.of[c] < 0;
      }
    }
    boolean old = again || now < STALE * flowingWhenMade;
    flowingWhenMade = old ? now : flowingWhenMade;
    return old;
  }

  Blocks blocks() {
    return blocks;
  }

  Multigrid grid() {
    return grid;
  }

  ConjugateGradients solver() {
    return solver;
  }

  /** Metres per edge of the blocks' graph: area that is open now over its length. */
  double[] shape() {
    return shape;
  }

  /** Faces with liquid on one side: the first {@link #edgeCount()} of these. */
  int[] edgeFaces() {
    return edgeFaces;
  }

  int edgeCount() {
    return edgeCount;
  }

  /** Block of a flowing cell. */
  public int block(int cell) {
    return blocks.of[cell];
  }

  /** Blocks at present. */
  public int count() {
    return blocks.count();
  }

  /**
   * Means over the cells of each block that flow, by volume.
   *
   * @param perCell what is averaged
   * @param otherwise what a block has of which nothing flows any more
   */
  double[] means(boolean[] flowing, double[] volume, double[] perCell, double otherwise) {
    double[] sum = new double[blocks.count()];
    double[] v = new double[sum.length];
    for (int c = 0; c < perCell.length; c++) {
      if (flowing[c]) {
        sum[blocks.of[c]] += perCell[c] * volume[c];
        v[blocks.of[c]] += volume[c];
      }
    }
    for (int b = 0; b < v.length; b++) {
      sum[b] = v[b] > 0 ? sum[b] / v[b] : otherwise;
    }
    return sum;
  }

  /** Values per old block handed to the new ones, 0 where there was none. */
  static double[] carryOver(@Nullable Blocks old, double[] values, Blocks fresh) {
    double[] out = new double[fresh.count()];
    for (int b = 0; old != null && b < out.length; b++) {
      int from = old.of[fresh.first[b]];
      out[b] = from >= 0 ? values[from] : 0;
    }
    return out;
  }
}
