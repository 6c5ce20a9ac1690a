// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.grid.Joints;
import gelfront.grid.Refinement;
import gelfront.grid.UniformGrid;
import gelfront.mesh.Vec3;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What lies across each face of the plastisol's cells: a cell of the same size, a wall, or on the
 * sides of a refined box cells of the other size. A voxel's face that leads to small plastisol
 * cells only in part is a wall in the rest, in squares of the small cells' size.
 */
final class CellFaces {
  /** Share of a cell's edge below which a wall distance is not taken: conductances stay finite. */
  static final double LEAST_DISTANCE = 0.01;

  /** Least |n_d|: a wall seen edge-on takes no heat across this face. */
  static final double LEAST_COSINE = 0.05;

  private final CellNumbers numbers;
  private final Optional<Mouth> mouth;
  private final int[] neighbours;
  private final WallList walls = new WallList();
  private int joints;
  private int[] large = new int[64];
  private int[] small = new int[64];
  private byte[] jointFace = new byte[64];

  CellFaces(CellNumbers numbers, Optional<Mouth> mouth) {
    this.numbers = numbers;
    this.mouth = mouth;
    this.neighbours = new int[6 * numbers.cells().length];
    for (int c = 0; c < numbers.cells().length; c++) {
      ofItsSize(c);
    }
    for (int c = 0; c < numbers.cells().length; c++) {
      others(c);
    }
  }

  private void ofItsSize(int c) {
    for (int face = 0; face < 6; face++) {
      int other = numbers.same(c, face);
      neighbours[6 * c + face] = other < 0 ? c : other;
    }
  }

  private void others(int c) {
    for (int face = 0; face < 6; face++) {
      if (neighbours[6 * c + face] == c) {
        otherwise(c, face);
      }
    }
  }

  int[] neighbours() {
    return neighbours;
  }

  Cavity.Walls walls() {
    return walls.trimmed();
  }

  Joints joints() {
    return Joints.of(
        numbers.cells().length,
        Arrays.copyOf(large, joints),
        Arrays.copyOf(small, joints),
        Arrays.copyOf(jointFace, joints));
  }

  private void otherwise(int c, int face) {
    boolean joins =
        numbers.isVoxel(c)
            ? meetsSmall(c, face)
            : numbers.leavesBox(c, face) && numbers.voxelAcross(c, face) >= 0; // the voxel's turn
    if (!joins) {
      whole(c, face);
    }
  }

  /** All of a face is a wall; on a box's side what lies beyond it is a voxel. */
  private void whole(int c, int face) {
    VoxelLevel own = numbers.levelOf(c);
    double dx = own.grid().spacing();
    boolean leaves = !numbers.isVoxel(c) && numbers.leavesBox(c, face);
    double beyond = leaves ? numbers.level(0).grid().spacing() : dx;
    double[] wall = own.wall(numbers.cells()[c], face, 0.5 * (dx + beyond));
    add(c, face, own.grid(), wall, dx);
  }

  /** Joins a voxel to the small cells across a face; false if there is no plastisol. */
  private boolean meetsSmall(int c, int face) {
    int box = numbers.boxAcross(c, face);
    if (box < 0) {
      return false;
    }
    int[] cells = numbers.smallAcross(c, face, box);
    if (!holdPlastisol(box, cells)) {
      return false;
    }
    UniformGrid grid = numbers.levelOf(c).grid();
    double dx = grid.spacing();
    VoxelLevel level = numbers.level(box + 1);
    double edge = level.grid().spacing();
    double from = grid.centre(face / 2, grid.position(numbers.cells()[c], face / 2));
    for (int s : cells) {
      int other = numbers.small(box, s);
      if (other >= 0) {
        join(c, other, face);
      } else {
        double[] wall = level.wall(s, face, from, 0, 0.5 * (dx + edge));
        add(c, face, grid, wall[0] < 0 ? new double[] {0.5 * dx, 1} : wall, edge);
      }
    }
    return true;
  }

  private boolean holdPlastisol(int box, int[] cells) {
    for (int s : cells) {
      if (numbers.small(box, s) >= 0) {
        return true;
      }
    }
    return false;
  }

  private void join(int voxel, int cell, int face) {
    if (joints == large.length) {
      large = Arrays.copyOf(large, 2 * joints);
      small = Arrays.copyOf(small, 2 * joints);
      jointFace = Arrays.copyOf(jointFace, 2 * joints);
    }
    large[joints] = voxel;
    small[joints] = cell;
    jointFace[joints++] = (byte) face;
  }

  private void add(int c, int face, UniformGrid grid, double[] wall, double edge) {
    double distance = Math.max(LEAST_DISTANCE * grid.spacing(), wall[0]);
    double cosine = Math.max(LEAST_COSINE, wall[1]);
    boolean open = isMouth(grid, numbers.cells()[c], face, wall[0]);
    walls.add(c, face, distance, cosine, edge, open);
  }

  private boolean isMouth(UniformGrid grid, int cell, int face, double distance) {
    if (mouth.isEmpty()) {
      return false;
    }
    Vec3 p = grid.centre(cell);
    double[] q = {p.x(), p.y(), p.z()};
    q[face / 2] += (face % 2 == 0 ? -1 : 1) * distance;
    return mouth.get().holds(q[0], q[1], q[2], 1e-3 * grid.spacing());
  }

  /** Wall links as they come. */
  private static final class WallList {
    private int n;
    private int[] cell = new int[1 << 12];
    private byte[] face = new byte[1 << 12];
    private float[] distance = new float[1 << 12];
    private float[] cosine = new float[1 << 12];
    private double[] edge = new double[1 << 12];
    private boolean[] mouth = new boolean[1 << 12];

    void add(int c, int f, double s, double n1, double e, boolean open) {
      if (n == cell.length) {
        resize(2 * n);
      }
      cell[n] = c;
      face[n] = (byte) f;
      distance[n] = (float) s;
      cosine[n] = (float) n1;
      edge[n] = e;
      mouth[n++] = open;
    }

    private void resize(int length) {
      cell = Arrays.copyOf(cell, length);
      face = Arrays.copyOf(face, length);
      distance = Arrays.copyOf(distance, length);
      cosine = Arrays.copyOf(cosine, length);
      edge = Arrays.copyOf(edge, length);
      mouth = Arrays.copyOf(mouth, length);
    }

    Cavity.Walls trimmed() {
      resize(n);
      return new Cavity.Walls(cell, face, distance, cosine, edge, mouth);
    }
  }

  /** The refined boxes. */
  Refinement refinement(int factor) {
    List<Refinement.Patch> patches = numbers.patches();
    return patches.isEmpty() ? Refinement.NONE : new Refinement(factor, patches, joints());
  }
}
