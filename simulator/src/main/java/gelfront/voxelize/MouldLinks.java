// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.grid.MouldCells;
import gelfront.grid.VoxelModel;
import java.util.Optional;

/** Which mould cell takes the heat of each wall link, and what resists on the way. */
final class MouldLinks {
  /** A mould cell with less metal than this share overheats; its walls use a fuller neighbour. */
  private static final double STARVED = 0.3;

  /** Shares that are no farther apart count as one. */
  private static final double ALIKE = 1.0001;

  /** More than cells along all axes together. */
  private static final long MANY = 1 << 20;

  /** Share of a voxel that lies between wall and middle of a mould cell at least. */
  private static final double LEAST_DEPTH = 0.01;

  private final Cavity cavity;
  private final MouldGrid grid;
  private final MetalVolumes metal;

  private final Optional<TubeWall> tube;

  /**
   * @param metal in each mould grid cell
   * @param tube on the block
   */
  MouldLinks(Cavity cavity, MouldGrid grid, MetalVolumes metal, Optional<TubeWall> tube) {
    this.tube = tube;
    this.cavity = cavity;
    this.grid = grid;
    this.metal = metal;
  }

  /**
   * @param conductivity W/m K of each mould grid cell
   * @param contact W/m2 K between plastisol and mould
   */
  VoxelModel join(MouldCells mould, double[] conductivity, double contact) {
    Cavity.Walls walls = cavity.walls();
    int[] behind = new int[walls.count()];
    double[] resistance = new double[walls.count()];
    for (int w = 0; w < behind.length; w++) {
      if (walls.mouth()[w]) {
        behind[w] = -1;
        continue;
      }
      if (tube.isPresent() && tube.get().behind(w)) {
        behind[w] = ring(tube.get(), w, mould.count());
        resistance[w] = tube.get().resistance(w);
        continue;
      }
      int c = behind(w);
      behind[w] = mould.number()[c];
      double face = walls.edge()[w] * walls.edge()[w];
      resistance[w] =
          1 / (contact * walls.cosine()[w] * face) + depth(w, c) / (conductivity[c] * face);
    }
    return new VoxelModel(cavity, mould, behind, resistance);
  }

  /** Rings stand behind the block's cells, or before them and upside down. */
  private static int ring(TubeWall tube, int w, int cells) {
    return tube.upper() ? cells - tube.rings() + tube.ring(w) : tube.rings() - 1 - tube.ring(w);
  }

  /** Metres along its axis from the true wall to the middle of the mould cell's metal. */
  private double depth(int w, int c) {
    double dx = grid.fine().spacing();
    int thickness = grid.thickness(cavity, w);
    if (thickness > 1) {
      return 0.25 * thickness * dx;
    }
    int face = cavity.walls().face()[w];
    double shift = metal.shift()[3 * c + face / 2] * (face % 2 == 0 ? -1 : 1);
    return Math.max(LEAST_DEPTH * dx, dx - cavity.walls().distance()[w] + shift);
  }

  /**
   * The mould cell behind a wall link; where that one is starved, the next one along the link, or
   * else the fullest round it.
   */
  private int behind(int w) {
    int[] at = grid.positionBehind(cavity, w);
    int own = grid.coarse().index(at[0], at[1], at[2]);
    if (share(own) >= STARVED) {
      return own;
    }
    int axis = cavity.walls().face()[w] / 2;
    int way = cavity.walls().face()[w] % 2 == 0 ? -1 : 1;
    int next = at[axis] + way;
    if (next >= 0 && next < grid.coarse().count(axis)) {
      int further = own + way * grid.stride(axis);
      if (share(further) >= STARVED) {
        return further;
      }
    }
    int best = own;
    int most = grid.coarse().cellCount();
    for (int reach = 1; reach <= most && (reach == 1 || metal.volume()[best] == 0); reach++) {
      best = fullest(at, own, reach);
    }
    return best;
  }

  private double share(int cell) {
    return metal.volume()[cell] / grid.coarse().volume(cell);
  }

  /**
   * The cell with the largest share of metal within {@code reach} cells; of several the nearest,
   * and of those the one farthest from the block's middle, so that both sides of a plane of
   * symmetry choose alike.
   */
  private int fullest(int[] at, int own, int reach) {
    int best = own;
    long bestRank = 0;
    int[] lo = new int[3];
    int[] hi = new int[3];
    for (int a = 0; a < 3; a++) {
      lo[a] = Math.max(0, at[a] - reach);
      hi[a] = Math.min(grid.coarse().count(a) - 1, at[a] + reach);
    }
    for (int k = lo[2]; k <= hi[2]; k++) {
      for (int j = lo[1]; j <= hi[1]; j++) {
        for (int i = lo[0]; i <= hi[0]; i++) {
          int c = grid.coarse().index(i, j, k);
          long rank = rank(at, i, j, k);
          boolean fuller = share(c) > share(best) * ALIKE;
          if (fuller || (share(c) * ALIKE >= share(best) && rank < bestRank)) {
            best = c;
            bestRank = rank;
          }
        }
      }
    }
    return best;
  }

  /** Less for nearer cells, then for those farther out, then by the axes along which they lie. */
  private long rank(int[] at, int i, int j, int k) {
    int[] p = {i, j, k};
    long squared = 0;
    long outwards = 0;
    for (int a = 0; a < 3; a++) {
      squared += (long) (p[a] - at[a]) * (p[a] - at[a]);
      outwards += Math.abs(2 * p[a] + 1 - grid.coarse().count(a));
    }
    long axes = 3L * Math.abs(k - at[2]) + Math.abs(j - at[1]);
    return (squared * MANY - outwards) * MANY + axes;
  }
}
