// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.Vec3;
import gelfront.result.Fields;
import java.util.Arrays;

/**
 * Set and cut-off times of a result on a full grid, thinned so that a picture can hold them: so
 * many cells along each edge become one.
 *
 * @param origin mm, lower corner of cell (0, 0, 0)
 * @param edge mm, of a cell here
 * @param nx cells along x
 * @param ny cells along y
 * @param nz cells along z
 * @param set s, the latest of the cells in it; {@link #EMPTY} where half of it or more is mould;
 *     index i + nx (j + ny k)
 * @param cut s, the cut-off that goes with it
 */
public record CellGrid(Vec3 origin, double edge, int nx, int ny, int nz, float[] set, float[] cut) {
  /** In the place of a time where there is no plastisol. */
  public static final float EMPTY = -1;

  /**
   * @param latest s that stands for cells that never set
   * @param most cells that the full grid, or the plastisol where {@code byPlastisol}, may have
   * @param byPlastisol what is counted
   * @param margin cells of mould on each side
   */
  public static CellGrid of(Fields f, double latest, int most, boolean byPlastisol, int margin) {
    int[] box = box(f);
    int by = 1;
    while (count(f, box, by, byPlastisol) > most) {
      by++;
    }
    return new Filling(f, box, by, margin, (float) latest).grid();
  }

  private static long count(Fields f, int[] box, int by, boolean byPlastisol) {
    if (byPlastisol) {
      return f.cells().length / ((long) by * by * by);
    }
    long n = 1;
    for (int a = 0; a < 3; a++) {
      n *= (box[a + 3] - box[a]) / by + 1;
    }
    return n;
  }

  /** Least and greatest i, j, k of the plastisol. */
  private static int[] box(Fields f) {
    int[] box = {f.nx(), f.ny(), f.nz(), -1, -1, -1};
    for (int cell : f.cells()) {
      int i = cell % f.nx();
      int j = cell / f.nx() % f.ny();
      int k = cell / f.nx() / f.ny();
      box[0] = Math.min(box[0], i);
      box[1] = Math.min(box[1], j);
      box[2] = Math.min(box[2], k);
      box[3] = Math.max(box[3], i);
      box[4] = Math.max(box[4], j);
      box[5] = Math.max(box[5], k);
    }
    return box;
  }

  public int index(int i, int j, int k) {
    return i + nx * (j + ny * k);
  }

  /** Set time there; empty outside the grid, too. */
  public float setAt(int i, int j, int k) {
    boolean inside = i >= 0 && j >= 0 && k >= 0 && i < nx && j < ny && k < nz;
    return inside ? set[index(i, j, k)] : EMPTY;
  }

  /**
   * The same of a place.
   *
   * @param mm in the part's coordinates
   */
  public float setAt(Vec3 mm) {
    Vec3 p = mm.minus(origin);
    return setAt(
        (int) Math.floor(p.x() / edge),
        (int) Math.floor(p.y() / edge),
        (int) Math.floor(p.z() / edge));
  }

  private static final class Filling {
    private final Fields f;
    private final int[] box;
    private final int by;
    private final int margin;
    private final float latest;
    private final int[] size = new int[3];

    Filling(Fields f, int[] box, int by, int margin, float latest) {
      this.f = f;
      this.box = box;
      this.by = by;
      this.margin = margin;
      this.latest = latest;
      for (int a = 0; a < 3; a++) {
        size[a] = (box[a + 3] - box[a]) / by + 1 + 2 * margin;
      }
    }

    CellGrid grid() {
      int n = size[0] * size[1] * size[2];
      float[] set = new float[n];
      float[] cut = new float[n];
      int[] held = new int[by == 1 ? 0 : n];
      Arrays.fill(set, EMPTY);
      Arrays.fill(cut, EMPTY);
      for (int c = 0; c < f.cells().length; c++) {
        int to = place(f.cells()[c]);
        float time = Math.min(latest, f.setTime()[c]);
        if (by > 1) {
          held[to]++;
        }
        if (time > set[to]) {
          set[to] = time;
          cut[to] = Math.min(time, f.cutOff()[c]);
        }
      }
      for (int i = 0; i < held.length; i++) {
        if (2 * held[i] < by * by * by) {
          set[i] = EMPTY;
        }
      }
      double edge = 1e3 * by * f.spacing();
      Vec3 low = new Vec3(box[0], box[1], box[2]).times(1e3 * f.spacing());
      Vec3 origin = f.origin().times(1e3).plus(low);
      Vec3 out = new Vec3(margin, margin, margin).times(edge);
      return new CellGrid(origin.minus(out), edge, size[0], size[1], size[2], set, cut);
    }

    private int place(int cell) {
      int i = (cell % f.nx() - box[0]) / by + margin;
      int j = (cell / f.nx() % f.ny() - box[1]) / by + margin;
      int k = (cell / f.nx() / f.ny() - box[2]) / by + margin;
      return i + size[0] * (j + size[1] * k);
    }
  }
}
