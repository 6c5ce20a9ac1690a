package gelfront.voxelize;

import gelfront.base.Progress;
import gelfront.grid.Cavity;
import gelfront.grid.UniformGrid;
import gelfront.mesh.Vec3;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Solids into plastisol cells. A cell belongs to a solid if its centre lies inside, by the majority
 * of three lines along the axes (winding number above zero), so that one bad triangle spoils
 * nothing. Several solids are united; overlapping shells count once.
 */
public final class CavityBuilder {
  /** Share of a voxel below which a wall distance is not taken: keeps conductances finite. */
  static final double LEAST_DISTANCE = 0.01;

  /** Least |n_d|: a wall seen edge-on takes no heat across this face. */
  static final double LEAST_COSINE = 0.05;

  private static final String FINDING = "finding the cavity's cells";
  private static final String WALLS = "finding the cavity's walls";

  private final List<Labelled> solids;
  private final PartCrossings kept;
  private final UniformGrid ofFirst;
  private final UniformGrid grid;
  private final Optional<Mouth> mouth;
  private final Filing filing;
  private final Crossings[][] crossings;

  private CavityBuilder(
      List<Labelled> solids,
      PartCrossings kept,
      CavityGrid grids,
      Optional<Mouth> mouth,
      Filing filing) {
    this.solids = solids;
    this.kept = kept;
    this.ofFirst = grids.first();
    this.grid = grids.all();
    this.mouth = mouth;
    this.filing = filing;
    this.crossings = new Crossings[solids.size()][3];
  }

  /**
   * A cavity with nothing filed away.
   *
   * @param solids earlier ones win where they overlap
   * @param spacing edge of a voxel, metres
   * @param mouth the open end; absent: none
   */
  public static Cavity build(
      List<Labelled> solids, double spacing, Optional<Mouth> mouth, Progress progress) {
    return build(solids, spacing, mouth, Filing.NONE, progress);
  }

  /** As above, with metal filed away from the cavity. */
  public static Cavity build(
      List<Labelled> solids,
      double spacing,
      Optional<Mouth> mouth,
      Filing filing,
      Progress progress) {
    if (solids.isEmpty()) {
      throw new IllegalArgumentException("nothing to voxelize");
    }
    PartCrossings none = new PartCrossings(solids.get(0).mesh());
    return build(solids, none, spacing, mouth, filing, progress);
  }

  /**
   * As above.
   *
   * @param kept of the first solid
   */
  static Cavity build(
      List<Labelled> solids,
      PartCrossings kept,
      double spacing,
      Optional<Mouth> mouth,
      Filing filing,
      Progress progress) {
    if (kept.mesh() != solids.get(0).mesh()) {
      throw new IllegalArgumentException("crossings are kept of another part");
    }
    CavityGrid grids = CavityGrid.of(solids, spacing, mouth, filing.deepest());
    return new CavityBuilder(solids, kept, grids, mouth, filing).build(progress);
  }

  private Cavity build(Progress progress) {
    byte[] regions = new byte[grid.cellCount()];
    Arrays.fill(regions, (byte) -1);
    for (int s = 0; s < solids.size(); s++) {
      claim(s, regions, progress);
    }
    filing.claim(grid, regions);
    progress.check(WALLS, 0);
    int[] number = new int[grid.cellCount()];
    int[] cells = cellsOf(regions, number);
    byte[] region = new byte[cells.length];
    for (int c = 0; c < cells.length; c++) {
      region[c] = regions[cells[c]];
    }
    int[] neighbours = neighbours(cells, number);
    progress.check(WALLS, 0.5);
    return new Cavity(grid, cells, neighbours, region, walls(cells, neighbours));
  }

  private void claim(int solid, byte[] regions, Progress progress) {
    byte[] votes = new byte[grid.cellCount()];
    for (int axis = 0; axis < 3; axis++) {
      int done = 3 * solid + axis;
      Progress one = (stage, f) -> progress.at(FINDING, (done + f) / (3 * solids.size()));
      one.check(FINDING, 0);
      crossings[solid][axis] = cross(solid, axis, one);
      vote(crossings[solid][axis], axis, votes);
    }
    byte region = (byte) solids.get(solid).region().ordinal();
    for (int c = 0; c < votes.length; c++) {
      if (votes[c] >= 2 && regions[c] < 0) {
        regions[c] = region;
      }
    }
  }

  private Crossings cross(int solid, int axis, Progress progress) {
    return solid == 0
        ? kept.along(ofFirst, axis, progress).placed(ofFirst, grid, axis)
        : Crossings.of(solids.get(solid).mesh(), grid, axis, progress);
  }

  private void vote(Crossings x, int axis, byte[] votes) {
    int e = (axis + 1) % 3;
    int f = (axis + 2) % 3;
    for (int jf = 0; jf < grid.count(f); jf++) {
      for (int je = 0; je < grid.count(e); je++) {
        int column = je + grid.count(e) * jf;
        int base = je * grid.stride(e) + jf * grid.stride(f);
        int winding = 0;
        int next = x.first(column);
        int end = x.end(column);
        for (int i = 0; i < grid.count(axis) && next < end; i++) {
          double centre = grid.centre(axis, i);
          while (next < end && x.at(next) <= centre) {
            winding += x.normal(next++) < 0 ? 1 : -1;
          }
          if (winding > 0) {
            votes[base + i * grid.stride(axis)]++;
          }
        }
      }
    }
  }

  private static int[] cellsOf(byte[] regions, int[] number) {
    int n = 0;
    for (int c = 0; c < regions.length; c++) {
      number[c] = regions[c] < 0 ? -1 : n++;
    }
    int[] cells = new int[n];
    for (int c = 0; c < regions.length; c++) {
      if (number[c] >= 0) {
        cells[number[c]] = c;
      }
    }
    return cells;
  }

  private int[] neighbours(int[] cells, int[] number) {
    int[] result = new int[6 * cells.length];
    for (int c = 0; c < cells.length; c++) {
      for (int face = 0; face < 6; face++) {
        int stride = grid.stride(face / 2);
        int other = number[cells[c] + (face % 2 == 0 ? -stride : stride)]; // spare cells all round
        result[6 * c + face] = other < 0 ? c : other;
      }
    }
    return result;
  }

  private Cavity.Walls walls(int[] cells, int[] neighbours) {
    int n = 0;
    for (int i = 0; i < neighbours.length; i++) {
      if (neighbours[i] == i / 6) {
        n++;
      }
    }
    int[] cell = new int[n];
    byte[] face = new byte[n];
    float[] distance = new float[n];
    float[] cosine = new float[n];
    boolean[] open = new boolean[n];
    int w = 0;
    for (int i = 0; i < neighbours.length; i++) {
      if (neighbours[i] == i / 6) {
        cell[w] = i / 6;
        face[w] = (byte) (i % 6);
        double[] wall = wall(cells[i / 6], i % 6);
        distance[w] = (float) Math.max(LEAST_DISTANCE * grid.spacing(), wall[0]);
        cosine[w] = (float) Math.max(LEAST_COSINE, wall[1]);
        open[w] = isMouth(cells[i / 6], i % 6, wall[0]);
        w++;
      }
    }
    return new Cavity.Walls(cell, face, distance, cosine, open);
  }

  /** Distance from the cell's centre to the true wall, and |n_d| there. */
  private double[] wall(int cell, int face) {
    double[] filed = filing.wall(grid, cell, face);
    if (filed != null) {
      return filed;
    }
    int axis = face / 2;
    int e = (axis + 1) % 3;
    int f = (axis + 2) % 3;
    int column = grid.position(cell, e) + grid.count(e) * grid.position(cell, f);
    double from = grid.centre(axis, grid.position(cell, axis));
    double sign = face % 2 == 0 ? -1 : 1;
    double[] best = {-1, 0};
    for (Crossings[] solid : crossings) {
      Crossings x = solid[axis];
      for (int i = x.first(column); i < x.end(column); i++) {
        double s = sign * (x.at(i) - from);
        double out = sign * x.normal(i);
        if (out > 0 && s >= 0 && s <= grid.spacing() && s > best[0]) {
          best[0] = s;
          best[1] = out;
        }
      }
    }
    // The three lines disagreed here: the wall is somewhere between the two centres.
    return best[0] < 0 ? new double[] {0.5 * grid.spacing(), 1} : best;
  }

  private boolean isMouth(int cell, int face, double distance) {
    if (mouth.isEmpty()) {
      return false;
    }
    Vec3 p = grid.centre(cell);
    double[] q = {p.x(), p.y(), p.z()};
    q[face / 2] += (face % 2 == 0 ? -1 : 1) * distance;
    return mouth.get().holds(q[0], q[1], q[2], 1e-3 * grid.spacing());
  }
}
