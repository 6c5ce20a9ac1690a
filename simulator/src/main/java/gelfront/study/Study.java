// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.RunStore;
import gelfront.base.CancelledException;
import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.mesh.TriangleMesh;
import gelfront.run.CaseRunner;
import gelfront.setup.Case;
import gelfront.setup.LoadedCase;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.KeptVoxels;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * One part, many cases of it. Runs of one shape follow each other on one thread, which keeps the
 * shape's voxels; other shapes keep the part's crossings with the grid.
 */
public final class Study {
  /** Bytes a cell at a run's peak, with the flow. */
  private static final int BYTES = 720;

  private final LoadedCase base;
  private final TriangleMesh part;
  private final String partHash;
  private final String version;
  private final RunStore store;
  private final ExecutorService pool;
  private final int threads;
  private final ConcurrentLinkedDeque<KeptVoxels> idle = new ConcurrentLinkedDeque<>();
  private final AtomicInteger calculated = new AtomicInteger();
  private final AtomicInteger reused = new AtomicInteger();

  /** Hashes of runs that were asked for. */
  private final Set<String> asked = ConcurrentHashMap.newKeySet();

  /** MiB of heap that runs may take together. */
  private final Semaphore memory;

  private final int allMemory;

  private Study(
      LoadedCase base,
      TriangleMesh part,
      String version,
      RunStore store,
      ExecutorService pool,
      int threads) {
    this.base = base;
    this.part = part;
    this.partHash = RunHash.of(part);
    this.version = version;
    this.store = store;
    this.pool = pool;
    this.threads = threads;
    this.allMemory =
        (int) Math.min(Integer.MAX_VALUE, (long) (0.9 * Runtime.getRuntime().maxMemory()) >> 20);
    this.memory = new Semaphore(allMemory);
  }

  /**
   * @param base whose part all jobs have
   * @param part its mesh: closed, outward-wound, metres; see {@code PartLoader}
   * @param version of the program: another one's outcomes are not reused
   * @param store of outcomes
   * @param pool with at least {@code threads} free threads
   * @param threads that calculate; one a run, more where fewer runs are left than threads
   */
  public static Study of(
      LoadedCase base,
      TriangleMesh part,
      String version,
      RunStore store,
      ExecutorService pool,
      int threads) {
    return new Study(base, part, version, store, pool, Math.max(1, threads));
  }

  public LoadedCase base() {
    return base;
  }

  /** Closed, outward-wound, metres. */
  public TriangleMesh part() {
    return part;
  }

  /** Runs calculated so far. */
  public int calculated() {
    return calculated.get();
  }

  /** Runs of earlier studies found in the store so far. */
  public int reused() {
    return reused.get();
  }

  /** Of all that the job's outcome depends on. */
  public String hash(Job job) {
    return RunHash.of(version, partHash, job.setup());
  }

  /** Whether its outcome is kept from earlier. */
  public boolean has(Job job) {
    return store.find(hash(job)).isPresent();
  }

  /** Hash of the part's mesh, hexadecimal digits. */
  public static String partHash(TriangleMesh part) {
    return RunHash.of(part);
  }

  /**
   * Runs what isn't in the store, and keeps each outcome at once.
   *
   * @param what is being done, in a word for whoever watches
   * @param jobs of the base case's part
   * @return for each job, in their order
   * @throws CancelledException if the watcher wants to stop; what has ended by then is kept
   */
  public List<Ran> run(String what, List<Job> jobs, Progress progress) {
    List<String> hashes = jobs.stream().map(this::hash).toList();
    Map<String, Ran> found = new HashMap<>();
    Map<String, Job> open = new java.util.LinkedHashMap<>();
    for (int i = 0; i < jobs.size(); i++) {
      String hash = hashes.get(i);
      Optional<Ran> kept = found.containsKey(hash) ? Optional.empty() : store.find(hash);
      kept.ifPresent(r -> found.put(hash, r));
      reused.addAndGet(asked.add(hash) && kept.isPresent() ? 1 : 0);
      if (!found.containsKey(hash)) {
        open.putIfAbsent(hash, jobs.get(i));
      }
    }
    if (!open.isEmpty()) {
      found.putAll(calculate(what, open, progress));
    }
    return hashes.stream().map(found::get).toList();
  }

  private Map<String, Ran> calculate(String what, Map<String, Job> open, Progress progress) {
    JobQueue queue = new JobQueue(open);
    int loops = Math.min(threads, open.size());
    StudyProgress watch = new StudyProgress(what, open.size(), loops, progress);
    AtomicInteger busy = new AtomicInteger(loops);
    List<Future<?>> futures = new ArrayList<>();
    for (int k = 0; k < loops; k++) {
      int place = k;
      Workers workers = new Workers(pool, () -> share(place, busy.get()));
      futures.add(
          pool.submit(
              () -> {
                loop(queue, workers, watch.of(place));
                busy.decrementAndGet();
              }));
    }
    await(futures, watch);
    return queue.done();
  }

  /** Threads of one of the loops that still have a run; the last one gets all. */
  private int share(int place, int busy) {
    return threads / busy + (place < threads % busy ? 1 : 0);
  }

  private static void await(List<Future<?>> futures, StudyProgress watch) {
    boolean interrupted = false;
    @Nullable Throwable failure = null;
    for (Future<?> f : futures) {
      for (boolean over = false; !over; ) {
        try {
          f.get();
          over = true;
        } catch (InterruptedException e) {
          interrupted = true;
          watch.stop();
        } catch (ExecutionException e) {
          failure = e.getCause();
          watch.stop();
          over = true;
        }
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    if (failure instanceof RuntimeException e && !(failure instanceof CancelledException)) {
      throw e;
    }
    if (failure instanceof Error e) {
      throw e;
    }
    watch.check();
  }

  private void loop(JobQueue queue, Workers workers, Progress progress) {
    KeptVoxels voxels = Optional.ofNullable(idle.poll()).orElseGet(() -> new KeptVoxels(part));
    try {
      Optional<JobQueue.Taken> next = queue.take(Optional.empty());
      while (next.isPresent()) {
        JobQueue.Taken taken = next.get();
        Ran ran = one(taken, voxels, workers, progress);
        queue.done(taken, ran);
        next = queue.take(Optional.of(taken.job()));
      }
    } finally {
      idle.push(voxels);
    }
  }

  private Ran one(JobQueue.Taken taken, KeptVoxels kept, Workers workers, Progress progress) {
    try {
      Ran ran = Ran.well(outcome(taken.job().setup(), kept, workers, progress));
      calculated.incrementAndGet();
      store.keep(taken.hash(), taken.job().label(), ran);
      return ran;
    } catch (CancelledException | java.io.UncheckedIOException e) {
      throw e;
    } catch (OutOfMemoryError e) { // another day there may be more of it: not kept
      return Ran.failed("too fine for the memory");
    } catch (RuntimeException e) {
      Ran ran = Ran.failed(words(e));
      store.keep(taken.hash(), taken.job().label(), ran);
      return ran;
    }
  }

  private static String words(RuntimeException e) {
    @Nullable String message = e.getMessage();
    boolean ofOurs = e.getClass().getName().startsWith("gelfront.");
    return ofOurs && message != null ? message : "a fault in the program: " + e;
  }

  private gelfront.answer.RunOutcome outcome(
      Case c, KeptVoxels kept, Workers workers, Progress progress) {
    long start = System.nanoTime();
    progress.check("starting", 0);
    CaseVoxels voxels = kept.of(c, progress);
    long bytes = (long) BYTES * voxels.model().cavity().count();
    int mib = (int) Math.min(allMemory, bytes >> 20);
    memory.acquireUninterruptibly(mib);
    try {
      CaseRunner.Outcome o = CaseRunner.run(c, voxels, workers, progress);
      return Outcomes.of(c, o, (System.nanoTime() - start) * 1e-9);
    } finally {
      memory.release(mib);
    }
  }
}
