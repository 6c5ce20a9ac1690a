package gelfront.viewer.model;

import gelfront.mesh.Vec3;
import gelfront.result.Fields;
import java.util.Arrays;

/**
 * The faces one sees of all cells that set at a time or later: those towards a cell not shown. One
 * quad a face, corners counter-clockwise seen from outside.
 *
 * @param positions x, y, z of four corners a face, millimetres, part coordinates; 12 a face
 * @param side which way a face looks: 0 to 5 for -x +x -y +y -z +z; one a face
 * @param setTime s of the face's cell, +infinity where it never set; one a face
 */
public record VoxelFaces(float[] positions, byte[] side, float[] setTime) {

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
   * @param cut leaves away cells whose middle it does not keep
   */
  public static VoxelFaces of(Fields f, double from, Cut cut) {
    return new Builder(f, from, cut).build();
  }

  private static final class Builder {
    private final Fields fields;
    private final int[] size;
    private final boolean[] shown;
    private float[] positions = new float[12 << 9];
    private byte[] side = new byte[1 << 9];
    private float[] setTime = new float[1 << 9];
    private int n;

    Builder(Fields fields, double from, Cut cut) {
      this.fields = fields;
      size = new int[] {fields.nx(), fields.ny(), fields.nz()};
      shown = new boolean[size[0] * size[1] * size[2]];
      for (int c = 0; c < fields.cells().length; c++) {
        int cell = fields.cells()[c];
        shown[cell] = fields.setTime()[c] >= from && cut.keeps(fields.centre(cell).times(1e3));
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
          Arrays.copyOf(positions, 12 * n), Arrays.copyOf(side, n), Arrays.copyOf(setTime, n));
    }

    private int stride(int axis) {
      return axis == 0 ? 1 : axis == 1 ? size[0] : size[0] * size[1];
    }

    private boolean neighbourShown(int cell, int face) {
      int axis = face / 2;
      int step = face % 2 == 0 ? -1 : 1;
      int to = cell / stride(axis) % size[axis] + step;
      return to >= 0 && to < size[axis] && shown[cell + step * stride(axis)];
    }

    private void add(int cell, int face, float time) {
      if (n == setTime.length) {
        setTime = Arrays.copyOf(setTime, 2 * n);
        side = Arrays.copyOf(side, 2 * n);
        positions = Arrays.copyOf(positions, 24 * n);
      }
      Vec3 centre = fields.centre(cell);
      double[] middle = {centre.x(), centre.y(), centre.z()};
      for (int i = 0; i < 12; i++) {
        double corner = middle[i % 3] + (CORNERS[face][i] - 0.5) * fields.spacing();
        positions[12 * n + i] = (float) (1e3 * corner);
      }
      side[n] = (byte) face;
      setTime[n++] = time;
    }
  }
}
