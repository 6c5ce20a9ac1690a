// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.dent.SectionStrength;
import gelfront.feed.FeedClock;
import gelfront.feed.FeedLaw;
import gelfront.feed.Feeding;
import gelfront.feed.Liquid;
import gelfront.feed.Reservoir;
import gelfront.fill.FillRecord;
import gelfront.grid.Cavity;
import gelfront.grid.Fold;
import gelfront.grid.VoxelModel;
import gelfront.heat.HeatStepper;
import gelfront.heat.MouthFilm;
import gelfront.heat.SplitStepper;
import gelfront.material.HeatCurves;
import gelfront.setup.Case;
import gelfront.setup.Shot;
import gelfront.state.HeatLedger;
import gelfront.state.ThermalState;
import gelfront.verdict.Owners;
import gelfront.verdict.ShotRecord;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.Cavities;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** One shot into a mould of given temperatures: stepped, watched, and opened. */
final class OneShot {
  /** K that the middle of the last cell may be above its mean, at most. */
  private static final double MIDDLES = 0.5;

  /** Longest shot that is followed, s: two hours. A part that is not firm by then never will be. */
  private static final double LONGEST = 7200;

  /** Between injector and sprue while it holds, W/m2 K: liquid on hot metal, estimated. */
  private static final double INJECTOR_FILM = 1000;

  /** °C that nothing falls through: runs until it is told to end. */
  private static final double NEVER = -1e6;

  private final Case setup;
  private final HeatCurves curves;
  private final Fold fold;
  private final HeatStepper stepper;
  private final Flow flow;
  private final ThermalState state;
  private final CrossingTimes set;
  private final CrossingTimes firm;
  private final HistoryRecorder history;
  private final Optional<FlowRecorder> curve;
  private final Optional<LosingContact> leaving;
  private final Optional<FeedClock> flowClock;
  private final OptionalDouble opensAt;
  private final Optional<ShotFill> filling;
  private Optional<FillRecord> fill = Optional.empty();
  private @Nullable FoldedState folded;
  private Optional<Opened> whenFirm = Optional.empty();
  private @Nullable Opened opened;
  private int steps;
  private double ended;

  /**
   * The mould as it is opened.
   *
   * @param time s after the shot's start
   * @param mould °C per cell
   * @param ledger joules moved until then
   */
  record Opened(double time, double[] mould, HeatLedger ledger) {}

  /**
   * @param mould °C per mould cell before the shot; not modified
   */
  OneShot(Case c, CaseVoxels voxels, Workers workers, double[] mould) {
    VoxelModel model = voxels.model();
    curves = HeatCurves.of(c.plastisol());
    setup = c;
    fold = Folding.of(c, voxels, mould);
    opensAt = c.opensAt();
    state = new ThermalState(model, curves, c.shot().temperature());
    System.arraycopy(mould, 0, state.mould, 0, mould.length);
    set = new CrossingTimes(fold.model().cavity(), c.plastisol().noFlow());
    firm = new CrossingTimes(fold.model().cavity(), c.plastisol().firm());
    history = new HistoryRecorder(model);
    filling =
        c.fill().on() ? Optional.of(new ShotFill(c, voxels, mould, workers)) : Optional.empty();
    Optional<SectionStrength> skin =
        c.numerics().flow() ? Optional.of(skin(c, voxels)) : Optional.empty();
    Optional<Feeding> feeding = skin.map(s -> feeding(c, voxels, fold, curves, s));
    leaving = feeding.map(f -> LosingContact.of(f, fold, skin.get(), c.block()));
    flowClock = feeding.map(Feeding::clock);
    curve = feeding.map(f -> recorder(f, fold, voxels));
    flow = feeding.map(f -> flow(f, c.shot())).orElse(Flow.NONE);
    stepper = new SplitStepper(fold.model(), curves, workers);
  }

  /**
   * Until all plastisol is firm.
   *
   * @param others who look on
   */
  void run(Progress progress, List<StepObserver> others) {
    fill = filling.map(f -> f.fill(state, progress));
    FoldedState now = new FoldedState(fold, curves, state);
    if (fill.isPresent()) {
      set.start(now.left());
      firm.start(now.left());
    }
    history.start(state);
    WhenFirm last = new WhenFirm(firm, state);
    List<StepObserver> atTheWhole =
        new ArrayList<>(List.<StepObserver>of(history, this::look, last));
    atTheWhole.addAll(others);
    curve.ifPresent(atTheWhole::add);
    leaving.ifPresent(atTheWhole::add);
    double until = setup.plastisol().firm() - MIDDLES;
    steps =
        shotRun(List.of(set, firm, now.shown(atTheWhole)))
            .run(now.left(), until, LONGEST, progress);
    folded = now;
    history.end(state);
    whenFirm = last.opened();
    ended = state.time;
  }

  private ShotRun shotRun(List<StepObserver> watching) {
    Events events = Events.of(setup.shot());
    return new ShotRun(
        stepper,
        mouth(setup),
        opensAt.isPresent() ? events.withChange(opensAt.getAsDouble()) : events,
        StepControl.tolerance(setup.numerics().level(), setup.block()),
        watching,
        flow);
  }

  private void look(ThermalState whole, double from) {
    if (opensAt.isPresent() && Math.abs(whole.time - opensAt.getAsDouble()) < 1e-9) {
      opened = now();
    }
  }

  /**
   * The mould when it is opened: by the clock, or when all of the shot is firm. Where the clock
   * opens it later than that, the shot goes on until then.
   */
  Opened opened(Progress progress) {
    if (opened == null) {
      opened =
          opensAt.isPresent()
              ? later(opensAt.getAsDouble(), progress)
              : whenFirm.orElseGet(this::now);
    }
    return opened;
  }

  private Opened later(double time, Progress progress) {
    FoldedState last = Objects.requireNonNull(folded, "the shot has not been run");
    shotRun(List.of()).run(last.left(), NEVER, time, progress);
    last.unfold();
    return now();
  }

  private Opened now() {
    HeatLedger moved = new HeatLedger();
    moved.add(state.ledger);
    return new Opened(state.time, state.mould.clone(), moved);
  }

  /** What the observers saw. */
  ShotRecord record() {
    return new ShotRecord(
        fold.unfold(set.times()),
        fold.unfold(firm.times()),
        history.history(),
        history.mould(),
        curve.map(FlowRecorder::record),
        fill);
  }

  /** What the flow's stages took; empty: no flow. */
  Optional<FeedClock> flowClock() {
    return flowClock;
  }

  /** s that the calculation of the shot itself took. */
  double fillSeconds() {
    return filling.map(ShotFill::seconds).orElse(0.0);
  }

  ThermalState state() {
    return state;
  }

  int steps() {
    return steps;
  }

  /** The whole over what was calculated of it. */
  int times() {
    return fold.times();
  }

  /** s at which all plastisol was firm; the end of the run where it never was. */
  double firmAt() {
    return whenFirm.map(Opened::time).orElse(ended);
  }

  boolean finished() {
    return ended < LONGEST;
  }

  private static FlowRecorder recorder(Feeding feeding, Fold fold, CaseVoxels voxels) {
    int gate = voxels.model().cavity().nearest(voxels.gates().get(0).middle());
    return new FlowRecorder(feeding, fold, Owners.of(voxels), voxels.cavities().count(), gate);
  }

  private static SectionStrength skin(Case c, CaseVoxels voxels) {
    Cavities k = voxels.cavities();
    double least =
        FeedLaw.of(c.plastisol(), c.shot().temperature(), c.up(voxels.mouth().direction()))
            .skinBears();
    return new SectionStrength(voxels.model().cavity(), k.of(), k.count(), c.plastisol(), least);
  }

  private static Feeding feeding(
      Case c, CaseVoxels voxels, Fold fold, HeatCurves curves, SectionStrength skin) {
    Cavity cavity = fold.model().cavity();
    FeedLaw law =
        FeedLaw.of(c.plastisol(), c.shot().temperature(), c.up(voxels.mouth().direction()));
    return new Feeding(
        cavity,
        curves,
        law,
        new Reservoir(cavity, voxels.mouth().direction(), (double) c.cavities() / c.drawn()),
        new Liquid(cavity, true),
        fold.times() == 1 ? skin : new FoldedSkin(fold, skin));
  }

  private static Flow flow(Feeding feeding, Shot shot) {
    return new ShotFlow(feeding, shot.holdTime(), shot.holdPressure(), shot.topUps());
  }

  static ShotRun.Mouth mouth(Case c) {
    return new ShotRun.Mouth(
        new MouthFilm(INJECTOR_FILM, c.shot().temperature()),
        c.shot().holdTime(),
        new MouthFilm(c.block().airFilm(), c.block().airTemperature()));
  }
}
