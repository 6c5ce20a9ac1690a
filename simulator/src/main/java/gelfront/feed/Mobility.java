// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Cavity;
import gelfront.linear.Graph;
import gelfront.linear.StopRule;
import gelfront.material.ViscosityCurve;
import java.util.Arrays;

/**
 * How easily liquid moves: velocity per pressure gradient, m2/(Pa s), in each block.
 *
 * <pre>
 *   t . div(eta grad(u t)) = -G,   w = u / G,   u = 0 at walls and where the plastisol has set
 * </pre>
 *
 * <p>t is the way the liquid goes and G how steeply pressure falls there, both from the last
 * suction ({@link Course}): Stokes flow along given lines. What is lost where the liquid gathers
 * before a short land is in it, as u has to grow and t to turn there. In a straight duct t and G
 * are the same everywhere, and w is exactly the velocity per gradient, whatever its section and
 * however eta varies over it. Between two blocks u is coupled by eta times the cosine between their
 * ways, so the matrix stays symmetric and positive; w follows w and q in turns, which settles in
 * three.
 *
 * <p>Between two middles eta is the one that the exact integral of 1/eta gives if ln eta is linear:
 * ln(b/a) / (1/a - 1/b). Walls lie at their true distance; where the cell beyond has set, the wall
 * is the no-flow isotherm between the two middles. A cell's source reaches halfway to its walls
 * only (Shortley and Weller's weights, kept symmetric; the squares of the normal's components share
 * them between the axes), since the shear in that half is what the link to the wall carries.
 */
public final class Mobility {
  /** Relative residual; the liquid's viscosity is not known to a per cent. */
  private static final StopRule STOP = new StopRule(1e-2, 1e-2, 60);

  /** Least distance of the isotherm, voxels. */
  private static final double LEAST = 0.05;

  /** Least source of a cell, cubes of its size. */
  private static final double LEAST_SOURCE = 0.1;

  private static final int FACES = 6;

  private final Cavity cavity;
  private final StopRule stop;
  private final double[] wholeSource;

  @SuppressWarnings("NullAway.Init") // taken before any use
  private Blocks blocks;

  private double[] w = {};
  private double[] between = {};
  private double[] own = {};
  private double[] source = {};
  private double[] logarithm = {};
  private double[] viscosity = {};
  private int[] cells = {};
  private int iterations;

  public Mobility(Cavity cavity) {
    this(cavity, STOP);
  }

  /** With a stop rule of one's own. */
  public Mobility(Cavity cavity, StopRule stop) {
    this.cavity = cavity;
    this.stop = stop;
    wholeSource = source(cavity);
  }

  /** m3 whose push a cell's faces carry; length n. */
  private static double[] source(Cavity cavity) {
    double[] source = new double[cavity.count()];
    for (int c = 0; c < source.length; c++) {
      source[c] = cavity.cubeVolume(c);
    }
    Cavity.Walls walls = cavity.walls();
    for (int i = 0; i < walls.count(); i++) {
      if (!walls.mouth()[i]) {
        double n = walls.cosine()[i];
        int c = walls.cell()[i];
        double e = walls.edge()[i];
        source[c] += e * e * 0.5 * (walls.distance()[i] - cavity.edge(c)) * n * n;
      }
    }
    for (int c = 0; c < source.length; c++) {
      source[c] = Math.max(source[c], LEAST_SOURCE * cavity.cubeVolume(c));
    }
    return source;
  }

  /**
   * Solves from the last result, as if the liquid went straight on.
   *
   * @param liquid brought up to date with {@code flowing}
   * @param flowing per cell; has no neighbour above no-flow that isn't flowing, too
   * @param temperature °C per cell
   * @param noFlow °C
   * @return m2/(Pa s) per block, 0 where it doesn't flow; overwritten by the next call
   */
  public double[] solve(
      Liquid liquid, boolean[] flowing, double[] temperature, ViscosityCurve curve, double noFlow) {
    return solve(liquid, flowing, temperature, curve, noFlow, new Course());
  }

  /**
   * As above, where the liquid's way turns and narrows, too.
   *
   * @param course of the last suction; brought over to the liquid's blocks
   */
  public double[] solve(
      Liquid liquid,
      boolean[] flowing,
      double[] temperature,
      ViscosityCurve curve,
      double noFlow,
      Course course) {
    take(liquid.blocks());
    course.take(blocks);
    viscosities(flowing, temperature, curve);
    edges(liquid.shape(), course);
    isotherm(liquid, flowing, temperature, curve.logarithm(noFlow), noFlow);
    walls(flowing, temperature, curve);
    toVelocity(course);
    liquid.grid().refresh(between, own);
    iterations = liquid.solver().solve(source, w, stop);
    toMobility(course);
    return w;
  }

  /** From w to the u that the equation is solved for, and its right-hand side. */
  private void toVelocity(Course course) {
    for (int b = 0; b < w.length; b++) {
      double steep = course.steepness(b);
      source[b] = steep * Math.max(source[b], LEAST_SOURCE * cavity.cubeVolume(blocks.first[b]));
      w[b] = cells[b] > 0 ? steep * w[b] : 0;
    }
  }

  private void toMobility(Course course) {
    for (int b = 0; b < w.length; b++) {
      w[b] = (w[b] > 0 ? w[b] : least(b)) / course.steepness(b);
    }
  }

  /** What a block would have if none about it had any: the exact solution is nowhere less. */
  private double least(int b) {
    Graph g = blocks.graph;
    double diagonal = own[b];
    for (int k = g.start()[b]; k < g.start()[b + 1]; k++) {
      diagonal += between[g.edge()[k]];
    }
    return cells[b] > 0 && diagonal > 0 ? source[b] / diagonal : 0;
  }

  /** The same per cell. */
  public double[] perCell(
      Liquid liquid, boolean[] flowing, double[] temperature, ViscosityCurve curve, double noFlow) {
    solve(liquid, flowing, temperature, curve, noFlow);
    double[] out = new double[flowing.length];
    for (int c = 0; c < out.length; c++) {
      out[c] = flowing[c] ? w[blocks.of[c]] : 0;
    }
    return out;
  }

  /** Of the last solve. */
  public int iterations() {
    return iterations;
  }

  private void take(Blocks fresh) {
    if (fresh != blocks) {
      w = Liquid.carryOver(blocks, w, fresh);
      blocks = fresh;
      int n = fresh.count();
      between = new double[fresh.graph.edges()];
      own = new double[n];
      source = new double[n];
      logarithm = new double[n];
      viscosity = new double[n];
      cells = new int[n];
    }
  }

  private void viscosities(boolean[] flowing, double[] t, ViscosityCurve curve) {
    Arrays.fill(logarithm, 0);
    Arrays.fill(source, 0);
    Arrays.fill(cells, 0);
    Arrays.fill(own, 0);
    for (int c = 0; c < flowing.length; c++) {
      if (flowing[c]) {
        int b = blocks.of[c];
        logarithm[b] += curve.logarithm(t[c]);
        source[b] += wholeSource[c];
        cells[b]++;
      }
    }
    for (int b = 0; b < cells.length; b++) {
      logarithm[b] = cells[b] > 0 ? logarithm[b] / cells[b] : 0;
      viscosity[b] = Math.exp(logarithm[b]);
    }
  }

  private void edges(double[] shape, Course course) {
    Graph g = blocks.graph;
    for (int a = 0; a < w.length; a++) {
      for (int k = g.start()[a]; k < g.start()[a + 1]; k++) {
        int b = g.other()[k];
        if (b > a) {
          int e = g.edge()[k];
          double all =
              shape[e] > 0
                  ? shape[e] * mean(logarithm[a], viscosity[a], logarithm[b], viscosity[b])
                  : 0;
          between[e] = all * course.alike(a, b);
          own[a] += all - between[e];
          own[b] += all - between[e];
        }
      }
    }
  }

  private void isotherm(
      Liquid liquid, boolean[] flowing, double[] t, double logAtNoFlow, double noFlow) {
    double atNoFlow = Math.exp(logAtNoFlow);
    CellFaces faces = liquid.faces;
    for (int i = 0; i < liquid.edgeCount(); i++) {
      int f = liquid.edgeFaces()[i];
      int a = faces.a[f];
      int b = faces.b[f];
      int c = flowing[a] ? a : b;
      int beyond = flowing[a] ? b : a;
      int axis = faces.axis[f];
      double share = Math.min(1, Math.max(LEAST, (t[c] - noFlow) / (t[c] - t[beyond])));
      double off = blocks.offset(c, axis) * (flowing[a] ? 1 : -1);
      int at = blocks.of[c];
      double way = share * faces.apart(f);
      own[at] +=
          faces.area(f)
              / (way + Math.max(0, off))
              * mean(logarithm[at], viscosity[at], logAtNoFlow, atNoFlow);
      double missing = 0.5 * (cavity.edge(c) - way);
      source[at] -= missing * squaredCosine(t, c, beyond) * faces.area(f);
    }
  }

  /** Of the angle between an axis and the way down in temperature. */
  private double squaredCosine(double[] t, int c, int beyond) {
    int[] neighbours = cavity.neighbours();
    double all = 0;
    for (int e = FACES * c; e < FACES * c + FACES; e += 2) {
      double fall = t[c] - Math.min(t[neighbours[e]], t[neighbours[e + 1]]);
      all += fall > 0 ? fall * fall : 0;
    }
    double along = t[c] - t[beyond];
    double most = Math.max(all, along * along); // across a joint of two sizes it isn't in the sum
    return most > 0 ? along * along / most : 0; // beside air as warm as the liquid nothing falls
  }

  /** The wall's own temperature is carried on from the cell opposite, never warmer. */
  private void walls(boolean[] flowing, double[] t, ViscosityCurve curve) {
    Cavity.Walls walls = cavity.walls();
    for (int i = 0; i < walls.count(); i++) {
      int c = walls.cell()[i];
      if (!flowing[c] || walls.mouth()[i]) {
        continue;
      }
      int opposite = cavity.neighbours()[FACES * c + (walls.face()[i] ^ 1)];
      double cold = t[c] + Math.min(0, t[c] - t[opposite]) * walls.distance()[i] / cavity.edge(c);
      double log = curve.logarithm(cold);
      int at = blocks.of[c];
      double e = walls.edge()[i];
      own[at] +=
          e * e / blocks.wallDistance[i] * mean(logarithm[at], viscosity[at], log, Math.exp(log));
    }
  }

  /** Over a way on which ln eta is linear, the viscosity of equal resistance to shear. */
  private static double mean(double logA, double a, double logB, double b) {
    double d = logB - logA;
    return Math.abs(d) < 1e-4 ? 0.5 * (a + b) : a * d / (1 - a / b);
  }
}
