// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.finding.Filled;
import gelfront.result.Series;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The curves of a run that are shown, a strip each, and what they say at a time. */
public final class Curves {
  /**
   * A strip.
   *
   * @param title what it is
   * @param unit of its values
   * @param time s
   * @param value one a time
   * @param low end of its scale
   * @param high end of its scale, above {@code low}
   */
  public record Strip(
      String title, String unit, double[] time, double[] value, double low, double high) {
    /** 0 at the scale's low end, 1 at its high end. */
    public double share(int i) {
      return (value[i] - low) / (high - low);
    }

    /** The value at a time, with its unit. */
    public String at(double seconds, Units units) {
      double v = Reading.at(time, value, seconds);
      if (unit.equals("°C") && units.fahrenheit()) {
        return units.temperature(v);
      }
      if (unit.equals("mm") && units.inch()) {
        return units.length(1e-3 * v, 2);
      }
      return said(v, unit);
    }

    private static String said(double v, String unit) {
      String digits = Math.abs(v) >= 100 ? "%.0f" : Math.abs(v) >= 10 ? "%.1f" : "%.2f";
      return Quantities.say(digits, v) + (unit.isEmpty() ? "" : " " + unit);
    }
  }

  private record Wanted(String key, String title) {}

  private static final List<Wanted> WANTED =
      List.of(
          new Wanted("fed_share", "Fed of what the part needs"),
          new Wanted("gate_suction", "Suction in the gate"),
          new Wanted("gate", "Middle of the gate"),
          new Wanted("sprue_sunk", "Sprue's surface has sunk"));

  private Curves() {}

  /** Those of them that a run has, in that order. */
  public static List<Strip> of(Series s) {
    List<Strip> strips = new ArrayList<>();
    for (Wanted w : WANTED) {
      Optional<Series.Curve> curve =
          s.curves().stream().filter(c -> c.key().equals(w.key())).findFirst();
      if (curve.isPresent() && s.time().length > 1) {
        strips.add(strip(w.title(), s.time(), inPercent(curve.get())));
      }
    }
    return strips;
  }

  /** The shot itself while it fills; none where it was not calculated. */
  public static List<Strip> of(Filled f) {
    List<Filled.Moment> course = f.course();
    if (course.size() < 2) {
      return List.of();
    }
    double[] time = values(course, Filled.Moment::time);
    double all = course.get(course.size() - 1).volume() + empty(f);
    return List.of(
        of("Filled, feed and part", "%", time, values(course, m -> 100 * m.volume() / all)),
        of("Pressure at the mouth", "kPa", time, values(course, m -> 1e-3 * m.mouth())),
        of("Pressure in the gate", "kPa", time, values(course, m -> 1e-3 * m.gate())));
  }

  /** m3 that no liquid came to: what froze before, and trapped air. */
  private static double empty(Filled f) {
    return f.unfilled() + f.air().stream().mapToDouble(Filled.TrappedAir::volume).sum();
  }

  private static double[] values(
      List<Filled.Moment> course, ToDoubleFunction<Filled.Moment> wanted) {
    return course.stream().mapToDouble(wanted).toArray();
  }

  private static Strip of(String title, String unit, double[] time, double[] values) {
    return strip(title, time, new Series.Curve(title, title, unit, values));
  }

  /** A share is read more easily so. */
  private static Series.Curve inPercent(Series.Curve c) {
    if (!c.key().equals("fed_share")) {
      return c;
    }
    double[] percent = c.values().clone();
    for (int i = 0; i < percent.length; i++) {
      percent[i] *= 100;
    }
    return new Series.Curve(c.key(), c.label(), "%", percent);
  }

  private static Strip strip(String title, double[] time, Series.Curve c) {
    double low = 0;
    double high = 0;
    if (c.unit().equals("°C")) {
      low = Double.POSITIVE_INFINITY;
      high = Double.NEGATIVE_INFINITY;
    }
    for (double v : c.values()) {
      low = Math.min(low, v);
      high = Math.max(high, v);
    }
    return new Strip(title, c.unit(), time, c.values(), low, high > low ? high : low + 1);
  }
}
