// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import java.util.ArrayList;
import java.util.List;

/** Lines of equal value of a bilinear surface over evenly numbered rows and columns. */
final class Contours {
  private Contours() {}

  /**
   * Each patch is cut into triangles of a finer grid, in which the surface is taken as flat.
   *
   * @param values by row and column; a patch with a NaN corner has no line
   * @param fine parts that a patch's side is cut into
   * @return pieces of line: column and row of one end, column and row of the other
   */
  static List<double[]> of(double[][] values, double level, int fine) {
    List<double[]> out = new ArrayList<>();
    int rows = (values.length - 1) * fine;
    int columns = (values[0].length - 1) * fine;
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        double[] a = point(values, r, c, fine);
        double[] b = point(values, r, c + 1, fine);
        double[] d = point(values, r + 1, c, fine);
        double[] e = point(values, r + 1, c + 1, fine);
        triangle(out, level, a, b, e);
        triangle(out, level, a, e, d);
      }
    }
    return out;
  }

  /** Column, row, value. */
  private static double[] point(double[][] values, int r, int c, int fine) {
    double row = (double) r / fine;
    double column = (double) c / fine;
    return new double[] {column, row, HeatMap.at(values, row, column)};
  }

  private static void triangle(List<double[]> out, double level, double[]... p) {
    double[] piece = new double[4];
    int ends = 0;
    for (int i = 0; i < 3; i++) {
      double[] a = p[i];
      double[] b = p[(i + 1) % 3];
      if (a[2] >= level != b[2] >= level && ends < 4) {
        double s = (level - a[2]) / (b[2] - a[2]);
        piece[ends++] = a[0] + s * (b[0] - a[0]);
        piece[ends++] = a[1] + s * (b[1] - a[1]);
      }
    }
    if (ends == 4 && Double.isFinite(piece[0] + piece[1] + piece[2] + piece[3])) {
      out.add(piece);
    }
  }
}
