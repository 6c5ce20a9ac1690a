// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import java.util.List;
import java.util.stream.IntStream;

/** When places of {@link SyntheticRun} set and close, and how they cool. */
final class SyntheticTimes {
  /** s for each square metre that the front has gone in. */
  static final double C = 1.1e6;

  private static final double SHOT = 168;
  private static final double MOULD = 42;
  private static final double NO_FLOW = 125;

  private SyntheticTimes() {}

  /** When the thinnest section between u and the sprue has set. */
  static double closes(double u) {
    double least = SyntheticShape.radius(u);
    if (u < 29 * SyntheticShape.MM) {
      least = Math.min(least, SyntheticShape.NECK);
    }
    if (u < 63 * SyntheticShape.MM) {
      least = Math.min(least, SyntheticShape.GATE);
    }
    return C * least * least;
  }

  static double temperature(double time, double set) {
    double rate = Math.log((SHOT - MOULD) / (NO_FLOW - MOULD)) / Math.max(set, 0.05);
    return MOULD + (SHOT - MOULD) * Math.exp(-rate * time);
  }

  static Series series() {
    double[] time = IntStream.rangeClosed(0, 120).asDoubleStream().toArray();
    return new Series(
        time,
        List.of(
            curve("gate", "gate", time, C * SyntheticShape.GATE * SyntheticShape.GATE),
            curve(
                "pocket1",
                "pocket 1, centre",
                time,
                C * 9.5 * 9.5 * SyntheticShape.MM * SyntheticShape.MM),
            curve(
                "pocket2",
                "pocket 2, centre",
                time,
                C * 5.5 * 5.5 * SyntheticShape.MM * SyntheticShape.MM),
            new Series.Curve("mould", "mould at the wall", "°C", mould(time))));
  }

  private static double[] mould(double[] time) {
    double[] v = new double[time.length];
    for (int i = 0; i < v.length; i++) {
      v[i] = MOULD + 9 * (1 - Math.exp(-time[i] / 15)) - 0.02 * time[i];
    }
    return v;
  }

  private static Series.Curve curve(String key, String label, double[] time, double set) {
    double[] v = new double[time.length];
    for (int i = 0; i < v.length; i++) {
      v[i] = temperature(time[i], set);
    }
    return new Series.Curve(key, label, "°C", v);
  }
}
