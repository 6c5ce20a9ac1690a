// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import java.util.Arrays;
import java.util.Optional;

/** The mould's cells as images of each other across the plane in its grid's middle. */
final class MirroredMould {
  /** What capacities and conductances may differ by in the mean, and anywhere, of the largest. */
  private static final double UNLIKE = 2e-3;

  private static final double UNLIKE_ANYWHERE = 0.1;

  /** What conductances to the air may differ by anywhere, of the largest. */
  private static final double UNLIKE_FILM = 0.01;

  /** What edges may lie off, of a cell. */
  private static final double BESIDE = 0.02;

  /** K that temperatures may differ by. */
  private static final double SAME = 1e-3;

  private final MouldCells m;
  private final int axis;
  private final int[] image;

  MirroredMould(MouldCells m, int axis) {
    this.m = m;
    this.axis = axis;
    image = new int[m.count()];
  }

  /**
   * @param plane where it must lie, metres
   * @return image of each cell; empty where there is no such plane
   */
  Optional<int[]> image(double plane) {
    return grid(plane) && cells() && films() && metal() ? Optional.of(image) : Optional.empty();
  }

  private boolean grid(double plane) {
    int n = m.grid().count(axis);
    for (int i = 0; i <= n; i++) {
      double off = m.grid().edge(axis, i) + m.grid().edge(axis, n - i) - 2 * plane;
      if (Math.abs(off) > BESIDE * m.grid().width(axis, Math.min(i, n - 1))) {
        return false;
      }
    }
    return n % 2 == 0;
  }

  private boolean cells() {
    int n = m.grid().count(axis);
    int stride =
        axis == 0 ? 1 : axis == 1 ? m.grid().count(0) : m.grid().count(0) * m.grid().count(1);
    for (int i = 0; i < image.length; i++) {
      int at = m.cells()[i];
      image[i] = m.number()[at + (n - 1 - 2 * m.grid().position(at, axis)) * stride];
      boolean besideGrid = m.number()[at] != i; // as a tube's rings
      if (image[i] < 0 || besideGrid) {
        return false;
      }
    }
    return true;
  }

  private boolean films() {
    double most = Arrays.stream(m.airConductance()).max().orElse(0);
    for (int i = 0; i < image.length; i++) {
      int j = image[i];
      boolean like =
          Math.abs(m.airConductance()[i] - m.airConductance()[j]) <= UNLIKE_FILM * most
              && Math.abs(m.airTemperature()[i] - m.airTemperature()[j]) < SAME
              && Math.abs(m.startTemperature()[i] - m.startTemperature()[j]) < SAME;
      if (!like) {
        return false;
      }
    }
    return true;
  }

  private boolean metal() {
    double[] capacity = new double[image.length];
    double[] conductance = new double[3 * image.length];
    for (int i = 0; i < image.length; i++) {
      capacity[i] = m.capacity()[image[i]];
      for (int a = 0; a < 3; a++) {
        conductance[3 * i + a] = a == axis ? downwards(i) : upwards(image[i], a);
      }
    }
    return alike(m.capacity(), capacity) && alike(m.conductance(), conductance);
  }

  private static boolean alike(double[] own, double[] other) {
    double most = Arrays.stream(own).max().orElse(0);
    double sum = 0;
    double off = 0;
    for (int i = 0; i < own.length; i++) {
      double d = Math.abs(own[i] - other[i]);
      sum += own[i];
      off += d;
      if (d > UNLIKE_ANYWHERE * most) {
        return false;
      }
    }
    return off <= UNLIKE * sum;
  }

  private double upwards(int i, int a) {
    return m.neighbour()[3 * i + a] < 0 ? 0 : m.conductance()[3 * i + a];
  }

  /** W/K from the image of the cell above {@code i} up to the image of {@code i}. */
  private double downwards(int i) {
    int above = m.neighbour()[3 * i + axis];
    return above < 0 ? 0 : upwards(image[above], axis);
  }
}
