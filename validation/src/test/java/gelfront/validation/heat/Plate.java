// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import gelfront.base.Progress;
import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
import gelfront.material.MouldMaterial;
import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Block;
import gelfront.setup.Side;
import gelfront.validation.exact.LayeredPlate;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Labelled;
import gelfront.voxelize.MouldBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A flat cavity right across a block, so that heat goes up and down only: what the voxelizer and
 * the mould builder make of it, and the layers it is in truth.
 *
 * @param material of the mould
 * @param below metres of mould under the cavity
 * @param thick metres of plastisol
 * @param above metres of mould over the cavity
 * @param bottom outside
 * @param top outside
 */
record Plate(
    MouldMaterial material,
    double below,
    double thick,
    double above,
    LayeredPlate.Outside bottom,
    LayeredPlate.Outside top) {
  static final double CONTACT = 2500;
  static final double SHOT = 165;
  static final double MOULD = 30;

  /** Voxels across the block. */
  private static final int ACROSS = 4;

  LayeredPlate exact() {
    double k = material.conductivity();
    double c = material.volumetricHeat();
    return new LayeredPlate(
        List.of(
            new LayeredPlate.Layer(below, k, c, MOULD),
            new LayeredPlate.Layer(thick, Bodies.K, Bodies.C, SHOT),
            new LayeredPlate.Layer(above, k, c, MOULD)),
        CONTACT,
        bottom,
        top);
  }

  /** With the mould that every run gets. */
  VoxelModel model(double dx) {
    double half = 0.5 * ACROSS * dx;
    TriangleMesh slab = Solids.box(new Vec3(-half, -half, 0), new Vec3(half, half, thick));
    Cavity cavity =
        CavityBuilder.build(
            List.of(new Labelled(Cavity.Region.PART, slab)), dx, Optional.empty(), Progress.NONE);
    Box box = new Box(new Vec3(-half, -half, -below), new Vec3(half, half, thick + above));
    return withoutSides(MouldBuilder.build(cavity, block(), box));
  }

  private Block block() {
    List<Block.Face> faces = new ArrayList<>();
    for (int axis = 0; axis < 2; axis++) {
      faces.add(new Block.Face(new Side(axis, false), 0, MOULD));
      faces.add(new Block.Face(new Side(axis, true), 0, MOULD));
    }
    faces.add(new Block.Face(new Side(2, false), bottom.film(), bottom.temperature()));
    faces.add(new Block.Face(new Side(2, true), top.film(), top.temperature()));
    return new Block(
        material,
        1,
        Optional.empty(),
        MOULD,
        23,
        9,
        CONTACT,
        List.of(),
        List.of(),
        faces,
        CONTACT,
        Optional.empty(),
        List.of());
  }

  /** What leaves the cavity sideways would leave the block: there is nothing there. */
  private static VoxelModel withoutSides(VoxelModel model) {
    double[] resistance = model.resistance().clone();
    for (int w = 0; w < resistance.length; w++) {
      if (model.cavity().walls().face()[w] < 4) {
        resistance[w] = Double.POSITIVE_INFINITY;
      }
    }
    return new VoxelModel(model.cavity(), model.mould(), model.mouldCell(), resistance);
  }
}
