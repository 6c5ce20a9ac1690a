// SPDX-License-Identifier: Apache-2.0
package gelfront.finding;

/**
 * How far the sprue's surface has sunk, for a ruler beside it.
 *
 * @param then metres, when a pocket was cut off
 * @param at s at which that was; +infinity: no flow was calculated, and nothing is known
 * @param end metres, in the end
 */
public record Sunk(double then, double at, double end) {
  /** No flow was calculated. */
  public static final Sunk UNKNOWN = new Sunk(0, Double.POSITIVE_INFINITY, 0);

  /** Whether it was calculated. */
  public boolean known() {
    return Double.isFinite(at);
  }
}
