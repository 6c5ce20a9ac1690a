// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.mesh.Vec3;
import java.util.Arrays;

/**
 * A box of cubic cells round the plastisol for looking values up at any place. Cells of the run are
 * filled; values are spread two cells outwards, so that a place just inside the true wall, whose
 * cell the voxels miss, has a value too.
 */
final class Volume {
  private static final int SPREAD = 2;

  /** Empty cells on every side: those spread into, and one more so that all have neighbours. */
  private static final int PAD = SPREAD + 1;

  private final Vec3 origin;
  private final double spacing;
  private final int nx;
  private final int ny;
  private final int nz;

  /** Cell of this box for each value of a field, in the field's order. */
  private final int[] slots;

  /** What to add to a cell's number to get each of the 27 cells round and at it. */
  private final int[] beside;

  /** Cells that are filled by spreading, ring by ring. */
  private final int[][] rings;

  private Volume(Vec3 origin, double spacing, int nx, int ny, int nz, int[] slots) {
    this.origin = origin;
    this.spacing = spacing;
    this.nx = nx;
    this.ny = ny;
    this.nz = nz;
    this.slots = slots;
    this.beside = neighbours(nx, ny);
    this.rings = findRings();
  }

  /**
   * @param origin lower corner of the whole grid, metres
   * @param spacing edge of a cell, metres
   * @param size cells of the whole grid along x, y, z
   * @param cells numbers of the filled cells, {@code i + nx (j + ny k)}; not empty
   */
  static Volume of(Vec3 origin, double spacing, int[] size, int[] cells) {
    int[] lo = size.clone();
    int[] hi = {-1, -1, -1};
    for (int c : cells) {
      int[] ijk = {c % size[0], c / size[0] % size[1], c / size[0] / size[1]};
      for (int a = 0; a < 3; a++) {
        lo[a] = Math.min(lo[a], ijk[a]);
        hi[a] = Math.max(hi[a], ijk[a]);
      }
    }
    int[] n = new int[3];
    for (int a = 0; a < 3; a++) {
      lo[a] -= PAD;
      n[a] = hi[a] - lo[a] + 1 + PAD;
    }
    int[] slots = new int[cells.length];
    for (int s = 0; s < cells.length; s++) {
      int c = cells[s];
      int i = c % size[0] - lo[0];
      int j = c / size[0] % size[1] - lo[1];
      int k = c / size[0] / size[1] - lo[2];
      slots[s] = i + n[0] * (j + n[1] * k);
    }
    Vec3 corner = origin.plus(new Vec3(lo[0], lo[1], lo[2]).times(spacing));
    return new Volume(corner, spacing, n[0], n[1], n[2], slots);
  }

  private int cells() {
    return nx * ny * nz;
  }

  private int[][] findRings() {
    byte[] state = new byte[cells()];
    for (int s : slots) {
      state[s] = 1;
    }
    int[][] found = new int[SPREAD][];
    int[] front = slots;
    for (int ring = 0; ring < SPREAD; ring++) {
      found[ring] = ringRound(front, state);
      for (int c : found[ring]) {
        state[c] = 1;
      }
      front = found[ring];
    }
    return found;
  }

  private int[] ringRound(int[] front, byte[] state) {
    int[] out = new int[1024];
    int n = 0;
    for (int c : front) {
      for (int step : beside) {
        int d = c + step;
        if (state[d] == 0) {
          state[d] = 2;
          if (n == out.length) {
            out = Arrays.copyOf(out, 2 * n);
          }
          out[n++] = d;
        }
      }
    }
    return Arrays.copyOf(out, n);
  }

  private static int[] neighbours(int nx, int ny) {
    int[] d = new int[27];
    for (int o = 0; o < 27; o++) {
      d[o] = o % 3 - 1 + nx * (o / 3 % 3 - 1 + ny * (o / 9 - 1));
    }
    return d;
  }

  /**
   * For each value of a field its own number, or where that is zero one of a cell beside it.
   *
   * @param numbers zero or above
   */
  int[] numberHereOrBeside(short[] numbers) {
    short[] dense = new short[cells()];
    for (int s = 0; s < slots.length; s++) {
      dense[slots[s]] = numbers[s];
    }
    int[] out = new int[slots.length];
    for (int s = 0; s < slots.length; s++) {
      out[s] = numbers[s];
      for (int o = 0; o < 27 && out[s] == 0; o++) {
        out[s] = dense[slots[s] + beside[o]];
      }
    }
    return out;
  }

  /** A dense copy of a field, spread outwards; NaN beyond. */
  float[] spread(float[] field) {
    float[] dense = new float[cells()];
    Arrays.fill(dense, Float.NaN);
    for (int s = 0; s < slots.length; s++) {
      dense[slots[s]] = field[s];
    }
    for (int[] ring : rings) {
      float[] values = new float[ring.length];
      for (int r = 0; r < ring.length; r++) {
        values[r] = meanOfFilled(dense, ring[r]);
      }
      for (int r = 0; r < ring.length; r++) {
        dense[ring[r]] = values[r];
      }
    }
    return dense;
  }

  private float meanOfFilled(float[] dense, int c) {
    float sum = 0;
    int n = 0;
    for (int step : beside) {
      float v = dense[c + step];
      if (!Float.isNaN(v)) {
        sum += v;
        n++;
      }
    }
    return sum / n;
  }

  /** Replaces what was spread outwards in one field by what was in another. */
  void copyRings(float[] from, float[] to) {
    for (int[] ring : rings) {
      for (int c : ring) {
        to[c] = from[c];
      }
    }
  }

  /**
   * The value at a place, linear between cell centres, of those that have one.
   *
   * @param dense as from {@link #spread}
   * @return NaN where no cell round it has a value
   */
  float sample(float[] dense, double x, double y, double z) {
    double fx = (x - origin.x()) / spacing - 0.5;
    double fy = (y - origin.y()) / spacing - 0.5;
    double fz = (z - origin.z()) / spacing - 0.5;
    int i = (int) Math.floor(fx);
    int j = (int) Math.floor(fy);
    int k = (int) Math.floor(fz);
    if (i < 0 || j < 0 || k < 0 || i + 1 >= nx || j + 1 >= ny || k + 1 >= nz) {
      return Float.NaN;
    }
    double sum = 0;
    double weight = 0;
    for (int o = 0; o < 8; o++) {
      float v = dense[i + (o & 1) + nx * (j + (o >> 1 & 1) + ny * (k + (o >> 2)))];
      if (!Float.isNaN(v)) {
        double w =
            ((o & 1) == 0 ? i + 1 - fx : fx - i)
                * ((o >> 1 & 1) == 0 ? j + 1 - fy : fy - j)
                * (o >> 2 == 0 ? k + 1 - fz : fz - k);
        sum += w * v;
        weight += w;
      }
    }
    return weight > 1e-9 ? (float) (sum / weight) : Float.NaN;
  }
}
