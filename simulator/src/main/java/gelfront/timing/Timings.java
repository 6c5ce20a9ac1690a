// SPDX-License-Identifier: Apache-2.0
package gelfront.timing;

import gelfront.base.Progress;
import gelfront.base.Quantities;
import gelfront.base.Workers;
import gelfront.feed.FeedClock;
import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
import gelfront.heat.MouthFilm;
import gelfront.heat.SplitStepper;
import gelfront.mesh.TriangleMesh;
import gelfront.run.StepControl;
import gelfront.setup.Case;
import gelfront.setup.Fill;
import gelfront.setup.LoadedCase;
import gelfront.setup.Numerics;
import gelfront.state.ThermalState;
import gelfront.voxelize.CaseVoxels;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/** Runs things against the clock and tells a line about each. */
public final class Timings {
  private static final double MILLION_VOXEL = 0.212e-3;
  private static final int MILLION_STEPS = 30;

  /** s that the standard case with flow may take, two threads, warm. */
  private static final double MOST_NORMAL = 3;

  private static final double MOST_QUICK = 0.8;

  /** s that the shot itself may add at the quick level; else as much again. */
  private static final double MOST_FILL_QUICK = 0.5;

  /** Share of one run at a time per core that a study on all cores should keep. */
  private static final double STUDY = 0.9;

  private final Consumer<String> line;

  /**
   * @param line takes each line as soon as it is known
   */
  public Timings(Consumer<String> line) {
    this.line = line;
  }

  /**
   * The standard case: voxels, first run, then the median of runs with one thread and with all.
   *
   * @param voxel edge, metres; empty: the normal level's
   */
  public void standardCase(OptionalDouble voxel, int runs, Workers all) {
    Numerics numerics = new Numerics(Numerics.Level.NORMAL, voxel);
    Stopwatch<VoxelModel> voxels = Stopwatch.time(() -> StandardCase.model(numerics));
    VoxelModel model = voxels.value();
    tell("standard case, %s", cells(model.cavity()));
    tell(
        "  to voxels    %6.2f s   %,d plastisol and %,d mould cells",
        voxels.seconds(), model.cavity().count(), model.mould().count());
    Stopwatch<StandardCase.Run> first = Stopwatch.time(() -> StandardCase.run(model, all));
    tell(
        "  first run    %6.2f s   %d steps, %d passes, heat off by %.1e",
        first.seconds(),
        first.value().steps(),
        first.value().passes(),
        first.value().state().ledger.imbalance());
    Stopwatch<StandardCase.Run> one = median(model, Workers.SERIAL, runs);
    tell("  one thread   %6.2f s   peak heap %d MiB", one.seconds(), one.peakHeap() >> 20);
    Stopwatch<StandardCase.Run> many = median(model, all, runs);
    tell(
        "  %d threads    %6.2f s   peak heap %d MiB; %.2f times as fast as one",
        all.threads(), many.seconds(), many.peakHeap() >> 20, one.seconds() / many.seconds());
    errors(model, many.value());
    double alone = whole(model, Workers.SERIAL, runs);
    double together = whole(model, all, runs);
    tell(
        "  mirror images calculated, too: %.2f s and %.2f s, %.2f times as fast as one thread",
        alone, together, alone / together);
  }

  /** Median s of the standard case, all of it calculated. */
  private static double whole(VoxelModel model, Workers workers, int runs) {
    double tolerance = StepControl.tolerance(Numerics.Level.NORMAL);
    return IntStream.range(0, runs)
        .mapToDouble(i -> Stopwatch.seconds(() -> StandardCase.whole(model, workers, tolerance)))
        .sorted()
        .toArray()[runs / 2];
  }

  private static String cells(Cavity cavity) {
    double mm = cavity.grid().spacing() * 1e3;
    double least = cavity.smallEdge() * 1e3;
    String voxels = Quantities.say("voxels of %.2f mm", mm);
    return least < mm ? voxels + Quantities.say(", %.2f mm in the gate", least) : voxels;
  }

  /** The standard case as the quick level takes it, with its errors. */
  public void quickLevel(int runs, Workers all) {
    VoxelModel model = StandardCase.model(Numerics.Level.QUICK);
    double tolerance = StepControl.tolerance(Numerics.Level.QUICK);
    StandardCase.run(model, all, tolerance); // warm
    Stopwatch<StandardCase.Run> took = median(model, all, runs, tolerance);
    tell("standard case, quick: %s, %d steps", cells(model.cavity()), took.value().steps());
    tell("  %d threads    %6.2f s   warm, voxel model to result", all.threads(), took.seconds());
    errors(model, took.value());
  }

  private void errors(VoxelModel model, StandardCase.Run run) {
    StandardErrors e = StandardErrors.of(model.cavity(), run);
    tell(
        "  errors       %.2f %% at most on the axis, %+.2f %% at the gate; half way to the wall"
            + " %.2f %%, %+.2f %%; last below 90 °C %+.2f %%",
        100 * e.worstAxis(),
        100 * e.gate(),
        100 * e.worstHalf(),
        100 * e.half()[StandardErrors.GATE],
        100 * e.last());
  }

  /**
   * The standard case with the flow, at normal and quick level: what its parts take, warm.
   *
   * @param loaded the standard case; its body's mesh is made
   */
  public void withFlow(LoadedCase loaded, int runs, Workers all) {
    Case c = loaded.setup();
    TriangleMesh part = StandardCase.body(128);
    withFlow(c, part, Numerics.Level.NORMAL, MOST_NORMAL, runs, all);
    withFlow(c, part, Numerics.Level.QUICK, MOST_QUICK, runs, all);
  }

  /**
   * A study of the standard case on all cores beside one run at a time.
   *
   * @param loaded the standard case; its body's mesh is made
   * @param runs turns of which the median is told
   * @param pool with so many free threads
   */
  public void study(LoadedCase loaded, int runs, ExecutorService pool, int threads) {
    StudyTiming t = StudyTiming.median(loaded, StandardCase.body(128), runs, pool, threads);
    tell(
        "study of %d runs, quick: %.2f s on %d threads, %.2f s one at a time: %.0f %% of a run a"
            + " core (asked: %.0f %%)",
        t.runs(), t.all(), t.threads(), t.one(), 100 * t.efficiency(), 100 * STUDY);
  }

  private void withFlow(
      Case c, TriangleMesh part, Numerics.Level level, double most, int runs, Workers all) {
    Numerics numerics = new Numerics(level, OptionalDouble.empty());
    Case at = LiveRequests.with(c, c.feed(), c.shot(), numerics);
    CaseVoxels voxels = CaseVoxels.of(at, part, Progress.NONE);
    FeedTiming t = FeedTiming.median(at, voxels, runs, all);
    FeedClock f = t.flow();
    tell(
        "standard case with flow, %s: %d steps, %.2f s on %d threads to the verdict, %.1f s asked",
        level.name().toLowerCase(Locale.ROOT), t.steps(), t.seconds(), all.threads(), most);
    FeedTiming whole = FeedTiming.median(at.with(numerics.wholly()), voxels, runs, all);
    tell("  mirror images calculated, too: %.2f s", whole.seconds());
    Case filled =
        at.with(new Fill(true, OptionalDouble.empty(), Fill.BY_HAND, Fill.GAP, List.of()));
    FeedTiming shot = FeedTiming.median(filled, voxels, runs, all);
    double asked = level == Numerics.Level.QUICK ? MOST_FILL_QUICK : t.seconds();
    tell("  the shot itself, too: %.2f s more, %.2f s asked", shot.filling(), asked);
    tell("  conduction %.0f %%, judging %.0f %%", percent(t, t.cooling()), percent(t, t.judging()));
    tell(
        "  flow %.0f %%: mobility %.0f, suction %.0f, heat carried %.0f, blocks %.0f, rest %.0f %%",
        percent(t, f.seconds()),
        percent(t, f.seconds(FeedClock.Stage.MOBILITY)),
        percent(t, f.seconds(FeedClock.Stage.SUCTION)),
        percent(t, f.seconds(FeedClock.Stage.CARRY)),
        percent(t, f.seconds(FeedClock.Stage.BLOCKS)),
        percent(t, f.seconds(FeedClock.Stage.GATHER)));
  }

  private static double percent(FeedTiming t, double part) {
    return 100 * t.share(part);
  }

  /** A million cells: stages against the memory's speed, and threads against one. */
  public void kernel(Workers all) {
    VoxelModel model = StandardCase.model(MILLION_VOXEL);
    int n = model.cavity().count();
    tell("kernel, standard case in %,d plastisol cells", n);
    double one = stage("one thread ", model, Workers.SERIAL);
    double many = stage(all.threads() + " threads  ", model, all);
    tell("  stages       %.2f times as fast as on one thread", one / many);
    double alone = steps(model, Workers.SERIAL);
    double together = steps(model, all);
    tell(
        "  whole steps  %.2f s and %.2f s: %.2f times as fast as on one thread",
        alone, together, alone / together);
  }

  private double stage(String name, VoxelModel model, Workers workers) {
    int n = model.cavity().count();
    double triad = new Triad().rate(workers);
    double seconds = StageRate.seconds(model, workers);
    double rate = (double) StageRate.BYTES * n / seconds;
    tell(
        "  %s  %.2f ns per cell and stage, %d bytes: %.1f GB/s, %.0f %% of the triad's %.1f GB/s",
        name, 1e9 * seconds / n, StageRate.BYTES, 1e-9 * rate, 100 * rate / triad, 1e-9 * triad);
    return seconds;
  }

  /** s of a run's first steps. */
  private static double steps(VoxelModel model, Workers workers) {
    ThermalState state = new ThermalState(model, StandardCase.curves(), StandardCase.START);
    SplitStepper stepper = new SplitStepper(model, StandardCase.curves(), workers);
    return Stopwatch.seconds(
        () -> {
          for (int i = 0; i < MILLION_STEPS; i++) {
            stepper.step(state, 0.05 + 0.05 * state.time, MouthFilm.INSULATED);
          }
        });
  }

  private static Stopwatch<StandardCase.Run> median(VoxelModel model, Workers workers, int runs) {
    return median(model, workers, runs, StepControl.tolerance(Numerics.Level.NORMAL));
  }

  private static Stopwatch<StandardCase.Run> median(
      VoxelModel model, Workers workers, int runs, double tolerance) {
    List<Stopwatch<StandardCase.Run>> took = new ArrayList<>();
    for (int i = 0; i < runs; i++) {
      took.add(Stopwatch.time(() -> StandardCase.run(model, workers, tolerance)));
    }
    took.sort(Comparator.comparingDouble(Stopwatch::seconds));
    return took.get(runs / 2);
  }

  /**
   * Live mode: gate, sprue and recipe changed, from request to verdict.
   *
   * @param loaded with gate and sprue declared
   * @param loop one thread of it calculates, and splits its loops over {@code all}
   */
  public void live(LoadedCase loaded, int runs, Workers all, Executor loop) {
    LiveRequests live = new LiveRequests(loaded, all, loop);
    tell("live, %s at quick level, from request to verdict", loaded.setup().name());
    tell("  first        %6.2f s   once the part is read", live.first());
    live.median(runs, live::otherGate); // warm
    live.forgetGap();
    tell("  other gate   %6.2f s   new cells in it", live.median(runs, live::otherGate));
    tell("  other sprue  %6.2f s   the same voxels", live.median(runs, live::otherSprue));
    tell("  other recipe %6.2f s   the same model", live.median(runs, live::otherRecipe));
    tell("  longest time without asking whether to stop, when warm: %.0f ms", live.gap() * 1e3);
  }

  /** Reading, checking and voxelizing a mesh file. */
  public void largeMesh(Path stl, int triangles) {
    Stopwatch<Cavity> load = Stopwatch.time(() -> LargeMesh.load(stl));
    tell("mesh of %,d triangles", triangles);
    tell(
        "  to voxels    %6.2f s   %,d cells, peak heap %d MiB",
        load.seconds(), load.value().count(), load.peakHeap() >> 20);
  }

  private void tell(String format, Object... values) {
    line.accept(Quantities.say(format, values));
  }
}
