// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.feed;

import gelfront.feed.Liquid;
import gelfront.feed.Mobility;
import gelfront.feed.Suction;
import gelfront.grid.Cavity;
import gelfront.linear.Graph;
import gelfront.linear.StopRule;
import gelfront.material.ViscosityCurve;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.stream.IntStream;

/**
 * A cooled tube whose far end draws at a fixed rate, as far as the skin there bears the suction.
 * What falls below no-flow is a wall. Viscosity 1 Pa s.
 */
final class DrawnTube {
  private static final StopRule STOP = new StopRule(1e-5, 1e-5, 200);
  private static final ViscosityCurve ONE =
      new ViscosityCurve(new double[] {100}, new double[] {0});

  final CooledTube tube;
  private final double noFlow;
  private final double rate;
  private final Cavity inlet;
  private final Liquid liquid;
  private final Mobility mobility;
  private final Suction suction;
  private final Graph graph;
  private final int last;
  private double through;
  private double needed;

  DrawnTube(CooledTube tube, double noFlow, double rate) {
    this.tube = tube;
    this.noFlow = noFlow;
    this.rate = rate;
    inlet = inletOnly(tube.cavity);
    liquid = new Liquid(inlet, false);
    mobility = new Mobility(tube.cavity, STOP);
    suction = new Suction(inlet);
    graph = allFaces(inlet);
    last = tube.slice(inlet.count() - 1);
  }

  /** Mobility takes both ends for open; suction only the inlet. */
  private static Cavity inletOnly(Cavity c) {
    Cavity.Walls w = c.walls();
    boolean[] mouth = w.mouth().clone();
    for (int i = 0; i < mouth.length; i++) {
      mouth[i] = mouth[i] && w.face()[i] == 0;
    }
    return new Cavity(
        c.grid(),
        c.cells(),
        c.neighbours(),
        c.region(),
        new Cavity.Walls(w.cell(), w.face(), w.distance(), w.cosine(), w.edge(), mouth));
  }

  private static Graph allFaces(Cavity cavity) {
    int[] near = cavity.neighbours();
    int[] faces =
        IntStream.range(0, near.length).filter(e -> e % 2 == 1 && near[e] != e / 6).toArray();
    return Graph.of(
        cavity.count(),
        IntStream.of(faces).map(e -> e / 6).toArray(),
        IntStream.of(faces).map(e -> near[e]).toArray());
  }

  /**
   * @param bears Pa that the skin bears, give or take a tenth
   */
  void march(int steps, double dt, double bears) {
    for (int s = 0; s < steps; s++) {
      tube.march(stream(bears), 1, dt);
    }
  }

  private CooledTube.Stream stream(double bears) {
    int n = inlet.count();
    double[] flux = new double[graph.other().length];
    double[] entering = new double[n];
    double[] leaving = new double[n];
    boolean[] flowing = flowing();
    through = 0;
    needed = 0;
    if (IntStream.range(0, n).anyMatch(c -> flowing[c] && tube.slice(c) == last)) {
      liquid.update(flowing);
      double[] w = mobility.solve(liquid, flowing, tube.state.temperature, ONE, noFlow);
      double[] draw = draw(flowing, w);
      suction.solve(liquid, flowing, w, draw, Suction.Skin.of(bears, 0));
      enter(flowing, w, entering);
      fluxes(flowing, w, flux);
      leave(flux, entering, leaving);
    }
    return new CooledTube.Stream(graph, flux, entering, leaving);
  }

  /** What is above no-flow and joined to the inlet. */
  private boolean[] flowing() {
    boolean[] found = new boolean[inlet.count()];
    Deque<Integer> queue = new ArrayDeque<>();
    for (int c = 0; c < found.length; c++) {
      if (tube.slice(c) == 0) {
        visit(c, found, queue);
      }
    }
    while (!queue.isEmpty()) {
      int c = queue.remove();
      for (int e = 6 * c; e < 6 * c + 6; e++) {
        visit(inlet.neighbours()[e], found, queue);
      }
    }
    return found;
  }

  private void visit(int c, boolean[] found, Deque<Integer> queue) {
    if (!found[c] && tube.state.temperature[c] > noFlow) {
      found[c] = true;
      queue.add(c);
    }
  }

  /** The rate, shared over the last section as it flows there. */
  private double[] draw(boolean[] flowing, double[] w) {
    double[] draw = new double[w.length];
    double sum = 0;
    for (int c = 0; c < flowing.length; c++) {
      if (flowing[c] && tube.slice(c) == last) {
        draw[liquid.block(c)] = w[liquid.block(c)];
        sum += w[liquid.block(c)];
      }
    }
    for (int b = 0; b < draw.length; b++) {
      draw[b] *= rate / sum;
    }
    return draw;
  }

  private void enter(boolean[] flowing, double[] w, double[] entering) {
    Cavity.Walls walls = inlet.walls();
    for (int i = 0; i < walls.count(); i++) {
      int c = walls.cell()[i];
      if (walls.mouth()[i] && flowing[c]) {
        int b = liquid.block(c);
        entering[c] = w[b] * tube.dx * tube.dx / walls.distance()[i] * suction.suction()[b];
        through += entering[c];
      }
    }
  }

  private void fluxes(boolean[] flowing, double[] w, double[] flux) {
    double[] q = suction.suction();
    for (int c = 0; c < flowing.length; c++) {
      for (int k = graph.start()[c]; flowing[c] && k < graph.start()[c + 1]; k++) {
        int to = graph.other()[k];
        if (flowing[to]) {
          int a = liquid.block(c);
          int b = liquid.block(to);
          flux[k] = 0.5 * tube.dx * (w[a] + w[b]) * (q[b] - q[a]);
          needed = Math.max(needed, Math.max(q[a], q[b]));
        }
      }
    }
  }

  private void leave(double[] flux, double[] entering, double[] leaving) {
    for (int c = 0; c < leaving.length; c++) {
      if (tube.slice(c) == last) {
        double in = entering[c];
        for (int k = graph.start()[c]; k < graph.start()[c + 1]; k++) {
          in -= flux[k];
        }
        leaving[c] = Math.max(0, in);
      }
    }
  }

  /** m3/s that came in during the last step; 0: frozen shut. */
  double through() {
    return through;
  }

  /** Pa at the far end in the last step. */
  double suction() {
    return needed;
  }

  /**
   * Metres from the axis to the no-flow isotherm in a section: by its open area, cells cut by it in
   * part.
   */
  double openRadius(int slice) {
    double area = 0;
    double[] volume = inlet.volumes();
    double[] t = tube.state.temperature;
    for (int c = 0; c < t.length; c++) {
      if (tube.slice(c) == slice) {
        area += volume[c] / tube.dx * share(c, t);
      }
    }
    return Math.sqrt(area / Math.PI);
  }

  /** Of a cell that lies inside the isotherm: a plane across the cell's gradient. */
  private double share(int c, double[] t) {
    double steep = 0;
    for (int d = 1; d < 3; d++) {
      int a = inlet.neighbours()[6 * c + 2 * d];
      int b = inlet.neighbours()[6 * c + 2 * d + 1];
      int n = (a == c ? 0 : 1) + (b == c ? 0 : 1);
      double g = n == 0 ? 0 : (t[b] - t[a]) / n;
      steep += g * g;
    }
    return Math.min(1, Math.max(0, 0.5 + (t[c] - noFlow) / Math.sqrt(steep)));
  }
}
