// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Cavity;
import gelfront.grid.Mirrors;
import gelfront.linear.Cubes;
import gelfront.linear.Graph;
import java.util.Arrays;

/**
 * How the blocks of a full cavity hang together, for what else moves through them.
 *
 * @param graph whose nodes are the blocks
 * @param cubes where they lie
 * @param of block per cell
 * @param shape metres per edge: area over the way between the blocks' middles
 * @param mouth metres per block: area of the open end over the way to it, 0 where there is none
 * @param mirrors across which blocks at the lattice's lower end have their own image
 * @param wide half width of the channel in edges of the block, per block; one at least
 */
public record BlockNet(
    Graph graph,
    Cubes cubes,
    int[] of,
    double[] shape,
    double[] mouth,
    float[] wide,
    Mirrors mirrors) {

  /**
   * @param gathered false: every cell is a block of its own
   */
  public static BlockNet of(Cavity cavity, boolean gathered) {
    CellFaces faces = new CellFaces(cavity);
    boolean[] all = new boolean[cavity.count()];
    Arrays.fill(all, true);
    short[] width = new HalfWidth(cavity, faces).of(all);
    Blocks blocks =
        new Blocks(cavity, faces, all, width, gathered ? Gathering.SHOT : Gathering.SINGLE);
    double[] shape = new double[blocks.graph.edges()];
    for (int f = 0; f < faces.count(); f++) {
      int e = blocks.edge[f];
      if (e >= 0) {
        shape[e] += blocks.reach[f];
      }
    }
    float[] wide = new float[blocks.count()];
    for (int b = 0; b < wide.length; b++) {
      wide[b] = Math.max(1, (float) width[blocks.first[b]] / blocks.cubes.size()[b]);
    }
    return new BlockNet(
        blocks.graph,
        blocks.cubes,
        blocks.of,
        shape,
        mouth(cavity, blocks),
        wide,
        cavity.mirrors());
  }

  private static double[] mouth(Cavity cavity, Blocks blocks) {
    double[] mouth = new double[blocks.count()];
    Cavity.Walls walls = cavity.walls();
    for (int w = 0; w < walls.count(); w++) {
      if (walls.mouth()[w]) {
        double e = walls.edge()[w];
        mouth[blocks.of[walls.cell()[w]]] += e * e / blocks.wallDistance[w];
      }
    }
    return mouth;
  }

  /** Whether a block's own image lies below it on an axis. */
  public boolean mirrored(int b, int axis) {
    return mirrors.at(axis) && cubes.corner(axis)[b] == 0;
  }

  /** Blocks. */
  public int count() {
    return cubes.count();
  }
}
