// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Cavity;
import gelfront.linear.Graph;
import gelfront.linear.StopRule;
import java.util.Arrays;

/**
 * The suction that the liquid's own contraction makes, and where the skin gives way to it.
 *
 * <pre>
 *   div(w grad q) = y - S,   q = p(mouth) - p,   q = 0 at the mouth
 *   y = S max(0, (q - from) / (to - from))
 * </pre>
 *
 * <p>S is what a place contracts by, m3/s; y what the skin gives of it. Linear in q where it gives,
 * so symmetric; q never passes {@code to}; what flows in through the mouth and what the skin gives
 * add up to S. The solver's residuals are held against S, so that a plunger's pressure doesn't
 * loosen its stop rule. A few Newton passes on the set of places that give.
 */
public final class Suction {
  private static final StopRule STOP = new StopRule(1e-3, 2e-5, 120);

  /** Of all S, what may yield otherwise than the law says. */
  private static final double MISS = 1e-4;

  private static final int MOST_PASSES = 30;

  /** Share of what a skin bears over which it gives way, each side of it. */
  private static final double HALF_RANGE = 0.1;

  private final Cavity cavity;

  @SuppressWarnings("NullAway.Init") // taken before any use
  private Blocks blocks;

  private double[] mouth = {};
  private double[] between = {};
  private double[] own = {};
  private double[] right = {};
  private double[] q = {};
  private double[] given = {};
  private double[] from = {};
  private double[] range = {};
  private double[] gives = {};
  private int passes;
  private int iterations;

  public Suction(Cavity cavity) {
    this.cavity = cavity;
  }

  /** What the skin bears, Pa below the mouth's pressure: it gives nothing and all at these. */
  public record Skin(double from, double to) {
    public Skin {
      if (!(from >= 0) || !(to > from)) {
        throw new IllegalArgumentException("a skin gives more at more suction, none at none");
      }
    }

    /** Between 0.9 and 1.1 times what it bears; {@code over} is the mouth's pressure, Pa. */
    public static Skin of(double bears, double over) {
      return new Skin(over + (1 - HALF_RANGE) * bears, over + (1 + HALF_RANGE) * bears);
    }
  }

  /**
   * Solves from the last result.
   *
   * @param flowing per cell
   * @param w mobility, m2/(Pa s) per block; only blocks with some take part
   * @param draw S, m3/s per block, not negative
   */
  public void solve(Liquid liquid, boolean[] flowing, double[] w, double[] draw, Skin skin) {
    solve(liquid, flowing, new boolean[flowing.length], w, draw, new double[draw.length], skin);
  }

  /**
   * As above, below a free surface that has sunk.
   *
   * @param empty cells that air is in; what flows beside them is at the mouth's pressure
   * @param head Pa per block by which the liquid's weight presses more there than at the mouth
   */
  void solve(
      Liquid liquid,
      boolean[] flowing,
      boolean[] empty,
      double[] w,
      double[] draw,
      double[] head,
      Skin skin) {
    take(liquid.blocks());
    for (int b = 0; b < q.length; b++) {
      from[b] = Math.max(0, skin.from + head[b]);
      range[b] = skin.to - skin.from;
    }
    solve(liquid, flowing, empty, w, draw);
  }

  /**
   * As above, with a skin that bears more in one place than in another.
   *
   * @param bears Pa that it bears, per block, positive
   * @param over Pa at the mouth over what presses on the skin from outside
   */
  void solve(
      Liquid liquid,
      boolean[] flowing,
      boolean[] empty,
      double[] w,
      double[] draw,
      double[] head,
      double[] bears,
      double over) {
    take(liquid.blocks());
    for (int b = 0; b < q.length; b++) {
      from[b] = Math.max(0, over + (1 - HALF_RANGE) * bears[b] + head[b]);
      range[b] = 2 * HALF_RANGE * bears[b];
    }
    solve(liquid, flowing, empty, w, draw);
  }

  private void solve(Liquid liquid, boolean[] flowing, boolean[] empty, double[] w, double[] draw) {
    edges(liquid.shape(), w);
    mouths(flowing, w);
    surface(liquid, flowing, empty, w);
    passes = 0;
    iterations = 0;
    double all = keep(w, draw);
    double miss;
    do {
      if (passes++ == MOST_PASSES) {
        throw new IllegalStateException("where the skin gives way is not found");
      }
      pass(liquid, draw);
      miss = judge(draw);
    } while (miss > MISS * all);
  }

  /** Keeps the last result where it flows; returns m3/s drawn there. */
  private double keep(double[] w, double[] draw) {
    double all = 0;
    for (int b = 0; b < q.length; b++) {
      boolean in = w[b] > 0;
      all += in ? draw[b] : 0;
      gives[b] = in ? gives[b] : 0;
      q[b] = in ? q[b] : 0;
    }
    return all;
  }

  private void take(Blocks fresh) {
    if (fresh != blocks) {
      q = Liquid.carryOver(blocks, q, fresh);
      gives = Liquid.carryOver(blocks, gives, fresh);
      blocks = fresh;
      between = new double[fresh.graph.edges()];
      mouth = new double[q.length];
      own = new double[q.length];
      right = new double[q.length];
      given = new double[q.length];
      from = new double[q.length];
      range = new double[q.length];
    }
  }

  private void edges(double[] shape, double[] w) {
    Graph g = blocks.graph;
    for (int a = 0; a < q.length; a++) {
      for (int k = g.start()[a]; k < g.start()[a + 1]; k++) {
        int b = g.other()[k];
        if (b > a) {
          boolean open = w[a] > 0 && w[b] > 0;
          between[g.edge()[k]] = open ? 0.5 * shape[g.edge()[k]] * (w[a] + w[b]) : 0;
        }
      }
    }
  }

  private void mouths(boolean[] flowing, double[] w) {
    Cavity.Walls walls = cavity.walls();
    Arrays.fill(mouth, 0);
    for (int i = 0; i < walls.count(); i++) {
      if (walls.mouth()[i] && flowing[walls.cell()[i]]) {
        int b = blocks.of[walls.cell()[i]];
        double e = walls.edge()[i];
        mouth[b] += w[b] * e * e / blocks.wallDistance[i];
      }
    }
  }

  private void surface(Liquid liquid, boolean[] flowing, boolean[] empty, double[] w) {
    CellFaces faces = liquid.faces;
    for (int i = 0; i < liquid.edgeCount(); i++) {
      int f = liquid.edgeFaces()[i];
      int a = faces.a[f];
      int b = faces.b[f];
      if (empty[a] || empty[b]) {
        int c = flowing[a] ? a : b;
        double off = blocks.offset(c, faces.axis[f]) * (flowing[a] ? 1 : -1);
        double way = 0.5 * cavity.edge(c) + Math.max(0, off);
        mouth[blocks.of[c]] += w[blocks.of[c]] * faces.area(f) / way;
      }
    }
  }

  private void pass(Liquid liquid, double[] draw) {
    yields(draw);
    liquid.grid().refresh(between, own);
    iterations += liquid.solver().solve(right, q, STOP, draw);
  }

  private void yields(double[] draw) {
    for (int b = 0; b < q.length; b++) {
      double k = gives[b] > 0 ? draw[b] / range[b] : 0;
      own[b] = mouth[b] + k;
      right[b] = draw[b] + k * from[b];
    }
  }

  /** Sets the yield of this pass and who gives in the next; returns m3/s off the law. */
  private double judge(double[] draw) {
    double miss = 0;
    for (int b = 0; b < q.length; b++) {
      double law = draw[b] * (q[b] - from[b]) / range[b];
      given[b] = gives[b] > 0 ? law : 0;
      double now = law > 0 ? 1 : 0;
      if (now != gives[b]) {
        miss += Math.abs(law);
      }
      gives[b] = now;
    }
    return miss;
  }

  /** Pa below the mouth's pressure, per block; overwritten by the next solve. */
  public double[] suction() {
    return q;
  }

  /**
   * Multiplies what flows; where the skin gives nothing, that solves for a multiple of the draw.
   */
  void scale(double by) {
    for (int b = 0; b < q.length; b++) {
      q[b] *= by;
    }
  }

  /** Largest q over the q from which the skin gives, of any block; 0 where none has any. */
  double strain() {
    double most = 0;
    for (int b = 0; b < q.length; b++) {
      most = q[b] > 0 ? Math.max(most, q[b] / from[b]) : most;
    }
    return most;
  }

  /** m3/s that the skin gives, per block; overwritten by the next solve. */
  double[] given() {
    return given;
  }

  /** m3/s along entry {@code k} of the blocks' graph, out of block {@code from}. */
  double through(int from, int k) {
    return between[blocks.graph.edge()[k]] * (q[blocks.graph.other()[k]] - q[from]);
  }

  /** W lost in a block: half of what is lost on its edges. */
  double lostAt(int block) {
    Graph g = blocks.graph;
    double sum = 0;
    for (int k = g.start()[block]; k < g.start()[block + 1]; k++) {
      double fall = q[g.other()[k]] - q[block];
      sum += 0.5 * between[g.edge()[k]] * fall * fall;
    }
    return sum;
  }

  /** m3/s that enter a block through the mouth. */
  double entering(int block) {
    return mouth[block] * q[block];
  }

  /** Newton passes of the last solve. */
  int passes() {
    return passes;
  }

  /** Iterations of the last solve, all passes together. */
  int iterations() {
    return iterations;
  }
}
