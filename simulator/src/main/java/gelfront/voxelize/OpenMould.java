// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.grid.MouldCells;
import gelfront.grid.RectilinearGrid;
import gelfront.setup.Block;

/**
 * The block with its halves apart and no part in it: across the parting plane no heat passes, both
 * faces there and the cavity's walls lose theirs to the air by the block's own film.
 *
 * <pre>
 *   faces of the plane  1 / (1 / (h A) + 1 / (2 G)),  G: what joined both cells
 *   walls of the cavity h A</pre>
 *
 * <p>Simple on purpose: halves that lie face up, or on a bench, lose more or less than this; a
 * plane that isn't one of the grid's is put on the nearest.
 */
public final class OpenMould {
  private final MouldCells closed;
  private final double film;
  private final double outside;
  private final int[] neighbour;
  private final double[] conductance;
  private final double[] air;
  private final double[] heat;

  private OpenMould(MouldCells closed, Block block) {
    this.closed = closed;
    film = block.airFilm();
    outside = block.airTemperature();
    neighbour = closed.neighbour().clone();
    conductance = closed.conductance().clone();
    air = closed.airConductance().clone();
    heat = new double[air.length];
    for (int i = 0; i < heat.length; i++) {
      heat[i] = air[i] * closed.airTemperature()[i];
    }
  }

  /** The same cells as those of the closed mould, in the same order. */
  public static MouldCells of(CaseVoxels voxels, Block block) {
    OpenMould open = new OpenMould(voxels.model().mould(), block);
    open.part(PartingPlane.of(voxels), voxels.model().cavity());
    open.expose(voxels.model().cavity().walls(), voxels.model().mouldCell());
    return open.cells();
  }

  private void part(PartingPlane plane, Cavity cavity) {
    RectilinearGrid grid = closed.grid();
    int a = plane.axis();
    int above = nearestEdge(grid, a, plane.coordinate());
    double[] empty = cut(cavity, a, grid.edge(a, above));
    for (int i = 0; i < air.length; i++) {
      int next = neighbour[3 * i + a];
      boolean across =
          next >= 0
              && grid.position(closed.cells()[i], a) == above - 1
              && grid.position(closed.cells()[next], a) == above;
      if (across) {
        double g = conductance[3 * i + a];
        double bare = area(i, a) - empty[closed.cells()[i]];
        double toAir = film > 0 && g > 0 && bare > 0 ? 1 / (1 / (film * bare) + 0.5 / g) : 0;
        lose(i, toAir);
        lose(next, toAir);
        neighbour[3 * i + a] = -1;
        conductance[3 * i + a] = 0;
      }
    }
  }

  private static int nearestEdge(RectilinearGrid grid, int axis, double coordinate) {
    int i = grid.find(axis, coordinate);
    return coordinate > grid.centre(axis, i) ? i + 1 : i;
  }

  /** m2 of each grid cell's section at a coordinate along an axis that the cavity takes. */
  private double[] cut(Cavity cavity, int axis, double coordinate) {
    RectilinearGrid grid = closed.grid();
    double[] taken = new double[grid.cellCount()];
    for (int c = 0; c < cavity.count(); c++) {
      double e = cavity.edge(c);
      double over = coordinate - (cavity.centre(c, axis) - 0.5 * e);
      if (over > 1e-6 * e && over < e * (1 + 1e-6)) {
        int[] at = new int[3];
        for (int b = 0; b < 3; b++) {
          at[b] = grid.find(b, b == axis ? coordinate - 0.5 * e : cavity.centre(c, b));
        }
        taken[grid.index(at[0], at[1], at[2])] += e * e;
      }
    }
    return taken;
  }

  private double area(int cell, int axis) {
    RectilinearGrid grid = closed.grid();
    int c = closed.cells()[cell];
    return grid.volume(c) / grid.width(axis, grid.position(c, axis));
  }

  private void expose(Cavity.Walls walls, int[] mouldCell) {
    for (int w = 0; w < walls.count(); w++) {
      if (mouldCell[w] >= 0) {
        double e = walls.edge()[w];
        lose(mouldCell[w], film * walls.cosine()[w] * e * e);
      }
    }
  }

  private void lose(int cell, double toAir) {
    air[cell] += toAir;
    heat[cell] += toAir * outside;
  }

  private MouldCells cells() {
    double[] temperature = closed.airTemperature().clone();
    for (int i = 0; i < temperature.length; i++) {
      temperature[i] = air[i] > 0 ? heat[i] / air[i] : temperature[i];
    }
    return new MouldCells(
        closed.grid(),
        closed.cells(),
        closed.number(),
        closed.capacity(),
        closed.startTemperature(),
        neighbour,
        conductance,
        air,
        temperature);
  }
}
