// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import gelfront.mesh.Vec3;
import gelfront.result.Fields.Region;
import java.util.Arrays;
import java.util.Optional;

/**
 * Values of a stored run at any place in the plastisol: linear between the eight nearest cell
 * centres, of which only plastisol cells count. Set times and temperatures get the parabola's part,
 * too, so that a middle that lies between cells is not read too cold (a bar of 12 cells across 2 %
 * too early):
 *
 * <pre>
 *   value = linear - sum over axes of f (1 - f) / 2 d,   d the lesser of the second differences
 * </pre>
 *
 * <p>at both ends, f the place between them; none where a cell is missing or signs differ.
 */
public final class FieldProbe {
  /** A place in no plastisol cell still counts as inside while this much of its cells is. */
  private static final double INSIDE = 0.25;

  private final Fields fields;

  public FieldProbe(Fields fields) {
    this.fields = fields;
  }

  /**
   * @param region of the nearest plastisol cell
   * @param pocket of the nearest plastisol cell, 0 for none
   * @param setTime s; +infinity where it never set
   * @param cutOff s
   * @param times s, of the temperatures
   * @param temperatures °C, one per time
   */
  public record Reading(
      Region region,
      int pocket,
      double setTime,
      double cutOff,
      double[] times,
      double[] temperatures) {}

  /**
   * @param place part coordinates, metres
   * @return empty outside the plastisol
   */
  public Optional<Reading> at(Vec3 place) {
    int[] corner = new int[8];
    double[] weight = new double[8];
    double sum = corners(place, corner, weight);
    int nearest = heaviest(weight);
    boolean inCell = nearest >= 0 && contains(corner[nearest], place);
    if (nearest < 0 || !(inCell || sum >= INSIDE)) {
      return Optional.empty();
    }
    for (int i = 0; i < 8; i++) {
      weight[i] /= sum;
    }
    return Optional.of(reading(place, corner, weight, corner[nearest]));
  }

  /**
   * @param corner filled with plastisol cells, by place in the fields
   * @param weight filled; 0 where there is no plastisol
   * @return sum of the weights
   */
  private double corners(Vec3 place, int[] corner, double[] weight) {
    double[] at = inCells(place);
    int[] base = new int[3];
    double[] part = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      base[axis] = (int) Math.floor(at[axis]);
      part[axis] = at[axis] - base[axis];
    }
    double sum = 0;
    for (int i = 0; i < 8; i++) {
      double w = 1;
      for (int axis = 0; axis < 3; axis++) {
        w *= (i >> axis & 1) == 1 ? part[axis] : 1 - part[axis];
      }
      corner[i] = find(base[0] + (i & 1), base[1] + (i >> 1 & 1), base[2] + (i >> 2));
      weight[i] = corner[i] < 0 ? 0 : w;
      sum += weight[i];
    }
    return sum;
  }

  /** From the first cell's middle, in cells along each axis. */
  private double[] inCells(Vec3 place) {
    Vec3 q = place.minus(fields.origin()).times(1 / fields.spacing());
    return new double[] {q.x() - 0.5, q.y() - 0.5, q.z() - 0.5};
  }

  /** Place in the fields of cell (i, j, k), negative where it holds no plastisol. */
  private int find(int i, int j, int k) {
    if (i < 0 || j < 0 || k < 0 || i >= fields.nx() || j >= fields.ny() || k >= fields.nz()) {
      return -1;
    }
    return Arrays.binarySearch(fields.cells(), i + fields.nx() * (j + fields.ny() * k));
  }

  private static int heaviest(double[] weight) {
    int best = -1;
    for (int i = 0; i < 8; i++) {
      if (weight[i] > (best < 0 ? 0 : weight[best])) {
        best = i;
      }
    }
    return best;
  }

  private boolean contains(int cell, Vec3 place) {
    Vec3 d = place.minus(fields.centre(fields.cells()[cell]));
    double half = 0.5 * fields.spacing() * (1 + 1e-9);
    return Math.abs(d.x()) <= half && Math.abs(d.y()) <= half && Math.abs(d.z()) <= half;
  }

  private Reading reading(Vec3 place, int[] corner, double[] weight, int nearest) {
    int n = fields.snapshots().size();
    double[] times = new double[n];
    double[] temperatures = new double[n];
    for (int s = 0; s < n; s++) {
      float[] t = fields.snapshots().get(s).temperature();
      times[s] = fields.snapshots().get(s).time();
      temperatures[s] = mix(t, corner, weight) - bend(place, t, corner, weight);
    }
    float[] set = fields.setTime();
    double setTime = mix(set, corner, weight);
    return new Reading(
        Region.values()[fields.region()[nearest]],
        fields.pocket()[nearest],
        Double.isInfinite(setTime) ? setTime : setTime - bend(place, set, corner, weight),
        mix(fields.cutOff(), corner, weight),
        times,
        temperatures);
  }

  private static double mix(float[] values, int[] corner, double[] weight) {
    double sum = 0;
    for (int i = 0; i < 8; i++) {
      if (weight[i] > 0) {
        sum += weight[i] * values[corner[i]];
      }
    }
    return sum;
  }

  /** What a linear value is above the parabola, along all axes. */
  private double bend(Vec3 place, float[] values, int[] corner, double[] weight) {
    double[] at = inCells(place);
    double sum = 0;
    for (int axis = 0; axis < 3; axis++) {
      double f = at[axis] - Math.floor(at[axis]);
      for (int low = 0; low < 8; low++) {
        int high = low | 1 << axis;
        if (low != high && corner[low] >= 0 && corner[high] >= 0) {
          double d = least(second(values, corner[low], axis), second(values, corner[high], axis));
          sum += 0.5 * f * (1 - f) * d * (weight[low] + weight[high]);
        }
      }
    }
    return sum;
  }

  private static double least(double a, double b) {
    return a * b > 0 ? Math.copySign(Math.min(Math.abs(a), Math.abs(b)), a) : 0;
  }

  /** Second difference at a cell along an axis; 0 where a neighbour is missing or never set. */
  private double second(float[] values, int at, int axis) {
    int cell = fields.cells()[at];
    int[] step = {1, fields.nx(), fields.nx() * fields.ny()};
    int[] count = {fields.nx(), fields.ny(), fields.nz()};
    int position = cell / step[axis] % count[axis];
    if (position == 0 || position == count[axis] - 1) {
      return 0;
    }
    int before = Arrays.binarySearch(fields.cells(), cell - step[axis]);
    int after = Arrays.binarySearch(fields.cells(), cell + step[axis]);
    if (before < 0 || after < 0) {
      return 0;
    }
    double d = (double) values[before] - 2.0 * values[at] + values[after];
    return Double.isFinite(d) ? d : 0;
  }
}
