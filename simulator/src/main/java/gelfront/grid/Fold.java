// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import java.util.Optional;

/**
 * A model without its mirror images: what is left is calculated, the rest is like it.
 *
 * @param model what is left; its cells keep their order
 * @param cell per cell of the whole model the one that stands for it
 * @param kept per cell of what is left its own number in the whole; length n
 * @param mould per mould cell of the whole model the one that stands for it
 * @param keptMould per mould cell of what is left its own number in the whole; length m
 * @param times the whole over what is left: 1, 2, 4 or 8
 */
public record Fold(
    VoxelModel model, int[] cell, int[] kept, int[] mould, int[] keptMould, int times) {

  /** Nothing is left out. */
  public static Fold none(VoxelModel whole) {
    int[] cells = count(whole.cavity().count());
    int[] mould = count(whole.mould().count());
    return new Fold(whole, cells, cells, mould, mould, 1);
  }

  /**
   * Leaves out what is a mirror image across planes along the axes allowed, one after the other.
   * The whole must be alike on both sides of each: in a half, half of what isn't would be seen.
   *
   * @param labels per plastisol cell what its image must share with it
   * @param allowed by axis
   */
  public static Fold of(VoxelModel whole, short[] labels, Mirrors allowed) {
    Fold all = none(whole);
    for (int axis = 0; axis < 3; axis++) {
      Optional<MirrorImage> image =
          allowed.at(axis) ? MirrorImage.find(whole, labels, axis) : Optional.empty();
      if (image.isPresent() && all.times > 1) {
        image = MirrorImage.find(all.model, all.fold(labels), axis);
      }
      all = image.map(all::across).orElse(all);
    }
    return all;
  }

  private Fold across(MirrorImage image) {
    Fold half = new Halving(model, image).fold();
    return new Fold(
        half.model,
        chained(cell, half.cell),
        chained(half.kept, kept),
        chained(mould, half.mould),
        chained(half.keptMould, keptMould),
        2 * times);
  }

  private static int[] chained(int[] first, int[] then) {
    int[] all = new int[first.length];
    for (int i = 0; i < all.length; i++) {
      all[i] = then[first[i]];
    }
    return all;
  }

  private static int[] count(int n) {
    int[] all = new int[n];
    for (int i = 0; i < n; i++) {
      all[i] = i;
    }
    return all;
  }

  /** Values of what is left for all cells. */
  public double[] unfold(double[] left) {
    double[] whole = new double[cell.length];
    spread(left, cell, whole);
    return whole;
  }

  /** Values of what is left for all cells. */
  public float[] unfold(float[] left) {
    float[] whole = new float[cell.length];
    for (int c = 0; c < whole.length; c++) {
      whole[c] = left[cell[c]];
    }
    return whole;
  }

  /** Values of all cells for those that are left. */
  public double[] fold(double[] whole) {
    double[] left = new double[kept.length];
    spread(whole, kept, left);
    return left;
  }

  /** Labels of all cells for those that are left. */
  public short[] fold(short[] whole) {
    short[] left = new short[kept.length];
    for (int c = 0; c < left.length; c++) {
      left[c] = whole[kept[c]];
    }
    return left;
  }

  /**
   * @param at per entry of {@code to} an entry of {@code from}
   * @param to overwritten
   */
  public static void spread(double[] from, int[] at, double[] to) {
    for (int i = 0; i < to.length; i++) {
      to[i] = from[at[i]];
    }
  }
}
