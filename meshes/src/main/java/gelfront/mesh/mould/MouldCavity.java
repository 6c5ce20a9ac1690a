// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.mould;

import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.List;

/**
 * The hollow of a mould that is poured.
 *
 * @param mesh of it with its channel and vents, closed, wound outwards, metres
 * @param mould box round the mould's parts
 * @param pour where it is poured
 * @param vents where else it reaches the outside, largest first
 * @param leftOut hollows that don't belong to it: holes of dowels and bolts; m3
 */
public record MouldCavity(
    TriangleMesh mesh, Box mould, Opening pour, List<Opening> vents, List<Double> leftOut) {
  /**
   * A place where a hollow reaches the mould's outside.
   *
   * @param centre metres
   * @param area m2
   * @param side of the box: -x, +x, -y, +y, -z or +z
   */
  public record Opening(Vec3 centre, double area, String side) {
    /** Of a circle of the same area, metres. */
    public double diameter() {
      return 2 * Math.sqrt(area / Math.PI);
    }
  }

  public MouldCavity {
    vents = List.copyOf(vents);
    leftOut = List.copyOf(leftOut);
  }
}
