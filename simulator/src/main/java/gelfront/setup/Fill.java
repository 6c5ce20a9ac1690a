// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.mesh.Vec3;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How the shot itself is calculated.
 *
 * @param on whether it is; false: the cavity starts full, all of it at the shot's temperature
 * @param pressure Pa over the air's that the plunger keeps up; absent: as much as the shot's fill
 *     time takes
 * @param mostPressure Pa that the plunger gives at most where the fill time is stated
 * @param partingGap metres that the halves lie apart by, for the air
 * @param vents scratched into the parting face
 */
public record Fill(
    boolean on, OptionalDouble pressure, double mostPressure, double partingGap, List<Vent> vents) {
  /** Pa: some 75 N on a plunger of 22 mm; estimate, no source. */
  public static final double BY_HAND = 200e3;

  /** Metres between milled halves clamped by hand; estimate, no source. */
  public static final double GAP = 25e-6;

  /** Not calculated. */
  public static final Fill OFF = new Fill(false, OptionalDouble.empty(), BY_HAND, GAP, List.of());

  public Fill {
    vents = List.copyOf(vents);
    if (!(mostPressure > 0) || !(partingGap >= 0) || !(pressure.orElse(1) > 0)) {
      throw new IllegalArgumentException("a shot needs pressure, and a gap can't be less than 0");
    }
  }

  /** The same with one more vent. */
  public Fill with(Vent vent) {
    List<Vent> more = new java.util.ArrayList<>(vents);
    more.add(vent);
    return new Fill(on, pressure, mostPressure, partingGap, more);
  }

  /**
   * A flat channel that air leaves by.
   *
   * @param at where it meets the cavity, metres
   * @param width metres
   * @param depth metres
   * @param length metres to the open air
   */
  public record Vent(Vec3 at, double width, double depth, double length) {
    public Vent {
      if (!(width > 0) || !(depth > 0) || !(length > 0)) {
        throw new IllegalArgumentException("a vent has width, depth and length");
      }
    }
  }
}
