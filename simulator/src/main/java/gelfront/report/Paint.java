// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

/** What a cut face looks like: a value as a colour, fine lines at round values, a white contour. */
final class Paint {
  private static final int NO_VALUE = 0x9AA3A6;
  private static final int WHITE = 0xFFFFFF;
  private static final int CASING = 0x14181B;

  private final Volume volume;
  private final float[] value;
  private final float[] contour;
  private final Scale scale;
  private final int[] colours;

  /**
   * @param value dense in {@code volume}: what is coloured
   * @param contour dense in {@code volume}: drawn round where it is above zero
   */
  Paint(Volume volume, float[] value, float[] contour, Scale scale, ColourRamp ramp) {
    this.volume = volume;
    this.value = value;
    this.contour = contour;
    this.scale = scale;
    this.colours = ramp.table();
  }

  /** Looks up one sample of the cut face. */
  void look(double x, double y, double z, int at, Canvas to) {
    float v = volume.sample(value, x, y, z);
    float late = volume.sample(contour, x, y, z);
    to.values[at] = Float.isNaN(v) ? NO_VALUE : colour(scale.share(v));
    to.bands[at] = Float.isNaN(v) ? 0 : (short) Math.floor(v / scale.step());
    to.late[at] = late > 0 ? (byte) 1 : -1;
  }

  private int colour(double share) {
    return colours[(int) Math.round(Math.min(1, Math.max(0, share)) * (colours.length - 1))];
  }

  /** Samples of a picture, and the lines between them. */
  static final class Canvas {
    private final int w;
    private final int h;
    private final int[] values;
    private final short[] bands;
    private final byte[] late;

    Canvas(int w, int h) {
      this.w = w;
      this.h = h;
      this.values = new int[w * h];
      this.bands = new short[w * h];
      this.late = new byte[w * h];
    }

    /** This sample is no cut face. */
    void clear(int at) {
      late[at] = 0;
    }

    int colour(int at) {
      return values[at];
    }

    /** Draws fine lines where the band changes and the cased contour where it turns late. */
    void drawLines(int[] colour) {
      boolean[] edge = new boolean[w * h];
      for (int y = 1; y < h; y++) {
        for (int x = 1; x < w; x++) {
          int at = y * w + x;
          if (late[at] == 0) {
            continue;
          }
          if (differs(at, at - 1) || differs(at, at - w)) {
            colour[at] = shaded(colour[at]);
          }
          edge[at] = turns(at, at - 1) || turns(at, at - w);
        }
      }
      stamp(edge, colour, 3, CASING);
      stamp(edge, colour, 1, WHITE);
    }

    private boolean differs(int a, int b) {
      return late[b] != 0 && bands[a] != bands[b];
    }

    private boolean turns(int a, int b) {
      return late[b] != 0 && late[a] != late[b];
    }

    private void stamp(boolean[] edge, int[] colour, int reach, int ink) {
      for (int at = 0; at < edge.length; at++) {
        if (edge[at]) {
          disc(at, reach, colour, ink);
        }
      }
    }

    private void disc(int at, int reach, int[] colour, int ink) {
      int cx = at % w;
      int cy = at / w;
      for (int y = Math.max(0, cy - reach); y <= Math.min(h - 1, cy + reach); y++) {
        for (int x = Math.max(0, cx - reach); x <= Math.min(w - 1, cx + reach); x++) {
          int d = (x - cx) * (x - cx) + (y - cy) * (y - cy);
          if (d <= reach * reach + 1 && late[y * w + x] != 0) {
            colour[y * w + x] = ink;
          }
        }
      }
    }

    /** Darker on light colours, lighter on dark ones, so that the line shows on both. */
    private static int shaded(int c) {
      int sum = (c >> 16 & 255) + (c >> 8 & 255) + (c & 255);
      int to = sum > 300 ? 0 : 255;
      int rgb = 0;
      for (int shift = 16; shift >= 0; shift -= 8) {
        rgb |= (((c >> shift & 255) * 7 + to * 3) / 10) << shift;
      }
      return rgb;
    }
  }
}
