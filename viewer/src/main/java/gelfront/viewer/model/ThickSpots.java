// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.result.DentSurface;

/**
 * Thick spots seen from outside: for each vertex of the skin the latest set time that is met going
 * straight in, until half way through the part, where it begins to fall again, or the plastisol
 * ends. The skin's own set time says nothing: it sets at once.
 */
public final class ThickSpots {
  /** Cells that the time may fall before the way in is given up: voxels are steps. */
  private static final int PATIENCE = 3;

  private ThickSpots() {}

  /**
   * @param mesh metres, wound outwards
   * @param latest s at the end of the time scale
   * @return share of the time scale per vertex, 0 to 1
   */
  public static float[] of(TriangleMesh mesh, CellGrid grid, double latest) {
    double[] normals = DentSurface.normals(mesh);
    float[] out = new float[mesh.vertexCount()];
    for (int v = 0; v < out.length; v++) {
      Vec3 n = new Vec3(normals[3 * v], normals[3 * v + 1], normals[3 * v + 2]);
      out[v] =
          (float) Math.min(1, Math.max(0, deepest(grid, mesh.vertex(v).times(1e3), n) / latest));
    }
    return out;
  }

  private static double deepest(CellGrid g, Vec3 at, Vec3 outwards) {
    double most = 0;
    int falling = 0;
    int limit = g.nx() + g.ny() + g.nz();
    for (int i = 0; i < limit && falling < PATIENCE; i++) {
      float here = g.setAt(at.minus(outwards.times((0.5 + 0.7 * i) * g.edge())));
      falling = here > most ? 0 : falling + 1;
      most = Math.max(most, here);
    }
    return most;
  }
}
