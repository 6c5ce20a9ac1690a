// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.TriangleMesh;

/**
 * The mould's outside, ready to be drawn as a ghost.
 *
 * @param skin to be seen through
 * @param edges x, y, z of both ends of each of its edges, mm; 6 an edge
 * @param extent round it
 */
public record MouldShown(SkinMesh skin, float[] edges, Extent extent) {
  /**
   * @param solids closed, wound outwards, metres: a box, or the mould's own halves
   */
  public static MouldShown of(TriangleMesh solids) {
    return new MouldShown(SkinMesh.of(solids), Creases.of(solids), Extent.of(solids.box()));
  }
}
