// SPDX-License-Identifier: Apache-2.0
package gelfront.heat;

import gelfront.grid.Cavity;
import gelfront.grid.Joints;
import java.util.Arrays;

/**
 * Faces that do not conduct as one between even cubes does: where the middles of equal cells are
 * not one edge apart because a wall adds to a cell or takes from it, and where cells of two sizes
 * meet. Each face twice, once from either side, sorted by cell, so that any range of cells can be
 * worked on alone.
 *
 * <pre>
 *   excess = A / (d e) - 1 between equal cells, A / (d e) between others
 *   A the face's area, d from middle to middle along its axis, e the edge of the cell it is seen from
 * </pre>
 *
 * <p>Seen from either side k e excess is the same, so that what one cell gives the other gets.
 */
final class UnevenFaces {
  private int count;
  private int[] cell = new int[64];
  private int[] other = new int[64];
  private double[] excess = new double[64];

  private UnevenFaces() {}

  static UnevenFaces of(Cavity cavity) {
    UnevenFaces faces = new UnevenFaces();
    float[] shift = cavity.shifts();
    for (int c = 0; c < cavity.count(); c++) {
      faces.moved(cavity, shift, c);
      faces.joined(cavity, shift, c);
    }
    faces.resize(faces.count);
    return faces;
  }

  private void moved(Cavity cavity, float[] shift, int c) {
    for (int f = 0; f < 6; f++) {
      int j = cavity.neighbours()[6 * c + f];
      double further = (shift[3 * j + f / 2] - shift[3 * c + f / 2]) * (f % 2 == 0 ? -1 : 1);
      if (j != c && further != 0) {
        add(c, j, 1 / (1 + further) - 1);
      }
    }
  }

  private void joined(Cavity cavity, float[] shift, int c) {
    Joints joints = cavity.refinement().joints();
    double small = cavity.smallEdge();
    double own = cavity.edge(c);
    for (int i = joints.first(c); i < joints.end(c); i++) {
      int j = joints.other()[i];
      int axis = joints.face()[i] / 2;
      double outwards = joints.face()[i] % 2 == 0 ? -1 : 1;
      double other = cavity.edge(j);
      double apart =
          0.5 * (own + other)
              + outwards * (other * shift[3 * j + axis] - own * shift[3 * c + axis]);
      add(c, j, small * small / (apart * own));
    }
  }

  private void add(int c, int j, double more) {
    if (count == cell.length) {
      resize(2 * count);
    }
    cell[count] = c;
    other[count] = j;
    excess[count++] = more;
  }

  private void resize(int length) {
    cell = Arrays.copyOf(cell, length);
    other = Arrays.copyOf(other, length);
    excess = Arrays.copyOf(excess, length);
  }

  int count() {
    return count;
  }

  /** Of all entries, rising; not to be modified. */
  int[] cells() {
    return cell;
  }

  int cell(int entry) {
    return cell[entry];
  }

  int other(int entry) {
    return other[entry];
  }

  /** Conductance over that of a face between even cubes, less that one's where it is counted. */
  double excess(int entry) {
    return excess[entry];
  }
}
