// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

/**
 * The colour of a depth: bone where smooth, brass where it begins to be seen, then red to black.
 */
public final class DentColour {
  private static final double[] AT = {0, 0.5, 1, 2, 4};
  private static final int[] RGB = {0xEFEADB, 0xEBDDA8, 0xE0A93A, 0xB0431F, 0x3D0F12};

  private DentColour() {}

  /**
   * 0xRRGGBB.
   *
   * @param depth metres
   * @param visible metres from which a dent is seen
   */
  public static int of(double depth, double visible) {
    double x = Math.max(0, Math.min(AT[AT.length - 1], depth / visible));
    int i = 0;
    while (i < AT.length - 2 && x > AT[i + 1]) {
      i++;
    }
    double share = (x - AT[i]) / (AT[i + 1] - AT[i]);
    int rgb = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int a = RGB[i] >> shift & 0xFF;
      int b = RGB[i + 1] >> shift & 0xFF;
      rgb |= (int) Math.round(a + share * (b - a)) << shift;
    }
    return rgb;
  }
}
