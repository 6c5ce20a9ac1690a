package gelfront.validation.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
import org.junit.jupiter.api.Test;

/**
 * Liquid that cools along a tube with a wall of one temperature: Graetz's series (eigenvalues and
 * coefficients computed for the project; they agree with the published ones as remembered).
 *
 * <pre>  theta = sum C_n R_n(r) exp(-2 lambda_n^2 x*),  x* = (x / D) / Pe</pre>
 *
 * <p>16 cells across, 400 cells to x* = 0.1; mobility, conduction and carried heat as in a run.
 */
final class GraetzTest {
  private static final int ACROSS = 16;
  private static final int LENGTH = 410;
  private static final double D = 8e-3;
  private static final double DX = D / ACROSS;
  private static final double ALPHA = 8e-8;
  private static final double CAPACITY = 1.8e6;
  private static final double HOT = 165;
  private static final double WALL = 30;
  private static final double UNIT = D * D / ALPHA;

  /** Cells to x* = 0.1. */
  private static final int CELLS = 400;

  /** Mean velocity. */
  private static final double SPEED = ALPHA * CELLS * DX / (0.1 * D * D);

  private static final MouldMaterial FIXED = new MouldMaterial("fixed", 1e9, 1e6, 1e6);

  private final Cavity cavity = Ducts.round(D / 2, DX, LENGTH);
  private final HeatCurves curves =
      new HeatCurves(
          new double[] {0, 200},
          new double[] {0, 200 * CAPACITY},
          new double[] {25},
          new double[] {ALPHA * CAPACITY});
  private final VoxelModel model = insulatedEnds();
  private final ThermalState state = new ThermalState(model, curves, HOT);
  private final double[] velocity = velocity();
  private final Graph graph = along();
  private final double[] flux = new double[graph.other().length];
  private final double[] leaving = new double[cavity.count()];
  private final double[] entering = new double[cavity.count()];

  private VoxelModel insulatedEnds() {
    Block block =
        new Block(FIXED, 10 * DX, Optional.empty(), WALL, WALL, 0, 1e9, List.of(), List.of());
    UniformGrid g = cavity.grid();
    Vec3 size = new Vec3(g.nx() * DX, g.ny() * DX, g.nz() * DX);
    Box box = new Box(g.origin(), g.origin().plus(size)).grown(8 * DX);
    VoxelModel m = MouldBuilder.build(cavity, block, box);
    double[] resistance = m.resistance().clone();
    for (int w = 0; w < resistance.length; w++) {
      if (cavity.walls().face()[w] < 2) {
        resistance[w] = Double.POSITIVE_INFINITY;
      }
    }
    return new VoxelModel(cavity, m.mould(), m.mouldCell(), resistance);
  }

  /** m/s per cell: of the first section, so that nothing is left over along the tube. */
  private double[] velocity() {
    double[] w = Ducts.mobility(cavity);
    double[] of = new double[w.length];
    double[] first = new double[cavity.grid().cellCount()];
    int at = cavity.grid().position(cavity.cells()[0], 0);
    double sum = 0;
    for (int c = 0; c < w.length; c++) {
      if (cavity.grid().position(cavity.cells()[c], 0) == at) {
        first[section(c)] = w[c];
        sum += w[c] * DX * DX;
      }
    }
    for (int c = 0; c < w.length; c++) {
      of[c] = first[section(c)] * SPEED * Math.PI * D * D / 4 / sum;
    }
    return of;
  }

  private int section(int c) {
    return cavity.cells()[c] / cavity.grid().nx();
  }

  private void flow() {
    for (int c = 0; c < velocity.length; c++) {
      double q = velocity[c] * DX * DX;
      boolean start = cavity.neighbours()[6 * c] == c;
      boolean end = cavity.neighbours()[6 * c + 1] == c;
      entering[c] = start ? q : 0;
      leaving[c] = end ? q : 0;
      for (int k = graph.start()[c]; k < graph.start()[c + 1]; k++) {
        flux[k] = graph.other()[k] == cavity.neighbours()[6 * c] ? -q : q;
      }
    }
  }

  /** Cells joined along the tube. */
  private Graph along() {
    int[] from =
        IntStream.range(0, cavity.count())
            .filter(c -> cavity.neighbours()[6 * c + 1] != c)
            .toArray();
    int[] to = IntStream.of(from).map(c -> cavity.neighbours()[6 * c + 1]).toArray();
    return Graph.of(cavity.count(), from, to);
  }

  /** Half of what heat the flow carries before conduction, half after it: no first-order error. */
  private void march(int steps, double dt) {
    SplitStepper stepper = new SplitStepper(model, curves, Workers.SERIAL);
    HeatCarry carry = new HeatCarry(graph);
    double[] mass = cavity.volumes();
    for (int s = 0; s < steps; s++) {
      half(carry, dt, mass);
      stepper.step(state, dt, MouthFilm.INSULATED);
      half(carry, dt, mass);
    }
  }

  private void half(HeatCarry carry, double dt, double[] mass) {
    double[] hot = new double[mass.length];
    Arrays.fill(hot, curves.enthalpy(HOT));
    carry.carry(flux, entering, hot, leaving, 0.5 * dt, mass, state.enthalpy);
    for (int c = 0; c < mass.length; c++) {
      state.temperature[c] = curves.temperature(state.enthalpy[c]);
      state.previous[c] = state.temperature[c];
    }
  }

  @Test
  void bulkAndCentreWithinAPerCent() {
    flow();
    march(60, 0.003 * UNIT);
    march(30, 0.001 * UNIT);
    march(60, 0.0004 * UNIT);
    double[][] table = {
      {0.02, 0.628028, 0.97270},
      {0.03, 0.534868, 0.89718},
      {0.05, 0.395299, 0.70124},
      {0.1, 0.189710, 0.34184}
    };
    for (double[] row : table) {
      assertEquals(row[1], theta(row[0], false), 0.01 * row[1], "bulk at " + row[0]);
      assertEquals(row[2], theta(row[0], true), 0.01 * row[2], "centre at " + row[0]);
    }
  }

  /** Straight between the two sections around x*. */
  private double theta(double xStar, boolean centre) {
    double at = xStar / 0.1 * CELLS;
    int below = (int) Math.floor(at - 0.5);
    double share = at - 0.5 - below;
    return (1 - share) * section(below, centre) + share * section(below + 1, centre);
  }

  private double section(int slice, boolean centre) {
    int i = cavity.grid().position(cavity.cells()[0], 0) + slice;
    double sum = 0;
    double weight = 0;
    double reach = 2 * DX;
    for (int c = 0; c < velocity.length; c++) {
      Vec3 at = cavity.grid().centre(cavity.cells()[c]);
      if (cavity.grid().position(cavity.cells()[c], 0) == i
          && (!centre || (Math.abs(at.y()) < reach && Math.abs(at.z()) < reach))) {
        double w = centre ? axis(at) : velocity[c];
        sum += w * (state.temperature[c] - WALL) / (HOT - WALL);
        weight += w;
      }
    }
    return sum / weight;
  }

  /** Weights of the 16 cells around the axis that a parabola's value on it needs. */
  private static double axis(Vec3 at) {
    return across(at.y()) * across(at.z());
  }

  private static double across(double y) {
    return Math.abs(y) < DX ? 9.0 / 16 : -1.0 / 16;
  }
}
