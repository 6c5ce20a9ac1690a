// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import gelfront.linear.ConjugateGradients;
import gelfront.linear.Multigrid;
import gelfront.linear.StopRule;
import java.util.Arrays;

/**
 * Pressure in the liquid behind the front, and what it drives.
 *
 * <pre>  div(w grad p) = 0;  p = p_mouth at the open end, p = p_air at the front</pre>
 *
 * <p>Between two full blocks with the mean of their w; to a block that is filled in part over the
 * way to where the front stands in it. Air that gets denser while the step lasts is in it, too: it
 * takes what {@link Air#foresee} says, as if all its front had one pressure behind it.
 */
final class Pressure {
  private static final StopRule STOP = new StopRule(3e-3, 5e-3, 200);

  /** Of a block's edge, least way to the front. */
  private static final double NEAREST = 0.05;

  private static final int MOST_TRIES = 10;

  /** Of what comes, what may seem to run back. */
  private static final double BACK = 1e-5;

  /** Of all that could come without the liquid's own way, what is taken to come at first. */
  private static final double FIRST = 1e-3;

  /** Of the same, what is no flow any more: less than rounding leaves. */
  private static final double LEAST = 1e-7;

  /** What the solver's stop rule is tightened by where nothing seemed to come. */
  private static final double CLOSER = 0.03;

  /** Share by which the rate may miss what is wanted where bodies of air differ in pressure. */
  private static final double NEAR_WANTED = 0.005;

  /** Share that all pressures may be changed by to balance what comes in. */
  private static final double MOST_BALANCED = 0.1;

  private final FillNet net;
  private final ConjugateGradients solver;
  private final Multigrid grid;
  private final double[] between;
  private final double[] own;
  private final double[] right;
  private final double[] measure;
  private final double[] p;

  /** Pa below the mouth's pressure, per block. */
  private final double[] below;

  /** To the front, per edge, m3/(Pa s); and from outside straight to the front, per block. */
  private final double[] toFront;

  private final double[] mouthFront;
  private final double[] mouth;

  /** m3/s from the lower block of an edge to the higher, between full blocks or to the front. */
  final double[] through;

  /** m3/s that come to a block which isn't full. */
  final double[] comes;

  /** m3/s from outside, per block. */
  final double[] enters;

  private double atMouth;
  private double rate;
  private double given;

  Pressure(FillNet net) {
    this.net = net;
    grid = new Multigrid(net.graph, net.blocks.cubes());
    solver = new ConjugateGradients(grid);
    int n = net.count();
    between = new double[net.graph.edges()];
    toFront = new double[between.length];
    through = new double[between.length];
    own = new double[n];
    right = new double[n];
    measure = new double[n];
    p = new double[n];
    below = new double[n];
    mouthFront = new double[n];
    mouth = new double[n];
    comes = new double[n];
    enters = new double[n];
  }

  /** Pa over the air's at the mouth. */
  double atMouth() {
    return atMouth;
  }

  /** Pa that the liquid's own way takes: the mouth's over the air's. */
  double spent(Air air) {
    return atMouth - base(air);
  }

  /** m3/s that come to the front. */
  double rate() {
    return rate;
  }

  /** m3/s that enter at the mouth; differs from the rate by what the solver leaves. */
  double given() {
    return given;
  }

  /** Pa over the air's, per block. */
  double at(int b) {
    return p[b];
  }

  /**
   * @param w m2/(Pa s) per block
   * @param air foreseen for the step to come
   * @return whether anything moves
   */
  boolean solve(Front front, double[] w, Air air, Drive drive) {
    coefficients(front, w);
    soften(front, air);
    if (atMouth == 0) {
      atMouth = drive.pressure();
      rate = drive.byRate() ? drive.rate() : 0;
    }
    if (!drive.byRate()) {
      atMouth = drive.pressure();
    }
    for (int attempt = 0; attempt < MOST_TRIES; attempt++) {
      double before = rate;
      solveOnce(front, air);
      if (rate > 0 && shutBackwards(front, air) > BACK * rate) {
        continue;
      }
      if (!(rate > 0)) {
        atMouth = drive.pressure();
        rate = CLOSER * before;
        if (!drives(front, air)) {
          return false;
        }
        continue;
      }
      boolean measured = rate < 2 * before && rate > 0.5 * before;
      if (measured && settled(air, drive)) {
        return true;
      }
    }
    return Arrays.stream(comes).anyMatch(q -> q > 0);
  }

  /** Whether any air before a way that flows is less dense than the pressure at the mouth. */
  private boolean drives(Front front, Air air) {
    boolean any = false;
    for (int e = 0; e < toFront.length; e++) {
      any |= toFront[e] > 0 && air.start(air.body[ahead(front, e)]) < atMouth;
    }
    for (int b = 0; b < mouthFront.length; b++) {
      any |= mouthFront[b] > 0 && air.start(air.body[b]) < atMouth;
    }
    return any;
  }

  /** Brings the pressure to what drives the wanted rate; whether that needs no other solve. */
  private boolean settled(Air air, Drive drive) {
    if (!drive.byRate()) {
      return true;
    }
    double base = base(air);
    double wanted = base + (atMouth - base) * drive.rate() / rate;
    double next = Math.min(drive.pressure(), wanted);
    double times = (next - base) / (atMouth - base);
    if (evenAir(air) && times > 0) {
      atMouth = next;
      scale(base, times);
      return true;
    }
    if (Math.abs(times - 1) < NEAR_WANTED) {
      // What flows is what this pressure drives: neither is changed alone.
      return true;
    }
    atMouth = next;
    rate *= Math.max(0.1, times);
    return false;
  }

  private void scale(double base, double times) {
    for (int b = 0; b < p.length; b++) {
      p[b] = base + (p[b] - base) * times;
      below[b] *= times;
      comes[b] *= times;
      enters[b] *= times;
    }
    for (int e = 0; e < through.length; e++) {
      through[e] *= times;
    }
    rate *= times;
    given *= times;
  }

  private void coefficients(Front front, double[] w) {
    Arrays.fill(own, 0);
    double[] shape = net.blocks.shape();
    for (int e = 0; e < between.length; e++) {
      int a = net.low[e];
      int b = net.high[e];
      between[e] = 0;
      toFront[e] = 0;
      if (front.full[a] && front.full[b]) {
        between[e] = w[a] > 0 && w[b] > 0 ? 0.5 * shape[e] * (w[a] + w[b]) : 0;
      } else if (front.full[a] != front.full[b]) {
        int from = front.full[a] ? a : b;
        int to = front.full[a] ? b : a;
        double way = net.size[from] + front.share(to) * net.size[to];
        toFront[e] = w[from] * shape[e] * (net.size[a] + net.size[b]) / way;
      }
    }
    for (int b = 0; b < mouth.length; b++) {
      double m = net.blocks.mouth()[b] * w[b];
      mouth[b] = front.full[b] ? m : 0;
      mouthFront[b] = front.full[b] ? 0 : 0.5 * m / Math.max(NEAREST, front.share(b));
    }
  }

  /** What the air's own resistance leaves of the way to the front. */
  private void soften(Front front, Air air) {
    double[] sum = new double[air.bodies()];
    for (int e = 0; e < toFront.length; e++) {
      if (toFront[e] > 0) {
        sum[air.body[ahead(front, e)]] += toFront[e];
      }
    }
    for (int b = 0; b < mouthFront.length; b++) {
      if (mouthFront[b] > 0) {
        sum[air.body[b]] += mouthFront[b];
      }
    }
    for (int e = 0; e < toFront.length; e++) {
      if (toFront[e] > 0) {
        int k = air.body[ahead(front, e)];
        toFront[e] /= stiffened(air.softness(k) * sum[k]);
      }
    }
    for (int b = 0; b < mouthFront.length; b++) {
      if (mouthFront[b] > 0) {
        mouthFront[b] /= stiffened(air.softness(air.body[b]) * sum[air.body[b]]);
      }
    }
  }

  /**
   * Air's pressure counts at the middle of a step where that is stable, else towards its end.
   *
   * @param x how often air would come to rest within the step
   */
  private static double stiffened(double x) {
    return 1 + x * Math.max(0.5, x > 0 ? 1 - 1 / x : 0);
  }

  private int ahead(Front front, int e) {
    return front.full[net.low[e]] ? net.high[e] : net.low[e];
  }

  /** For how far pressure lies below the mouth's: near rest, too, residuals are small then. */
  private void solveOnce(Front front, Air air) {
    Arrays.fill(measure, 0);
    int at = -1;
    double most = 0;
    for (int b = 0; b < own.length; b++) {
      own[b] = mouth[b];
      right[b] = 0;
      at = mouth[b] > 0 && (at < 0 || mouth[b] > mouth[at]) ? b : at;
    }
    for (int e = 0; e < toFront.length; e++) {
      if (toFront[e] > 0) {
        int from = front.full[net.low[e]] ? net.low[e] : net.high[e];
        double drives = toFront[e] * (atMouth - air.start(air.body[ahead(front, e)]));
        own[from] += toFront[e];
        right[from] += drives;
        most += Math.abs(drives);
      }
    }
    if (at >= 0 && most > 0) {
      measure[at] = rate > 0 ? Math.max(LEAST * most, Math.min(rate, most)) : FIRST * most;
      grid.refresh(between, own);
      solver.solve(right, below, STOP, measure);
      balance();
    }
    for (int b = 0; b < p.length; b++) {
      p[b] = atMouth - below[b];
    }
    flows(front, air);
  }

  /** What the solver leaves of the sum, all pressures take up: as much comes in as goes on. */
  private void balance() {
    double wanted = 0;
    double leaves = 0;
    for (int b = 0; b < own.length; b++) {
      wanted += right[b];
      leaves += own[b] * below[b];
    }
    double times = leaves > 0 ? wanted / leaves : 1;
    if (Math.abs(times - 1) < MOST_BALANCED) {
      for (int b = 0; b < below.length; b++) {
        below[b] *= times;
      }
    }
  }

  /** Air that is denser than the liquid before it holds it: no way leads there, this time. */
  private double shutBackwards(Front front, Air air) {
    double back = 0;
    for (int e = 0; e < toFront.length; e++) {
      if (toFront[e] > 0) {
        int from = front.full[net.low[e]] ? net.low[e] : net.high[e];
        double drives = atMouth - air.start(air.body[ahead(front, e)]) - below[from];
        if (drives < 0) {
          back -= toFront[e] * drives;
          toFront[e] = 0;
        }
      }
    }
    return back;
  }

  private void flows(Front front, Air air) {
    Arrays.fill(comes, 0);
    rate = 0;
    given = 0;
    for (int e = 0; e < through.length; e++) {
      int a = net.low[e];
      int b = net.high[e];
      if (toFront[e] > 0) {
        int from = front.full[a] ? a : b;
        int to = front.full[a] ? b : a;
        // Liquid does not come back before the air: it would only do so as fast.
        double drives = atMouth - air.start(air.body[to]) - below[from];
        double q = Math.max(0, toFront[e] * drives);
        comes[to] += q;
        rate += q;
        through[e] = from == a ? q : -q;
      } else {
        through[e] = between[e] * (below[b] - below[a]);
      }
    }
    for (int b = 0; b < enters.length; b++) {
      double straight =
          mouthFront[b] > 0 ? Math.max(0, mouthFront[b] * (atMouth - air.start(air.body[b]))) : 0;
      comes[b] += straight;
      rate += straight;
      enters[b] = mouth[b] * below[b] + straight;
      given += enters[b];
    }
  }

  /** Pa at which nothing would come: the mean of the air's, by what comes to it. */
  private double base(Air air) {
    double sum = 0;
    for (int b = 0; b < comes.length; b++) {
      sum += comes[b] > 0 ? comes[b] * air.start(air.body[b]) : 0;
    }
    return sum / rate;
  }

  private boolean evenAir(Air air) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int b = 0; b < comes.length; b++) {
      if (comes[b] > 0) {
        low = Math.min(low, air.start(air.body[b]));
        high = Math.max(high, air.start(air.body[b]));
      }
    }
    return high - low <= 1e-3 * Math.abs(atMouth - low);
  }
}
