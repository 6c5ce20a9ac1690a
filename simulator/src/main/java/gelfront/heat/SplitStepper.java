// SPDX-License-Identifier: Apache-2.0
package gelfront.heat;

import gelfront.base.Workers;
import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
import gelfront.material.HeatCurves;
import gelfront.state.ThermalState;
import java.util.Arrays;

/**
 * dh/dt = div(k grad T) in plastisol and mould, each on its own grid, joined at the walls.
 *
 * <p>One step: the plastisol is stepped against the mould's temperature at mid-step as predicted;
 * the heat that crossed each wall is put into the mould, which is solved implicitly; if the mould
 * ends up elsewhere than predicted, again with the better prediction. So a poor conductor is
 * coupled as tightly as a good one, and the good one takes a single pass. Latent heat: the chord
 * capacity (h(Tp) - h(Tn)) / (Tp - Tn) with Tp extrapolated, frozen over the step, then T from h:
 * what is conserved is h.
 */
public final class SplitStepper implements HeatStepper {
  /** K that the mould at a wall may differ from what the plastisol was stepped against. */
  private static final double MOULD_TOLERANCE = 0.02;

  private static final int MOST_PASSES = 12;

  private final VoxelModel model;
  private final HeatCurves curves;
  private final Workers workers;
  private final PlastisolKernel kernel;
  private final MouldSolver mouldSolver;
  private final double[] volume;
  private final double[] reach;
  private final double[] conductance;

  /** °C that a wall's cell loses heat against, in this pass; per wall. */
  private final double[] driven;

  private final double[] wall;
  private final double[] source;
  private final double[] capacity;
  private final double[] mean;
  private final double[] gains;
  private final int[] meanAt;
  private final double[] heat;
  private final double[] change;
  private final double[] predicted;
  private final double[] middle;
  private final WallBend wallBend;
  private double[] added = {};
  private double lastStep;
  private int passes;

  public SplitStepper(VoxelModel model, HeatCurves curves, Workers workers) {
    this.model = model;
    this.curves = curves;
    this.workers = workers;
    Cavity cavity = model.cavity();
    int n = cavity.count();
    int walls = cavity.walls().count();
    meanAt = new int[walls];
    int[] wallCells = wallCells(cavity.walls(), meanAt);
    kernel = new PlastisolKernel(cavity, wallCells, !curves.constantConductivity(), workers);
    mouldSolver = new MouldSolver(model.mould());
    volume = cavity.volumes();
    reach = reach(cavity);
    conductance = new double[walls];
    driven = new double[walls];
    wall = new double[wallCells.length];
    source = new double[wallCells.length];
    capacity = new double[n];
    gains = new double[Workers.chunks(n)];
    mean = new double[wallCells.length];
    heat = new double[model.mould().count()];
    change = new double[heat.length];
    predicted = new double[heat.length];
    middle = new double[n];
    wallBend = new WallBend(cavity, reach);
  }

  /** Metres along the axis from the middle of the cell's true volume to the wall; per wall. */
  private static double[] reach(Cavity cavity) {
    Cavity.Walls walls = cavity.walls();
    float[] shift = cavity.shifts();
    double[] reach = new double[walls.count()];
    for (int w = 0; w < reach.length; w++) {
      int face = walls.face()[w];
      double moved = cavity.edge(walls.cell()[w]) * shift[3 * walls.cell()[w] + face / 2];
      reach[w] = walls.distance()[w] + (face % 2 == 0 ? moved : -moved);
    }
    return reach;
  }

  /** Distinct cells of the walls, which are sorted by cell; {@code at} gets each wall's entry. */
  private static int[] wallCells(Cavity.Walls walls, int[] at) {
    int[] cells = new int[walls.count()];
    int n = 0;
    for (int w = 0; w < cells.length; w++) {
      int c = walls.cell()[w];
      if (n == 0 || cells[n - 1] != c) {
        cells[n++] = c;
      }
      at[w] = n - 1;
    }
    return Arrays.copyOf(cells, n);
  }

  /** Passes that the last step took. */
  public int passes() {
    return passes;
  }

  /** Runge-Kutta stages of the last pass. */
  public int stages() {
    return kernel.stages();
  }

  @Override
  public void step(ThermalState state, double dt, MouthFilm mouth) {
    if (!(dt > 0)) {
      throw new IllegalArgumentException("a step needs a length: " + dt);
    }
    prepare(state, dt, mouth);
    double scale = lastStep > 0 ? dt / lastStep : 0;
    for (int m = 0; m < change.length; m++) {
      predicted[m] = scale * change[m];
      change[m] = predicted[m];
    }
    if (lastStep == 0) {
      tryOut(state, dt, mouth);
    }
    passes = 0;
    double miss = Double.POSITIVE_INFINITY;
    while (true) {
      passes++;
      pass(state, dt, mouth);
      double last = miss;
      miss = miss();
      if (miss <= MOULD_TOLERANCE || passes == MOST_PASSES) {
        break;
      }
      double relax = miss > 0.7 * last ? 0.5 : 1;
      for (int m = 0; m < change.length; m++) {
        predicted[m] += relax * (change[m] - predicted[m]);
      }
    }
    finish(state, dt);
    lastStep = dt;
  }

  /** Without a step before nobody knows the middle of this one. */
  private void tryOut(ThermalState state, double dt, MouthFilm mouth) {
    pass(state, dt, mouth);
    for (int i = 0; i < middle.length; i++) {
      middle[i] += 0.5 * added[i];
    }
  }

  private void prepare(ThermalState state, double dt, MouthFilm mouth) {
    double ratio = lastStep > 0 ? dt / lastStep : 0;
    double[] t = state.temperature;
    double[] before = state.previous;
    double[] k = kernel.cellConductivity();
    workers.over(
        t.length,
        (a, b) -> {
          for (int i = a; i < b; i++) {
            double ahead = t[i] + ratio * (t[i] - before[i]);
            middle[i] = 0.5 * (t[i] + ahead);
            capacity[i] =
                Math.abs(ahead - t[i]) > 1e-6
                    ? (curves.enthalpy(ahead) - state.enthalpy[i]) / (ahead - t[i])
                    : curves.slope(t[i]);
            if (k != null) {
              k[i] = curves.conductivity(0.5 * (ahead + t[i]));
            }
          }
        });
    conductances(state.lostContact, mouth);
  }

  private void conductances(float[] lostContact, MouthFilm mouth) {
    Cavity.Walls walls = model.cavity().walls();
    double[] k = kernel.cellConductivity();
    double constant = curves.conductivity(0);
    Arrays.fill(wall, 0);
    for (int w = 0; w < conductance.length; w++) {
      double own = k == null ? constant : k[walls.cell()[w]];
      double e = walls.edge()[w];
      double inside = reach[w] / (own * e * e);
      if (model.mouldCell()[w] >= 0) {
        double lost = lostContact[walls.cell()[w]] / (walls.cosine()[w] * e * e);
        conductance[w] = 1 / (inside + lost + model.resistance()[w]);
      } else {
        conductance[w] =
            mouth.film() > 0 ? 1 / (inside + 1 / (mouth.film() * walls.cosine()[w] * e * e)) : 0;
      }
      wall[meanAt[w]] += conductance[w];
    }
  }

  private double beyond(ThermalState state, MouthFilm mouth, int w) {
    int m = model.mouldCell()[w];
    return m >= 0 ? state.mould[m] + 0.5 * predicted[m] : mouth.temperature();
  }

  /** Takes what lies beyond the walls, and in the first pass how the temperature bends there. */
  private void meetWalls(ThermalState state, MouthFilm mouth) {
    double[] k = kernel.cellConductivity();
    double constant = curves.conductivity(0);
    int[] cell = model.cavity().walls().cell();
    Arrays.fill(source, 0);
    for (int w = 0; w < conductance.length; w++) {
      double beyond = beyond(state, mouth, w);
      if (passes == 1) {
        double fall = middle[cell[w]] - beyond;
        wallBend.take(w, middle, fall, conductance[w], k == null ? constant : k[cell[w]]);
      }
      driven[w] = wallBend.at(w) + beyond;
      source[meanAt[w]] += conductance[w] * driven[w];
    }
  }

  private void pass(ThermalState state, double dt, MouthFilm mouth) {
    meetWalls(state, mouth);
    double k = curves.conductivity(0);
    if (passes == 1) {
      kernel.curve(middle, k, wall, source);
    }
    added = kernel.step(state.temperature, capacity, k, wall, source, dt, mean);
    Arrays.fill(heat, 0);
    for (int w = 0; w < conductance.length; w++) {
      int m = model.mouldCell()[w];
      if (m >= 0) {
        heat[m] += dt * conductance[w] * (mean[meanAt[w]] - driven[w]);
      }
    }
    mouldSolver.solve(state.mould, heat, dt, change);
  }

  private double miss() {
    double most = 0;
    for (int m = 0; m < change.length; m++) {
      most = Math.max(most, 0.5 * Math.abs(change[m] - predicted[m]));
    }
    return most;
  }

  private void finish(ThermalState state, double dt) {
    double out = 0;
    for (int w = 0; w < conductance.length; w++) {
      if (model.mouldCell()[w] < 0) {
        out += dt * conductance[w] * (mean[meanAt[w]] - driven[w]);
      }
    }
    double[] mould = mouldSolver.apply(state.mould, heat, dt, change);
    double gain = applyEnthalpy(state);
    state.ledger.add(gain, mould[0], mould[1], out);
    state.time += dt;
  }

  /** Maps the step's temperatures back through enthalpy; returns J gained. */
  private double applyEnthalpy(ThermalState state) {
    double[] old = state.temperature;
    double[] fresh = state.previous;
    double[] enthalpy = state.enthalpy;
    double[] rise = added;
    workers.over(
        old.length,
        (a, b) -> {
          double gain = 0;
          for (int i = a; i < b; i++) {
            double dh = capacity[i] * rise[i];
            enthalpy[i] += dh;
            gain += dh * volume[i];
            fresh[i] = curves.temperature(enthalpy[i]);
          }
          gains[a / Workers.CHUNK] = gain;
        });
    state.previous = old;
    state.temperature = fresh;
    return Arrays.stream(gains).sum();
  }
}
