package gelfront.result;

import gelfront.mesh.Vec3;
import java.util.Arrays;
import java.util.Optional;

/** Values at any place, linear between the centres of the plastisol cells round it. */
public final class FieldProbe {
  private final Fields fields;

  public FieldProbe(Fields fields) {
    this.fields = fields;
  }

  /**
   * @param setTime s, +infinity if it never set
   * @param cutOff s
   * @param times s of the stored temperatures
   * @param temperatures °C at these
   */
  public record Reading(double setTime, double cutOff, double[] times, double[] temperatures) {}

  /** Empty where no plastisol cell is near. */
  public Optional<Reading> at(Vec3 place) {
    int[] near = new int[8];
    double[] weight = new double[8];
    int n = corners(place, near, weight);
    if (n == 0) {
      return Optional.empty();
    }
    double[] times = new double[fields.snapshots().size()];
    double[] temperatures = new double[times.length];
    for (int s = 0; s < times.length; s++) {
      times[s] = fields.snapshots().get(s).time();
      temperatures[s] = mean(fields.snapshots().get(s).temperature(), near, weight, n);
    }
    return Optional.of(
        new Reading(
            mean(fields.setTime(), near, weight, n),
            mean(fields.cutOff(), near, weight, n),
            times,
            temperatures));
  }

  private static double mean(float[] values, int[] near, double[] weight, int n) {
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += weight[i] * values[near[i]];
    }
    return sum;
  }

  /** The plastisol cells among the eight round a place, their weights adding up to one. */
  private int corners(Vec3 p, int[] near, double[] weight) {
    Vec3 q = p.minus(fields.origin()).times(1 / fields.spacing());
    double[] f = {q.x() - 0.5, q.y() - 0.5, q.z() - 0.5};
    int[] size = {fields.nx(), fields.ny(), fields.nz()};
    int n = 0;
    double sum = 0;
    for (int corner = 0; corner < 8; corner++) {
      double w = 1;
      int[] at = new int[3];
      boolean inside = true;
      for (int a = 0; a < 3; a++) {
        int bit = corner >> a & 1;
        at[a] = (int) Math.floor(f[a]) + bit;
        w *= bit == 1 ? f[a] - Math.floor(f[a]) : 1 - (f[a] - Math.floor(f[a]));
        inside &= at[a] >= 0 && at[a] < size[a];
      }
      int cell =
          inside
              ? Arrays.binarySearch(fields.cells(), at[0] + size[0] * (at[1] + size[1] * at[2]))
              : -1;
      if (cell >= 0 && w > 0) {
        near[n] = cell;
        weight[n++] = w;
        sum += w;
      }
    }
    for (int i = 0; i < n; i++) {
      weight[i] /= sum;
    }
    return n;
  }
}
