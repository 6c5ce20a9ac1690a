// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import java.util.Arrays;

/**
 * Faces between cells that set at different times, for a slider that hides what has set before: a
 * face is seen while the slider stands between the times of its two cells. Made once; the slider
 * only picks bins, and the shader drops what is not seen in them. Four corners a face,
 * counter-clockwise seen from the later cell's outside.
 */
public final class CellFaces {
  /** Bins of the slider's way. */
  public static final int BINS = 64;

  /** Corner offsets per face -x +x -y +y -z +z. */
  private static final int[][] CORNERS = {
    {0, 0, 0, 0, 0, 1, 0, 1, 1, 0, 1, 0},
    {1, 0, 0, 1, 1, 0, 1, 1, 1, 1, 0, 1},
    {0, 0, 0, 1, 0, 0, 1, 0, 1, 0, 0, 1},
    {0, 1, 0, 0, 1, 1, 1, 1, 1, 1, 1, 0},
    {0, 0, 0, 0, 1, 0, 1, 1, 0, 1, 0, 0},
    {0, 0, 1, 1, 0, 1, 1, 1, 1, 0, 1, 1}
  };

  /**
   * Faces of one bin.
   *
   * @param positions x, y, z of four corners a face, mm; 12 a face
   * @param times share of the time scale of the earlier cell, below 0 for mould, of the later one,
   *     and the side 0 to 5 for -x +x -y +y -z +z; 3 a face
   */
  public record Bin(float[] positions, float[] times) {
    public int count() {
      return times.length / 3;
    }
  }

  private final CellGrid grid;
  private final double latest;
  private final Growing[] outer = growing();
  private final Growing[] inner = growing();

  private CellFaces(CellGrid grid, double latest) {
    this.grid = grid;
    this.latest = latest;
  }

  /**
   * @param latest s at the end of the time scale, above 0
   */
  public static CellFaces of(CellGrid grid, double latest) {
    CellFaces faces = new CellFaces(grid, latest);
    for (int k = 0; k < grid.nz(); k++) {
      for (int j = 0; j < grid.ny(); j++) {
        for (int i = 0; i < grid.nx(); i++) {
          faces.cell(i, j, k);
        }
      }
    }
    return faces;
  }

  private static Growing[] growing() {
    Growing[] all = new Growing[BINS];
    Arrays.setAll(all, i -> new Growing());
    return all;
  }

  /** Bin in which a share of the time scale lies. */
  public static int bin(double share) {
    return (int) Math.max(0, Math.min(BINS - 1, Math.floor(share * BINS)));
  }

  /** Faces towards the mould whose cell sets in that bin: seen while the slider is before it. */
  public Bin outer(int bin) {
    return outer[bin].done();
  }

  /** Faces between cells that are seen at some place of that bin. */
  public Bin inner(int bin) {
    return inner[bin].done();
  }

  private void cell(int i, int j, int k) {
    float own = grid.setAt(i, j, k);
    if (own == CellGrid.EMPTY) {
      return;
    }
    for (int side = 0; side < 6; side++) {
      int step = side % 2 == 0 ? -1 : 1;
      int axis = side / 2;
      float other =
          grid.setAt(axis == 0 ? i + step : i, axis == 1 ? j + step : j, axis == 2 ? k + step : k);
      if (other == CellGrid.EMPTY) {
        add(outer[bin(own / latest)], i, j, k, side, -1, own);
      } else if (other < own) {
        for (int b = bin(other / latest); b <= bin(own / latest); b++) {
          add(inner[b], i, j, k, side, other / latest, own);
        }
      }
    }
  }

  private void add(Growing to, int i, int j, int k, int side, double other, float own) {
    int p = to.next();
    int[] place = {i, j, k};
    double[] origin = {grid.origin().x(), grid.origin().y(), grid.origin().z()};
    for (int c = 0; c < 12; c++) {
      double at = place[c % 3] + CORNERS[side][c];
      to.positions[12 * p + c] = (float) (origin[c % 3] + at * grid.edge());
    }
    to.times[3 * p] = (float) other;
    to.times[3 * p + 1] = (float) (own / latest);
    to.times[3 * p + 2] = side;
  }

  private static final class Growing {
    private float[] positions = new float[0];
    private float[] times = new float[0];
    private int n;

    int next() {
      if (3 * n == times.length) {
        int faces = Math.max(64, 2 * n);
        positions = Arrays.copyOf(positions, 12 * faces);
        times = Arrays.copyOf(times, 3 * faces);
      }
      return n++;
    }

    Bin done() {
      return new Bin(Arrays.copyOf(positions, 12 * n), Arrays.copyOf(times, 3 * n));
    }
  }
}
