package gelfront.dent;

import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The part cut into slices across its long axis (the first principal axis of its cells).
 *
 * <pre>  value of slice s = sum over cells of max(0, 1 - |u_c - s|) value_c</pre>
 *
 * <p>with u_c the cell's place along the axis in slices, from the middle of slice 0. A slice is a
 * whole number of voxels thick, and each cell is shared by the two slices nearest to it: along an
 * aligned bar every slice then gets exactly the same, however the voxels lie to the slices.
 */
final class Sections {
  private static final double THICKNESS = 1e-3;

  private final Vec3 axis;
  private final double thickness;
  private final double start;
  private final int[] lower;
  private final float[] upperShare;
  private final double[] area;
  private final double[] perimeter;

  private Sections(Cavity cavity, double[] volumes) {
    axis = axis(cavity);
    double dx = cavity.grid().spacing();
    thickness = Math.max(2, Math.round(THICKNESS / dx)) * dx;
    int n = cavity.count();
    double[] along = new double[n];
    double lo = Double.POSITIVE_INFINITY;
    double hi = Double.NEGATIVE_INFINITY;
    for (int c = 0; c < n; c++) {
      if (isPart(cavity, c)) {
        double half = cavity.edge(c) / 2;
        along[c] = cavity.centre(c).dot(axis);
        lo = Math.min(lo, along[c] - half);
        hi = Math.max(hi, along[c] + half);
      }
    }
    int count = Math.max(1, (int) Math.round((hi - lo) / thickness));
    start = lo + 0.5 * thickness;
    lower = new int[n];
    upperShare = new float[n];
    for (int c = 0; c < n; c++) {
      double u = Math.max(0, Math.min(count - 1, (along[c] - lo) / thickness - 0.5));
      lower[c] = isPart(cavity, c) ? (int) u : -1;
      upperShare[c] = (float) (u - (int) u);
    }
    area = new double[count];
    for (int c = 0; c < n; c++) {
      spread(c, volumes[c] / thickness, area);
    }
    perimeter = perimeter(cavity);
  }

  /**
   * @param volumes m3 that each cell stands for
   */
  static Sections of(Cavity cavity, double[] volumes) {
    return new Sections(cavity, volumes);
  }

  /**
   * Wall that goes round, per length: a link along d stands for dx^2 n_d of true wall, and counts
   * by how far d lies across the axis. So a sloping wall counts by the square of its normal's part
   * across, and an end face not at all.
   */
  private double[] perimeter(Cavity cavity) {
    double[] along = {axis.x(), axis.y(), axis.z()};
    double[] sum = new double[area.length];
    Cavity.Walls walls = cavity.walls();
    for (int w = 0; w < walls.count(); w++) {
      if (!walls.mouth()[w]) {
        double a = along[walls.face()[w] / 2];
        double face = walls.edge()[w] * walls.edge()[w] / thickness;
        spread(walls.cell()[w], face * walls.cosine()[w] * (1 - a * a), sum);
      }
    }
    return sum;
  }

  /** Adds a cell's value to the slices it is shared by; nothing for the feed system's cells. */
  void spread(int cell, double value, double[] slices) {
    int s = lower[cell];
    if (s < 0) {
      return;
    }
    double up = upperShare[cell];
    slices[s] += (1 - up) * value;
    if (up > 0) {
      slices[s + 1] += up * value;
    }
  }

  private static boolean isPart(Cavity cavity, int c) {
    return cavity.region()[c] == Cavity.Region.PART.ordinal();
  }

  private static Vec3 axis(Cavity cavity) {
    double[] sum = new double[3];
    double[][] square = new double[3][3];
    double n = 0;
    for (int c = 0; c < cavity.count(); c++) {
      if (!isPart(cavity, c)) {
        continue;
      }
      double share = cavity.cubeVolume(c) / cavity.cubeVolume(0);
      double[] p = new double[3];
      for (int a = 0; a < 3; a++) {
        p[a] = cavity.place(c, a);
        sum[a] += share * p[a];
      }
      for (int a = 0; a < 3; a++) {
        for (int b = 0; b < 3; b++) {
          square[a][b] += share * p[a] * p[b];
        }
      }
      n += share;
    }
    if (n < 2) {
      return new Vec3(1, 0, 0);
    }
    DMatrixRMaj spread = new DMatrixRMaj(3, 3);
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        spread.set(a, b, square[a][b] / n - sum[a] / n * sum[b] / n);
      }
    }
    EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(3, true, true);
    eigen.decompose(spread);
    int longest = 0;
    for (int i = 1; i < 3; i++) {
      if (eigen.getEigenvalue(i).getReal() > eigen.getEigenvalue(longest).getReal()) {
        longest = i;
      }
    }
    DMatrixRMaj v = eigen.getEigenVector(longest);
    return new Vec3(v.get(0), v.get(1), v.get(2)).unit();
  }

  /** The long axis, length one. */
  Vec3 axis() {
    return axis;
  }

  /** Metres along the axis of the middle of slice 0. */
  double start() {
    return start;
  }

  int count() {
    return area.length;
  }

  /** Slice whose middle is nearest to a plastisol cell, -1 for the feed system's. */
  int slice(int cell) {
    return upperShare[cell] > 0.5 ? lower[cell] + 1 : lower[cell];
  }

  /** Metres: of the circle of equal area. */
  double radius(int s) {
    return Math.sqrt(area[s] / Math.PI);
  }

  /** m2. */
  double area(int s) {
    return area[s];
  }

  /** Metres of wall round it. */
  double perimeter(int s) {
    return perimeter[s];
  }

  /** Metres of one slice along the axis. */
  double thickness() {
    return thickness;
  }
}
