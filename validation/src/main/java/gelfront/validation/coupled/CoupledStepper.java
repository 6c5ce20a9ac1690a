// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.coupled;

import gelfront.grid.VoxelModel;
import gelfront.heat.HeatStepper;
import gelfront.heat.MouthFilm;
import gelfront.material.HeatCurves;
import gelfront.state.ThermalState;
import java.util.Arrays;

/**
 * dH/dt = F(T) for plastisol and mould at once, F the heat that flows into each cell, by TR-BDF2
 * (Bank et al., IEEE Trans. Electron Devices 32 (1985) 1992; Hosea and Shampine, Appl. Numer. Math.
 * 20 (1996) 21; both from memory), written as a Runge-Kutta method with gamma = 2 - sqrt(2), d =
 * gamma / 2, w = sqrt(2) / 4:
 *
 * <pre>  H(T1) = H0 + dt (d F(T0) + d F(T1))
 *   H(T2) = H0 + dt (w F(T0) + w F(T1) + d F(T2))</pre>
 *
 * <p>Second order, L-stable. Each stage by Newton's method on T with H(T) as it is, kinks included;
 * each correction by conjugate gradients with multigrid. The step's heat is then the second line's
 * right side, each face counted once: what the iterations leave over stays in the state, and heat
 * is conserved to rounding.
 */
public final class CoupledStepper implements HeatStepper {
  private static final double D = 1 - Math.sqrt(0.5);
  private static final double W = Math.sqrt(2) / 4;

  /** Newton corrections with H's slope at hand; later ones take the steeper of the last two. */
  private static final int PLAIN = 8;

  private static final int MOST_CORRECTIONS = 60;

  /** What conjugate gradients leave of a correction. */
  private static final double SHARE = 1e-3;

  private final VoxelModel model;
  private final HeatCurves curves;
  private final double tolerance;
  private final HeatNetwork network;
  private final Multigrid multigrid;
  private final ConjugateGradients solver;
  private final int n;
  private final double[] volume;
  private final double[] t;
  private final double[] start;
  private final double[] speed;
  private final double[] ground;
  private final double[] slope;
  private final double[] mass;
  private final double[] known;
  private final double[] r;
  private final double[] correction;
  private final double[] more;
  private final double[] flux0;
  private final double[] flux1;
  private final double[] flux2;
  private boolean moving;
  private int iterations;

  /**
   * @param tolerance K, largest last Newton correction of a stage
   */
  public CoupledStepper(VoxelModel model, HeatCurves curves, double tolerance) {
    if (!(tolerance > 0)) {
      throw new IllegalArgumentException("a tolerance must be positive: " + tolerance);
    }
    this.model = model;
    this.curves = curves;
    this.tolerance = tolerance;
    network = new HeatNetwork(model, curves);
    int nodes = network.graph().nodes();
    multigrid = new Multigrid(network.graph(), network.places());
    solver = new ConjugateGradients(nodes);
    n = model.cavity().count();
    volume = model.cavity().volumes();
    t = new double[nodes];
    start = new double[nodes];
    speed = new double[nodes];
    ground = new double[nodes];
    slope = new double[nodes];
    mass = new double[nodes];
    known = new double[nodes];
    r = new double[nodes];
    correction = new double[nodes];
    more = new double[nodes];
    flux0 = new double[nodes];
    flux1 = new double[nodes];
    flux2 = new double[nodes];
  }

  /** Conjugate-gradient iterations of the last step, all corrections of both stages. */
  public int iterations() {
    return iterations;
  }

  /**
   * {@inheritDoc}
   *
   * @throws IllegalStateException if a stage does not converge
   */
  @Override
  public void step(ThermalState state, double dt, MouthFilm mouth) {
    if (!(dt > 0)) {
      throw new IllegalArgumentException("a step needs a length: " + dt);
    }
    iterations = 0;
    System.arraycopy(state.temperature, 0, start, 0, n);
    System.arraycopy(state.mould, 0, start, n, start.length - n);
    double c = D * dt;
    network.conduct(start);
    network.ground(mouth, start, ground);
    guess(0.5 * dt);
    double outMore = network.curve(t, mouth, ground, more);
    fluxes(start, mouth, flux0);
    double air = W * toAir(start);
    double out = W * out(start, mouth);
    guess(2 * c);
    stage(state, mouth, flux0, 1, flux0, 0, c);
    fluxes(t, mouth, flux1);
    air += W * toAir(t);
    out += W * out(t, mouth);
    guess(dt);
    stage(state, mouth, flux0, W / D, flux1, W / D, c);
    fluxes(t, mouth, flux2);
    air += D * toAir(t);
    out += D * out(t, mouth) + outMore;
    finish(state, dt, dt * air, dt * out);
  }

  private void fluxes(double[] at, MouthFilm mouth, double[] into) {
    network.fluxes(at, ground, mouth, into);
    for (int i = 0; i < into.length; i++) {
      into[i] += more[i];
    }
  }

  private void guess(double ahead) {
    for (int i = 0; i < t.length; i++) {
      t[i] = moving ? start[i] + ahead * speed[i] : start[i];
    }
  }

  /** Solves H(T) = H0 + c (a fa + b fb + F(T)) for T, from the guess in t. */
  private void stage(
      ThermalState state, MouthFilm mouth, double[] fa, double a, double[] fb, double b, double c) {
    for (int i = 0; i < t.length; i++) {
      known[i] = a * fa[i] + b * fb[i];
    }
    Arrays.fill(slope, 0);
    for (int k = 1; k <= MOST_CORRECTIONS; k++) {
      if (correct(state, mouth, c, k) <= tolerance) {
        return;
      }
    }
    throw new IllegalStateException("the step does not converge at " + state.time + " s");
  }

  private double correct(ThermalState state, MouthFilm mouth, double c, int k) {
    if (!network.constant()) {
      network.conduct(t);
      network.ground(mouth, t, ground);
    }
    fluxes(t, mouth, r);
    for (int i = 0; i < t.length; i++) {
      double last = k > PLAIN ? slope[i] : 0;
      slope[i] = capacity(i);
      mass[i] = Math.max(slope[i], last) / c + ground[i];
      r[i] += known[i] - gain(state, i) / c;
    }
    multigrid.refresh(mass, network.conductances());
    solver.solve(multigrid, r, correction, SHARE);
    iterations += solver.iterations();
    double most = 0;
    for (int i = 0; i < t.length; i++) {
      t[i] += correction[i];
      most = Math.max(most, Math.abs(correction[i]));
    }
    return most;
  }

  /** J/K of a cell at its temperature. */
  private double capacity(int i) {
    return i < n ? volume[i] * curves.slope(t[i]) : model.mould().capacity()[i - n];
  }

  /** J that a cell has gained since the step began. */
  private double gain(ThermalState state, int i) {
    return i < n
        ? volume[i] * (curves.enthalpy(t[i]) - state.enthalpy[i])
        : model.mould().capacity()[i - n] * (t[i] - start[i]);
  }

  /** W that the block gives to the air. */
  private double toAir(double[] at) {
    double sum = 0;
    for (int i = n; i < at.length; i++) {
      sum += ground[i] * (at[i] - model.mould().airTemperature()[i - n]);
    }
    return sum;
  }

  /** W that leaves through the mouth. */
  private double out(double[] at, MouthFilm mouth) {
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += ground[i] * (at[i] - mouth.temperature());
    }
    return sum;
  }

  private void finish(ThermalState state, double dt, double air, double out) {
    double[] fresh = state.previous;
    double plastisol = 0;
    double mould = 0;
    for (int i = 0; i < t.length; i++) {
      double e = dt * (W * flux0[i] + W * flux1[i] + D * flux2[i]);
      if (i < n) {
        plastisol += e;
        state.enthalpy[i] += e / volume[i];
        fresh[i] = curves.temperature(state.enthalpy[i]);
        speed[i] = (fresh[i] - start[i]) / dt;
      } else {
        mould += e;
        double rise = e / model.mould().capacity()[i - n];
        state.mould[i - n] += rise;
        speed[i] = rise / dt;
      }
    }
    state.previous = state.temperature;
    state.temperature = fresh;
    moving = true;
    state.ledger.add(plastisol, mould, air, out);
    state.time += dt;
  }
}
