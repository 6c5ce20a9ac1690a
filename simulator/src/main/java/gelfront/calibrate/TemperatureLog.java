// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import java.util.Arrays;
import java.util.List;

/**
 * What a thermometer logged.
 *
 * @param times s, rising
 * @param temperatures °C
 * @param notes what was assumed or left out, in words
 */
public record TemperatureLog(double[] times, double[] temperatures, List<String> notes) {
  /** K that readings of the same temperature may be apart. */
  private static final double NEAR = 1;

  public TemperatureLog {
    notes = List.copyOf(notes);
    if (times.length != temperatures.length) {
      throw new IllegalArgumentException("one temperature for each time");
    }
  }

  /**
   * From the first reading on that is within 1 K of the hottest, which is time 0: what came before
   * is the pouring. The middle of a thick cup stays hot for a minute or two, and which of its
   * readings is the hottest then is chance.
   */
  TemperatureLog cooling() {
    double most = Arrays.stream(temperatures).max().orElseThrow();
    int hottest = 0;
    while (temperatures[hottest] < most - NEAR) {
      hottest++;
    }
    int n = times.length - hottest;
    double[] t = new double[n];
    double[] v = new double[n];
    for (int i = 0; i < n; i++) {
      t[i] = times[hottest + i] - times[hottest];
      v[i] = temperatures[hottest + i];
    }
    return new TemperatureLog(t, v, notes);
  }

  /**
   * Means over so many equal spans of time; spans without a reading are left out.
   *
   * @param spans at most
   */
  TemperatureLog thinned(int spans) {
    if (times.length <= spans) {
      return this;
    }
    double end = times[times.length - 1] - times[0];
    double[] t = new double[spans];
    double[] v = new double[spans];
    int[] count = new int[spans];
    for (int i = 0; i < times.length; i++) {
      int s = (int) Math.min(spans - 1.0, spans * (times[i] - times[0]) / end);
      t[s] += times[i];
      v[s] += temperatures[i];
      count[s]++;
    }
    int n = 0;
    for (int s = 0; s < spans; s++) {
      if (count[s] > 0) {
        t[n] = t[s] / count[s];
        v[n++] = v[s] / count[s];
      }
    }
    return new TemperatureLog(Arrays.copyOf(t, n), Arrays.copyOf(v, n), notes);
  }
}
