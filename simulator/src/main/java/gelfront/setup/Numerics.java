// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import java.util.OptionalDouble;

/**
 * How finely to compute.
 *
 * @param level picks voxel size and steps
 * @param voxel edge in metres; absent: by level; narrow channels get smaller cells in either case
 * @param flow whether the feeding flow is calculated; false: what conduction alone would do
 * @param whole whether mirror images are calculated, too; false: one side stands for both
 */
public record Numerics(Level level, OptionalDouble voxel, boolean flow, boolean whole) {
  /** With the flow, one side for both. */
  public Numerics(Level level, OptionalDouble voxel) {
    this(level, voxel, true, false);
  }

  /** What conduction alone would do. */
  public Numerics withoutFlow() {
    return new Numerics(level, voxel, false, whole);
  }

  /** With mirror images calculated, too. */
  public Numerics wholly() {
    return new Numerics(level, voxel, flow, true);
  }

  /** In a level's voxels and steps, whatever voxel is stated. */
  public Numerics at(Level other) {
    return new Numerics(other, OptionalDouble.empty(), flow, whole);
  }

  /** From a first look to a final word. */
  public enum Level {
    QUICK(0.7e-3),
    NORMAL(0.5e-3),
    FINE(0.3e-3);

    private final double voxel;

    Level(double voxel) {
      this.voxel = voxel;
    }

    /** Edge in metres, unless the case states another or the memory is too small. */
    public double voxel() {
      return voxel;
    }
  }
}
