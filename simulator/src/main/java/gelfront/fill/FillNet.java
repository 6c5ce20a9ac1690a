// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import gelfront.feed.BlockNet;
import gelfront.grid.Cavity;
import gelfront.linear.Graph;
import gelfront.mesh.Vec3;

/** A cavity's blocks as the front sees them: what they hold, their cells and neighbours. */
final class FillNet {
  final Cavity cavity;
  final Graph graph;
  final BlockNet blocks;

  /** Block per cell. */
  final int[] of;

  /** m3 per cell, and per block. */
  final double[] cellVolume;

  final double[] volume;

  /** Edge per block, metres. */
  final double[] size;

  /** Middle of what a block holds, metres; x, y and z. */
  final double[][] middle;

  /** Ends of each edge, the lower block first. */
  final int[] low;

  final int[] high;

  /** Cells block by block: those of b from {@code first[b]} to before {@code first[b + 1]}. */
  final int[] first;

  final int[] cells;

  FillNet(Cavity cavity, boolean gathered) {
    this.cavity = cavity;
    blocks = BlockNet.of(cavity, gathered);
    graph = blocks.graph();
    of = blocks.of();
    int n = blocks.count();
    cellVolume = cavity.volumes();
    volume = new double[n];
    size = new double[n];
    middle = new double[3][n];
    first = new int[n + 1];
    cells = new int[of.length];
    gather();
    low = new int[graph.edges()];
    high = new int[graph.edges()];
    for (int a = 0; a < n; a++) {
      for (int k = graph.after()[a]; k < graph.start()[a + 1]; k++) {
        low[graph.edge()[k]] = a;
        high[graph.edge()[k]] = graph.other()[k];
      }
    }
  }

  private void gather() {
    for (int c = 0; c < of.length; c++) {
      int b = of[c];
      first[b + 1]++;
      volume[b] += cellVolume[c];
      for (int d = 0; d < 3; d++) {
        middle[d][b] += cellVolume[c] * cavity.centre(c, d);
      }
    }
    for (int b = 0; b < volume.length; b++) {
      first[b + 1] += first[b];
      size[b] = blocks.cubes().size()[b] * cavity.smallEdge();
      for (int d = 0; d < 3; d++) {
        middle[d][b] /= volume[b];
      }
    }
    int[] next = first.clone();
    for (int c = 0; c < of.length; c++) {
      cells[next[of[c]]++] = c;
    }
  }

  /** What cells have of something, by block. */
  double[] perBlock(double[] perCell) {
    double[] sum = new double[count()];
    for (int c = 0; c < perCell.length; c++) {
      sum[of[c]] += perCell[c];
    }
    return sum;
  }

  int count() {
    return volume.length;
  }

  Vec3 middle(int b) {
    return new Vec3(middle[0][b], middle[1][b], middle[2][b]);
  }

  /** m2 of front that a block has across its way. */
  double area(int b) {
    return volume[b] / size[b];
  }

  /** Whether a block's own image lies below it on an axis. */
  boolean mirrored(int b, int axis) {
    return blocks.mirrored(b, axis);
  }

  boolean inGate(int b) {
    return cavity.region()[cells[first[b]]] == Cavity.Region.GATE.ordinal();
  }
}
