// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.Vec3;

/**
 * A result as texels for a 3-D texture: share of the time scale at which a cell sets, at which it
 * is cut off, how much of it is plastisol, smoothed. Times reach two cells out of the plastisol, so
 * that a value read at the wall isn't mixed with nothing.
 *
 * @param low mm, lower corner
 * @param size mm, of all of it
 * @param nx texels along x
 * @param ny texels along y
 * @param nz texels along z
 * @param values set, cut-off, occupancy, 1 for each texel, x fastest; 4 a texel, 0 to 1
 */
public record VolumeTexels(Vec3 low, Vec3 size, int nx, int ny, int nz, float[] values) {
  /** Texels at most: 48 MB as half floats. */
  public static final int MOST = 6_000_000;

  private static final int SPREAD = 2;

  /**
   * @param grid with a margin of two cells at least
   * @param latest s at the end of the time scale, above 0
   */
  public static VolumeTexels of(CellGrid grid, double latest) {
    int n = grid.set().length;
    float[] set = shares(grid.set(), latest);
    float[] cut = shares(grid.cut(), latest);
    float[] held = new float[n];
    for (int c = 0; c < n; c++) {
      held[c] = grid.set()[c] == CellGrid.EMPTY ? 0 : 1;
    }
    for (int i = 0; i < SPREAD; i++) {
      spread(grid, set, cut);
    }
    int[] step = {1, grid.nx(), grid.nx() * grid.ny()};
    for (int axis = 0; axis < 3; axis++) {
      held = blurred(held, step[axis]);
    }
    float[] values = new float[4 * n];
    for (int c = 0; c < n; c++) {
      values[4 * c] = Math.max(0, set[c]);
      values[4 * c + 1] = Math.max(0, cut[c]);
      values[4 * c + 2] = held[c];
      values[4 * c + 3] = 1;
    }
    Vec3 size = new Vec3(grid.nx(), grid.ny(), grid.nz()).times(grid.edge());
    return new VolumeTexels(grid.origin(), size, grid.nx(), grid.ny(), grid.nz(), values);
  }

  private static float[] shares(float[] seconds, double latest) {
    float[] out = new float[seconds.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = seconds[i] == CellGrid.EMPTY ? -1 : (float) Math.min(1, seconds[i] / latest);
    }
    return out;
  }

  /** Empty cells beside full ones take their mean. */
  private static void spread(CellGrid g, float[] set, float[] cut) {
    float[] old = set.clone();
    int[] step = {1, g.nx(), g.nx() * g.ny()};
    for (int c = step[2]; c < old.length - step[2]; c++) {
      if (old[c] >= 0) {
        continue;
      }
      float sum = 0;
      float cuts = 0;
      int n = 0;
      for (int s : step) {
        for (int o = c - s; o <= c + s; o += 2 * s) {
          if (old[o] >= 0) {
            sum += old[o];
            cuts += Math.max(0, cut[o]);
            n++;
          }
        }
      }
      if (n > 0) {
        set[c] = sum / n;
        cut[c] = cuts / n;
      }
    }
  }

  /** A quarter of each neighbour and a half of itself; ends stay. */
  private static float[] blurred(float[] in, int step) {
    float[] out = in.clone();
    for (int c = step; c < in.length - step; c++) {
      out[c] = 0.25f * (in[c - step] + in[c + step]) + 0.5f * in[c];
    }
    return out;
  }
}
