// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

/** Sixteen-bit floats (IEEE 754 binary16): three significant digits in half the room of a float. */
final class HalfFloats {
  private static final float MOST = 65504;

  private HalfFloats() {}

  /**
   * The bits of the half float nearest to a value, ties to even; clipped to the largest finite one.
   *
   * @throws IllegalArgumentException if it is no number
   */
  static short of(float value) {
    if (Float.isNaN(value)) {
      throw new IllegalArgumentException("not a number");
    }
    float v = Math.min(MOST, Math.abs(value));
    int sign = value < 0 ? 0x8000 : 0;
    // The distance of neighbours is 2^-10 of the power of two below, never finer than 2^-24.
    int exponent = Math.max(-14, Math.getExponent(v));
    int steps = (int) Math.rint(Math.scalb((double) v, 10 - exponent));
    // Steps past 2048 carry into the exponent by themselves, those below 1024 are subnormal.
    int bits = steps < 1024 ? steps : ((exponent + 14) << 10) + steps;
    return (short) (sign | bits);
  }
}
