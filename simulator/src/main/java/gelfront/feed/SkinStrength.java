// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

/** What suction the set skin bears, place by place, before it gives way. */
@FunctionalInterface
public interface SkinStrength {
  /**
   * Called once for each step of the flow, in the order of time.
   *
   * @param temperature °C per plastisol cell, now
   * @param given m3 per plastisol cell that no liquid came for so far
   * @return Pa per plastisol cell, positive; overwritten by the next call
   */
  double[] bears(double[] temperature, double[] given);
}
