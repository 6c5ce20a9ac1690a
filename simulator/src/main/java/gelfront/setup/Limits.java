// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.mesh.Vec3;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a maker accepts, for those who look for a feed system. No run depends on it.
 *
 * @param gateLeast metres, thinnest gate that can be cut
 * @param gateWidest metres, widest gate that is trimmed
 * @param sprueWidest metres
 * @param gatePlaces that a gate may be cut at; none: anywhere
 */
public record Limits(
    OptionalDouble gateLeast,
    OptionalDouble gateWidest,
    OptionalDouble sprueWidest,
    List<GatePlace> gatePlaces) {
  /** Whatever helps. */
  public static final Limits NONE =
      new Limits(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of());

  public Limits {
    gatePlaces = List.copyOf(gatePlaces);
    if (gateLeast.orElse(0) >= gateWidest.orElse(Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("the thinnest gate must be thinner than the widest");
    }
  }

  /**
   * @param at a point on the part's surface, metres
   * @param direction away from the part; length one
   */
  public record GatePlace(Vec3 at, Vec3 direction) {
    public GatePlace {
      direction = direction.unit();
    }
  }
}
