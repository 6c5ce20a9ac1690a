// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import com.jme3.material.Material;
import com.jme3.scene.Geometry;
import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.mesh.Vec3;
import gelfront.viewer.model.Extent;
import gelfront.viewer.model.LegendTicks;

/** Three lines from the lower corner of the part's box, all of one length, round in any unit. */
final class Axes {
  private final Extent extent;
  private final Geometry lines;

  Axes(Extent extent, Material paint) {
    this.extent = extent;
    lines =
        new Geometry(
            "axes",
            Meshes.lines(new float[] {0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 1}));
    lines.setMaterial(paint);
    lines.setLocalTranslation(Meshes.vector(extent.lower()));
  }

  Geometry lines() {
    return lines;
  }

  /** As long as is round in these units; with their names and that length. */
  void show(Units units, Labels labels) {
    double unit = 1e3 * Dimension.LENGTH.toSi(1, units.word(Dimension.LENGTH));
    double round = LegendTicks.roundStep(0.12 * extent.radius() / unit);
    double length = round * unit;
    lines.setLocalScale((float) length);
    for (int axis = 0; axis < 3; axis++) {
      labels.plain("xyz".substring(axis, axis + 1), end(axis, 1.3 * length));
    }
    String digits = Quantities.say(round < 1 ? "%.1g" : "%.0f", round);
    labels.below(digits + " " + units.shown(Dimension.LENGTH), end(2, 0));
  }

  private Vec3 end(int axis, double by) {
    Vec3 l = extent.lower();
    return switch (axis) {
      case 0 -> l.plus(new Vec3(by, 0, 0));
      case 1 -> l.plus(new Vec3(0, by, 0));
      default -> l.plus(new Vec3(0, 0, by));
    };
  }
}
