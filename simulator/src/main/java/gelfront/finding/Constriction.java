// SPDX-License-Identifier: Apache-2.0
package gelfront.finding;

import gelfront.mesh.Vec3;

/**
 * The place that closed and cut something off.
 *
 * @param kind where it lies
 * @param place part coordinates, metres
 * @param width narrowest width there, metres
 * @param closedAt s after the start
 */
public record Constriction(Kind kind, Vec3 place, double width, double closedAt) {
  /** In whose hands the cure is: feed system or part. */
  public enum Kind {
    GATE,
    RUNNER,
    SPRUE,
    /** The sprue ran dry: air came to its end. */
    DRY_SPRUE,
    NECK,
    /** Nothing narrower than what it cut off: no feed at that place could be wide enough. */
    TOO_THICK
  }
}
