// SPDX-License-Identifier: Apache-2.0
package gelfront.live;

import gelfront.base.CancelledException;
import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.finding.Findings;
import gelfront.mesh.TriangleMesh;
import gelfront.run.CaseRunner;
import gelfront.setup.Case;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import gelfront.setup.PartShape;
import gelfront.voxelize.KeptVoxels;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A part that stays in memory while gate, sprue, block and recipe change. The mesh is read once;
 * what of its voxels a change leaves alone is used again ({@link KeptVoxels}). Only cells in narrow
 * channels follow the size of these.
 *
 * <p>Results are those of {@link CaseRunner} to the last bit, whatever was asked before. Requests
 * may come from any thread. A request that a newer one, or its own {@code cancel}, makes pointless
 * stops at the next progress check: one each 16 000 triangles, each solid and axis, each time step,
 * each of these again in judging.
 */
public final class LiveModel {
  private final PartShape shape;
  private final Workers workers;
  private final Executor executor;

  /** Touched by the one loop alone. */
  private final KeptVoxels voxels;

  private final Object lock = new Object();
  private @Nullable Task<?> newest;
  private boolean waiting;
  private boolean looping;

  private LiveModel(PartShape shape, TriangleMesh part, Workers workers, Executor executor) {
    this.shape = shape;
    this.workers = workers;
    this.executor = executor;
    this.voxels = new KeptVoxels(part);
  }

  /**
   * Reads and checks the part's mesh. The first request pays for its voxels.
   *
   * @param workers that loops are split over; their pool must not be one whose only thread is
   *     {@code executor}'s
   * @param executor one thread of it is taken while there is something to calculate
   * @throws gelfront.mesh.MeshException if the mesh can't be read or trusted
   */
  public static LiveModel open(LoadedCase loaded, Workers workers, Executor executor) {
    PartShape shape = loaded.setup().part();
    return open(shape, PartLoader.load(shape).mesh(), workers, executor);
  }

  /**
   * With a mesh that is in memory already.
   *
   * @param shape that all cases must name
   * @param part closed, outward-wound, metres
   */
  public static LiveModel open(
      PartShape shape, TriangleMesh part, Workers workers, Executor executor) {
    return new LiveModel(shape, part, workers, executor);
  }

  /**
   * Asks for a verdict, and gives up every request before.
   *
   * @param changed of the same part
   * @return what was found; {@link java.util.concurrent.CancellationException} if a newer request
   *     came; {@link gelfront.voxelize.VoxelException} if shape and feed make no sound model
   * @throws IllegalArgumentException if the case is of another part
   * @throws RejectedExecutionException if the executor takes no more work
   */
  public CompletableFuture<Findings> request(Case changed) {
    return request(changed, Progress.NONE);
  }

  /**
   * As above, watched.
   *
   * @param watch told from the executor's thread; its false cancels this request
   */
  public CompletableFuture<Findings> request(Case changed, Progress watch) {
    return submit(changed, watch, o -> o.judgement().findings());
  }

  /** As above, with all that the run leaves in memory, for those who show more than a verdict. */
  public CompletableFuture<CaseRunner.Outcome> outcome(Case changed, Progress watch) {
    return submit(changed, watch, o -> o);
  }

  private <T> CompletableFuture<T> submit(
      Case changed, Progress watch, Function<CaseRunner.Outcome, T> wanted) {
    if (!changed.part().equals(shape)) {
      throw new IllegalArgumentException("a live model is of one part; open another");
    }
    Task<T> task = new Task<>(changed, watch, wanted, new CompletableFuture<>());
    Task<?> before;
    boolean start;
    synchronized (lock) {
      before = newest;
      newest = task;
      waiting = true;
      start = !looping;
      looping = true;
    }
    if (before != null) {
      before.result.cancel(false); // outside the lock: callers' actions may run here
    }
    if (start) {
      start();
    }
    return task.result;
  }

  private void start() {
    try {
      executor.execute(this::loop);
    } catch (RejectedExecutionException e) {
      synchronized (lock) {
        looping = false;
        waiting = false;
      }
      throw e;
    }
  }

  private void loop() {
    for (Task<?> task = next(); task != null; task = next()) {
      task.run(workers, voxels);
    }
  }

  /** The newest request if nobody has taken it yet; null: the loop ends. */
  private @Nullable Task<?> next() {
    synchronized (lock) {
      looping = waiting;
      waiting = false;
      return looping ? newest : null;
    }
  }

  /** One request; its future is the only sign that it was given up. */
  private record Task<T>(
      Case setup,
      Progress watch,
      Function<CaseRunner.Outcome, T> wanted,
      CompletableFuture<T> result) {

    void run(Workers workers, KeptVoxels voxels) {
      Progress wantedStill = (stage, f) -> !result.isDone() && watch.at(stage, f);
      try {
        wantedStill.check("starting", 0);
        result.complete(
            wanted.apply(
                CaseRunner.run(setup, voxels.of(setup, wantedStill), workers, wantedStill)));
      } catch (CancelledException e) {
        result.cancel(false);
      } catch (RuntimeException | Error e) {
        result.completeExceptionally(e);
      }
    }
  }
}
