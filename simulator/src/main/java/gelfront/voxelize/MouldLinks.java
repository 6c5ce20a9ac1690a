package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.grid.MouldCells;
import gelfront.grid.VoxelModel;

/** Which mould cell takes the heat of each wall link, and what resists on the way. */
final class MouldLinks {
  /** A mould cell with less metal than this share overheats; its walls use a fuller neighbour. */
  private static final double STARVED = 0.3;

  /** Share of a voxel that lies between wall and middle of a mould cell at least. */
  private static final double LEAST_DEPTH = 0.01;

  private final Cavity cavity;
  private final MouldGrid grid;
  private final double[] metal;

  /**
   * @param metal m3 in each mould grid cell
   */
  MouldLinks(Cavity cavity, MouldGrid grid, double[] metal) {
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
    double face = grid.fine().spacing() * grid.fine().spacing();
    for (int w = 0; w < behind.length; w++) {
      if (walls.mouth()[w]) {
        behind[w] = -1;
        continue;
      }
      int c = behind(walls, w);
      behind[w] = mould.number()[c];
      resistance[w] =
          1 / (contact * walls.cosine()[w] * face)
              + depth(walls.distance()[w]) / (conductivity[c] * face);
    }
    return new VoxelModel(cavity, mould, behind, resistance);
  }

  /** Metres from the true wall into the mould cell. */
  private double depth(double distance) {
    double dx = grid.fine().spacing();
    return grid.per() == 1 ? Math.max(LEAST_DEPTH * dx, dx - distance) : 0.25 * grid.per() * dx;
  }

  /** The mould cell behind a wall link, or the fullest round it where that one is starved. */
  private int behind(Cavity.Walls walls, int w) {
    int cell = cavity.cells()[walls.cell()[w]];
    int a = walls.face()[w] / 2;
    int step = walls.face()[w] % 2 == 0 ? -1 : 1;
    int[] at = new int[3];
    for (int b = 0; b < 3; b++) {
      at[b] = grid.of()[b][grid.fine().position(cell, b) + (a == b ? step : 0)];
    }
    int own = grid.coarse().index(at[0], at[1], at[2]);
    if (share(own) >= STARVED) {
      return own;
    }
    int best = own;
    int most = grid.coarse().cellCount();
    for (int reach = 1; reach <= most && (reach == 1 || metal[best] == 0); reach++) {
      best = fullest(at, own, reach);
    }
    return best;
  }

  private double share(int cell) {
    return metal[cell] / grid.coarse().volume(cell);
  }

  /** The cell with the largest share of metal within {@code reach} cells; the own one at a tie. */
  private int fullest(int[] at, int own, int reach) {
    int best = own;
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
          if (share(c) > share(best) * 1.0001) {
            best = c;
          }
        }
      }
    }
    return best;
  }
}
