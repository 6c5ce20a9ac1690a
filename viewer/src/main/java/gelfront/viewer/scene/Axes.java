// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import com.jme3.scene.Mesh;
import gelfront.base.Quantities;
import gelfront.mesh.Vec3;
import gelfront.viewer.model.Extent;
import gelfront.viewer.model.LegendTicks;

/** Three lines from the lower corner of the part's box, all of the same round length. */
final class Axes {
  private final Extent extent;
  private final double length;

  Axes(Extent extent) {
    this.extent = extent;
    this.length = LegendTicks.roundStep(0.12 * extent.radius());
  }

  Mesh mesh() {
    float[] ends = new float[18];
    for (int axis = 0; axis < 3; axis++) {
      put(ends, 6 * axis, extent.lower());
      put(ends, 6 * axis + 3, end(axis, length));
    }
    return Meshes.lines(ends);
  }

  /** Their names and their length. */
  void label(Labels labels) {
    for (int axis = 0; axis < 3; axis++) {
      labels.plain("xyz".substring(axis, axis + 1), end(axis, 1.3 * length));
    }
    String mm = Quantities.say(length < 1 ? "%.2g mm" : "%.0f mm", length);
    labels.below(mm, end(2, 0));
  }

  private Vec3 end(int axis, double by) {
    Vec3 l = extent.lower();
    return switch (axis) {
      case 0 -> l.plus(new Vec3(by, 0, 0));
      case 1 -> l.plus(new Vec3(0, by, 0));
      default -> l.plus(new Vec3(0, 0, by));
    };
  }

  private static void put(float[] to, int at, Vec3 v) {
    to[at] = (float) v.x();
    to[at + 1] = (float) v.y();
    to[at + 2] = (float) v.z();
  }
}
