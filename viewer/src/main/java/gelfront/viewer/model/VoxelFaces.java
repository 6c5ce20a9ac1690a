package gelfront.viewer.model;

import gelfront.mesh.Vec3;
import gelfront.result.Fields;
import java.util.Arrays;

/**
 * The faces one sees of all cells that set at a time or later: those towards a cell not shown. One
 * quad a face, corners counter-clockwise seen from outside.
 *
 * @param positions x, y, z of four corners a face, millimetres from the grid's middle; 12 a face
 * @param normals x, y, z a corner; 12 a face
 * @param setTime s of the face's cell; one a face
 */
public record VoxelFaces(float[] positions, float[] normals, float[] setTime) {

  /** Corner offsets per face -x +x -y +y -z +z. */
  private static final int[][] CORNERS = {
    {0, 0, 0, 0, 0, 1, 0, 1, 1, 0, 1, 0},
    {1, 0, 0, 1, 1, 0, 1, 1, 1, 1, 0, 1},
    {0, 0, 0, 1, 0, 0, 1, 0, 1, 0, 0, 1},
    {0, 1, 0, 0, 1, 1, 1, 1, 1, 1, 1, 0},
    {0, 0, 0, 0, 1, 0, 1, 1, 0, 1, 0, 0},
    {0, 0, 1, 1, 0, 1, 1, 1, 1, 0, 1, 1}
  };

  public int count() {
    return setTime.length;
  }

  /**
   * @param from s; cells that set earlier are left away
   */
  public static VoxelFaces of(Fields f, double from) {
    return new Builder(f, from).build();
  }

  /** The latest set time, s; cells that never set do not count. */
  public static double latest(Fields f) {
    double most = 0;
    for (float t : f.setTime()) {
      most = Float.isInfinite(t) ? most : Math.max(most, t);
    }
    return most;
  }

  private static final class Builder {
    private final Fields fields;
    private final boolean[] shown;
    private float[] positions = new float[12 << 9];
    private float[] normals = new float[12 << 9];
    private float[] setTime = new float[1 << 9];
    private int n;

    Builder(Fields fields, double from) {
      this.fields = fields;
      shown = new boolean[fields.nx() * fields.ny() * fields.nz()];
      for (int c = 0; c < fields.cells().length; c++) {
        shown[fields.cells()[c]] = fields.setTime()[c] >= from;
      }
    }

    VoxelFaces build() {
      for (int c = 0; c < fields.cells().length; c++) {
        int cell = fields.cells()[c];
        for (int face = 0; face < 6 && shown[cell]; face++) {
          if (!neighbourShown(cell, face)) {
            add(cell, face, fields.setTime()[c]);
          }
        }
      }
      return new VoxelFaces(
          Arrays.copyOf(positions, 12 * n),
          Arrays.copyOf(normals, 12 * n),
          Arrays.copyOf(setTime, n));
    }

    private boolean neighbourShown(int cell, int face) {
      int[] size = {fields.nx(), fields.ny(), fields.nz()};
      int[] stride = {1, size[0], size[0] * size[1]};
      int axis = face / 2;
      int at = cell / stride[axis] % size[axis];
      int step = face % 2 == 0 ? -1 : 1;
      boolean inside = at + step >= 0 && at + step < size[axis];
      return inside && shown[cell + step * stride[axis]];
    }

    private void add(int cell, int face, float time) {
      if (n == setTime.length) {
        setTime = Arrays.copyOf(setTime, 2 * n);
        positions = Arrays.copyOf(positions, 24 * n);
        normals = Arrays.copyOf(normals, 24 * n);
      }
      Vec3 half = new Vec3(fields.nx(), fields.ny(), fields.nz()).times(0.5);
      int[] at = {
        cell % fields.nx(), cell / fields.nx() % fields.ny(), cell / fields.nx() / fields.ny()
      };
      double[] middle = {half.x(), half.y(), half.z()};
      double mm = fields.spacing() * 1e3;
      for (int i = 0; i < 12; i++) {
        int a = i % 3;
        positions[12 * n + i] = (float) ((at[a] + CORNERS[face][i] - middle[a]) * mm);
        normals[12 * n + i] = a == face / 2 ? (face % 2 == 0 ? -1 : 1) : 0;
      }
      setTime[n++] = time;
    }
  }
}
