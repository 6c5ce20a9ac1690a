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
 *   faces of the plane  1 / (1 / (h A) + 1 / (2 G)),  A, G: where metal met metal, what joined both
 *   walls of the cavity h A</pre>
 *
 * <p>Simple on purpose: halves that lie face up, or on a bench, lose more or less than this; a
 * plane that isn't one of the grid's is put on the nearest, so that a pocket in one half alone
 * counts only if it reaches that. Where the halves enclosed a hollow, its walls lose no heat when
 * open, either.
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
    open.part(PartingPlane.of(voxels));
    open.expose(voxels.model().cavity().walls(), voxels.model().mouldCell());
    return open.cells();
  }

  private void part(PartingPlane plane) {
    RectilinearGrid grid = closed.grid();
    int a = plane.axis();
    int above = nearestEdge(grid, a, plane.coordinate());
    for (int i = 0; i < air.length; i++) {
      int next = neighbour[3 * i + a];
      boolean across =
          next >= 0
              && grid.position(closed.cells()[i], a) == above - 1
              && grid.position(closed.cells()[next], a) == above;
      if (across) {
        double g = conductance[3 * i + a];
        double bare = closed.touching()[3 * i + a];
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
        closed.touching(),
        air,
        temperature);
  }
}
