// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.answer.VoxelDoubt;
import gelfront.mesh.io.LengthUnit;
import gelfront.result.StoredRun;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.viewer.store.Recovery;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What is open, and all that can be done with it; knows neither windows nor pictures. For the
 * window's thread alone; long work is done on others and comes back to it.
 */
public final class Session {
  private final Backgrounds threads;
  private final Executor ui;
  private final List<Consumer<What>> watchers = new ArrayList<>();
  private final Strip strip = new Strip(() -> tell(What.MESSAGE));
  private final QuickAnswers quick;
  private final LongWork work;
  private @Nullable Opened opened;
  private @Nullable Project project;
  private Results results = Results.NONE;
  private @Nullable Help help;

  /**
   * @param ui runs things on the window's thread
   */
  public Session(Backgrounds threads, Executor ui) {
    this.threads = threads;
    this.ui = ui;
    this.quick = new QuickAnswers(threads, ui, this::answered);
    this.work = new LongWork(threads, ui, new Ends());
  }

  public void watch(Consumer<What> watcher) {
    watchers.add(watcher);
  }

  private void tell(What what) {
    List.copyOf(watchers).forEach(w -> w.accept(what));
  }

  private void answered() {
    project().ifPresent(p -> results = results.compared(p.now(), quick.on(p.now())));
    tell(What.QUICK);
  }

  /** Whether a verdict or a check is awaited. */
  public boolean busy() {
    return checking().isPresent() || (wantsQuick() && verdict().equals(Quick.Verdict.WAITING));
  }

  /** A result of the case as it stands needs a quick verdict only to be compared with. */
  private boolean wantsQuick() {
    return project != null && (results.shown() == null || stale() || comparing());
  }

  /** Whether it will be known how far the result's verdict hangs on its voxels. */
  public boolean comparing() {
    return project != null && results.wantsCoarser(project.now());
  }

  /** Said in the strip; plain words. */
  public void say(String words) {
    strip.say(words, false);
  }

  /** Something went wrong; plain words. */
  public void complain(String words) {
    strip.say(words, true);
  }

  public String message() {
    return strip.words();
  }

  /** Whether the message is of something that went wrong. */
  public boolean bad() {
    return strip.bad();
  }

  public Optional<Opened> opened() {
    return Optional.ofNullable(opened);
  }

  public Optional<Project> project() {
    return Optional.ofNullable(project);
  }

  public Quick.Verdict verdict() {
    return quick.verdict();
  }

  public Optional<StoredRun> result() {
    return Optional.ofNullable(results.shown());
  }

  /** How far the result's verdict hangs on the size of its voxels, where that is known. */
  public Optional<VoxelDoubt> voxels() {
    return results.voxels();
  }

  /** Whether the case was changed since its result was calculated. */
  public boolean stale() {
    return project != null && results.stale(project.now());
  }

  /** The part as it freezes while it is checked; empty when no check is going on. */
  public Optional<LiveFreezing> freezing() {
    return work.freezing().map(m -> LiveFreezing.of(m, verdict()));
  }

  /** The newest answer to what helps. */
  public Optional<Help> help() {
    return Optional.ofNullable(help);
  }

  /** The second design's result. */
  public Optional<StoredRun> other() {
    return Optional.ofNullable(results.other());
  }

  public Optional<Progressing> checking() {
    return work.going();
  }

  /** Opens a mesh, a case or a result. */
  public void open(Path path) {
    open(path, Optional.empty());
  }

  /**
   * @param unit of a mesh; absent: guessed
   */
  public void open(Path path, Optional<LengthUnit> unit) {
    say("Opening " + path.getFileName() + " ...");
    read(() -> Opener.open(path, unit), this::take);
  }

  /** Opens a result beside the one that is shown. */
  public void openBeside(Path folder) {
    read(() -> Opener.open(folder), o -> beside(folder, o));
  }

  private void beside(Path folder, Opened o) {
    if (o instanceof Opened.AResult r) {
      compareWith(r.run());
    } else {
      complain(folder + ": is no result folder");
    }
  }

  /** Goes on with edits that a window left which ended unexpectedly. */
  public void recover(Recovery.Edits edits) {
    read(() -> Opener.recovered(edits), this::goOnWith);
  }

  private void goOnWith(Opened recovered) {
    take(recovered);
    if (project != null) {
      say("Your last changes were not saved: here they are again.");
      tell(What.CASE);
    }
  }

  private void read(Supplier<Opened> reading, Consumer<Opened> then) {
    threads
        .reading()
        .execute(
            () -> {
              Opened o = reading.get();
              ui.execute(() -> then.accept(o));
            });
  }

  /** Goes on with what was opened; for work that was kept from an earlier time, too. */
  public void take(Opened o) {
    if (o instanceof Opened.Nothing n) {
      complain(n.line());
      return;
    }
    stopCheck();
    opened = o;
    results = Results.NONE;
    project = null;
    help = null;
    if (o instanceof Opened.ACase c) {
      project = c.project();
      say(c.notes().isEmpty() ? "" : String.join(" ", c.notes()));
    } else if (o instanceof Opened.AResult r) {
      project = r.project().orElse(null);
      results = results.with(r.run(), r.run().caseText(), r.voxels());
      say(project == null ? "The part's mesh was not found, so this result can only be read." : "");
    } else if (o instanceof Opened.ABrokenMesh b) {
      complain(b.why().get(0));
    }
    quick.about(project);
    tell(What.OPENED);
    askQuick();
  }

  private void askQuick() {
    if (project != null && wantsQuick()) {
      quick.ask(project);
    }
  }

  /**
   * Changes the case.
   *
   * @return what is wrong, in words; empty: done
   */
  public Optional<String> change(List<Change> changes) {
    return attempt(p -> p.change(changes));
  }

  /** As above, within a drag: no step of its own. */
  public Optional<String> goOn(List<Change> changes) {
    return attempt(p -> p.goOn(changes));
  }

  /** The case of a proposal. */
  public void become(LoadedCase proposed) {
    attempt(p -> p.become(proposed));
  }

  private Optional<String> attempt(Consumer<Project> step) {
    Project now = project;
    if (now == null) {
      return Optional.of("nothing is open that could be changed");
    }
    Optional<String> wrong = Edits.attempt(() -> step.accept(now));
    if (wrong.isEmpty()) {
      changed();
    }
    return wrong;
  }

  private void changed() {
    if (bad()) {
      say(""); // of the case as it was before
    }
    tell(What.CASE);
    askQuick();
  }

  public void undo() {
    if (project != null && project.canUndo()) {
      project.undo();
      changed();
    }
  }

  public void redo() {
    if (project != null && project.canRedo()) {
      project.redo();
      changed();
    }
  }

  /**
   * Writes the case's text; comments and order are those of the file it came from.
   *
   * @throws IOException if it can't be written; an older file is then as it was
   */
  public void save(Path file) throws IOException {
    Edits.save(Objects.requireNonNull(project, "nothing is open"), file);
    tell(What.CASE);
  }

  /** Calculates the case as it stands, at its own level. */
  public void check() {
    idle().ifPresent(p -> work.check(p.now()));
  }

  /** Asks what helps; goes on like a check, and is stopped like one. */
  public void ask(Asking asking) {
    idle().ifPresent(p -> work.ask(p, asking));
  }

  /** What long work may begin on; what it would only take turns with is given up. */
  private Optional<Project> idle() {
    Optional<Project> idle = project().filter(p -> checking().isEmpty());
    if (idle.isPresent()) {
      quick.stop();
      say("");
    }
    return idle;
  }

  /** At once: what still runs is not waited for. */
  public void stopCheck() {
    if (work.stop()) {
      askQuick();
    }
  }

  private final class Ends implements LongWork.Ends {
    @Override
    public void tell(What what) {
      Session.this.tell(what);
    }

    @Override
    public void checked(LoadedCase loaded, StoredRun run) {
      results =
          results.with(run, loaded.text(), Optional.empty()).compared(loaded, quick.on(loaded));
      tell(What.RESULT);
      say("");
      askQuick();
    }

    @Override
    public void answered(Help answer) {
      help = answer;
      say("");
      tell(What.HELP);
      askQuick();
    }

    @Override
    public void over(String words, boolean wrong) {
      strip.say(words, wrong);
    }
  }

  /** The result stands beside the next one. */
  public void keepForComparison() {
    compareWith(results.shown());
  }

  /**
   * @param run null: nothing beside it
   */
  public void compareWith(@Nullable StoredRun run) {
    results = results.beside(run);
    tell(What.OTHER);
  }
}
