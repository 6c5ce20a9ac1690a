// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

/**
 * Colours in OKLab, where equal distances look about equally different. Conversion after B.
 * Ottosson, "A perceptual color space for image processing" (2020), figures from memory; a test
 * holds them against the corners that the definition fixes (white, black, and there and back).
 *
 * @param l lightness, 0 black to 1 white
 * @param a green to red
 * @param b blue to yellow
 */
record OkLab(double l, double a, double b) {

  /**
   * @param rgb 0xRRGGBB, sRGB
   */
  static OkLab of(int rgb) {
    return ofLinear(linear(rgb >> 16 & 255), linear(rgb >> 8 & 255), linear(rgb & 255));
  }

  /** From linear light, 0 to 1 each. */
  static OkLab ofLinear(double r, double g, double b) {
    double l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
    double m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
    double s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
    return new OkLab(
        0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
        1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
        0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s);
  }

  /** Red, green, blue in linear light; outside 0 to 1 where a screen can't show it. */
  double[] toLinear() {
    double p = cube(l + 0.3963377774 * a + 0.2158037573 * b);
    double q = cube(l - 0.1055613458 * a - 0.0638541728 * b);
    double r = cube(l - 0.0894841775 * a - 1.2914855480 * b);
    return new double[] {
      4.0767416621 * p - 3.3077115913 * q + 0.2309699292 * r,
      -1.2684380046 * p + 2.6097574011 * q - 0.3413193965 * r,
      -0.0041960863 * p - 0.7034186147 * q + 1.7076147010 * r
    };
  }

  /** Nearest 0xRRGGBB, clipped to what a screen can show. */
  int toRgb() {
    int rgb = 0;
    for (double c : toLinear()) {
      rgb = rgb << 8 | (int) Math.round(255 * encoded(Math.min(1, Math.max(0, c))));
    }
    return rgb;
  }

  double distance(OkLab o) {
    return Math.sqrt((l - o.l) * (l - o.l) + (a - o.a) * (a - o.a) + (b - o.b) * (b - o.b));
  }

  /** This colour where {@code s} is 0, the other where it is 1. */
  OkLab mix(OkLab o, double s) {
    return new OkLab(l + s * (o.l - l), a + s * (o.a - a), b + s * (o.b - b));
  }

  /** Linear light, 0 to 1, of an sRGB channel 0 to 255 (IEC 61966-2-1). */
  static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  private static double encoded(double c) {
    return c <= 0.0031308 ? 12.92 * c : 1.055 * Math.pow(c, 1 / 2.4) - 0.055;
  }

  private static double cube(double x) {
    return x * x * x;
  }
}
