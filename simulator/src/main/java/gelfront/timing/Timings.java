package gelfront.timing;

import gelfront.base.Quantities;
import gelfront.base.Workers;
import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
import gelfront.setup.LoadedCase;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/** Runs things against the clock and tells a line about each. */
public final class Timings {
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
   * @param spacing metres
   */
  public void standardCase(double spacing, int runs, Workers all) {
    Stopwatch<VoxelModel> voxels = Stopwatch.time(() -> StandardCase.model(spacing));
    VoxelModel model = voxels.value();
    tell("standard case, voxels of %.2f mm", spacing * 1e3);
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
  }

  private static Stopwatch<StandardCase.Run> median(VoxelModel model, Workers workers, int runs) {
    List<Stopwatch<StandardCase.Run>> took = new ArrayList<>();
    for (int i = 0; i < runs; i++) {
      took.add(Stopwatch.time(() -> StandardCase.run(model, workers)));
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
    tell("  other gate   %6.2f s   voxels follow its size", live.median(runs, live::otherGate));
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
