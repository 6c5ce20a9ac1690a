// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import gelfront.mesh.Vec3;
import gelfront.viewer.model.Look;
import gelfront.viewer.model.Orbit;
import gelfront.viewer.model.Ray;
import java.awt.image.BufferedImage;
import java.util.function.IntPredicate;

/**
 * A picture of the stage, and from where it was taken.
 *
 * @param image as wide and high as {@link Offscreen} makes it
 */
record Shot(BufferedImage image, Look look) {
  /** Pixels. */
  private static final int AXES = 60;

  /** The line of sight through a pixel's middle. */
  Ray ray(int x, int y) {
    return look.orbit()
        .through(
            (x + 0.5) / Offscreen.WIDTH,
            (y + 0.5) / Offscreen.HEIGHT,
            Stage.FIELD_OF_VIEW,
            Offscreen.ASPECT);
  }

  /** Whether the axes and their words, at the box's lower corner, may be in the way. */
  boolean atTheAxes(int x, int y) {
    Orbit o = look.orbit();
    Vec3 d = o.extent().lower().minus(o.eye());
    double pixels = 0.5 * Offscreen.HEIGHT / Math.tan(Stage.FIELD_OF_VIEW / 2);
    double perMm = pixels / d.dot(o.forward());
    double left = 0.5 * Offscreen.WIDTH + perMm * d.dot(o.right());
    double top = 0.5 * Offscreen.HEIGHT - perMm * d.dot(o.up());
    return Math.hypot(x - left, y - top) < AXES;
  }

  int at(int x, int y) {
    return image.getRGB(x, y) & 0xFFFFFF;
  }

  int middle() {
    return at(Offscreen.WIDTH / 2, Offscreen.HEIGHT / 2);
  }

  /** Share of all pixels. */
  double share(IntPredicate which) {
    int n = 0;
    for (int y = 0; y < Offscreen.HEIGHT; y++) {
      for (int x = 0; x < Offscreen.WIDTH; x++) {
        n += which.test(at(x, y)) ? 1 : 0;
      }
    }
    return (double) n / (Offscreen.WIDTH * Offscreen.HEIGHT);
  }

  /** The greatest difference of red, green or blue, of 255. */
  static int apart(int rgb, int other) {
    int most = 0;
    for (int shift = 0; shift < 24; shift += 8) {
      most = Math.max(most, Math.abs((rgb >> shift & 255) - (other >> shift & 255)));
    }
    return most;
  }

  /** Whether it is that colour, or the same in less light: half of it at least. */
  static boolean lit(int rgb, int colour) {
    double light = 0;
    for (int shift = 0; shift < 24; shift += 8) {
      double full = Math.max(1, colour >> shift & 255);
      light = Math.max(light, (rgb >> shift & 255) / full);
    }
    light = Math.max(0.5, Math.min(1, light));
    int dimmed = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      dimmed = dimmed << 8 | (int) Math.round((colour >> shift & 255) * light);
    }
    return apart(rgb, dimmed) <= 8;
  }
}
