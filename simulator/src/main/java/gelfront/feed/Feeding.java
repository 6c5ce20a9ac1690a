// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Cavity;
import gelfront.material.HeatCurves;
import gelfront.state.ThermalState;
import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The feeding flow, after each step of conduction.
 *
 * <p>What a place contracts by is drawn through liquid joined to the mouth, or given by the skin;
 * the flow carries heat. Liquid that isn't joined is unfed. A cell that set before the step's
 * middle draws through its joined neighbours. A cell that conduction heated draws nothing. Ends
 * when no liquid of the part is joined.
 *
 * <p>Conduction cools a gate in a step, then the flow warms it again. What flows is told by the
 * temperature half way down: by that at the end, gates closed a fifth too early. Half way each sees
 * the other's middle, as in Strang's splitting (SIAM J. Numer. Anal. 5 (1968) 506; from memory).
 */
public final class Feeding {
  /** The flow's course is nearly settled after so many rounds; later steps have the last one's. */
  private static final int FIRST_ROUNDS = 3;

  private final Cavity cavity;
  private final HeatCurves curves;
  private final FeedLaw law;
  private final Reservoir reservoir;
  private final Reach reach;
  private final Liquid liquid;
  private final Mobility mobility;
  private final Suction suction;
  private final Falls falls;
  private final SkinStrength skin;
  private final Course course = new Course();
  private final Carrier carrier;
  private final Contraction contraction;
  private final Draw draw;
  private final Coasting coasting = new Coasting();
  private final double[] volume;
  private final double surface;
  private final FeedSums sums = new FeedSums();
  private final FeedClock clock = new FeedClock();

  /** °C per cell when conduction had done half of its step. */
  private final double[] middle;

  private boolean flowsNow;
  private double ended = Double.POSITIVE_INFINITY;

  /** A skin that bears the law's suction everywhere. */
  public Feeding(
      Cavity cavity, HeatCurves curves, FeedLaw law, Reservoir reservoir, Liquid liquid) {
    this(cavity, curves, law, reservoir, liquid, law.skin(cavity.count()));
  }

  /**
   * @param liquid of this cavity
   * @param skin of this shot
   */
  public Feeding(
      Cavity cavity,
      HeatCurves curves,
      FeedLaw law,
      Reservoir reservoir,
      Liquid liquid,
      SkinStrength skin) {
    this.skin = skin;
    this.cavity = cavity;
    this.curves = curves;
    this.law = law;
    this.reservoir = reservoir;
    this.liquid = liquid;
    reach = new Reach(cavity);
    mobility = new Mobility(cavity);
    suction = new Suction(cavity);
    falls = new Falls(cavity, liquid, suction);
    volume = cavity.volumes();
    middle = new double[volume.length];
    double[] mass = new double[volume.length];
    Arrays.fill(mass, 1);
    carrier = new Carrier(cavity, curves, volume, mass);
    contraction = new Contraction(law, volume, mass);
    draw = new Draw(cavity, contraction, reach, middle, law.noFlow());
    surface = highestMouth(cavity, law);
  }

  /** How the open end is while a step lasts. */
  public enum Supply {
    /** Liquid of the shot's temperature comes in as it is drawn. */
    FROM_OUTSIDE,
    /** The sprue's own liquid sinks. */
    SPRUE
  }

  /**
   * @param state after a step of conduction that began with {@code state.previous}; modified:
   *     temperature, enthalpy, ledger
   * @param from s at which that step began
   * @param pressure Pa at the mouth, over what bears on the skin from outside
   */
  public void step(ThermalState state, double from, Supply supply, double pressure) {
    step(state, from, supply, pressure, () -> {});
  }

  /**
   * As above.
   *
   * @param ask run between parts of the work; may throw, and the state is of no use then
   */
  public void step(ThermalState state, double from, Supply supply, double pressure, Runnable ask) {
    clock.start();
    contraction.over(state, from);
    advance(state, state.time - from, supply, pressure, ask);
    sums.part(ofPart(contraction.demand()), ofPart(contraction.unfed()));
    clock.lap(FeedClock.Stage.GATHER);
  }

  private void takeMiddle(ThermalState state) {
    for (int c = 0; c < middle.length; c++) {
      middle[c] = 0.5 * (state.previous[c] + state.temperature[c]);
    }
  }

  /** Fills the sprue up with liquid of the shot's temperature; what has set in it stays. */
  public void topUp(ThermalState state) {
    carrier.fill(state, reservoir.empty(), curves.enthalpy(law.entering()));
    reservoir.fill();
    coasting.stop();
  }

  private void advance(
      ThermalState state, double dt, Supply supply, double pressure, Runnable ask) {
    boolean over = ended < Double.POSITIVE_INFINITY || reservoir.dry();
    if (!over) {
      takeMiddle(state);
    }
    boolean coasts = !over && coast(supply, pressure);
    flowsNow = coasts || (!over && solve(supply, pressure, ask));
    if (!flowsNow) {
      ended = Math.min(ended, state.time);
      contraction.allLack();
      return;
    }
    book(dt);
    clock.lap(FeedClock.Stage.GATHER);
    supply(state, supply, dt);
    clock.lap(FeedClock.Stage.CARRY);
  }

  /** Goes on with the flow there is, scaled to what is drawn now; false: that won't do. */
  private boolean coast(Supply supply, double pressure) {
    double now = draw.asked();
    if (!coasting.goesOn(now, supply, pressure, reservoir.sunk())) {
      return false;
    }
    double times = now / draw.sum();
    suction.scale(times);
    draw.goOn(times);
    return true;
  }

  /** False: no liquid of the part is joined. */
  private boolean solve(Supply supply, double pressure, Runnable ask) {
    boolean[] joined = reach.find(middle, law.noFlow(), reservoir.empty());
    if (!reach.part()) {
      return false;
    }
    clock.lap(FeedClock.Stage.GATHER);
    liquid.update(joined);
    clock.lap(FeedClock.Stage.BLOCKS);
    ask.run();
    draw.gather(liquid.blocks());
    double[] skins = skin.bears(middle, contraction.unfed());
    double[] bears = liquid.means(joined, volume, skins, law.skinBears());
    clock.lap(FeedClock.Stage.GATHER);
    boolean first = !course.known();
    for (int round = 0; round < (first ? FIRST_ROUNDS : 1); round++) {
      drive(joined, bears, pressure, ask);
    }
    sums.solved(Math.max(mobility.iterations(), suction.iterations() / suction.passes()));
    coasting.solved(draw.sum(), suction.strain(), supply, pressure, reservoir.sunk());
    return true;
  }

  private void drive(boolean[] joined, double[] bears, double pressure, Runnable ask) {
    double[] w = mobility.solve(liquid, joined, middle, law.viscosity(), law.noFlow(), course);
    clock.lap(FeedClock.Stage.MOBILITY);
    ask.run();
    suction.solve(
        liquid,
        joined,
        reservoir.empty(),
        w,
        draw.perBlock(),
        head(liquid.blocks()),
        bears,
        pressure);
    clock.lap(FeedClock.Stage.SUCTION);
    ask.run();
    course.follow(liquid, suction.suction(), w);
    clock.lap(FeedClock.Stage.MOBILITY);
  }

  private void supply(ThermalState state, Supply supply, double dt) {
    boolean outside = supply == Supply.FROM_OUTSIDE || !reservoir.finite();
    if (law.carriesHeat()) {
      OptionalDouble shot =
          outside ? OptionalDouble.of(curves.enthalpy(law.entering())) : OptionalDouble.empty();
      carrier.carry(state, liquid, reach, suction, contraction.rate(), draw, shot, dt);
    }
    if (!outside) {
      double drawn = 0;
      for (int b = 0; b < liquid.count(); b++) {
        drawn += suction.entering(b) * dt;
      }
      reservoir.take(reach.joined(), drawn);
      carrier.empty(state, reservoir.empty());
    }
  }

  private double ofPart(double[] a) {
    byte[] region = cavity.region();
    double sum = 0;
    for (int c = 0; c < a.length; c++) {
      sum += region[c] == Cavity.Region.PART.ordinal() ? a[c] : 0;
    }
    return sum;
  }

  /** Pa by which the liquid's weight presses more at a block than at its surface. */
  private double[] head(Blocks blocks) {
    double[] head = new double[blocks.count()];
    double now = surface - reservoir.level() * law.weight().length();
    for (int b = 0; b < head.length; b++) {
      head[b] = now - cavity.centre(blocks.first[b]).dot(law.weight());
    }
    return head;
  }

  /** Weight times height of the highest cell at the mouth, Pa. */
  private static double highestMouth(Cavity cavity, FeedLaw law) {
    Cavity.Walls walls = cavity.walls();
    return IntStream.range(0, walls.count())
        .filter(w -> walls.mouth()[w])
        .mapToDouble(w -> cavity.centre(walls.cell()[w]).dot(law.weight()))
        .max()
        .orElse(0);
  }

  private void book(double dt) {
    double given = 0;
    double in = 0;
    for (int b = 0; b < liquid.count(); b++) {
      given += suction.given()[b];
      in += suction.entering(b);
    }
    draw.lacks(liquid.blocks(), suction);
    sums.step(draw.sum(), given, in, dt);
  }

  /** m3 contracted by above no-flow, per cell, so far. */
  public double[] demand() {
    return contraction.demand().clone();
  }

  /** m3 of that which no liquid came for, per cell, so far. */
  public double[] unfed() {
    return contraction.unfed().clone();
  }

  /** s at which the part lost its last joined liquid; +infinity: not yet. */
  public double ended() {
    return ended;
  }

  /** Pa below the mouth's pressure at a cell in the last step; NaN where nothing joined flows. */
  public double suctionAt(int cell) {
    boolean flows = flowsNow && reach.joined()[cell];
    return flows ? suction.suction()[liquid.blocks().of[cell]] : Double.NaN;
  }

  /** s since when less than half of what a place needs has come, per cell; +infinity: it is fed. */
  public float[] starved() {
    return contraction.starved().clone();
  }

  /**
   * m3 so far, by cavity.
   *
   * @param owner number of its cavity per cell of the part, from 1
   * @param count cavities
   * @return contracted by above no-flow, and unfed of that; per cavity, from 1
   */
  public double[][] byCavity(short[] owner, int count) {
    double[][] sum = new double[2][count + 1];
    for (int c = 0; c < owner.length; c++) {
      if (cavity.region()[c] == Cavity.Region.PART.ordinal()) {
        sum[0][owner[c]] += contraction.demand()[c];
        sum[1][owner[c]] += contraction.unfed()[c];
      }
    }
    return sum;
  }

  /**
   * Where the last step's suction was spent on the way to one cavity: Pa per region, in the order
   * of {@link Cavity.Region}; all 0 when nothing flowed.
   *
   * @param owner number of its cavity per cell of part and gates, 0 for what cavities share
   */
  public double[] spent(short[] owner, int number) {
    return flowsNow
        ? falls.to(owner, number, draw.perBlock())
        : new double[Cavity.Region.values().length];
  }

  /** Cell of a cavity where the last step's suction was spent most, by volume; -1: none flowed. */
  public int narrowest(short[] owner, int number) {
    return flowsNow ? falls.narrowest(owner, number) : -1;
  }

  /** The sprue's. */
  public Reservoir reservoir() {
    return reservoir;
  }

  /** Of the flow so far. */
  public FeedSums sums() {
    return sums;
  }

  /** What its stages took so far. */
  public FeedClock clock() {
    return clock;
  }
}
