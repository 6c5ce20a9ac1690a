package gelfront.run;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.feed.FeedLaw;
import gelfront.feed.Feeding;
import gelfront.feed.Liquid;
import gelfront.feed.Reservoir;
import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
import gelfront.heat.MouthFilm;
import gelfront.heat.SplitStepper;
import gelfront.material.HeatCurves;
import gelfront.mesh.TriangleMesh;
import gelfront.setup.Case;
import gelfront.setup.Shot;
import gelfront.state.ThermalState;
import gelfront.verdict.Judge;
import gelfront.verdict.ShotRecord;
import gelfront.voxelize.CaseVoxels;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Runs a case: voxels, cooling, judgement. */
public final class CaseRunner {
  /** K that the middle of the last cell may be above its mean, at most. */
  private static final double MIDDLES = 0.5;

  /** Longest shot that is followed, s: two hours. A part that is not firm by then never will be. */
  private static final double LONGEST = 7200;

  /** Between injector and sprue while it holds, W/m2 K: liquid on hot metal, estimated. */
  private static final double INJECTOR_FILM = 1000;

  private CaseRunner() {}

  /**
   * What a run leaves in memory.
   *
   * @param voxels the case in voxels
   * @param shot what the observers saw
   * @param judgement what it means
   * @param end state at the end of the run
   * @param steps taken
   * @param finished whether all plastisol is firm
   */
  public record Outcome(
      CaseVoxels voxels,
      ShotRecord shot,
      Judge.Judgement judgement,
      ThermalState end,
      int steps,
      boolean finished) {}

  /**
   * @param part closed, outward-wound, metres
   * @throws gelfront.voxelize.VoxelException if shape and feed make no sound model
   * @throws gelfront.base.CancelledException if the watcher wants to stop
   */
  public static Outcome run(Case c, TriangleMesh part, Workers workers, Progress progress) {
    return run(c, CaseVoxels.of(c, part, progress), workers, progress);
  }

  /**
   * As above, from voxels on.
   *
   * @param voxels of this case; read only
   */
  public static Outcome run(Case c, CaseVoxels voxels, Workers workers, Progress progress) {
    VoxelModel model = voxels.model();
    Cavity cavity = model.cavity();
    HeatCurves curves = HeatCurves.of(c.plastisol());
    ThermalState state = new ThermalState(model, curves, c.shot().temperature());
    CrossingTimes set = new CrossingTimes(cavity, c.plastisol().noFlow());
    CrossingTimes firm = new CrossingTimes(cavity, c.plastisol().firm());
    HistoryRecorder history = new HistoryRecorder(model);
    history.start(state);
    Optional<Feeding> feeding =
        c.numerics().flow() ? Optional.of(feeding(c, voxels, curves)) : Optional.empty();
    Optional<FlowRecorder> curve =
        feeding.map(f -> new FlowRecorder(f, cavity.nearest(voxels.gates().get(0).middle())));
    List<StepObserver> watching = new ArrayList<>(List.of(set, firm, history));
    curve.ifPresent(watching::add);
    ShotRun shot =
        new ShotRun(
            new SplitStepper(model, curves, workers),
            mouth(c),
            Events.of(c.shot()),
            StepControl.tolerance(c.numerics().level(), c.block()),
            watching,
            feeding.map(f -> flow(f, c.shot())).orElse(Flow.NONE));
    int steps = shot.run(state, c.plastisol().firm() - MIDDLES, LONGEST, progress);
    history.end(state);
    ShotRecord record =
        new ShotRecord(
            set.times(),
            firm.times(),
            history.history(),
            history.mould(),
            curve.map(FlowRecorder::record));
    Judge.Judgement judgement = Judge.judge(c, voxels, record, progress);
    return new Outcome(voxels, record, judgement, state, steps, state.time < LONGEST);
  }

  private static Feeding feeding(Case c, CaseVoxels voxels, HeatCurves curves) {
    Cavity cavity = voxels.model().cavity();
    return new Feeding(
        cavity,
        curves,
        FeedLaw.of(c.plastisol(), c.shot().temperature(), c.up()),
        new Reservoir(cavity, voxels.mouth().direction(), (double) c.cavities() / c.drawn()),
        new Liquid(cavity, true));
  }

  private static Flow flow(Feeding feeding, Shot shot) {
    return new ShotFlow(feeding, shot.holdTime(), shot.holdPressure(), shot.topUps());
  }

  private static ShotRun.Mouth mouth(Case c) {
    return new ShotRun.Mouth(
        new MouthFilm(INJECTOR_FILM, c.shot().temperature()),
        c.shot().holdTime(),
        new MouthFilm(c.block().airFilm(), c.block().airTemperature()));
  }
}
