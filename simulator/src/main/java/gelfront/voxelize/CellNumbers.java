// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Refinement;
import gelfront.grid.UniformGrid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Numbers of plastisol cells: voxels outside the refined boxes in rising order, then each box's
 * small cells in rising order. Level 0 is the voxels', level b + 1 that of box b.
 */
final class CellNumbers {
  private final int factor;
  private final List<VoxelLevel> levels;
  private final List<VoxelBoxes.VoxelBox> boxes;
  private final List<int[]> number = new ArrayList<>();
  private final int[] first;
  private final int[] cells;
  private final byte[] region;

  /** Of each plastisol cell. */
  private final int[] level;

  /** Voxels in boxes have the box's number less this. */
  private static final int IN_BOX = Integer.MIN_VALUE;

  CellNumbers(int factor, List<VoxelLevel> levels, List<VoxelBoxes.VoxelBox> boxes) {
    this.factor = factor;
    this.levels = levels;
    this.boxes = boxes;
    first = new int[levels.size() + 1];
    for (int l = 0; l < levels.size(); l++) {
      int[] own = blank(l);
      number.add(own);
      first[l + 1] = number(levels.get(l).regions(), own, first[l]);
    }
    cells = new int[first[levels.size()]];
    region = new byte[cells.length];
    level = new int[cells.length];
    for (int l = 0; l < levels.size(); l++) {
      list(number.get(l), levels.get(l).regions());
      Arrays.fill(level, first[l], first[l + 1], l);
    }
  }

  /** -1 where a cell may be numbered. */
  private int[] blank(int level) {
    UniformGrid grid = levels.get(level).grid();
    int[] own = new int[grid.cellCount()];
    if (level == 0) {
      Arrays.fill(own, -1);
      for (int b = 0; b < boxes.size(); b++) {
        fill(own, grid, boxes.get(b).lo(), boxes.get(b).hi(), IN_BOX + b);
      }
    } else {
      Arrays.fill(own, IN_BOX);
      int[] hi = {grid.count(0) - factor, grid.count(1) - factor, grid.count(2) - factor};
      fill(own, grid, new int[] {factor, factor, factor}, hi, -1);
    }
    return own;
  }

  private static void fill(int[] own, UniformGrid grid, int[] lo, int[] hi, int value) {
    for (int k = lo[2]; k < hi[2]; k++) {
      for (int j = lo[1]; j < hi[1]; j++) {
        Arrays.fill(own, grid.index(lo[0], j, k), grid.index(hi[0], j, k), value);
      }
    }
  }

  private static int number(byte[] regions, int[] own, int from) {
    int n = from;
    for (int c = 0; c < own.length; c++) {
      if (own[c] == -1 && regions[c] >= 0) {
        own[c] = n++;
      }
    }
    return n;
  }

  private void list(int[] own, byte[] regions) {
    for (int c = 0; c < own.length; c++) {
      if (own[c] >= 0) {
        cells[own[c]] = c;
        region[own[c]] = regions[c];
      }
    }
  }

  /** Number of each plastisol cell on its level's grid. */
  int[] cells() {
    return cells;
  }

  byte[] region() {
    return region;
  }

  boolean isVoxel(int c) {
    return c < first[1];
  }

  VoxelLevel levelOf(int c) {
    return levels.get(level[c]);
  }

  VoxelLevel level(int l) {
    return levels.get(l);
  }

  /** Plastisol cell of the same size across a face; below 0 where there is none. */
  int same(int c, int face) {
    int l = level[c];
    return number.get(l)[across(levels.get(l).grid(), cells[c], face)];
  }

  private static int across(UniformGrid grid, int cell, int face) {
    int stride = grid.stride(face / 2);
    return cell + (face % 2 == 0 ? -stride : stride); // spare cells all round
  }

  /** Refined box across a voxel's face; -1 where there is none. */
  int boxAcross(int c, int face) {
    int n = number.get(0)[across(levels.get(0).grid(), cells[c], face)];
    return n < -1 ? n - IN_BOX : -1;
  }

  /** Whether a small cell's face is on its box's side. */
  boolean leavesBox(int c, int face) {
    return same(c, face) == IN_BOX;
  }

  /** Plastisol cell of the voxel that a small cell's face leads to; below 0 where there is none. */
  int voxelAcross(int c, int face) {
    int l = level[c];
    UniformGrid own = levels.get(l).grid();
    UniformGrid grid = levels.get(0).grid();
    int[] corner = boxes.get(l - 1).corner();
    int beyond = across(own, cells[c], face);
    int[] at = new int[3];
    for (int a = 0; a < 3; a++) {
      at[a] = corner[a] + own.position(beyond, a) / factor;
    }
    return number.get(0)[grid.index(at[0], at[1], at[2])];
  }

  /** Plastisol cell that a cell of a box's grid is; below 0 in the mould. */
  int small(int box, int cell) {
    return number.get(box + 1)[cell];
  }

  /** Cells of a box's grid that touch a voxel's face. */
  int[] smallAcross(int c, int face, int box) {
    UniformGrid grid = levels.get(0).grid();
    UniformGrid own = levels.get(box + 1).grid();
    int[] corner = boxes.get(box).corner();
    int beyond = across(grid, cells[c], face);
    int[] at = new int[3];
    for (int a = 0; a < 3; a++) {
      at[a] = (grid.position(beyond, a) - corner[a]) * factor;
    }
    int axis = face / 2;
    at[axis] += face % 2 == 0 ? factor - 1 : 0;
    int base = own.index(at[0], at[1], at[2]);
    int[] found = new int[factor * factor];
    for (int i = 0; i < found.length; i++) {
      int e = i % factor * own.stride((axis + 1) % 3);
      int f = i / factor * own.stride((axis + 2) % 3);
      found[i] = base + e + f;
    }
    return found;
  }

  List<Refinement.Patch> patches() {
    List<Refinement.Patch> patches = new ArrayList<>();
    for (int b = 0; b < boxes.size(); b++) {
      UniformGrid own = levels.get(b + 1).grid();
      patches.add(new Refinement.Patch(own, boxes.get(b).corner(), first[b + 1], first[b + 2]));
    }
    return patches;
  }
}
