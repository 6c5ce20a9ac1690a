package gelfront.grid;

import gelfront.mesh.Vec3;
import java.util.List;

/**
 * The plastisol's cells and its walls.
 *
 * <p>Cells are numbered 0 to n-1 in rising grid number. A wall link is a face between a plastisol
 * cell and something that is not plastisol.
 *
 * @param grid the cubes
 * @param cells grid numbers of the plastisol cells, rising; length n
 * @param neighbours plastisol cell number across each face, 6 per cell in the order -x +x -y +y -z
 *     +z; the cell itself where there is a wall; length 6 n
 * @param region per cell ordinal of {@link Region}; length n
 * @param walls all wall links
 */
public record Cavity(UniformGrid grid, int[] cells, int[] neighbours, byte[] region, Walls walls) {

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
   * @param mouth whether the wall is the open end of the sprue
   */
  public record Walls(int[] cell, byte[] face, float[] distance, float[] cosine, boolean[] mouth) {
    public int count() {
      return cell.length;
    }
  }

  public int count() {
    return cells.length;
  }

  /** m3 of plastisol, true to the walls. */
  public double volume() {
    return java.util.Arrays.stream(volumes()).sum();
  }

  /** m3 of one voxel. */
  public double cellVolume() {
    double dx = grid.spacing();
    return dx * dx * dx;
  }

  /**
   * True volume that each cell stands for, m3; length n.
   *
   * <pre>  V = dx^3 + sum over its walls of dx^2 (s - dx / 2) n_d^2</pre>
   *
   * <p>Along any one axis the walls' distances make up the voxels' counting error exactly, column
   * by column; the squares of the normal's components share the work between the axes.
   */
  public double[] volumes() {
    double dx = grid.spacing();
    double[] v = new double[count()];
    java.util.Arrays.fill(v, cellVolume());
    for (int w = 0; w < walls.count(); w++) {
      double n = walls.cosine[w];
      v[walls.cell[w]] += dx * dx * (walls.distance[w] - 0.5 * dx) * n * n;
    }
    for (int c = 0; c < v.length; c++) {
      v[c] = Math.max(v[c], LEAST_VOLUME * cellVolume());
    }
    return v;
  }

  /**
   * How far the middle of a cell's true volume lies from the cube's, in voxels; x, y, z by turns,
   * length 3 n. The slice that a wall adds or takes lies at the wall, so along its axis the middle
   * moves by half of it:
   *
   * <pre>  sum over the cell's walls along the axis of +-(s / dx - 1/2) n_d^2 / 2</pre>
   */
  public float[] shifts() {
    float[] shift = new float[3 * count()];
    for (int w = 0; w < walls.count(); w++) {
      double n = walls.cosine[w];
      double slice = (walls.distance[w] / grid.spacing() - 0.5) * n * n;
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
      double d = grid.centre(cells[c]).distance(place);
      if (d < least) {
        least = d;
        best = c;
      }
    }
    return best;
  }

  /** Point on the true wall that link {@code w} meets, as x, y, z in metres. */
  public double[] wallPoint(int w) {
    int at = cells[walls.cell[w]];
    double[] p = new double[3];
    for (int a = 0; a < 3; a++) {
      p[a] = grid.centre(a, grid.position(at, a));
    }
    int face = walls.face[w];
    p[face / 2] += (face % 2 == 0 ? -1 : 1) * walls.distance[w];
    return p;
  }
}
