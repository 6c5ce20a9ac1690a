// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.mesh.Vec3;
import gelfront.result.FieldProbe;
import gelfront.result.Fields;
import gelfront.result.StoredRun;
import java.util.Arrays;
import java.util.Optional;

/** Which place of a result a line of sight means. */
public final class Reading {
  private Reading() {}

  /**
   * On the cut face where the line meets plastisol there before it meets the skin; else a cell and
   * a half below the skin.
   *
   * @param surface of part and feed
   * @return mm
   */
  public static Optional<Vec3> place(
      Ray ray, Optional<Plane> plane, Optional<Picker> surface, StoredRun run) {
    FieldProbe probe = new FieldProbe(run.fields());
    Optional<Picker.Hit> skin = surface.flatMap(s -> s.first(ray, plane));
    double limit = skin.map(Picker.Hit::distance).orElse(Double.POSITIVE_INFINITY);
    Optional<Vec3> onCut =
        plane
            .map(ray::to)
            .filter(d -> d > 0 && d <= limit + 1e-6)
            .map(ray::at)
            .filter(p -> probe.at(p.times(1e-3)).isPresent());
    double deep = 1.5e3 * run.fields().spacing();
    return onCut.or(() -> skin.map(h -> h.place().minus(h.outward().times(deep))));
  }

  /** When the shot came to a place, in words; empty where that isn't known. */
  public static String came(Fields f, Vec3 mm, Units units) {
    Vec3 p = mm.times(1e-3).minus(f.origin()).times(1 / f.spacing());
    int i = (int) Math.floor(p.x());
    int j = (int) Math.floor(p.y());
    int k = (int) Math.floor(p.z());
    int c = Arrays.binarySearch(f.cells(), i + f.nx() * (j + f.ny() * k));
    if (!f.filled() || c < 0) {
      return "";
    }
    return Float.isInfinite(f.reached()[c])
        ? "the shot never comes here"
        : Quantities.say(
            "the shot comes after %.2f s, %s hot",
            f.reached()[c], units.temperature(f.arrival()[c]));
  }

  /** Linear between times; the nearest end beyond them. */
  public static double at(double[] times, double[] values, double time) {
    int i = 0;
    while (i < times.length && times[i] < time) {
      i++;
    }
    if (i == 0 || i == times.length) {
      return values[Math.min(i, times.length - 1)];
    }
    double f = (time - times[i - 1]) / (times[i] - times[i - 1]);
    return values[i - 1] + f * (values[i] - values[i - 1]);
  }
}
