// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import java.util.ArrayList;
import java.util.List;

/** Temperatures of all plastisol cells at rising times; linear between them. */
public final class TemperatureHistory {
  private final List<float[]> temperatures = new ArrayList<>();
  private double[] times = new double[64];

  /** Adds a copy of °C per plastisol cell at {@code time} s, later than the last one. */
  public void add(double time, double[] temperature) {
    if (size() > 0 && !(time > times[size() - 1])) {
      throw new IllegalArgumentException("times must rise: " + time);
    }
    if (size() == times.length) {
      times = java.util.Arrays.copyOf(times, 2 * times.length);
    }
    times[size()] = time;
    float[] t = new float[temperature.length];
    for (int i = 0; i < t.length; i++) {
      t[i] = (float) temperature[i];
    }
    temperatures.add(t);
  }

  public int size() {
    return temperatures.size();
  }

  /** s. */
  public double time(int i) {
    return times[i];
  }

  /** °C per plastisol cell; not a copy. */
  public float[] temperature(int i) {
    return temperatures.get(i);
  }

  /** °C of a cell at a time, that of the nearest end outside. */
  public double at(int cell, double time) {
    int i = java.util.Arrays.binarySearch(times, 0, size(), time);
    if (i >= 0) {
      return temperatures.get(i)[cell];
    }
    int after = -i - 1;
    if (after == 0) {
      return temperatures.get(0)[cell];
    }
    if (after == size()) {
      return temperatures.get(after - 1)[cell];
    }
    double f = (time - times[after - 1]) / (times[after] - times[after - 1]);
    return (1 - f) * temperatures.get(after - 1)[cell] + f * temperatures.get(after)[cell];
  }
}
