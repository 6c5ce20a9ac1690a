// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Cavity;
import gelfront.grid.UniformGrid;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A square bar of cells along x, walls half a cell off, the mouth at x = 0. */
final class Tube {
  static final double DX = 1e-3;

  private Tube() {}

  static Cavity of(int length, int across) {
    UniformGrid grid = new UniformGrid(Vec3.ZERO, DX, length, across, across);
    int n = grid.cellCount();
    int[] cells = new int[n];
    int[] neighbours = new int[6 * n];
    List<int[]> links = new ArrayList<>();
    for (int c = 0; c < n; c++) {
      cells[c] = c;
      for (int f = 0; f < 6; f++) {
        int at = grid.position(c, f / 2) + (f % 2 == 0 ? -1 : 1);
        boolean wall = at < 0 || at >= grid.count(f / 2);
        neighbours[6 * c + f] = wall ? c : c + (f % 2 == 0 ? -1 : 1) * grid.stride(f / 2);
        if (wall) {
          links.add(new int[] {c, f});
        }
      }
    }
    return new Cavity(grid, cells, neighbours, new byte[n], walls(grid, links));
  }

  private static Cavity.Walls walls(UniformGrid grid, List<int[]> links) {
    int m = links.size();
    int[] cell = new int[m];
    byte[] face = new byte[m];
    boolean[] mouth = new boolean[m];
    float[] distance = new float[m];
    float[] cosine = new float[m];
    Arrays.fill(distance, (float) (0.5 * DX));
    Arrays.fill(cosine, 1);
    for (int w = 0; w < m; w++) {
      cell[w] = links.get(w)[0];
      face[w] = (byte) links.get(w)[1];
      mouth[w] = face[w] == 0 && grid.position(cell[w], 0) == 0;
    }
    double[] edge = new double[m];
    Arrays.fill(edge, DX);
    return new Cavity.Walls(cell, face, distance, cosine, edge, mouth);
  }
}
