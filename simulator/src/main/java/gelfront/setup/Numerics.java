package gelfront.setup;

import java.util.OptionalDouble;

/**
 * How finely to compute.
 *
 * @param level picks voxel size and steps
 * @param voxel edge in metres; absent: by level and the narrowest feed section
 */
public record Numerics(Level level, OptionalDouble voxel) {
  /** From a first look to a final word. */
  public enum Level {
    QUICK,
    NORMAL,
    FINE
  }
}
