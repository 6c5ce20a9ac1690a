// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
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

  private final Cavity cavity;
  private final IntPredicate member;
  private final Vec3[] centre;

  /** Metres of each cell's middle, x, y and z. */
  private final double[][] place;

  private Sections(Cavity cavity, double[] volumes, IntPredicate member) {
    this.cavity = cavity;
    this.member = member;
    place = cavity.centres();
    axis = longest();
    double dx = cavity.grid().spacing();
    thickness = Math.max(2, Math.round(THICKNESS / dx)) * dx;
    lower = new int[cavity.count()];
    upperShare = new float[lower.length];
    double[] along = along();
    double[] ends = ends(along);
    start = ends[0] + 0.5 * thickness;
    area = new double[Math.max(1, (int) Math.round((ends[1] - ends[0]) / thickness))];
    share(along);
    for (int c = 0; c < lower.length; c++) {
      spread(c, volumes[c] / thickness, area);
    }
    perimeter = perimeter(cavity);
    centre = centres(volumes);
  }

  /** Metres of each cell's middle along the axis. */
  private double[] along() {
    double[] along = new double[lower.length];
    for (int c = 0; c < along.length; c++) {
      along[c] = place[0][c] * axis.x() + place[1][c] * axis.y() + place[2][c] * axis.z();
    }
    return along;
  }

  /** Where the part begins and ends along the axis, metres. */
  private double[] ends(double[] along) {
    double lo = Double.POSITIVE_INFINITY;
    double hi = Double.NEGATIVE_INFINITY;
    for (int c = 0; c < along.length; c++) {
      if (member.test(c)) {
        double half = cavity.edge(c) / 2;
        lo = Math.min(lo, along[c] - half);
        hi = Math.max(hi, along[c] + half);
      }
    }
    return new double[] {lo, hi};
  }

  /** Shares each of the part's cells between the two slices nearest to it. */
  private void share(double[] along) {
    for (int c = 0; c < along.length; c++) {
      double u = Math.max(0, Math.min(area.length - 1, (along[c] - start) / thickness));
      lower[c] = member.test(c) ? (int) u : -1;
      upperShare[c] = (float) (u - (int) u);
    }
  }

  /**
   * @param volumes m3 that each cell stands for
   * @param member cells that count: those of the part, or of one cavity
   */
  static Sections of(Cavity cavity, double[] volumes, IntPredicate member) {
    return new Sections(cavity, volumes, member);
  }

  private Vec3[] centres(double[] volumes) {
    double[][] moment = new double[3][area.length];
    for (int c = 0; c < lower.length; c++) {
      for (int a = 0; a < 3 && lower[c] >= 0; a++) {
        spread(c, volumes[c] * place[a][c], moment[a]);
      }
    }
    Vec3[] centres = new Vec3[area.length];
    for (int s = 0; s < centres.length; s++) {
      double v = Math.max(Double.MIN_NORMAL, volume(s));
      centres[s] = new Vec3(moment[0][s], moment[1][s], moment[2][s]).times(1 / v);
    }
    return centres;
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

  private Vec3 longest() {
    double[] share = new double[cavity.count()];
    for (int c = 0; c < share.length; c++) {
      share[c] = member.test(c) ? cavity.cubeVolume(c) / cavity.cubeVolume(0) : 0;
    }
    double n = Arrays.stream(share).sum();
    if (n < 2) {
      return new Vec3(1, 0, 0);
    }
    double[][] off = {offMiddle(share, n, 0), offMiddle(share, n, 1), offMiddle(share, n, 2)};
    DMatrixRMaj spread = new DMatrixRMaj(3, 3);
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        spread.set(a, b, sum(share, off[a], off[b]) / n);
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

  /** Voxels from the mean place of what is shared; exact where that is a grid plane's. */
  private double[] offMiddle(double[] share, double n, int axis) {
    double[] off = new double[share.length];
    double sum = 0;
    for (int c = 0; c < off.length; c++) {
      off[c] = cavity.place(c, axis);
      sum += share[c] * off[c];
    }
    double mean = sum / n;
    for (int c = 0; c < off.length; c++) {
      off[c] -= mean;
    }
    return off;
  }

  /** Second moment of what is shared. */
  private static double sum(double[] share, double[] x, double[] y) {
    double sum = 0;
    for (int c = 0; c < x.length; c++) {
      sum += share[c] * x[c] * y[c];
    }
    return sum;
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

  /** Metres along a grid axis of a cell's middle. */
  double place(int cell, int a) {
    return place[a][cell];
  }

  /** Middle of a slice, metres. */
  Vec3 centre(int s) {
    return centre[s];
  }

  /** m3. */
  double volume(int s) {
    return area[s] * thickness;
  }

  /** Value of the slices at a cell of the part, linear between their middles. */
  double at(int cell, double[] slices) {
    double up = upperShare[cell];
    int s = lower[cell];
    return up > 0 ? (1 - up) * slices[s] + up * slices[s + 1] : slices[s];
  }

  /**
   * Mean modulus of what has set, per slice, Pa.
   *
   * @param temperature °C of a cell
   */
  double[] modulus(
      IntToDoubleFunction temperature, double[] volumes, double noFlow, GelModulus gel) {
    double[] sum = new double[area.length];
    double[] v = new double[area.length];
    for (int c = 0; c < lower.length; c++) {
      double t = lower[c] < 0 ? noFlow : temperature.applyAsDouble(c);
      if (t < noFlow) {
        spread(c, volumes[c], v);
        spread(c, volumes[c] * gel.at(t), sum);
      }
    }
    for (int s = 0; s < sum.length; s++) {
      sum[s] = v[s] > 0 ? sum[s] / v[s] : gel.at(noFlow);
    }
    return sum;
  }

  /** Slice whose middle is nearest to a plastisol cell, -1 for the feed system's. */
  int slice(int cell) {
    return lower[cell] >= 0 && upperShare[cell] > 0.5 ? lower[cell] + 1 : lower[cell];
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
