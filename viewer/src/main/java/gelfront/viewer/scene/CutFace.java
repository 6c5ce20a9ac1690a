// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import com.jme3.material.Material;
import com.jme3.math.Quaternion;
import com.jme3.math.Vector3f;
import com.jme3.scene.Geometry;
import com.jme3.scene.shape.Quad;
import gelfront.mesh.Vec3;
import gelfront.viewer.model.Extent;
import gelfront.viewer.model.Plane;

/** The face of a cut: one large square; the texture says where plastisol is on it, and when. */
final class CutFace {
  /** Smoothed occupancy at the edge of the plastisol, and half a voxel inside of it. */
  private static final float EDGE = 0.5f;

  private static final float WELL_INSIDE = 0.75f;

  private final Extent extent;
  private final Material paint;
  private final Geometry square;

  CutFace(Paints paints, Paints.Filling filling, Extent extent) {
    this.extent = extent;
    paint = paints.cap(filling);
    float reach = (float) (2.2 * extent.radius());
    square = new Geometry("cut face", new Quad(reach, reach));
    square.setMaterial(paint);
  }

  Geometry geometry() {
    return square;
  }

  /**
   * @param share of the time scale at which it stands; below 0: all of it at once
   */
  void time(double share) {
    paint.setFloat("Time", (float) share);
  }

  /**
   * @param share of the time scale before which nothing is seen; below 0: all of it is
   */
  void from(double share) {
    paint.setFloat("From", (float) share);
  }

  /**
   * Whether a skin that is seen from within shows the rest of the cut: the voxels' edge, which is
   * that of the mesh only within half a voxel, then lies under it.
   */
  void endsAtASkin(boolean does) {
    paint.setFloat("Least", does ? WELL_INSIDE : EDGE);
  }

  void place(Plane p) {
    Vec3 middle = extent.middle();
    Vec3 on = middle.minus(p.normal().times(p.above(middle)));
    Quaternion turn = new Quaternion();
    Vector3f n = Meshes.vector(p.normal());
    Vector3f up = Math.abs(n.z) > 0.9f ? Vector3f.UNIT_X : Vector3f.UNIT_Z;
    turn.lookAt(n, up);
    float half = (float) (-1.1 * extent.radius());
    square.setLocalRotation(turn);
    square.setLocalTranslation(turn.mult(new Vector3f(half, half, 0)).add(Meshes.vector(on)));
  }
}
