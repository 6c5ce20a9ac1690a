// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.UniformGrid;
import gelfront.mesh.Vec3;
import gelfront.setup.Growth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Metal filed away, in voxel space.
 *
 * <p>Round each place the signed distance D to the mesh's wall (positive in the metal) is computed
 * at the cell centres. With the filing's depth d, fading to nothing at its reach r, the cell's
 * margin is m = d (1 - (|x - place| / r)^4) - D; cells with m &gt; 0 are plastisol. Where two
 * margins change sign the wall lies between them by linear interpolation, and their slope is |n_d|,
 * since D has unit gradient.
 */
public final class Filing {
  /** Nothing is filed away. */
  public static final Filing NONE = new Filing(List.of(), List.of());

  private final List<Growth> growths;
  private final List<Labelled> solids;
  private final Map<Integer, Double> margin = new HashMap<>();

  public Filing(List<Growth> growths, List<Labelled> solids) {
    this.growths = List.copyOf(growths);
    this.solids = List.copyOf(solids);
  }

  /** The same filings for another grid. */
  Filing again() {
    return new Filing(growths, solids);
  }

  /** Metres that the cavity may grow at most. */
  double deepest() {
    return growths.stream().mapToDouble(Growth::depth).max().orElse(0);
  }

  /** Adds filed cells to {@code regions} (modified); they take the region of the nearest cell. */
  void claim(UniformGrid grid, byte[] regions) {
    margin.clear();
    for (Growth g : growths) {
      file(g, grid, regions);
    }
  }

  private void file(Growth g, UniformGrid grid, byte[] regions) {
    byte region = nearestRegion(g.at(), grid, regions);
    NearTriangles near = new NearTriangles(g.at(), 2 * g.reach(), solids);
    // Farther from the wall no cell is filed, nor beside one that is.
    double farthest = g.depth() + 2 * grid.spacing();
    for (int cell : cellsNear(g, grid)) {
      Vec3 p = grid.centre(cell);
      double wall = near.distance(p, farthest);
      if (wall >= farthest) {
        continue;
      }
      double r = p.distance(g.at()) / g.reach();
      double depth = g.depth() * Math.max(0, 1 - r * r * r * r);
      double m = depth - (regions[cell] < 0 ? wall : -wall);
      margin.merge(cell, m, Math::max);
      if (m > 0 && regions[cell] < 0) {
        regions[cell] = region;
      }
    }
  }

  /** Wall distance and |n_d| across a face, or null where nothing was filed. */
  double @Nullable [] wall(UniformGrid grid, int cell, int face) {
    Double inside = margin.get(cell);
    int stride = grid.stride(face / 2);
    Double outside = margin.get(cell + (face % 2 == 0 ? -stride : stride));
    if (inside == null || outside == null || inside <= 0 || outside > 0) {
      return null;
    }
    double slope = (inside - outside) / grid.spacing();
    return new double[] {inside / slope, Math.min(1, slope)};
  }

  private static int[] cellsNear(Growth g, UniformGrid grid) {
    double[] at = {g.at().x(), g.at().y(), g.at().z()};
    int[] lo = new int[3];
    int[] hi = new int[3];
    for (int a = 0; a < 3; a++) {
      double c = (at[a] - grid.edge(a, 0)) / grid.spacing();
      double r = g.reach() / grid.spacing();
      lo[a] = (int) Math.max(0, Math.floor(c - r));
      hi[a] = (int) Math.min(grid.count(a) - 1.0, Math.ceil(c + r));
    }
    int[] found =
        new int[Math.max(0, (hi[0] - lo[0] + 1) * (hi[1] - lo[1] + 1) * (hi[2] - lo[2] + 1))];
    int n = 0;
    for (int k = lo[2]; k <= hi[2]; k++) {
      for (int j = lo[1]; j <= hi[1]; j++) {
        for (int i = lo[0]; i <= hi[0]; i++) {
          found[n++] = grid.index(i, j, k);
        }
      }
    }
    return java.util.Arrays.copyOf(found, n);
  }

  private static byte nearestRegion(Vec3 at, UniformGrid grid, byte[] regions) {
    byte best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int cell = 0; cell < regions.length; cell++) {
      if (regions[cell] >= 0) {
        double d = grid.centre(cell).distance(at);
        if (d < least) {
          least = d;
          best = regions[cell];
        }
      }
    }
    return best;
  }
}
