// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.mesh.Vec3;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * An outer face of the block, by the direction it looks in.
 *
 * @param axis 0 x, 1 y, 2 z
 * @param upper whether it looks along the axis, not against it
 */
public record Side(int axis, boolean upper) {
  private static final List<String> BY_AXIS = List.of("-x", "+x", "-y", "+y", "-z", "+z");

  /** How much more a face must look upwards than any other to be called the top. */
  private static final double CLEARLY = 0.05;

  public Side {
    if (axis < 0 || axis > 2) {
      throw new IllegalArgumentException("no axis " + axis);
    }
  }

  /** All names: by axis, and top and bottom. */
  static List<String> names() {
    return List.of("-x", "+x", "-y", "+y", "-z", "+z", "top", "bottom");
  }

  /**
   * The face of a name by axis.
   *
   * @param name one of {@link #names}
   * @return absent: "top" or "bottom"
   */
  static Optional<Side> of(String name) {
    int i = BY_AXIS.indexOf(name);
    return i < 0 ? Optional.empty() : Optional.of(new Side(i / 2, i % 2 == 1));
  }

  /**
   * Top or bottom.
   *
   * @param name "top" or "bottom"
   * @param up which way is up, length one
   * @return absent: two faces look upwards alike
   */
  static Optional<Side> of(String name, Vec3 up) {
    return top(up).map(s -> name.equals("top") ? s : new Side(s.axis, !s.upper));
  }

  private static Optional<Side> top(Vec3 up) {
    double[] d = {up.x(), up.y(), up.z()};
    double[] size = {Math.abs(d[0]), Math.abs(d[1]), Math.abs(d[2])};
    int most = size[0] >= Math.max(size[1], size[2]) ? 0 : size[1] >= size[2] ? 1 : 2;
    double next = size[most] - CLEARLY;
    boolean one = Arrays.stream(size).filter(s -> s > next).count() == 1;
    return one ? Optional.of(new Side(most, d[most] > 0)) : Optional.empty();
  }

  /** As in a case file, "-x". */
  @Override
  public String toString() {
    return BY_AXIS.get(2 * axis + (upper ? 1 : 0));
  }
}
