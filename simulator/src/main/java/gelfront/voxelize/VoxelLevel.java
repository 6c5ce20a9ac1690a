// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.base.Progress;
import gelfront.grid.UniformGrid;
import java.util.Arrays;
import java.util.List;

/**
 * Which cells of one grid lie in which solid, and where the walls are. A cell belongs to a solid if
 * its centre lies inside, by the majority of three lines along the axes (winding number above
 * zero), so that one bad triangle spoils nothing.
 */
final class VoxelLevel {
  private static final String FINDING = "finding the cavity's cells";

  private final UniformGrid grid;
  private final Filing filing;
  private final byte[] regions;
  private final Crossings[][] crossings;

  private VoxelLevel(UniformGrid grid, Filing filing, int solids) {
    this.grid = grid;
    this.filing = filing;
    this.regions = new byte[grid.cellCount()];
    this.crossings = new Crossings[solids][3];
    Arrays.fill(regions, (byte) -1);
  }

  /**
   * @param solids earlier ones win where they overlap
   * @param part crossings of the first solid with this grid's lines
   * @param filing this level's own
   */
  static VoxelLevel of(
      UniformGrid grid, List<Labelled> solids, PartLines part, Filing filing, Progress progress) {
    VoxelLevel level = new VoxelLevel(grid, filing, solids.size());
    for (int s = 0; s < solids.size(); s++) {
      level.claim(solids, s, part, progress);
    }
    filing.claim(grid, level.regions);
    return level;
  }

  /** The first solid's crossings. */
  interface PartLines {
    Crossings along(int axis, Progress progress);
  }

  private void claim(List<Labelled> solids, int solid, PartLines part, Progress progress) {
    byte[] votes = new byte[grid.cellCount()];
    Labelled one = solids.get(solid);
    for (int axis = 0; axis < 3; axis++) {
      int done = 3 * solid + axis;
      Progress within = (stage, f) -> progress.at(FINDING, (done + f) / (3 * solids.size()));
      within.check(FINDING, 0);
      crossings[solid][axis] =
          solid == 0 ? part.along(axis, within) : Crossings.of(one.mesh(), grid, axis, within);
      vote(crossings[solid][axis], axis, votes);
    }
    byte region = (byte) one.region().ordinal();
    for (int c = 0; c < votes.length; c++) {
      if (votes[c] >= 2 && regions[c] < 0) {
        regions[c] = region;
      }
    }
  }

  private void vote(Crossings x, int axis, byte[] votes) {
    int e = (axis + 1) % 3;
    int f = (axis + 2) % 3;
    for (int jf = 0; jf < grid.count(f); jf++) {
      for (int je = 0; je < grid.count(e); je++) {
        int column = je + grid.count(e) * jf;
        int base = je * grid.stride(e) + jf * grid.stride(f);
        int winding = 0;
        int next = x.first(column);
        int end = x.end(column);
        for (int i = 0; i < grid.count(axis) && next < end; i++) {
          double centre = grid.probe(axis, i);
          while (next < end && x.at(next) <= centre) {
            winding += x.normal(next++) < 0 ? 1 : -1;
          }
          if (winding > 0) {
            votes[base + i * grid.stride(axis)]++;
          }
        }
      }
    }
  }

  UniformGrid grid() {
    return grid;
  }

  /** Ordinal per grid cell, -1 in the mould. */
  byte[] regions() {
    return regions;
  }

  /**
   * Distance from the cell's centre to the true wall across a face, and |n_d| there.
   *
   * @param reach metres within which it lies
   */
  double[] wall(int cell, int face, double reach) {
    double[] filed = filing.wall(grid, cell, face);
    if (filed != null) {
      return filed;
    }
    double[] best =
        wall(cell, face, grid.centre(face / 2, grid.position(cell, face / 2)), 0, reach);
    // The three lines disagreed here: the wall is somewhere between the two centres.
    return best[0] < 0 ? new double[] {0.5 * grid.spacing(), 1} : best;
  }

  /**
   * The last wall on a cell's line that a way out along a face's axis meets, and |n_d| there.
   *
   * @param from where distances begin, coordinate on that axis, metres
   * @param least metres, not negative
   * @param most metres
   * @return a distance below zero where there is none
   */
  double[] wall(int cell, int face, double from, double least, double most) {
    int axis = face / 2;
    int e = (axis + 1) % 3;
    int f = (axis + 2) % 3;
    int column = grid.position(cell, e) + grid.count(e) * grid.position(cell, f);
    double sign = face % 2 == 0 ? -1 : 1;
    double[] best = {-1, 0};
    for (Crossings[] solid : crossings) {
      Crossings x = solid[axis];
      for (int i = x.first(column); i < x.end(column); i++) {
        double s = sign * (x.at(i) - from);
        double out = sign * x.normal(i);
        if (out > 0 && s >= least && s <= most && s > best[0]) {
          best[0] = s;
          best[1] = out;
        }
      }
    }
    return best;
  }
}
