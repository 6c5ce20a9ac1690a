// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.mould;

import gelfront.mesh.Box;
import gelfront.mesh.Vec3;

/**
 * Samples that fill a box: sample (i, j, k) is the middle of one of n0 x n1 x n2 equal cells and
 * has the number i + n0 (j + n1 k).
 *
 * @param box metres
 * @param n samples along x, y, z
 */
record Lattice(Box box, int[] n) {
  /** Samples of a mould; eight bytes each. */
  private static final long MOST = 64_000_000;

  /**
   * @param spacing at most, metres
   * @throws IllegalArgumentException if that takes too many
   */
  static Lattice of(Box box, double spacing) {
    Vec3 s = box.size();
    double[] along = {s.x(), s.y(), s.z()};
    int[] n = new int[3];
    double all = 1;
    for (int a = 0; a < 3; a++) {
      double cells = Math.ceil(along[a] / spacing);
      all *= cells;
      if (!(cells >= 1 && all <= MOST)) {
        throw new IllegalArgumentException(
            "voxels of that size are too many for the mould: choose larger ones");
      }
      n[a] = (int) cells;
    }
    return new Lattice(box, n);
  }

  int count() {
    return n[0] * n[1] * n[2];
  }

  /** Spacing along an axis, metres. */
  double step(int axis) {
    return (high(axis) - low(axis)) / n[axis];
  }

  double low(int axis) {
    return axis == 0 ? box.min().x() : axis == 1 ? box.min().y() : box.min().z();
  }

  double high(int axis) {
    return axis == 0 ? box.max().x() : axis == 1 ? box.max().y() : box.max().z();
  }

  /** Coordinate of sample {@code i} along an axis; also of those just outside. */
  double at(int axis, int i) {
    return low(axis) + (i + 0.5) * step(axis);
  }

  int number(int i, int j, int k) {
    return i + n[0] * (j + n[1] * k);
  }

  /** Position along an axis of a sample. */
  int position(int sample, int axis) {
    return axis == 0 ? sample % n[0] : axis == 1 ? sample / n[0] % n[1] : sample / n[0] / n[1];
  }

  /** From one sample to the next along an axis. */
  int stride(int axis) {
    return axis == 0 ? 1 : axis == 1 ? n[0] : n[0] * n[1];
  }

  Vec3 place(int sample) {
    return new Vec3(
        at(0, position(sample, 0)), at(1, position(sample, 1)), at(2, position(sample, 2)));
  }

  /** Area of a cell's face across an axis, m2. */
  double face(int axis) {
    return step((axis + 1) % 3) * step((axis + 2) % 3);
  }

  double cell() {
    return step(0) * step(1) * step(2);
  }
}
