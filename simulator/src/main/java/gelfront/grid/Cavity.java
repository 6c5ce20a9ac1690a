// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import gelfront.mesh.Vec3;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The plastisol's cells and its walls.
 *
 * <p>Cells are numbered 0 to n-1: first voxels of the cavity's grid in rising grid number, then the
 * small cubes of each refined box in rising number there. A wall link is a face, or a part of one,
 * between a plastisol cell and something that is not plastisol.
 *
 * <p>Immutable: what its arrays hold is not to be changed.
 */
public final class Cavity {

  /** Share of a voxel that a cell has at least: slivers would only shorten the steps. */
  private static final double LEAST_VOLUME = 0.3;

  /** What a cell belongs to. Same order as in a stored result. */
  public enum Region {
    PART,
    GATE,
    RUNNER,
    SPRUE;

    private static final List<Region> ALL = List.of(values());

    public static Region of(byte ordinal) {
      return ALL.get(ordinal);
    }
  }

  /**
   * Wall links as arrays of one length, sorted by cell.
   *
   * <pre>
   *      cell centre        true wall     centre of what lies beyond
   *          o------------------|---------------o
   *          |&lt;--- distance --->|
   *          |&lt;----------- spacing ------------>|
   * </pre>
   *
   * @param cell plastisol cell number
   * @param face 0 to 5: -x +x -y +y -z +z
   * @param distance metres from the cell's centre along the axis to the true wall
   * @param cosine |n_d| of the true wall's normal along that axis: true wall area over face area is
   *     1 / cosine per face crossed, so a face carries the share {@code cosine} of it
   * @param edge metres along a side of the square that the link stands for: the cell's own, or a
   *     smaller cube's where the rest of the face leads to such cubes
   * @param mouth whether the wall is the open end of the sprue
   */
  public record Walls(
      int[] cell, byte[] face, float[] distance, float[] cosine, double[] edge, boolean[] mouth) {
    public int count() {
      return cell.length;
    }
  }

  private final UniformGrid grid;
  private final int[] cells;
  private final int[] neighbours;
  private final byte[] region;
  private final Walls walls;
  private final Refinement refinement;
  private final Mirrors mirrors;

  // What every loop asks for: found once.
  private final int[] joined;
  private final int[] firstJoined;
  private final int voxels;
  private final double smallEdge;
  private volatile double @Nullable [] volumes;

  /**
   * @param grid the voxels
   * @param cells number of each cell on its own grid: the voxels', or that of its refined box;
   *     length n
   * @param neighbours plastisol cell of the same size across each face, 6 per cell in the order -x
   *     +x -y +y -z +z; the cell itself where there is none; length 6 n
   * @param region per cell ordinal of {@link Region}; length n
   * @param walls all wall links
   * @param refinement where cells are smaller than voxels
   * @param mirrors axes across whose lower end the cavity goes on as its own mirror image
   */
  public Cavity(
      UniformGrid grid,
      int[] cells,
      int[] neighbours,
      byte[] region,
      Walls walls,
      Refinement refinement,
      Mirrors mirrors) {
    this.grid = grid;
    this.cells = cells;
    this.neighbours = neighbours;
    this.region = region;
    this.walls = walls;
    this.refinement = refinement;
    this.mirrors = mirrors;
    List<Refinement.Patch> patches = refinement.patches();
    Joints joints = refinement.joints();
    joined = joints.other();
    firstJoined = joined.length == 0 ? new int[cells.length + 1] : joints.start();
    voxels = patches.isEmpty() ? cells.length : patches.get(0).first();
    smallEdge = patches.isEmpty() ? grid.spacing() : patches.get(0).grid().spacing();
  }

  /** All cells of one size. */
  public Cavity(UniformGrid grid, int[] cells, int[] neighbours, byte[] region, Walls walls) {
    this(grid, cells, neighbours, region, walls, Refinement.NONE, Mirrors.NONE);
  }

  /** The voxels. */
  public UniformGrid grid() {
    return grid;
  }

  /** Number of each cell on its own grid; length n. */
  public int[] cells() {
    return cells;
  }

  /** Plastisol cell of the same size across each face; length 6 n. */
  public int[] neighbours() {
    return neighbours;
  }

  /** Ordinal of its {@link Region} per cell; length n. */
  public byte[] region() {
    return region;
  }

  /** All wall links. */
  public Walls walls() {
    return walls;
  }

  /** Where cells are smaller than voxels. */
  public Refinement refinement() {
    return refinement;
  }

  /** Axes across whose lower end the cavity goes on as its own mirror image. */
  public Mirrors mirrors() {
    return mirrors;
  }

  public int count() {
    return cells.length;
  }

  /** The same cells with other regions. */
  public Cavity with(byte[] regions) {
    return new Cavity(grid, cells, neighbours, regions, walls, refinement, mirrors);
  }

  /** Cells that are voxels: those from 0 on. */
  public int voxels() {
    return voxels;
  }

  /** Metres along a side of a cell. */
  public double edge(int cell) {
    return cell < voxels ? grid.spacing() : smallEdge;
  }

  /** Metres along a side of the smallest cells. */
  public double smallEdge() {
    return smallEdge;
  }

  /** m3 of a cell's cube. */
  public double cubeVolume(int cell) {
    double dx = edge(cell);
    return dx * dx * dx;
  }

  /** Middle of a cell's cube along an axis, metres. */
  public double centre(int cell, int axis) {
    UniformGrid own = gridOf(cell);
    return own.centre(axis, own.position(cells[cell], axis));
  }

  /** Middle of a cell's cube, metres. */
  public Vec3 centre(int cell) {
    return gridOf(cell).centre(cells[cell]);
  }

  /** Middles of all cells' cubes, metres: x, y and z, each of length n. */
  public double[][] centres() {
    double[][] all = new double[3][count()];
    for (int c = 0; c < count(); c++) {
      UniformGrid own = gridOf(c);
      for (int axis = 0; axis < 3; axis++) {
        all[axis][c] = own.centre(axis, own.position(cells[c], axis));
      }
    }
    return all;
  }

  private UniformGrid gridOf(int cell) {
    return cell < voxels ? grid : refinement.of(cell).grid();
  }

  /** Middle of a cell's cube along an axis in voxels, from the middle of position 0. */
  public double place(int cell, int axis) {
    if (cell < voxels) {
      return grid.position(cells[cell], axis);
    }
    Refinement.Patch p = refinement.of(cell);
    double within = p.grid().position(cells[cell], axis) + 0.5;
    return p.corner()[axis] + within / refinement.factor() - 0.5;
  }

  /** Position along an axis of the voxel that is a cell, or holds it. */
  public int position(int cell, int axis) {
    return position(cell, axis, 0);
  }

  /**
   * Position along an axis of the voxel that holds the cube so many of the cell's own edges further
   * along.
   */
  public int position(int cell, int axis, int further) {
    if (cell < voxels) {
      return grid.position(cells[cell], axis) + further;
    }
    Refinement.Patch p = refinement.of(cell);
    int within = p.grid().position(cells[cell], axis) + further;
    return p.corner()[axis] + within / refinement.factor();
  }

  /** Whether a cell's own mirror image lies across a face. */
  public boolean mirrored(int cell, int face) {
    return face % 2 == 0 && mirrors.at(face / 2) && lowest(cell, face / 2);
  }

  private boolean lowest(int cell, int axis) {
    if (cell < voxels) {
      return grid.position(cells[cell], axis) == 0;
    }
    Refinement.Patch p = refinement.of(cell);
    return p.corner()[axis] == 0 && p.grid().position(cells[cell], axis) == 0;
  }

  /**
   * Value in the middle of a cell, from means over cells' volumes, on each axis that has cells of
   * its size, or its own mirror image, on both sides:
   *
   * <pre>  mean - dx^2 / 24 (laplacian) = mean - sum over faces of (other - mean) / 24</pre>
   */
  public double inMiddle(double[] means, int cell) {
    double sum = 0;
    for (int e = 6 * cell; e < 6 * cell + 6; e += 2) {
      int low = neighbours[e];
      int high = neighbours[e + 1];
      if ((low != cell || mirrored(cell, e - 6 * cell)) && high != cell) {
        sum += means[low] - 2 * means[cell] + means[high];
      }
    }
    return means[cell] - sum / 24;
  }

  /** Entries of {@link #across}: six, and the faces to cells of the other size. */
  public int faces(int cell) {
    return 6 + firstJoined[cell + 1] - firstJoined[cell];
  }

  /** A cell that shares a face with another, of whatever size; the cell itself for no cell. */
  public int across(int cell, int entry) {
    return entry < 6 ? neighbours[6 * cell + entry] : joined[firstJoined[cell] + entry - 6];
  }

  /** m3 of plastisol, true to the walls. */
  public double volume() {
    return java.util.Arrays.stream(volumes()).sum();
  }

  /**
   * True volume that each cell stands for, m3; length n; not to be modified.
   *
   * <pre>  V = dx^3 + sum over its walls of A (s - dx / 2) n_d^2</pre>
   *
   * <p>with A the link's square. Along any one axis the walls' distances make up the voxels'
   * counting error exactly, column by column; the squares of the normal's components share the work
   * between the axes.
   */
  public double[] volumes() {
    double[] known = volumes;
    if (known == null) {
      known = trueVolumes();
      volumes = known;
    }
    return known;
  }

  private double[] trueVolumes() {
    double[] v = new double[count()];
    for (int c = 0; c < v.length; c++) {
      v[c] = cubeVolume(c);
    }
    for (int w = 0; w < walls.count(); w++) {
      double n = walls.cosine[w];
      double e = walls.edge[w];
      v[walls.cell[w]] += e * e * (walls.distance[w] - 0.5 * edge(walls.cell[w])) * n * n;
    }
    for (int c = 0; c < v.length; c++) {
      v[c] = Math.max(v[c], LEAST_VOLUME * cubeVolume(c));
    }
    return v;
  }

  /**
   * How far the middle of a cell's true volume lies from the cube's, in its edges; x, y, z by
   * turns, length 3 n. The slice that a wall adds or takes lies at the wall, so along its axis the
   * middle moves by half of it:
   *
   * <pre>  sum over the cell's walls along the axis of +-(s / dx - 1/2) n_d^2 / 2 A / dx^2</pre>
   */
  public float[] shifts() {
    float[] shift = new float[3 * count()];
    for (int w = 0; w < walls.count(); w++) {
      double n = walls.cosine[w];
      double dx = edge(walls.cell[w]);
      double share = walls.edge[w] / dx;
      double slice = (walls.distance[w] / dx - 0.5) * n * n * share * share;
      shift[3 * walls.cell[w] + walls.face[w] / 2] +=
          (float) ((walls.face[w] % 2 == 0 ? -0.5 : 0.5) * slice);
    }
    return shift;
  }

  /** The cell whose centre lies nearest to a place in metres; the first of several. */
  public int nearest(Vec3 place) {
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int c = 0; c < cells.length; c++) {
      double d = centre(c).distance(place);
      if (d < least) {
        least = d;
        best = c;
      }
    }
    return best;
  }

  /** Point on the true wall that link {@code w} meets, as x, y, z in metres. */
  public double[] wallPoint(int w) {
    double[] p = new double[3];
    for (int a = 0; a < 3; a++) {
      p[a] = centre(walls.cell[w], a);
    }
    int face = walls.face[w];
    p[face / 2] += (face % 2 == 0 ? -1 : 1) * walls.distance[w];
    return p;
  }
}
