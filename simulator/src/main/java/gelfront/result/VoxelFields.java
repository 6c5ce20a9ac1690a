// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import gelfront.grid.Cavity;
import gelfront.grid.Refinement;
import gelfront.grid.UniformGrid;
import java.util.Arrays;
import java.util.List;

/**
 * Values on a cavity's cells as values on its voxels. A voxel in a refined box is plastisol if half
 * of it is; its value is the mean of its small cells, its region and pocket what most of them have.
 */
public final class VoxelFields {
  private final Cavity cavity;

  /** Number of each plastisol voxel on the grid, rising. */
  private final int[] voxels;

  /** First of each voxel's entries in {@code members}, and their number at the end. */
  private final int[] start;

  private final int[] members;

  private VoxelFields(Cavity cavity) {
    this.cavity = cavity;
    int[] at = holding();
    int[] count = new int[cavity.grid().cellCount()];
    for (int voxel : at) {
      count[voxel]++;
    }
    keepHalf(count);
    voxels = java.util.stream.IntStream.range(0, count.length).filter(v -> count[v] > 0).toArray();
    start = new int[voxels.length + 1];
    int[] next = new int[count.length];
    for (int v = 0; v < voxels.length; v++) {
      next[voxels[v]] = start[v];
      start[v + 1] = start[v] + count[voxels[v]];
    }
    members = new int[start[voxels.length]];
    for (int c = 0; c < at.length; c++) {
      if (count[at[c]] > 0) {
        members[next[at[c]]++] = c;
      }
    }
  }

  /**
   * @param setTime s per cell of the cavity
   * @param cutOff s per cell of the cavity
   * @param pocket per cell of the cavity
   * @param snapshots of the cavity's cells
   * @param reached s per cell of the cavity; empty: not calculated
   * @param arrival °C per cell of the cavity; empty: not calculated
   */
  public static Fields of(
      Cavity cavity,
      float[] setTime,
      float[] cutOff,
      short[] pocket,
      List<Fields.Snapshot> snapshots,
      float[] reached,
      float[] arrival) {
    VoxelFields on = new VoxelFields(cavity);
    UniformGrid g = cavity.grid();
    return new Fields(
        g.origin(),
        g.spacing(),
        g.nx(),
        g.ny(),
        g.nz(),
        on.voxels,
        on.regions(),
        on.mean(setTime),
        on.mean(cutOff),
        on.most(pocket),
        snapshots.stream()
            .map(s -> new Fields.Snapshot(s.time(), on.mean(s.temperature())))
            .toList(),
        reached.length > 0 ? on.mean(reached) : reached,
        arrival.length > 0 ? on.mean(arrival) : arrival);
  }

  /** Voxel that each cell is, or lies in. */
  private int[] holding() {
    int[] at = Arrays.copyOf(cavity.cells(), cavity.count());
    for (Refinement.Patch p : cavity.refinement().patches()) {
      for (int c = p.first(); c < p.end(); c++) {
        at[c] =
            cavity
                .grid()
                .index(cavity.position(c, 0), cavity.position(c, 1), cavity.position(c, 2));
      }
    }
    return at;
  }

  private void keepHalf(int[] count) {
    double half = 0.5 * Math.pow(cavity.refinement().factor(), 3);
    boolean[] whole = new boolean[count.length];
    for (int c = 0; c < cavity.voxels(); c++) {
      whole[cavity.cells()[c]] = true;
    }
    for (int v = 0; v < count.length; v++) {
      count[v] = whole[v] || count[v] >= half ? count[v] : 0;
    }
  }

  private float[] mean(float[] values) {
    if (cavity.refinement().factor() == 1) {
      return values;
    }
    float[] out = new float[voxels.length];
    for (int v = 0; v < out.length; v++) {
      double sum = 0;
      for (int i = start[v]; i < start[v + 1]; i++) {
        sum += values[members[i]];
      }
      out[v] = (float) (sum / (start[v + 1] - start[v]));
    }
    return out;
  }

  private short[] most(short[] values) {
    short[] out = new short[voxels.length];
    for (int v = 0; v < out.length; v++) {
      int best = 0;
      for (int i = start[v]; i < start[v + 1]; i++) {
        int alike = alike(values, v, values[members[i]]);
        if (alike > best) {
          best = alike;
          out[v] = values[members[i]];
        }
      }
    }
    return out;
  }

  private int alike(short[] values, int v, short value) {
    int n = 0;
    for (int i = start[v]; i < start[v + 1]; i++) {
      n += values[members[i]] == value ? 1 : 0;
    }
    return n;
  }

  private byte[] regions() {
    byte[] region = cavity.region();
    short[] wide = new short[region.length];
    for (int c = 0; c < wide.length; c++) {
      wide[c] = region[c];
    }
    short[] most = most(wide);
    byte[] out = new byte[most.length];
    for (int v = 0; v < out.length; v++) {
      out[v] = (byte) most[v];
    }
    return out;
  }
}
