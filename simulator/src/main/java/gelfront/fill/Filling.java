// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import gelfront.base.Progress;
import gelfront.grid.Cavity;
import gelfront.state.ThermalState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A shot into an empty cavity: liquid behind a front that it drives before it.
 *
 * <pre>  div(w grad p) = 0 behind the front,  front's speed = what comes to it over its area</pre>
 *
 * <p>w is that of creeping flow in the cavity's own sections ({@code feed.Mobility}); so in a tube
 * the front's L^2 = R^2 p t / (4 eta). No inertia: a jet into a wide place isn't seen.
 */
public final class Filling {
  private static final String STAGE = "filling";

  /** Blocks that the fastest front may go on by at one pressure, beyond the one it stands in. */
  private static final double AHEAD = 6;

  /** Of the cavity, what may come at one pressure where that is more than a block. */
  private static final double PORTION = 0.015;

  /** Of the mouth's pressure, what the air's may change by in a step. */
  private static final double STIFF = 0.03;

  /** Of all the pressure there is, what counts as little. */
  private static final double FAINT = 0.05;

  /** Of the cavity, the body of air for which that counts. */
  private static final double RESOLVED = 0.02;

  /** Of the time so far, what is waited at least for air to leave. */
  private static final double SHORTEST_WAIT = 1e-4;

  /** Share of a block from which on it counts as reached at the end. */
  private static final double MOSTLY = 0.5;

  /** s between two looks at the chill at least, and what the shot is taken to last at least. */
  private static final double SHORTEST = 0.01;

  private static final double LEAST = 2;

  /** Parts of the time so far that the air left would take at this rate: it is given up. */
  private static final double PATIENCE = 1000;

  /** Share by which the way's growing resistance may slow a step's rate. */
  private static final double LEAST_SLOWING = 0.6;

  private final FillNet net;
  private final FillLaw law;
  private final Chill chill;
  private final ThermalState state;
  private final Front front;
  private final Air air;
  private final Ease ease;
  private final Pressure pressure;
  private final Wave wave;
  private final Warmth warmth;
  private final AirHistory history;
  private final boolean[] fullCell;

  /** m2 of shadow on the parting face, per block. */
  private final double[] shadow;

  /** Blocks of the gates. */
  private final int[] gate;

  private final List<double[]> trace = new ArrayList<>();
  private double time;
  private double chilled;
  private double turned;
  private boolean warmed = true;
  private double step;
  private double resistance;
  private double worst;
  private double push;

  /** J that came with the liquid: by the state, and by what was brought. */
  private double books;

  private double brought;
  private final double enters;
  private final double room;

  /**
   * @param vents m3/(Pa s) that each cell lets out, 0 where there is none
   * @param thrown m2 of shadow on the parting face that each cell throws
   * @param state of the mould, and the plastisol to be; modified, all but its time
   * @param gathered false: every cell is a block of its own, to see what blocks cost
   */
  public Filling(
      Cavity cavity,
      FillLaw law,
      double[] vents,
      double[] thrown,
      Chill chill,
      ThermalState state,
      boolean gathered) {
    this.law = law;
    this.chill = chill;
    this.state = state;
    net = new FillNet(cavity, gathered);
    front = new Front(net);
    air = new Air(net, net.perBlock(vents));
    shadow = net.perBlock(thrown);
    ease = new Ease(net, law.viscosity(), law.noFlow(), law.entering(), gathered);
    pressure = new Pressure(net);
    wave = new Wave(net, front);
    enters = law.curves().enthalpy(law.entering());
    room = Arrays.stream(net.volume).sum();
    warmth = new Warmth(net, law.curves(), law.noFlow(), enters);
    history = new AirHistory(net);
    fullCell = new boolean[cavity.count()];
    gate = IntStream.range(0, net.count()).filter(net::inGate).toArray();
  }

  /**
   * Fills until no air is left that could leave; where none came, the plastisol to be is as warm as
   * the liquid beside it.
   *
   * @throws gelfront.base.CancelledException if the watcher wants to stop
   */
  public FillRecord run(Progress progress) {
    ease.refresh(front.full, state.temperature);
    air.look(front);
    note();
    FillRecord.@Nullable End end = null;
    while (end == null) {
      progress.check(STAGE, front.held() / room);
      history.look(front, air, time);
      air.foresee(step);
      boolean moves = pressure.solve(front, ease.w, air, law.drive());
      push = push();
      if (!moves) {
        end = air.leaves(law.longest(), law.drive().pressure()) ? waited() : stalled();
      } else {
        advance();
        end = ended();
      }
    }
    cool(time - chilled);
    new Remainder(net, front, law.curves()).warm(state);
    return new FillRecord(
        end,
        time,
        reached(),
        arrivals(),
        history.left(air),
        new Welds(net, front, law.curves()).find(),
        front.held(),
        room,
        worst,
        Math.abs(books / brought - 1),
        trace());
  }

  /** Until denser air has left through its vents; what can't move sets meanwhile. */
  private FillRecord.@Nullable End waited() {
    FillRecord.End end = stalled();
    if (end == FillRecord.End.FROZEN) {
      return end;
    }
    double relief = air.relief(STIFF * over());
    step = Math.max(SHORTEST_WAIT * time, Math.min(relief, pause(2 * time)));
    air.after(front, step);
    pass();
    return ended();
  }

  /** Lets the time of a step pass. */
  private void pass() {
    double pause = pause(time + (room - front.held()) / pressure.rate());
    time += step;
    note();
    if (time >= next(pause) - 1e-9 * pause) {
      if (warmed) {
        cool(time - chilled);
      } else {
        ease.refresh(front.full, state.temperature);
      }
      warmed = !warmed;
      turned = time;
    }
    air.look(front);
  }

  private FillRecord.End stalled() {
    for (int b = 0; b < front.full.length; b++) {
      for (int k = net.graph.start()[b]; k < net.graph.start()[b + 1]; k++) {
        if (front.full[b] && ease.w[b] > 0 && !front.full[net.graph.other()[k]]) {
          return FillRecord.End.AIR_HOLDS;
        }
      }
    }
    return FillRecord.End.FROZEN;
  }

  private FillRecord.@Nullable End ended() {
    if (front.complete() || room - front.held() <= 1e-9 * room) {
      return FillRecord.End.FULL;
    }
    if (time > law.longest()) {
      return FillRecord.End.TOO_SLOW;
    }
    double missing = Math.min(front.held(), room - front.held());
    boolean hopeless = pressure.rate() * time * PATIENCE < missing;
    boolean leaves = air.leaves(law.longest(), law.drive().pressure());
    return hopeless && !leaves ? FillRecord.End.AIR_HOLDS : null;
  }

  private void advance() {
    gather();
    double left = room - front.held();
    double pause = pause(time + left / pressure.rate());
    double stiff =
        air.patient(pressure.atMouth(), STIFF * over(), RESOLVED * room, step, pressure.comes);
    step = Math.min(length(), Math.max(1e-3 * pause, next(pause) - time));
    step = Math.min(step, Math.min(stiff, left / pressure.rate()));
    double slowed = slowed(step);
    double taken = step * slowed;
    double heat = heat();
    warmth.step(state, front, pressure.through, pressure.enters, taken, wave.warm);
    System.arraycopy(pressure.comes, 0, wave.rate, 0, pressure.comes.length);
    worst = Math.max(worst, Math.abs(pressure.given() / pressure.rate() - 1));
    double before = front.held();
    wave.slow(slowed);
    air.hold(over(), step, wave.rate, wave.warm);
    wave.go(time, step, this::settle);
    brought += (front.held() - before) * enters;
    double gain = heat() - heat;
    books += gain;
    state.ledger.add(gain, 0, 0, -gain);
    air.after(front, step);
    pass();
  }

  /**
   * s between two looks at the mould's chill.
   *
   * @param whole s that filling takes at the rate of the moment
   */
  private double pause(double whole) {
    return Math.max(SHORTEST, Math.min(whole, Math.max(2 * time, LEAST)) / law.looks());
  }

  /**
   * s at which the mould's chill is reckoned with or the liquid's viscosity looked at, by turns:
   * half way between two chills liquid is as warm as it is in the mean.
   */
  private double next(double pause) {
    return turned + 0.5 * pause;
  }

  /** Pa that press on the air, or soon will. */
  private double over() {
    return Math.max(pressure.atMouth(), FAINT * law.drive().pressure());
  }

  private void gather() {
    System.arraycopy(pressure.comes, 0, wave.rate, 0, pressure.comes.length);
    wave.gather();
  }

  /** s that the pressure may be taken to hold. */
  private double length() {
    double row = wave.row(1);
    return Math.max(row, Math.min(wave.row(AHEAD), PORTION * room / pressure.rate()));
  }

  /**
   * Under given pressure the way gets longer while the step lasts: by how much less comes, going by
   * how resistance has grown with what is in.
   */
  private double slowed(double dt) {
    double now = pressure.spent(air) / pressure.rate();
    boolean pressed = pressure.atMouth() >= law.drive().pressure() * (1 - 1e-9);
    double last = trace.size() > 1 ? held(1) - held(2) : 0;
    double slope = last > 0 ? Math.max(0, (now - resistance) / last) : 0;
    resistance = now;
    // What denser air takes of the pressure is in the solve already.
    double own = Math.min(1, pressure.spent(air) / pressure.atMouth());
    double more = 0.5 * own * slope * pressure.rate() * dt;
    return pressed ? Math.max(LEAST_SLOWING, now / (now + more)) : 1;
  }

  private double held(int back) {
    return trace.get(trace.size() - back)[1];
  }

  /** J in all liquid. */
  private double heat() {
    double sum = Arrays.stream(front.heat).sum();
    for (int c = 0; c < fullCell.length; c++) {
      sum += fullCell[c] ? net.cellVolume[c] * state.enthalpy[c] : 0;
    }
    return sum;
  }

  /** Cells of a block that has become full get its heat. */
  private void settle(int b) {
    double t = law.curves().temperature(front.arrived[b]);
    for (int i = net.first[b]; i < net.first[b + 1]; i++) {
      int c = net.cells[i];
      state.enthalpy[c] = front.arrived[b];
      state.temperature[c] = t;
      fullCell[c] = true;
    }
    ease.filled(b, t);
  }

  private void cool(double dt) {
    if (dt > 0) {
      chill.step(state, fullCell, dt);
    }
    chilled = time;
  }

  private void note() {
    trace.add(new double[] {time, front.held(), pressure.atMouth(), atGate(), push});
  }

  /** N that liquid and air push the halves apart with. */
  private double push() {
    double sum = 0;
    for (int b = 0; b < shadow.length; b++) {
      double over = front.full[b] ? pressure.at(b) : air.start(air.body[b]);
      sum += shadow[b] * Math.max(0, over);
    }
    return sum;
  }

  /** Pa, by volume. */
  private double atGate() {
    double sum = 0;
    double all = 0;
    for (int b : gate) {
      sum += front.full[b] ? net.volume[b] * Math.max(0, pressure.at(b)) : 0;
      all += front.full[b] ? net.volume[b] : 0;
    }
    return all > 0 ? sum / all : 0;
  }

  private FillRecord.Trace trace() {
    return new FillRecord.Trace(column(0), column(1), column(2), column(3), column(4));
  }

  private double[] column(int i) {
    return trace.stream().mapToDouble(t -> t[i]).toArray();
  }

  private float[] reached() {
    float[] at = new float[net.of.length];
    for (int c = 0; c < at.length; c++) {
      int b = net.of[c];
      at[c] = front.full[b] || front.share(b) < MOSTLY ? front.filled[b] : (float) time;
    }
    return at;
  }

  private float[] arrivals() {
    float[] t = new float[net.of.length];
    for (int c = 0; c < t.length; c++) {
      int b = net.of[c];
      boolean mostly = !front.full[b] && front.share(b) >= MOSTLY;
      double h = mostly ? front.heat[b] / front.content[b] : front.arrived[b];
      t[c] = Double.isNaN(h) ? Float.NaN : (float) law.curves().temperature(h);
    }
    return t;
  }
}
