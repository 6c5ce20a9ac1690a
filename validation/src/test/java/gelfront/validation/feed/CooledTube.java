// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.feed;

import gelfront.base.Workers;
import gelfront.feed.HeatCarry;
import gelfront.grid.Cavity;
import gelfront.grid.UniformGrid;
import gelfront.grid.VoxelModel;
import gelfront.heat.MouthFilm;
import gelfront.heat.SplitStepper;
import gelfront.linear.Graph;
import gelfront.material.HeatCurves;
import gelfront.material.MouldMaterial;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.setup.Block;
import gelfront.state.ThermalState;
import gelfront.voxelize.MouldBuilder;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A straight round tube in voxels, along x, with a wall of one temperature and ends that conduct
 * nothing. Hot liquid enters at its low end; constant properties.
 */
final class CooledTube {
  static final double ALPHA = 8e-8;
  static final double HOT = 165;
  static final double WALL = 30;
  private static final double CAPACITY = 1.8e6;
  private static final MouldMaterial FIXED = new MouldMaterial("fixed", 1e9, 1e6, 1e6);

  final double diameter;
  final double dx;
  final Cavity cavity;
  final ThermalState state;
  private final HeatCurves curves =
      new HeatCurves(
          new double[] {0, 200},
          new double[] {0, 200 * CAPACITY},
          new double[] {25},
          new double[] {ALPHA * CAPACITY});
  private final VoxelModel model;
  private final SplitStepper stepper;
  private final double[] mass;
  private final double[] hot;

  /**
   * @param length cells
   */
  CooledTube(double diameter, double dx, int length) {
    this.diameter = diameter;
    this.dx = dx;
    cavity = Ducts.round(diameter / 2, dx, length);
    model = insulatedEnds();
    state = new ThermalState(model, curves, HOT);
    stepper = new SplitStepper(model, curves, Workers.SERIAL);
    mass = cavity.volumes();
    hot = new double[mass.length];
    Arrays.fill(hot, curves.enthalpy(HOT));
  }

  private VoxelModel insulatedEnds() {
    Block block =
        new Block(FIXED, 10 * dx, Optional.empty(), WALL, WALL, 0, 1e9, List.of(), List.of());
    UniformGrid g = cavity.grid();
    Vec3 size = new Vec3(g.nx() * dx, g.ny() * dx, g.nz() * dx);
    Box box = new Box(g.origin(), g.origin().plus(size)).grown(8 * dx);
    VoxelModel m = MouldBuilder.build(cavity, block, box);
    double[] resistance = m.resistance().clone();
    for (int w = 0; w < resistance.length; w++) {
      if (cavity.walls().face()[w] < 2) {
        resistance[w] = Double.POSITIVE_INFINITY;
      }
    }
    return new VoxelModel(cavity, m.mould(), m.mouldCell(), resistance);
  }

  /** s that heat takes across: D^2 / alpha. */
  double unit() {
    return diameter * diameter / ALPHA;
  }

  /** Metres from the inlet's end to the end of the tube. */
  double length() {
    return dx * (slice(cavity.count() - 1) + 1);
  }

  /** Place of a cell along the tube, from 0 on. */
  int slice(int cell) {
    UniformGrid g = cavity.grid();
    return g.position(cavity.cells()[cell], 0) - g.position(cavity.cells()[0], 0);
  }

  /** What flows in a step; all per cell or per entry of the graph, m3/s. */
  record Stream(Graph graph, double[] flux, double[] entering, double[] leaving) {}

  /** Developed flow of one volume rate through all sections, temperatures being passive. */
  Stream passive(double rate) {
    double[] speed = speeds(rate);
    int[] from = IntStream.range(0, speed.length).filter(c -> next(c) != c).toArray();
    int[] to = IntStream.of(from).map(this::next).toArray();
    Graph graph = Graph.of(speed.length, from, to);
    Stream s =
        new Stream(
            graph,
            new double[graph.other().length],
            new double[speed.length],
            new double[speed.length]);
    for (int c = 0; c < speed.length; c++) {
      double q = speed[c] * dx * dx;
      s.entering[c] = slice(c) == 0 ? q : 0;
      s.leaving[c] = next(c) == c ? q : 0;
      for (int k = graph.start()[c]; k < graph.start()[c + 1]; k++) {
        s.flux[k] = graph.other()[k] == next(c) ? q : -q;
      }
    }
    return s;
  }

  private int next(int cell) {
    return cavity.neighbours()[6 * cell + 1];
  }

  /** m/s per cell: of the first section, so that nothing is left over along the tube. */
  double[] speeds(double rate) {
    double[] w = Ducts.mobility(cavity);
    double[] first = new double[cavity.grid().cellCount()];
    double sum = 0;
    for (int c = 0; c < w.length; c++) {
      if (slice(c) == 0) {
        first[section(c)] = w[c];
        sum += w[c] * dx * dx;
      }
    }
    double all = sum;
    return IntStream.range(0, w.length).mapToDouble(c -> first[section(c)] * rate / all).toArray();
  }

  private int section(int c) {
    return cavity.cells()[c] / cavity.grid().nx();
  }

  /** Half of what heat the flow carries before conduction, half after it: no first-order error. */
  void march(Stream stream, int steps, double dt) {
    HeatCarry carry = new HeatCarry(stream.graph);
    for (int s = 0; s < steps; s++) {
      carry(carry, stream, 0.5 * dt);
      stepper.step(state, dt, MouthFilm.INSULATED);
      carry(carry, stream, 0.5 * dt);
    }
  }

  private void carry(HeatCarry carry, Stream s, double dt) {
    carry.carry(s.flux, s.entering, hot, s.leaving, dt, mass, state.enthalpy);
    for (int c = 0; c < mass.length; c++) {
      state.temperature[c] = curves.temperature(state.enthalpy[c]);
      state.previous[c] = state.temperature[c];
    }
  }

  /** On the axis, 1 where hot, 0 at the wall's; straight between the two sections around x. */
  double centre(double x) {
    return between(x, this::axis);
  }

  /** Mean by {@code weights}, in the same way. */
  double mean(double x, double[] weights) {
    return between(x, c -> weights[c]);
  }

  private double between(double x, java.util.function.IntToDoubleFunction weight) {
    int below = (int) Math.floor(x / dx - 0.5);
    double share = x / dx - 0.5 - below;
    return (1 - share) * mean(below, weight) + share * mean(below + 1, weight);
  }

  private double mean(int slice, java.util.function.IntToDoubleFunction weight) {
    double sum = 0;
    double all = 0;
    for (int c = 0; c < mass.length; c++) {
      if (slice(c) == slice) {
        double w = weight.applyAsDouble(c);
        sum += w * (state.temperature[c] - WALL) / (HOT - WALL);
        all += w;
      }
    }
    return sum / all;
  }

  /** Weights of the 16 cells around the axis that a parabola's value on it needs. */
  private double axis(int cell) {
    Vec3 at = cavity.grid().centre(cavity.cells()[cell]);
    return across(at.y()) * across(at.z());
  }

  private double across(double y) {
    if (Math.abs(y) > 2 * dx) {
      return 0;
    }
    return Math.abs(y) < dx ? 9.0 / 16 : -1.0 / 16;
  }
}
