package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.grid.MouldCells;
import gelfront.grid.RectilinearGrid;
import gelfront.grid.UniformGrid;
import gelfront.grid.VoxelModel;
import gelfront.material.MouldMaterial;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.setup.Block;
import java.util.Arrays;

/**
 * The block's cells round a cavity. Near the cavity a mould cell is a cube of whole voxels, as
 * coarse as the material's diffusion length allows: aluminium needs millimetres, resin a voxel.
 * Outside they stretch towards the block's faces.
 */
public final class MouldBuilder {
  /** Growth from one stretched cell to the next. */
  private static final double STRETCH = 1.4;

  /** A mould cell with less metal than this share overheats; its walls use a fuller neighbour. */
  private static final double STARVED = 0.3;

  /** Share of a voxel that lies between wall and middle of a mould cell at least. */
  private static final double LEAST_DEPTH = 0.01;

  /** Time in which the mould must be resolved well, s: the first setting events. */
  private static final double EARLY = 5;

  private final Cavity cavity;
  private final Block block;
  private final Box box;
  private final UniformGrid fine;
  private final int per;
  private final RectilinearGrid grid;
  private final int[][] coarseOf;
  private final double[] metal;

  private MouldBuilder(Cavity cavity, Block block, Box box, int per) {
    this.cavity = cavity;
    this.block = block;
    this.box = box;
    this.fine = cavity.grid();
    this.per = per;
    double[][] edges = new double[3][];
    for (int a = 0; a < 3; a++) {
      edges[a] = edges(a);
    }
    this.grid = new RectilinearGrid(edges[0], edges[1], edges[2]);
    this.coarseOf = new int[3][];
    for (int a = 0; a < 3; a++) {
      coarseOf[a] = new int[fine.count(a)];
      for (int i = 0; i < fine.count(a); i++) {
        coarseOf[a][i] = grid.find(a, fine.centre(a, i));
      }
    }
    this.metal = metal();
  }

  /**
   * @param cavity inside the block
   * @param block its material, films and contact
   * @param box its outer faces, metres
   */
  public static VoxelModel build(Cavity cavity, Block block, Box box) {
    return build(cavity, block, box, voxelsPerCell(block.material(), cavity.grid().spacing()));
  }

  /**
   * As above, as coarse as told.
   *
   * @param per voxels along the edge of a mould cell next to the cavity
   */
  public static VoxelModel build(Cavity cavity, Block block, Box box, int per) {
    if (per < 1) {
      throw new IllegalArgumentException("a mould cell is one voxel at least: " + per);
    }
    return new MouldBuilder(cavity, block, box, per).build();
  }

  /** Voxels along the edge of a mould cell next to the cavity: 0.2 sqrt(alpha t), 4 mm at most. */
  static int voxelsPerCell(MouldMaterial m, double voxel) {
    double alpha = m.conductivity() / m.volumetricHeat();
    double edge = Math.min(4e-3, 0.2 * Math.sqrt(alpha * EARLY));
    return (int) Math.max(1, Math.floor(edge / voxel));
  }

  private double[] edges(int a) {
    double lo = component(box.min(), a);
    double hi = component(box.max(), a);
    double dx = fine.spacing();
    double[] inner = new double[fine.count(a) / per + 2];
    int n = 0;
    for (int i = 0; i < fine.count(a); i += per) {
      inner[n++] = fine.edge(a, i);
    }
    inner[n++] = fine.edge(a, fine.count(a));
    double[] all = new double[n + 400];
    int m = 0;
    all[m++] = lo;
    m = stretch(all, m, lo, inner[0], per * dx, true);
    for (int i = 0; i < n; i++) {
      if (inner[i] > all[m - 1] + 0.3 * dx && inner[i] < hi - 0.3 * dx) {
        all[m++] = inner[i];
      }
    }
    m = stretch(all, m, inner[n - 1], hi, per * dx, false);
    all[m++] = hi;
    return Arrays.copyOf(all, m);
  }

  /** Adds edges strictly between from and to, growing away from the cavity. */
  private static int stretch(
      double[] all, int m, double from, double to, double first, boolean towards) {
    double length = to - from;
    if (length <= 1.5 * first) {
      return m;
    }
    int n =
        (int)
            Math.max(1, Math.round(Math.log1p(length / first * (STRETCH - 1)) / Math.log(STRETCH)));
    double sum = (Math.pow(STRETCH, n) - 1) / (STRETCH - 1);
    int at = m;
    for (int i = 1; i < n; i++) {
      double part = length * (Math.pow(STRETCH, i) - 1) / (STRETCH - 1) / sum;
      all[towards ? at + n - 1 - i : at + i - 1] = towards ? to - part : from + part;
    }
    return at + n - 1;
  }

  private static double component(Vec3 v, int a) {
    return a == 0 ? v.x() : a == 1 ? v.y() : v.z();
  }

  private double[] metal() {
    double[] m = new double[grid.cellCount()];
    for (int c = 0; c < m.length; c++) {
      m[c] = grid.volume(c);
    }
    for (int cell : cavity.cells()) {
      m[coarse(cell)] -= cavity.cellVolume();
    }
    for (int c = 0; c < m.length; c++) {
      if (m[c] < 1e-6 * grid.volume(c)) {
        m[c] = 0;
      }
    }
    return m;
  }

  private int coarse(int fineCell) {
    return grid.index(
        coarseOf[0][fine.position(fineCell, 0)],
        coarseOf[1][fine.position(fineCell, 1)],
        coarseOf[2][fine.position(fineCell, 2)]);
  }

  private VoxelModel build() {
    int[] number = new int[grid.cellCount()];
    int m = 0;
    for (int c = 0; c < number.length; c++) {
      number[c] = metal[c] > 0 ? m++ : -1;
    }
    int[] cells = new int[m];
    double[] capacity = new double[m];
    double[] start = new double[m];
    double[] air = new double[m];
    for (int c = 0; c < number.length; c++) {
      if (number[c] >= 0) {
        int i = number[c];
        cells[i] = c;
        capacity[i] = metal[c] * materialAt(c).volumetricHeat();
        start[i] = startAt(grid.centre(c));
        air[i] = airConductance(c);
      }
    }
    int[] neighbour = new int[3 * m];
    double[] conductance = new double[3 * m];
    network(number, neighbour, conductance);
    MouldCells mould =
        new MouldCells(
            grid,
            cells,
            number,
            capacity,
            start,
            neighbour,
            conductance,
            air,
            block.airTemperature());
    return link(mould);
  }

  private MouldMaterial materialAt(int c) {
    Vec3 p = grid.centre(c);
    MouldMaterial m = block.material();
    for (Block.Insert i : block.inserts()) {
      if (i.region().contains(p)) {
        m = i.material();
      }
    }
    return m;
  }

  private double startAt(Vec3 p) {
    double t = block.startTemperature();
    for (Block.WarmSpot w : block.warmSpots()) {
      if (w.region().contains(p)) {
        t = w.temperature();
      }
    }
    return t;
  }

  /** Outer faces in series with half the cell. */
  private double airConductance(int c) {
    double sum = 0;
    double k = materialAt(c).conductivity();
    for (int a = 0; a < 3; a++) {
      int i = grid.position(c, a);
      double half = 0.5 * grid.width(a, i);
      double area = grid.volume(c) / grid.width(a, i);
      int faces = (i == 0 ? 1 : 0) + (i == grid.count(a) - 1 ? 1 : 0);
      if (block.airFilm() > 0) {
        sum += faces * area / (1 / block.airFilm() + half / k);
      }
    }
    return sum;
  }

  private void network(int[] number, int[] neighbour, double[] conductance) {
    double[][] blocked = blocked();
    for (int c = 0; c < number.length; c++) {
      for (int a = 0; a < 3 && number[c] >= 0; a++) {
        int at = 3 * number[c] + a;
        int i = grid.position(c, a);
        int next = c + (a == 0 ? 1 : a == 1 ? grid.count(0) : grid.count(0) * grid.count(1));
        neighbour[at] = i + 1 < grid.count(a) ? number[next] : -1;
        if (neighbour[at] >= 0) {
          double open = grid.volume(c) / grid.width(a, i) - blocked[a][c];
          double series =
              0.5 * grid.width(a, i) / materialAt(c).conductivity()
                  + 0.5 * grid.width(a, i + 1) / materialAt(next).conductivity();
          conductance[at] = Math.max(0, open) / series;
        }
      }
    }
  }

  /** Per axis and cell, m2 of its upper face that plastisol on either side takes from the metal. */
  private double[][] blocked() {
    double[][] b = new double[3][grid.cellCount()];
    double face = fine.spacing() * fine.spacing();
    int[] cells = cavity.cells();
    int[] neighbours = cavity.neighbours();
    for (int c = 0; c < cells.length; c++) {
      for (int a = 0; a < 3; a++) {
        int i = fine.position(cells[c], a);
        int here = coarse(cells[c]);
        int step = a == 0 ? 1 : a == 1 ? grid.count(0) : grid.count(0) * grid.count(1);
        if (coarseOf[a][i + 1] != coarseOf[a][i]) {
          b[a][here] += face;
        }
        boolean wallBelow = neighbours[6 * c + 2 * a] == c; // else the cell below has counted it
        if (coarseOf[a][i - 1] != coarseOf[a][i] && wallBelow) {
          b[a][here - step] += face;
        }
      }
    }
    return b;
  }

  private VoxelModel link(MouldCells mould) {
    Cavity.Walls walls = cavity.walls();
    int[] behind = new int[walls.count()];
    double[] resistance = new double[walls.count()];
    double face = fine.spacing() * fine.spacing();
    for (int w = 0; w < behind.length; w++) {
      if (walls.mouth()[w]) {
        behind[w] = -1;
        continue;
      }
      int c = behind(walls, w);
      behind[w] = mould.number()[c];
      double depth =
          per == 1
              ? Math.max(LEAST_DEPTH * fine.spacing(), fine.spacing() - walls.distance()[w])
              : 0.25 * per * fine.spacing();
      resistance[w] =
          1 / (block.contactConductance() * walls.cosine()[w] * face)
              + depth / (materialAt(c).conductivity() * face);
    }
    return new VoxelModel(cavity, mould, behind, resistance);
  }

  /** The mould cell behind a wall link, or the fullest round it where that one is starved. */
  private int behind(Cavity.Walls walls, int w) {
    int cell = cavity.cells()[walls.cell()[w]];
    int a = walls.face()[w] / 2;
    int step = walls.face()[w] % 2 == 0 ? -1 : 1;
    int[] at = new int[3];
    for (int b = 0; b < 3; b++) {
      at[b] = coarseOf[b][fine.position(cell, b) + (a == b ? step : 0)];
    }
    int own = grid.index(at[0], at[1], at[2]);
    if (metal[own] >= STARVED * grid.volume(own)) {
      return own;
    }
    int best = own;
    for (int reach = 1; reach <= grid.cellCount() && (reach == 1 || metal[best] == 0); reach++) {
      best = fullest(at, own, reach);
    }
    return best;
  }

  /** The cell with the largest share of metal within {@code reach} cells; the own one at a tie. */
  private int fullest(int[] at, int own, int reach) {
    int best = own;
    for (int k = Math.max(0, at[2] - reach); k <= Math.min(grid.count(2) - 1, at[2] + reach); k++) {
      for (int j = Math.max(0, at[1] - reach);
          j <= Math.min(grid.count(1) - 1, at[1] + reach);
          j++) {
        for (int i = Math.max(0, at[0] - reach);
            i <= Math.min(grid.count(0) - 1, at[0] + reach);
            i++) {
          int c = grid.index(i, j, k);
          if (metal[c] / grid.volume(c) > metal[best] / grid.volume(best) * 1.0001) {
            best = c;
          }
        }
      }
    }
    return best;
  }
}
