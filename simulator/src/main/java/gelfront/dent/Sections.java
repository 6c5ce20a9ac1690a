package gelfront.dent;

import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The part cut into slices across its long axis (the first principal axis of its cells). Slice s
 * holds the part's cells whose place along the axis lies in [s, s+1) thickness from its end.
 */
final class Sections {
  private final Vec3 axis;
  private final double thickness;
  private final int[] slice;
  private final double[] radius;
  private final double[] area;

  private Sections(Vec3 axis, double thickness, int[] slice, double[] area) {
    this.axis = axis;
    this.thickness = thickness;
    this.slice = slice;
    this.area = area;
    this.radius = new double[area.length];
    for (int s = 0; s < area.length; s++) {
      radius[s] = Math.sqrt(area[s] / Math.PI);
    }
  }

  static Sections of(Cavity cavity) {
    Vec3 axis = axis(cavity);
    double thickness = Math.max(1e-3, 2 * cavity.grid().spacing());
    int n = cavity.count();
    double[] along = new double[n];
    double lo = Double.POSITIVE_INFINITY;
    double hi = Double.NEGATIVE_INFINITY;
    for (int c = 0; c < n; c++) {
      if (isPart(cavity, c)) {
        along[c] = cavity.grid().centre(cavity.cells()[c]).dot(axis);
        lo = Math.min(lo, along[c]);
        hi = Math.max(hi, along[c]);
      }
    }
    int count = Math.max(1, (int) Math.ceil((hi - lo) / thickness));
    int[] slice = new int[n];
    double[] area = new double[count];
    for (int c = 0; c < n; c++) {
      slice[c] = isPart(cavity, c) ? Math.min(count - 1, (int) ((along[c] - lo) / thickness)) : -1;
      if (slice[c] >= 0) {
        area[slice[c]] += cavity.cellVolume() / thickness;
      }
    }
    return new Sections(axis, thickness, slice, area);
  }

  private static boolean isPart(Cavity cavity, int c) {
    return cavity.region()[c] == Cavity.Region.PART.ordinal();
  }

  private static Vec3 axis(Cavity cavity) {
    double[] sum = new double[3];
    double[][] square = new double[3][3];
    int n = 0;
    for (int c = 0; c < cavity.count(); c++) {
      if (!isPart(cavity, c)) {
        continue;
      }
      double[] p = new double[3];
      for (int a = 0; a < 3; a++) {
        p[a] = cavity.grid().position(cavity.cells()[c], a);
        sum[a] += p[a];
      }
      for (int a = 0; a < 3; a++) {
        for (int b = 0; b < 3; b++) {
          square[a][b] += p[a] * p[b];
        }
      }
      n++;
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

  int count() {
    return area.length;
  }

  /** Slice of a plastisol cell, -1 for the feed system's. */
  int slice(int cell) {
    return slice[cell];
  }

  /** Metres: of the circle of equal area. */
  double radius(int s) {
    return radius[s];
  }

  /** m2. */
  double area(int s) {
    return area[s];
  }

  /** Metres of one slice along the axis. */
  double thickness() {
    return thickness;
  }
}
