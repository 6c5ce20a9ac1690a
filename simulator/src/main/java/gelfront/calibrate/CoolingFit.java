// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import gelfront.answer.Calibrated;
import gelfront.answer.Calibrated.Found;
import gelfront.answer.Calibrated.Untold;
import gelfront.base.Entries;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Finds properties from a cooling curve together with what was known of them before:
 *
 * <pre>  least  sum ((reading - model) / s)^2 + sum ((property - before) / sigma)^2</pre>
 *
 * <p>sigma from the usual range, s from what a first fit leaves over. So a property that the log
 * hardly tells stays where it was, and widens the intervals of the others as much as it is
 * uncertain. Told is what ends up at most half as wide as it was known before.
 */
public final class CoolingFit {
  /** Relative change of the sum of squares at which a fit ends: a run's own steps are coarser. */
  private static final double CLOSE = 1e-4;

  /** K that a first fit takes readings to be off. */
  private static final double FIRST_NOISE = 0.3;

  /** Standard errors that 90 % lie within. */
  private static final double NINETY = 1.645;

  private final Model model;
  private final double[] readings;

  /** °C at the log's times, with some properties as told and the others as they were. */
  public interface Model {
    double[] at(Map<Quantity, Double> values);
  }

  /**
   * @param readings °C
   */
  public CoolingFit(Model model, double[] readings) {
    this.model = model;
    this.readings = readings.clone();
  }

  /**
   * @param fit of all; its residuals end with one for each property
   * @param wanted which its parameters are
   * @param told those of them that the log tells
   * @param untold the others
   */
  public record Result(Fit fit, List<Quantity> wanted, List<Quantity> told, List<Untold> untold) {
    private double[] chance(double[] all) {
      return Arrays.copyOf(all, all.length - wanted.size());
    }

    double[] residuals() {
      return chance(fit.residuals());
    }
  }

  /**
   * @param present of each, before
   * @throws IllegalArgumentException in words, if nothing is told but the start
   */
  public Result of(Map<Quantity, Double> present) {
    List<Quantity> wanted = new ArrayList<>(present.keySet());
    double[] before = wanted.stream().mapToDouble(q -> q.turned(Entries.of(present, q))).toArray();
    Fit first = fit(wanted, before, before, FIRST_NOISE);
    double[] left = Arrays.copyOf(first.residuals(), readings.length);
    double noise = Math.sqrt(Arrays.stream(left).map(r -> r * r).average().orElse(0));
    Fit fit = fit(wanted, before, first.values(), Math.max(noise, 1e-3));
    List<Quantity> told = new ArrayList<>();
    List<Untold> untold = new ArrayList<>();
    for (int i = 0; i < before.length; i++) {
      if (fit.within(i) <= 0.5 * wanted.get(i).known()) {
        told.add(wanted.get(i));
      } else {
        untold.add(untold(fit, wanted, i));
      }
    }
    if (told.stream().allMatch(q -> q == Quantity.START)) {
      throw new IllegalArgumentException(
          "this log tells no property: "
              + untold.stream().map(u -> u.name() + " (" + u.why() + ")").toList());
    }
    return new Result(fit, wanted, told, untold);
  }

  /** The log's readings, and behind them each property's distance from before, as readings of 0. */
  private Fit fit(List<Quantity> wanted, double[] before, double[] start, double noise) {
    int n = readings.length;
    Fit.Model all =
        p -> {
          double[] at = Arrays.copyOf(model.at(values(wanted, p)), n + p.length);
          for (int i = 0; i < p.length; i++) {
            double sigma = wanted.get(i).known() / NINETY;
            at[n + i] = noise * (p[i] - before[i]) / sigma;
          }
          return at;
        };
    Fit.Search search =
        new Fit.Search(
            wanted.stream().mapToDouble(Quantity::step).toArray(),
            false,
            wanted.stream().mapToDouble(Quantity::lowest).toArray(),
            wanted.stream().mapToDouble(Quantity::highest).toArray(),
            CLOSE);
    return Fit.of(all, Arrays.copyOf(readings, n + before.length), start, search);
  }

  private static Map<Quantity, Double> values(List<Quantity> wanted, double[] turned) {
    Map<Quantity, Double> values = new java.util.EnumMap<>(Quantity.class);
    for (int i = 0; i < turned.length; i++) {
      values.put(wanted.get(i), wanted.get(i).value(turned[i]));
    }
    return values;
  }

  private static Untold untold(Fit fit, List<Quantity> wanted, int i) {
    Quantity q = wanted.get(i);
    String with = "";
    for (int k = 0; k < wanted.size(); k++) {
      if (k != i && Math.abs(fit.correlation()[i][k]) > 0.95) {
        with = "it can't be parted from " + wanted.get(k).words;
      }
    }
    String why = with.isEmpty() ? "the curve hardly depends on it" : with;
    return new Untold(q.words, why, q.advice);
  }

  /** For people and files. */
  public static List<Found> found(Result r, Map<Quantity, Double> present) {
    List<Found> found = new ArrayList<>();
    for (Quantity q : r.told()) {
      int i = r.wanted().indexOf(q);
      double at = r.fit().values()[i];
      double within = r.fit().within(i);
      found.add(
          new Found(
              q.key,
              q.words,
              q.unit,
              q.value(at),
              q.value(Math.max(q.lowest(), at - within)),
              q.value(Math.min(q.highest(), at + within)),
              Entries.of(present, q)));
    }
    return found;
  }

  static Calibrated calibrated(
      Result r,
      Map<Quantity, Double> present,
      String name,
      String file,
      String hash,
      TemperatureLog log) {
    return new Calibrated(
        name,
        file,
        hash,
        found(r, present),
        r.untold(),
        r.fit().correlation(),
        log.times().clone(),
        log.temperatures().clone(),
        r.chance(r.fit().fitted()),
        Math.sqrt(Arrays.stream(r.residuals()).map(v -> v * v).average().orElse(0)),
        Fit.following(r.residuals()),
        log.notes());
  }
}
