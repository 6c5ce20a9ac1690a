// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import gelfront.mesh.Vec3;
import java.util.List;

/**
 * Values on the plastisol cells of a uniform grid of cubes. Cell (i, j, k) has its centre at origin
 * + (i + 1/2, j + 1/2, k + 1/2) spacing; its number is i + nx (j + ny k). Only plastisol cells are
 * stored, in rising number.
 *
 * @param origin lower corner of cell (0, 0, 0), part coordinates, metres
 * @param spacing edge of a cell, metres
 * @param nx cells along x
 * @param ny cells along y
 * @param nz cells along z
 * @param cells numbers of the plastisol cells, rising; length n
 * @param region per plastisol cell: {@link Region#code}; length n
 * @param setTime s, falling through the no-flow temperature; +infinity where it never did; length n
 * @param cutOff s at which its last flowing path to the sprue closed, never later than its set
 *     time; length n
 * @param pocket number of the pocket it belongs to, 0 for none; length n
 * @param snapshots temperatures over time, rising time
 * @param reached s at which the shot's front passed, +infinity where it never did; length n, or 0
 *     where the shot itself was not calculated
 * @param arrival °C of the front then, NaN where it never came; as long
 */
public record Fields(
    Vec3 origin,
    double spacing,
    int nx,
    int ny,
    int nz,
    int[] cells,
    byte[] region,
    float[] setTime,
    float[] cutOff,
    short[] pocket,
    List<Snapshot> snapshots,
    float[] reached,
    float[] arrival) {
  /** The shot itself was not calculated. */
  public Fields(
      Vec3 origin,
      double spacing,
      int nx,
      int ny,
      int nz,
      int[] cells,
      byte[] region,
      float[] setTime,
      float[] cutOff,
      short[] pocket,
      List<Snapshot> snapshots) {
    this(
        origin,
        spacing,
        nx,
        ny,
        nz,
        cells,
        region,
        setTime,
        cutOff,
        pocket,
        snapshots,
        new float[0],
        new float[0]);
  }

  /** What a plastisol cell belongs to. */
  public enum Region {
    PART(0),
    GATE(1),
    RUNNER(2),
    SPRUE(3);

    private final byte code;

    Region(int code) {
      this.code = (byte) code;
    }

    /** As it stands in {@link Fields#region}. */
    public byte code() {
      return code;
    }
  }

  /**
   * @param time s
   * @param temperature °C per plastisol cell; length n
   */
  public record Snapshot(double time, float[] temperature) {}

  public Fields {
    snapshots = List.copyOf(snapshots);
    int n = cells.length;
    if (region.length != n || setTime.length != n || cutOff.length != n || pocket.length != n) {
      throw new IllegalArgumentException("every field has one value per plastisol cell");
    }
    if (reached.length != arrival.length || (reached.length != 0 && reached.length != n)) {
      throw new IllegalArgumentException("the shot's fields have one value per cell, or none");
    }
  }

  /** Whether the shot itself was calculated. */
  public boolean filled() {
    return reached.length > 0;
  }

  /** Centre of grid cell number {@code cell}, metres. */
  public Vec3 centre(int cell) {
    int i = cell % nx;
    int j = cell / nx % ny;
    int k = cell / nx / ny;
    return origin.plus(new Vec3(i + 0.5, j + 0.5, k + 0.5).times(spacing));
  }
}
