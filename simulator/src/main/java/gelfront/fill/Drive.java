// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

/**
 * What drives the liquid: as fast as wanted, with no more pressure than there is.
 *
 * @param rate m3/s wanted; +infinity: as fast as the pressure drives it
 * @param pressure Pa over the air's at the mouth, at most
 */
public record Drive(double rate, double pressure) {
  public Drive {
    if (!(rate > 0) || !(pressure > 0)) {
      throw new IllegalArgumentException("a shot needs a rate and a pressure");
    }
  }

  /** Always with the same pressure, Pa. */
  public static Drive pressure(double pressure) {
    return new Drive(Double.POSITIVE_INFINITY, pressure);
  }

  boolean byRate() {
    return rate < Double.POSITIVE_INFINITY;
  }
}
