package gelfront.setup;

import java.util.OptionalDouble;

/**
 * How finely to compute.
 *
 * @param level picks voxel size and steps
 * @param voxel edge in metres; absent: by level; narrow channels get smaller cells in either case
 * @param flow whether the feeding flow is calculated; false: what conduction alone would do
 */
public record Numerics(Level level, OptionalDouble voxel, boolean flow) {
  /** With the flow. */
  public Numerics(Level level, OptionalDouble voxel) {
    this(level, voxel, true);
  }

  /** What conduction alone would do. */
  public Numerics withoutFlow() {
    return new Numerics(level, voxel, false);
  }

  /** From a first look to a final word. */
  public enum Level {
    QUICK,
    NORMAL,
    FINE
  }
}
