// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.Vec3;
import gelfront.result.Fields;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CellFacesTest {
  private static final double LATEST = 24;

  private record Face(Vec3 middle, Vec3 outward, double share) {}

  private static CellFaces of(Fields f) {
    return CellFaces.of(CellGrid.of(f, LATEST, 1000, true, 0), LATEST);
  }

  /** What the shader leaves: faces of the bins that are on, whose interval holds the slider. */
  private static List<Face> shown(Fields f, double from) {
    CellFaces faces = of(f);
    double share = from / LATEST;
    List<Face> out = new ArrayList<>();
    for (int b = CellFaces.bin(share); b < CellFaces.BINS; b++) {
      add(faces.outer(b), share, out);
    }
    if (share > 0) {
      add(faces.inner(CellFaces.bin(share)), share, out);
    }
    return out;
  }

  private static void add(CellFaces.Bin bin, double share, List<Face> out) {
    for (int i = 0; i < bin.count(); i++) {
      float s = (float) share;
      if (bin.times()[3 * i] < s && s <= bin.times()[3 * i + 1]) {
        Vec3 a = corner(bin, i, 0);
        Vec3 n = corner(bin, i, 1).minus(a).cross(corner(bin, i, 2).minus(a));
        out.add(new Face(a.plus(corner(bin, i, 2)).times(0.5), n, bin.times()[3 * i + 1]));
      }
    }
  }

  private static Vec3 corner(CellFaces.Bin b, int face, int c) {
    int o = 12 * face + 3 * c;
    return new Vec3(b.positions()[o], b.positions()[o + 1], b.positions()[o + 2]);
  }

  /** Number of faces that are seen. */
  static int seen(Fields f, double from) {
    return shown(f, from).size();
  }

  @Test
  void aWholeBlockShowsItsOutsideOnly() {
    assertEquals(2 * (4 * 3 + 3 * 2 + 4 * 2), seen(Blocks.block(), 0));
  }

  @Test
  void oneLateCellStandsAloneAndFacesOutwards() {
    List<Face> faces = shown(Blocks.block(), 23.5);

    Vec3 middle = new Vec3(3.5, 2.5, 1.5);
    assertEquals(6, faces.size());
    for (Face f : faces) {
      assertEquals(1, f.share(), 1e-6);
      assertEquals(0.5, f.middle().distance(middle), 1e-6);
      assertEquals(1, f.outward().dot(f.middle().minus(middle)) * 2, 1e-6);
    }
  }

  @Test
  void atEveryPlaceOfTheSliderFacesAreThoseBetweenShownAndHiddenCells() {
    Fields block = Blocks.block();
    for (double from = 0.5; from < 24; from++) {
      int expected = 0;
      for (int c = 0; c < 24; c++) {
        expected += c + 1 < from ? 0 : open(c, from);
      }
      assertEquals(expected, seen(block, from), "from " + from);
    }
  }

  /** Sides of a cell of the block beside which nothing is shown. */
  private static int open(int c, double from) {
    int[] at = {c % 4, c / 4 % 3, c / 12};
    int[] size = {4, 3, 2};
    int[] step = {1, 4, 12};
    int n = 0;
    for (int axis = 0; axis < 3; axis++) {
      for (int way = -1; way < 2; way += 2) {
        int to = at[axis] + way;
        n += to < 0 || to >= size[axis] || c + way * step[axis] + 1 < from ? 1 : 0;
      }
    }
    return n;
  }

  @Test
  void cellsThatNeverSetCountAsTheLatest() {
    float[] set = new float[24];
    set[5] = Float.POSITIVE_INFINITY;

    assertEquals(6, seen(Blocks.with(set), 24));
  }

  @Test
  void tooManyCellsAreDrawnLarger() {
    CellGrid g = CellGrid.of(Blocks.block(), LATEST, 3, true, 0);

    assertEquals(2, g.edge(), 1e-9);
    assertEquals(2, g.nx());
    assertTrue(g.setAt(0, 0, 0) < g.setAt(1, 0, 0), "later to the right");
  }
}
