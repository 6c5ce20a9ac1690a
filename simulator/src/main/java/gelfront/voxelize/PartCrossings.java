// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.base.Progress;
import gelfront.grid.UniformGrid;
import gelfront.mesh.TriangleMesh;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A part's crossings with the lines of its grids, kept: what a mesh of a million triangles costs is
 * paid once for each place of the lines. Lines along the mouth's axis serve any height of the
 * mouth.
 *
 * <p>What is kept is what would be calculated anew, to the last bit: it depends on the mesh and the
 * key alone. For one thread at a time.
 */
final class PartCrossings {
  /** Three axes for each of four voxel sizes or heights of the mouth and four refined boxes. */
  private static final int MOST = 24;

  private final TriangleMesh mesh;
  private final Map<Lines, Crossings> kept = new LinkedHashMap<>(16, 0.75f, true);

  PartCrossings(TriangleMesh mesh) {
    this.mesh = mesh;
  }

  /** Lines along an axis: first edges across it, metres, and how many. */
  private record Lines(int axis, double dx, double edgeE, int countE, double edgeF, int countF) {
    static Lines of(UniformGrid g, int axis) {
      int e = (axis + 1) % 3;
      int f = (axis + 2) % 3;
      return new Lines(axis, g.spacing(), g.edge(e, 0), g.count(e), g.edge(f, 0), g.count(f));
    }
  }

  TriangleMesh mesh() {
    return mesh;
  }

  /**
   * @param grid round the part
   * @throws gelfront.base.CancelledException if the watcher wants to stop; nothing is kept then
   */
  Crossings along(UniformGrid grid, int axis, Progress progress) {
    Lines lines = Lines.of(grid, axis);
    Crossings found = kept.get(lines);
    if (found == null) {
      found = Crossings.of(mesh, grid, axis, progress);
      kept.put(lines, found);
      if (kept.size() > MOST) {
        kept.remove(kept.keySet().iterator().next());
      }
    }
    return found;
  }
}
