// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.result.DentSurface;
import gelfront.result.Fields;
import java.util.List;

/**
 * The shot itself, ready to be drawn: when its front came to each place.
 *
 * @param grid s at which the front came; where it never did the end of the scale, and a cut-off of
 *     0, so that it is drawn as the air that stays
 * @param scale s at the end of the time scale, a little after the front came anywhere
 */
public record ShotShown(CellGrid grid, double scale) {
  /** Of the last time: what never comes lies beyond it. */
  private static final double BEYOND = 1.03;

  /** Cells below the skin that are looked at. */
  private static final int DEEP = 4;

  /**
   * @param f of a run whose shot was calculated
   * @param least s that the scale ends at, at least: that of the longer shot of two
   */
  public static ShotShown of(Fields f, double least) {
    double scale = Math.max(least, end(f));
    float[] came = f.reached().clone();
    float[] last = new float[came.length];
    for (int c = 0; c < came.length; c++) {
      last[c] = Float.isInfinite(came[c]) ? 0 : came[c];
    }
    Fields shot =
        new Fields(
            f.origin(),
            f.spacing(),
            f.nx(),
            f.ny(),
            f.nz(),
            f.cells(),
            f.region(),
            came,
            last,
            f.pocket(),
            List.of());
    return new ShotShown(CellGrid.of(shot, scale, VolumeTexels.MOST, false, 3), scale);
  }

  /** s at the end of the time scale of a run; 0 where its shot was not calculated. */
  public static double end(Fields f) {
    double most = 0;
    for (float t : f.reached()) {
      most = Float.isInfinite(t) ? most : Math.max(most, t);
    }
    return f.filled() ? Math.max(1e-3, BEYOND * most) : 0;
  }

  /** Share of the scale from which on nothing has come. */
  public static double never() {
    return 0.5 * (1 + 1 / BEYOND);
  }

  /**
   * Shares of the time scale, one a vertex: those of the cells just below it.
   *
   * @param mesh metres, outward-wound
   */
  public float[] onSkin(TriangleMesh mesh) {
    double[] normals = DentSurface.normals(mesh);
    float[] out = new float[mesh.vertexCount()];
    for (int v = 0; v < out.length; v++) {
      Vec3 n = new Vec3(normals[3 * v], normals[3 * v + 1], normals[3 * v + 2]);
      out[v] = (float) (below(mesh.vertex(v).times(1e3), n) / scale);
    }
    return out;
  }

  private double below(Vec3 at, Vec3 outwards) {
    for (int i = 0; i < 2 * DEEP; i++) {
      float here = grid.setAt(at.minus(outwards.times((0.3 + 0.5 * i) * grid.edge())));
      if (here != CellGrid.EMPTY) {
        return here;
      }
    }
    return 0;
  }
}
