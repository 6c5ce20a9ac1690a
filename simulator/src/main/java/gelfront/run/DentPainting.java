// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.dent.DentLobes;
import gelfront.finding.Pocket;
import gelfront.grid.Cavity;
import gelfront.grid.UniformGrid;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Refine;
import gelfront.result.DentSurface;
import java.util.Arrays;
import java.util.List;

/**
 * The pockets' dents on the surface of the part. Long edges are halved first, for a lobe between
 * two far vertices would not be seen. Each pocket's depths are scaled so that they hold its dents'
 * volume on this mesh: sections aren't round, and walls slope.
 */
final class DentPainting {
  /** Metres that an edge may be long: a lobe is some ten millimetres wide. */
  private static final double EDGE = 1e-3;

  private static final int MOST_TRIANGLES = 150_000;

  /** Voxels under the surface at which a vertex asks what it belongs to. */
  private static final double[] UNDER = {0.6, 1.2, 0.1};

  private final Cavity cavity;
  private final short[] cavityOf;
  private final TriangleMesh mesh;
  private final double[] normals;
  private final double[] areas;
  private final int[] cellAt;
  private final float[][] depths;

  private DentPainting(CaseRunner.Outcome o) {
    cavity = o.voxels().model().cavity();
    cavityOf = o.voxels().cavities().of();
    mesh = Refine.to(o.voxels().part(), EDGE, MOST_TRIANGLES);
    normals = DentSurface.normals(mesh);
    areas = areas(mesh);
    cellAt = new int[cavity.grid().cellCount()];
    Arrays.fill(cellAt, -1);
    for (int c = 0; c < cavity.count(); c++) {
      int i = cavity.position(c, 0);
      cellAt[cavity.grid().index(i, cavity.position(c, 1), cavity.position(c, 2))] = c;
    }
    depths = new float[3][mesh.vertexCount()];
  }

  static DentSurface of(CaseRunner.Outcome o) {
    DentPainting painting = new DentPainting(o);
    List<Pocket> pockets = o.judgement().findings().pockets();
    for (int i = 0; i < pockets.size(); i++) {
      painting.paint(pockets.get(i), o.judgement().lobes().get(i));
    }
    float[][] d = painting.depths;
    return new DentSurface(painting.mesh, d[0], d[1], d[2]);
  }

  private void paint(Pocket pocket, DentLobes lobes) {
    float[][] own = new float[3][mesh.vertexCount()];
    double held = 0;
    double[] out = new double[3];
    for (int v = 0; v < own[0].length; v++) {
      if (belongs(v, pocket)) {
        Arrays.fill(out, 0);
        lobes.addAt(mesh.vertex(v), out);
        for (int k = 0; k < 3; k++) {
          own[k][v] = (float) out[k];
        }
        held += out[0] * areas[v];
      }
    }
    float scale = held > 0 ? (float) (lobes.volume() / held) : 0;
    for (int v = 0; v < own[0].length; v++) {
      depths[0][v] += scale * own[0][v];
      depths[1][v] += own[1][v];
      depths[2][v] += own[2][v];
    }
  }

  /** Whether a vertex is on the part, and on the pocket's cavity where there are several. */
  private boolean belongs(int v, Pocket pocket) {
    int c = -1;
    for (int i = 0; i < UNDER.length && c < 0; i++) {
      c = under(v, UNDER[i] * cavity.grid().spacing());
    }
    return c < 0
        ? pocket.cavities().isEmpty()
        : cavity.region()[c] == Cavity.Region.PART.ordinal()
            && (pocket.cavities().isEmpty() || pocket.cavities().contains((int) cavityOf[c]));
  }

  private int under(int v, double deep) {
    UniformGrid g = cavity.grid();
    Vec3 n = new Vec3(normals[3 * v], normals[3 * v + 1], normals[3 * v + 2]);
    Vec3 at = mesh.vertex(v).minus(n.times(deep)).minus(g.origin()).times(1 / g.spacing());
    int i = (int) Math.floor(at.x());
    int j = (int) Math.floor(at.y());
    int k = (int) Math.floor(at.z());
    boolean inside = i >= 0 && j >= 0 && k >= 0 && i < g.nx() && j < g.ny() && k < g.nz();
    return inside ? cellAt[g.index(i, j, k)] : -1;
  }

  /** m2 that a vertex stands for: a third of the triangles round it. */
  private static double[] areas(TriangleMesh m) {
    double[] sum = new double[m.vertexCount()];
    for (int t = 0; t < m.triangleCount(); t++) {
      Vec3 a = m.vertex(m.corner(t, 0));
      Vec3 n = m.vertex(m.corner(t, 1)).minus(a).cross(m.vertex(m.corner(t, 2)).minus(a));
      for (int c = 0; c < 3; c++) {
        sum[m.corner(t, c)] += n.length() / 6;
      }
    }
    return sum;
  }
}
