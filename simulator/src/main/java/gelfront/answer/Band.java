// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where a curve of a case runs in its plausible cases: 5, 50 and 95 % of them lie below, in
 * proportion between two. Like the depths, moved at each time by what the finer level says
 * otherwise of the case as it is; volumes, lengths and shares stay above 0, shares below 1.
 * Pressures are not moved: they soar just before a gate closes, at one level sooner than at the
 * other.
 *
 * <p>What is fed stays as it is once a case is firm, so these bands last until the last case is.
 * Temperatures go on falling where nobody calculated them: theirs end when the first case is firm.
 *
 * @param key of the curve
 * @param label for people
 * @param unit of the values
 * @param cases that have such a curve
 * @param time s, rising
 * @param low 5 % at each time
 * @param middle the median
 * @param high 95 %
 */
public record Band(
    String key,
    String label,
    String unit,
    int cases,
    double[] time,
    double[] low,
    double[] middle,
    double[] high) {
  private static final String DEGREES = "°C";

  /** One for each curve that two cases have at least, in the curves' order. */
  public static List<Band> of(Doubt d) {
    List<Curves> all =
        d.outcomes().stream().map(RunOutcome::curves).filter(c -> c.end() > 0).toList();
    Map<String, Curves.Curve> kinds = new LinkedHashMap<>();
    all.forEach(c -> c.all().forEach(k -> kinds.putIfAbsent(k.key(), k)));
    return kinds.values().stream().flatMap(k -> band(d, all, k).stream()).toList();
  }

  private static Optional<Band> band(Doubt d, List<Curves> all, Curves.Curve kind) {
    List<Curves> with = all.stream().filter(c -> c.of(kind.key()).isPresent()).toList();
    if (with.size() < 2) {
      return Optional.empty();
    }
    boolean falling = kind.unit().equals(DEGREES);
    double most = kind.unit().isEmpty() ? 1 : Double.POSITIVE_INFINITY;
    boolean anchored = !kind.unit().equals("Pa");
    var ends = all.stream().mapToDouble(Curves::end);
    double[] time = times(falling ? ends.min().orElseThrow() : ends.max().orElseThrow());
    double[][] p = new double[3][time.length];
    for (int i = 0; i < time.length; i++) {
      double t = time[i];
      double anchor = anchored ? anchor(d, kind.key(), t) : 0;
      double[] sorted =
          with.stream()
              .mapToDouble(c -> c.at(c.of(kind.key()).orElseThrow(), t))
              .sorted()
              .toArray();
      for (int k = 0; k < 3; k++) {
        double v = share(sorted, new double[] {0.05, 0.5, 0.95}[k]) + anchor;
        p[k][i] = falling ? v : Math.max(0, Math.min(most, v));
      }
    }
    return Optional.of(
        new Band(kind.key(), kind.label(), kind.unit(), with.size(), time, p[0], p[1], p[2]));
  }

  /** Close together at first, when most happens. */
  private static double[] times(double end) {
    List<Double> t = new ArrayList<>();
    for (double at = 0; at < end; at = Math.max(at + 0.4, 1.08 * at)) {
      t.add(at);
    }
    t.add(end);
    return t.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static double anchor(Doubt d, String key, double t) {
    Optional<Double> fine = value(d.finer(), key, t);
    Optional<Double> rough = value(d.typical(), key, t);
    return fine.isPresent() && rough.isPresent() ? fine.get() - rough.get() : 0;
  }

  private static Optional<Double> value(Ran ran, String key, double t) {
    return ran.outcome()
        .map(RunOutcome::curves)
        .flatMap(c -> c.of(key).map(curve -> c.at(curve, t)));
  }

  /** The value that a share of a sorted row stays under. */
  static double share(double[] sorted, double share) {
    double at = share * (sorted.length - 1);
    int i = (int) Math.min(at, sorted.length - 1.0);
    double next = sorted[Math.min(i + 1, sorted.length - 1)];
    return sorted[i] + (at - i) * (next - sorted[i]);
  }

  /** The same until a time above 0, where it lasts so long. */
  public Band until(double end) {
    int n = (int) Arrays.stream(time).filter(t -> t < end).count();
    if (n == time.length) {
      return this;
    }
    double share = (end - time[n - 1]) / (time[n] - time[n - 1]);
    return new Band(
        key,
        label,
        unit,
        cases,
        cut(time, n, share),
        cut(low, n, share),
        cut(middle, n, share),
        cut(high, n, share));
  }

  /** Its first ones, and one between the last of these and the next. */
  private static double[] cut(double[] v, int n, double share) {
    double[] out = Arrays.copyOf(v, n + 1);
    out[n] = v[n - 1] + share * (v[n] - v[n - 1]);
    return out;
  }
}
