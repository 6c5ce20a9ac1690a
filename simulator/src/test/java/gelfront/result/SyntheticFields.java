// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import gelfront.mesh.Vec3;
import gelfront.result.Fields.Region;
import gelfront.result.Fields.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What {@link SyntheticRun} has on its cells.
 *
 * @param voxel edge of a cell, metres
 */
record SyntheticFields(SyntheticShape shape, double voxel) {
  Fields fields() {
    Vec3 corner =
        shape
            .place(0, -10 * SyntheticShape.MM, -10 * SyntheticShape.MM)
            .minus(new Vec3(voxel, voxel, voxel).times(1.25));
    int along = (int) Math.ceil(SyntheticShape.LENGTH / voxel) + 3;
    int across = (int) Math.ceil(20 * SyntheticShape.MM / voxel) + 3;
    int[] n = {across, across, across};
    n[shape.axis()] = along;
    Fields empty =
        new Fields(
            corner,
            voxel,
            n[0],
            n[1],
            n[2],
            new int[0],
            new byte[0],
            new float[0],
            new float[0],
            new short[0],
            List.of());
    int[] cells =
        IntStream.range(0, n[0] * n[1] * n[2]).filter(c -> shape.holds(empty.centre(c))).toArray();
    return filled(empty, cells);
  }

  private Fields filled(Fields grid, int[] cells) {
    int n = cells.length;
    byte[] region = new byte[n];
    float[] set = new float[n];
    float[] cut = new float[n];
    short[] pocket = new short[n];
    for (int i = 0; i < n; i++) {
      Vec3 p = grid.centre(cells[i]);
      double u = shape.along(p);
      double r = shape.fromAxis(p);
      set[i] =
          (float)
              (SyntheticTimes.C * (SyntheticShape.radius(u) * SyntheticShape.radius(u) - r * r));
      cut[i] = (float) Math.min(set[i], SyntheticTimes.closes(u));
      region[i] =
          (u < 61 * SyntheticShape.MM
                  ? Region.PART
                  : u < 65 * SyntheticShape.MM ? Region.GATE : Region.SPRUE)
              .code();
      boolean late = set[i] > cut[i] && region[i] == Region.PART.code();
      pocket[i] = (short) (late ? u > 29 * SyntheticShape.MM ? 1 : 2 : 0);
    }
    return new Fields(
        grid.origin(),
        grid.spacing(),
        grid.nx(),
        grid.ny(),
        grid.nz(),
        cells,
        region,
        set,
        cut,
        pocket,
        snapshots(set));
  }

  private static List<Snapshot> snapshots(float[] set) {
    List<Snapshot> list = new ArrayList<>();
    for (double time : new double[] {0, 2, 4, 8, 12, 18, 26, 36, 48, 64, 82, 100}) {
      float[] t = new float[set.length];
      for (int i = 0; i < t.length; i++) {
        t[i] = (float) SyntheticTimes.temperature(time, set[i]);
      }
      list.add(new Snapshot(time, t));
    }
    return list;
  }
}
