// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

/**
 * The colours of times and temperatures, from dark (set early, cold) to light (soft for long, hot).
 * Neighbouring steps are equally far apart in OKLab and lightness always rises, also as seen with
 * the three common kinds of colour blindness, so that it reads in grey print too. Tests hold it to
 * that.
 */
public final class ColourRamp {
  /** Ink, bottle green, leaf, brass, cream: the ramp of report and window. */
  public static final ColourRamp STANDARD =
      new ColourRamp(0x10253F, 0x17596B, 0x3E8B66, 0xA8A93C, 0xF3C55A, 0xFEF5D5);

  private static final int STEPS = 256;
  private final OkLab[] colours;

  /**
   * @param anchors 0xRRGGBB colours that the ramp passes, dark to light, at least two
   */
  ColourRamp(int... anchors) {
    colours = evenly(smooth(anchors));
  }

  /** Many points on a curve through the anchors: Catmull-Rom, as Barry and Goldman build it. */
  private static OkLab[] smooth(int[] anchors) {
    int per = 200;
    int last = anchors.length - 1;
    OkLab[] out = new OkLab[last * per + 1];
    for (int i = 0; i < out.length; i++) {
      int k = Math.min(i / per, last - 1);
      double s = (double) (i - k * per) / per;
      OkLab b = OkLab.of(anchors[k]);
      OkLab c = OkLab.of(anchors[k + 1]);
      OkLab a = k == 0 ? c.mix(b, 2) : OkLab.of(anchors[k - 1]);
      OkLab d = k + 1 == last ? b.mix(c, 2) : OkLab.of(anchors[k + 2]);
      OkLab middle = b.mix(c, s);
      OkLab left = a.mix(b, s + 1).mix(middle, (s + 1) / 2);
      OkLab right = middle.mix(c.mix(d, s - 1), s / 2);
      out[i] = left.mix(right, s);
    }
    return out;
  }

  private static OkLab[] evenly(OkLab[] curve) {
    double[] length = new double[curve.length];
    for (int i = 1; i < curve.length; i++) {
      length[i] = length[i - 1] + curve[i].distance(curve[i - 1]);
    }
    OkLab[] out = new OkLab[STEPS];
    int at = 0;
    for (int i = 0; i < STEPS; i++) {
      double want = length[curve.length - 1] * i / (STEPS - 1);
      while (at < curve.length - 2 && length[at + 1] < want) {
        at++;
      }
      out[i] = curve[at].mix(curve[at + 1], (want - length[at]) / (length[at + 1] - length[at]));
    }
    return out;
  }

  /** Number of stored colours. */
  public int size() {
    return STEPS;
  }

  /** Colour number {@code step}, 0xRRGGBB. */
  public int rgb(int step) {
    return colours[step].toRgb();
  }

  /**
   * The colour at a share of the ramp, 0xRRGGBB.
   *
   * @param share 0 to 1; clipped to that; NaN gives the dark end
   */
  public int at(double share) {
    return rgb((int) Math.round(Math.min(1, Math.max(0, Double.isNaN(share) ? 0 : share)) * 255));
  }

  /** All colours, 0xRRGGBB, dark to light. */
  public int[] table() {
    int[] t = new int[STEPS];
    for (int i = 0; i < STEPS; i++) {
      t[i] = rgb(i);
    }
    return t;
  }

  /** Exact colour number {@code step}, before rounding to a screen's 256 levels. */
  OkLab exact(int step) {
    return colours[step];
  }
}
