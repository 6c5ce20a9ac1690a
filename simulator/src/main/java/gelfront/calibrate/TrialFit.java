// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * No-flow temperature and skin law from what became of trial shots, by their likelihood:
 *
 * <pre>
 *   depth(T, s) = low(T)^(1 - s) high(T)^s              s: 0 the milder reading of the skin, 1 the other
 *   P(dented)   = e + (1 - 2 e) Phi((ln depth - ln visible) / w)
 *   P(froze)    = e + (1 - 2 e) Phi((ln released - ln closes(T)) / v)
 *   ln measured = ln depth(T, s) + noise of width w and of 0.05 mm
 * </pre>
 *
 * <p>w and v are what the model itself may be off by ({@code v} by its network check), e is the
 * share of shots noted down wrongly: own judgement. Both unknowns lie on a grid, with what was
 * known before of no-flow as weights; intervals hold 90 % of what is left.
 */
public final class TrialFit {
  /** The model's own doubt in the logarithm of a depth. */
  static final double DEPTH = 0.4;

  /** And in that of a closing time. */
  static final double TIME = 0.13;

  private static final double WRONG = 0.02;
  private static final double CALIPERS = 0.05e-3;
  private static final double LEAST_DEPTH = 1e-6;
  private static final int TEMPERATURES = 101;
  private static final int SKINS = 21;

  /** Share of what was known before that an interval may be as wide as and still tell something. */
  private static final double TOLD = 0.75;

  private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);

  private final double[] knots;
  private final DoubleUnaryOperator before;
  private final double visible;

  /**
   * @param knots °C that predictions were made for, rising
   * @param before what was known of no-flow, any scale: weight at °C
   * @param visible metres from which a dent is seen
   */
  public TrialFit(double[] knots, DoubleUnaryOperator before, double visible) {
    this.knots = knots.clone();
    this.before = before;
    this.visible = visible;
  }

  /**
   * What a model says of a shot, one value for each knot; NaN where it gave no result.
   *
   * @param low metres of the deepest dent by the milder reading
   * @param high metres by the other
   * @param closes s at which the gate closes
   * @param released s at which the plunger is taken off
   */
  public record Predicted(double[] low, double[] high, double[] closes, double released) {}

  /**
   * A property and what is known of it now.
   *
   * @param value middle: as much lies below it as above
   * @param low that 5 % lie below
   * @param high that 5 % lie above
   * @param told whether that is clearly less than was known before
   */
  public record Known(double value, double low, double high, boolean told) {}

  /**
   * @param noFlow °C
   * @param skin 0 to 1
   * @param correlation of both
   * @param likely chance of what was seen, by shot, where both are most likely
   */
  public record Result(Known noFlow, Known skin, double correlation, double[] likely) {
    /** Whether what one is can't be told without the other. */
    public boolean inseparable() {
      return Math.abs(correlation) > (skin.told() ? 0.9 : 0.3);
    }
  }

  /**
   * @param predicted one for each shot
   */
  public Result of(List<TrialShot> shots, List<Predicted> predicted) {
    double[] t = spread(knots[0], knots[knots.length - 1], TEMPERATURES);
    double[] s = spread(0, 1, SKINS);
    double[][] ln = new double[t.length][s.length];
    double[][] prior = new double[t.length][s.length];
    double most = Double.NEGATIVE_INFINITY;
    int[] best = new int[2];
    for (int i = 0; i < t.length; i++) {
      for (int k = 0; k < s.length; k++) {
        prior[i][k] = Math.max(1e-9, before.applyAsDouble(t[i]));
        ln[i][k] = Math.log(prior[i][k]);
        for (int n = 0; n < shots.size(); n++) {
          ln[i][k] += Math.log(chance(shots.get(n), predicted.get(n), t[i], s[k]));
        }
        if (ln[i][k] > most) {
          most = ln[i][k];
          best = new int[] {i, k};
        }
      }
    }
    double[][] weight = new double[t.length][s.length];
    for (int i = 0; i < t.length; i++) {
      for (int k = 0; k < s.length; k++) {
        weight[i][k] = Math.exp(ln[i][k] - most);
      }
    }
    double[] likely = new double[shots.size()];
    for (int n = 0; n < likely.length; n++) {
      likely[n] = chance(shots.get(n), predicted.get(n), t[best[0]], s[best[1]]);
    }
    return new Result(
        known(t, rows(weight), rows(prior)),
        known(s, columns(weight), columns(prior)),
        correlation(t, s, weight),
        likely);
  }

  private static double[] spread(double low, double high, int n) {
    double[] v = new double[n];
    Arrays.setAll(v, i -> low + (high - low) * i / (n - 1));
    return v;
  }

  /** Of all that was seen of one shot; a measured depth as a density beside its highest. */
  double chance(TrialShot shot, Predicted p, double noFlow, double skin) {
    double depth = depth(p, noFlow, skin);
    double closes = at(p.closes(), noFlow);
    if (Double.isNaN(depth)) {
      return WRONG;
    }
    double all = 1;
    if (shot.depth().isPresent() && shot.depth().getAsDouble() > 0) {
      all *= measured(shot.depth().getAsDouble(), depth);
    } else if (shot.dented().isPresent()) {
      double yes = share((Math.log(depth) - Math.log(visible)) / DEPTH);
      all *= shot.dented().get() ? yes : 1 - yes;
    }
    if (shot.froze().isPresent() && closes > 0) {
      double yes = share(Math.log(Math.max(p.released(), 0.1) / closes) / TIME);
      all *= shot.froze().get() ? yes : 1 - yes;
    }
    return all;
  }

  /** Metres. */
  double depth(Predicted p, double noFlow, double skin) {
    double low = Math.max(LEAST_DEPTH, at(p.low(), noFlow));
    double high = Math.max(LEAST_DEPTH, at(p.high(), noFlow));
    return Math.exp((1 - skin) * Math.log(low) + skin * Math.log(high));
  }

  /** Seconds. */
  double closes(Predicted p, double noFlow) {
    return at(p.closes(), noFlow);
  }

  private static double measured(double read, double depth) {
    double width = Math.hypot(DEPTH, CALIPERS / read);
    double off = (Math.log(read) - Math.log(depth)) / width;
    return WRONG + (1 - WRONG) * Math.exp(-0.5 * off * off);
  }

  private static double share(double z) {
    return WRONG + (1 - 2 * WRONG) * NORMAL.cumulativeProbability(z);
  }

  /** Between knots in proportion; NaN beside one that gave no result. */
  private double at(double[] values, double noFlow) {
    int i = 0;
    while (i < knots.length - 2 && noFlow > knots[i + 1]) {
      i++;
    }
    double share = (noFlow - knots[i]) / (knots[i + 1] - knots[i]);
    return values[i] + share * (values[i + 1] - values[i]);
  }

  private static double[] rows(double[][] w) {
    return Arrays.stream(w).mapToDouble(row -> Arrays.stream(row).sum()).toArray();
  }

  private static double[] columns(double[][] w) {
    double[] sum = new double[w[0].length];
    for (double[] row : w) {
      for (int k = 0; k < row.length; k++) {
        sum[k] += row[k];
      }
    }
    return sum;
  }

  private static Known known(double[] x, double[] now, double[] earlier) {
    double low = quantile(x, now, 0.05);
    double high = quantile(x, now, 0.95);
    double was = quantile(x, earlier, 0.95) - quantile(x, earlier, 0.05);
    return new Known(quantile(x, now, 0.5), low, high, high - low < TOLD * was);
  }

  /** Each grid point's weight is spread evenly over its cell. */
  private static double quantile(double[] x, double[] weight, double share) {
    double wanted = share * Arrays.stream(weight).sum();
    double cell = x[1] - x[0];
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      if (sum + weight[i] >= wanted) {
        double within = x[i] + cell * ((wanted - sum) / weight[i] - 0.5);
        return Math.max(x[0], Math.min(x[x.length - 1], within));
      }
      sum += weight[i];
    }
    return x[x.length - 1];
  }

  private static double correlation(double[] t, double[] s, double[][] w) {
    double all = 0;
    double mt = 0;
    double ms = 0;
    for (int i = 0; i < t.length; i++) {
      for (int k = 0; k < s.length; k++) {
        all += w[i][k];
        mt += w[i][k] * t[i];
        ms += w[i][k] * s[k];
      }
    }
    mt /= all;
    ms /= all;
    double tt = 0;
    double ss = 0;
    double ts = 0;
    for (int i = 0; i < t.length; i++) {
      for (int k = 0; k < s.length; k++) {
        double a = t[i] - mt;
        double b = s[k] - ms;
        tt += w[i][k] * a * a;
        ss += w[i][k] * b * b;
        ts += w[i][k] * a * b;
      }
    }
    return tt > 0 && ss > 0 ? ts / Math.sqrt(tt * ss) : 0;
  }
}
