// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.base.Progress;
import gelfront.grid.Cavity;
import gelfront.grid.Refinement;
import gelfront.grid.UniformGrid;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.List;

/**
 * Which of several cavities in one block a plastisol cell belongs to.
 *
 * @param of number from 1 per plastisol cell, 0 in the feed system; length n
 * @param count cavities
 */
public record Cavities(short[] of, int count) {

  /** All of the part is one. */
  static Cavities one(Cavity cavity) {
    short[] of = new short[cavity.count()];
    for (int c = 0; c < of.length; c++) {
      of[c] = (short) (isPart(cavity, c) ? 1 : 0);
    }
    return new Cavities(of, 1);
  }

  /**
   * By the solid that holds the cell's middle. Cells in none, filed out or where the three lines
   * through a cell disagreed, go with their neighbours.
   *
   * @param parts closed, outward-wound, one a cavity
   * @throws VoxelException if two of them meet, or a voxel is not between them
   */
  static Cavities within(Cavity cavity, List<TriangleMesh> parts, Progress progress) {
    if (parts.size() == 1) {
      return one(cavity);
    }
    short[] of = new short[cavity.count()];
    for (int i = 0; i < parts.size(); i++) {
      TriangleMesh part = parts.get(i);
      claim(cavity, part, cavity.grid(), 0, cavity.voxels(), of, i + 1, progress);
      for (Refinement.Patch p : cavity.refinement().patches()) {
        claim(cavity, part, p.grid(), p.first(), p.end(), of, i + 1, progress);
      }
    }
    spread(cavity, of);
    for (int c = 0; c < of.length; c++) {
      for (int f = 0; f < cavity.faces(c); f++) {
        int j = cavity.across(c, f);
        if (of[c] > 0 && of[j] > 0 && of[c] != of[j]) {
          throw meet(cavity, of[c], of[j], c);
        }
      }
    }
    return new Cavities(of, parts.size());
  }

  /** By the nearest of the gates, bodies of part cells that hang together as a whole. */
  static Cavities behind(Cavity cavity, List<Vec3> gates) {
    if (gates.size() == 1) {
      return one(cavity);
    }
    short[] of = new short[cavity.count()];
    for (int c = 0; c < of.length; c++) {
      if (of[c] == 0 && isPart(cavity, c)) {
        body(cavity, c, gates, of);
      }
    }
    return new Cavities(of, gates.size());
  }

  private static boolean isPart(Cavity cavity, int c) {
    return cavity.region()[c] == Cavity.Region.PART.ordinal();
  }

  private static VoxelException meet(Cavity cavity, int a, int b, int at) {
    return new VoxelException(
        "part.copy",
        "cavities "
            + Math.min(a, b)
            + " and "
            + Math.max(a, b)
            + " overlap, or less than a voxel of mould is between them, near "
            + FeedShapes.mm(cavity.centre(at)));
  }

  /** Cells {@code from} to before {@code to}, which lie on {@code grid}. */
  private static void claim(
      Cavity cavity,
      TriangleMesh part,
      UniformGrid grid,
      int from,
      int to,
      short[] of,
      int number,
      Progress progress) {
    Crossings x = Crossings.of(part, grid, 0, progress);
    for (int c = from; c < to; c++) {
      int cell = cavity.cells()[c];
      int column = grid.position(cell, 1) + grid.count(1) * grid.position(cell, 2);
      double centre = grid.probe(0, grid.position(cell, 0));
      int winding = 0;
      for (int i = x.first(column); i < x.end(column) && x.at(i) <= centre; i++) {
        winding += x.normal(i) < 0 ? 1 : -1;
      }
      if (winding > 0 && isPart(cavity, c)) {
        if (of[c] != 0) {
          throw meet(cavity, of[c], number, c);
        }
        of[c] = (short) number;
      }
    }
  }

  /** From numbered part cells to the others that hang on them. */
  private static void spread(Cavity cavity, short[] of) {
    ArrayDeque<Integer> queue = new ArrayDeque<>();
    for (int c = 0; c < of.length; c++) {
      if (of[c] != 0) {
        queue.add(c);
      }
    }
    while (!queue.isEmpty()) {
      int c = queue.remove();
      for (int f = 0; f < cavity.faces(c); f++) {
        int j = cavity.across(c, f);
        if (of[j] == 0 && isPart(cavity, j)) {
          of[j] = of[c];
          queue.add(j);
        }
      }
    }
  }

  private static void body(Cavity cavity, int from, List<Vec3> gates, short[] of) {
    double[] least = new double[gates.size()];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    int[] body = new int[cavity.count()];
    int n = 0;
    body[n++] = from;
    of[from] = -1;
    for (int at = 0; at < n; at++) {
      Vec3 p = cavity.centre(body[at]);
      for (int g = 0; g < least.length; g++) {
        least[g] = Math.min(least[g], p.distance(gates.get(g)));
      }
      for (int f = 0; f < cavity.faces(body[at]); f++) {
        int j = cavity.across(body[at], f);
        if (of[j] == 0 && isPart(cavity, j)) {
          of[j] = -1;
          body[n++] = j;
        }
      }
    }
    int nearest = 0;
    for (int g = 1; g < least.length; g++) {
      nearest = least[g] < least[nearest] ? g : nearest;
    }
    for (int at = 0; at < n; at++) {
      of[body[at]] = (short) (nearest + 1);
    }
  }
}
