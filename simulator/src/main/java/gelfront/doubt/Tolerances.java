// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

/**
 * How exactly a maker meets what the case states. A tolerance of 0 leaves it alone.
 *
 * @param temperature K, of thermometers and of what they don't see
 * @param size metres, of cutters, files and calipers
 * @param time s, by which the injector is taken off sooner or later
 */
public record Tolerances(double temperature, double size, double time) {
  /** Own judgement, no source. */
  public static final Tolerances USUAL = new Tolerances(5, 0.1e-3, 2);

  public Tolerances {
    if (!(temperature >= 0) || !(size >= 0) || !(time >= 0)) {
      throw new IllegalArgumentException("a tolerance is not negative");
    }
  }
}
