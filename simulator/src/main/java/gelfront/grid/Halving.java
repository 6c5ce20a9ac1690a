// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * The half of a model that lies above a plane of symmetry. No heat and no liquid crosses the plane,
 * so that a face in it is one to nowhere: no neighbour, no wall.
 */
final class Halving {
  private final VoxelModel whole;
  private final MirrorImage image;

  /** Cells and mould cells above the plane, and their numbers there, -1 below it. */
  private final int[] kept;

  private final int[] number;
  private final int[] keptMould;
  private final int[] mouldNumber;

  Halving(VoxelModel whole, MirrorImage image) {
    this.whole = whole;
    this.image = image;
    Cavity cavity = whole.cavity();
    number = new int[cavity.count()];
    kept = kept(number, c -> image.keeps(cavity, c));
    MouldCells mould = whole.mould();
    mouldNumber = new int[mould.count()];
    int half = mould.grid().count(image.axis()) / 2;
    keptMould =
        kept(mouldNumber, i -> mould.grid().position(mould.cells()[i], image.axis()) >= half);
  }

  /** Numbers what is kept; -1 for the rest. */
  private static int[] kept(int[] number, IntPredicate keeps) {
    int[] kept = new int[number.length];
    int n = 0;
    for (int i = 0; i < number.length; i++) {
      number[i] = keeps.test(i) ? n : -1;
      if (number[i] >= 0) {
        kept[n++] = i;
      }
    }
    return Arrays.copyOf(kept, n);
  }

  Fold fold() {
    int[] cell = new int[number.length];
    for (int c = 0; c < cell.length; c++) {
      cell[c] = number[image.standIn(whole.cavity(), c)];
    }
    int[] mould = new int[mouldNumber.length];
    for (int i = 0; i < mould.length; i++) {
      mould[i] = standingFor(i);
    }
    return new Fold(model(), cell, kept, mould, keptMould, 2);
  }

  private VoxelModel model() {
    Cavity.Walls w = whole.cavity().walls();
    int[] at = new int[w.count()];
    int n = 0;
    for (int i = 0; i < at.length; i++) {
      if (number[w.cell()[i]] >= 0) {
        at[n++] = i;
      }
    }
    at = Arrays.copyOf(at, n);
    int[] behind = new int[n];
    double[] resistance = new double[n];
    for (int i = 0; i < n; i++) {
      int m = whole.mouldCell()[at[i]];
      behind[i] = m < 0 ? -1 : standingFor(m);
      resistance[i] = whole.resistance()[at[i]];
    }
    return new VoxelModel(cavity(walls(w, at)), mould(), behind, resistance);
  }

  private int standingFor(int m) {
    return mouldNumber[m] >= 0 ? mouldNumber[m] : mouldNumber[image.mould()[m]];
  }

  private Cavity.Walls walls(Cavity.Walls w, int[] at) {
    int n = at.length;
    int[] cell = new int[n];
    byte[] face = new byte[n];
    float[] distance = new float[n];
    float[] cosine = new float[n];
    double[] edge = new double[n];
    boolean[] mouth = new boolean[n];
    for (int i = 0; i < n; i++) {
      cell[i] = number[w.cell()[at[i]]];
      face[i] = w.face()[at[i]];
      distance[i] = w.distance()[at[i]];
      cosine[i] = w.cosine()[at[i]];
      edge[i] = w.edge()[at[i]];
      mouth[i] = w.mouth()[at[i]];
    }
    return new Cavity.Walls(cell, face, distance, cosine, edge, mouth);
  }

  private Cavity cavity(Cavity.Walls walls) {
    Cavity c = whole.cavity();
    int n = kept.length;
    int[] cells = new int[n];
    byte[] region = new byte[n];
    int[] neighbours = new int[6 * n];
    for (int i = 0; i < n; i++) {
      region[i] = c.region()[kept[i]];
      for (int f = 0; f < 6; f++) {
        int to = number[c.neighbours()[6 * kept[i] + f]];
        neighbours[6 * i + f] = to < 0 ? i : to;
      }
    }
    UniformGrid grid = above(c.grid(), image.plane());
    renumber(c.grid(), image.plane(), grid, 0, c.voxels(), cells);
    return new Cavity(
        grid,
        cells,
        neighbours,
        region,
        walls,
        refinement(c, cells),
        c.mirrors().and(image.axis()));
  }

  /** A grid without the positions below one. */
  private UniformGrid above(UniformGrid g, int from) {
    int a = image.axis();
    double edge = g.edge(a, from);
    Vec3 o = g.origin();
    Vec3 origin = new Vec3(a == 0 ? edge : o.x(), a == 1 ? edge : o.y(), a == 2 ? edge : o.z());
    return new UniformGrid(
        origin,
        g.spacing(),
        g.nx() - (a == 0 ? from : 0),
        g.ny() - (a == 1 ? from : 0),
        g.nz() - (a == 2 ? from : 0));
  }

  /** Grid numbers of the cells from {@code first} to before {@code end} that are kept. */
  private void renumber(
      UniformGrid old, int from, UniformGrid fresh, int first, int end, int[] cells) {
    for (int c = first; c < end; c++) {
      if (number[c] >= 0) {
        int at = whole.cavity().cells()[c];
        int[] p = {old.position(at, 0), old.position(at, 1), old.position(at, 2)};
        p[image.axis()] -= from;
        cells[number[c]] = fresh.index(p[0], p[1], p[2]);
      }
    }
  }

  private Refinement refinement(Cavity c, int[] cells) {
    Refinement r = c.refinement();
    List<Refinement.Patch> patches = new ArrayList<>();
    for (Refinement.Patch p : r.patches()) {
      int first = before(p.first());
      int end = before(p.end());
      if (first < end) {
        int[] corner = p.corner().clone();
        int from = Math.max(0, image.plane() - corner[image.axis()]) * r.factor();
        corner[image.axis()] = Math.max(0, corner[image.axis()] - image.plane());
        UniformGrid grid = above(p.grid(), from);
        renumber(p.grid(), from, grid, p.first(), p.end(), cells);
        patches.add(new Refinement.Patch(grid, corner, first, end));
      }
    }
    return patches.isEmpty()
        ? Refinement.NONE
        : new Refinement(r.factor(), patches, joints(r.joints()));
  }

  /** Kept cells with a lower number. */
  private int before(int cell) {
    int at = Arrays.binarySearch(kept, cell);
    return at >= 0 ? at : -at - 1;
  }

  private Joints joints(Joints all) {
    int[] start = new int[kept.length + 1];
    int[] other = new int[all.count()];
    byte[] face = new byte[all.count()];
    int n = 0;
    for (int i = 0; i < kept.length; i++) {
      for (int e = all.first(kept[i]); e < all.end(kept[i]); e++) {
        if (number[all.other()[e]] >= 0) {
          other[n] = number[all.other()[e]];
          face[n++] = all.face()[e];
        }
      }
      start[i + 1] = n;
    }
    return new Joints(start, Arrays.copyOf(other, n), Arrays.copyOf(face, n));
  }

  private MouldCells mould() {
    MouldCells m = whole.mould();
    int n = keptMould.length;
    int[] cells = new int[n];
    int[] at = new int[m.number().length];
    Arrays.fill(at, -1);
    int[] neighbour = new int[3 * n];
    double[][] one = new double[4][n];
    double[][] three = new double[2][3 * n];
    for (int i = 0; i < n; i++) {
      int k = keptMould[i];
      cells[i] = m.cells()[k];
      at[cells[i]] = i;
      one[0][i] = m.capacity()[k];
      one[1][i] = m.startTemperature()[k];
      one[2][i] = m.airConductance()[k];
      one[3][i] = m.airTemperature()[k];
      for (int a = 0; a < 3; a++) {
        int to = m.neighbour()[3 * k + a];
        neighbour[3 * i + a] = to < 0 ? -1 : mouldNumber[to];
        three[0][3 * i + a] = m.conductance()[3 * k + a];
        three[1][3 * i + a] = m.touching()[3 * k + a];
      }
    }
    return new MouldCells(
        m.grid(), cells, at, one[0], one[1], neighbour, three[0], three[1], one[2], one[3]);
  }
}
