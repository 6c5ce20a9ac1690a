// SPDX-License-Identifier: Apache-2.0
package gelfront.timing;

import gelfront.base.Progress;
import gelfront.grid.Cavity;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.shape.Solids;
import gelfront.setup.PartLoader;
import gelfront.setup.PartShape;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Labelled;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A ring of a million triangles: read, checked, repaired if need be, and put into voxels. */
public final class LargeMesh {
  private static final int SEGMENTS = 708;
  private static final double SPACING = 0.4e-3;

  private LargeMesh() {}

  /** To be written as STL. */
  public static TriangleMesh ring() {
    return Solids.torus(25e-3, 8e-3, SEGMENTS);
  }

  /** From the file to voxels. */
  static Cavity load(Path stl) {
    PartShape shape = new PartShape.Meshes(List.of(stl), Optional.of(LengthUnit.MM));
    TriangleMesh mesh = PartLoader.load(shape).mesh();
    return CavityBuilder.build(
        List.of(new Labelled(Cavity.Region.PART, mesh)), SPACING, Optional.empty(), Progress.NONE);
  }
}
