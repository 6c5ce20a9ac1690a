package gelfront.viewer.work;

import gelfront.base.CancelledException;
import gelfront.base.Progress;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.io.LengthUnit;
import gelfront.result.StoredRun;
import gelfront.run.StoredRuns;
import gelfront.setup.CaseException;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.setup.Mistake;
import gelfront.viewer.store.Recovery;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * What is open, and all that can be done with it; knows neither windows nor pictures. For the
 * window's thread alone; long work is done on others and comes back to it.
 */
public final class Session {
  /** What has changed. */
  public enum What {
    /** Something else is open. */
    OPENED,
    /** The case was changed. */
    CASE,
    /** The quick verdict. */
    QUICK,
    /** There is another result, or none. */
    RESULT,
    /** The second design. */
    OTHER,
    /** A check is going on, has moved, or is over. */
    CHECK,
    /** The freezing has gone on in a check. */
    FREEZING,
    /** There is another answer to what helps. */
    HELP,
    /** There is something to be said. */
    MESSAGE
  }

  private final Backgrounds threads;
  private final Executor ui;
  private final List<Consumer<What>> watchers = new ArrayList<>();
  private Opened opened;
  private Project project;
  private Quick quick;
  private Quick.Verdict verdict = Quick.Verdict.WAITING;
  private StoredRun result;
  private String resultText = "";
  private StoredRun other;
  private Progressing checking;
  private Freezing.Moment freezing;
  private Help help;
  private String message = "";
  private boolean bad;

  /**
   * @param ui runs things on the window's thread
   */
  public Session(Backgrounds threads, Executor ui) {
    this.threads = threads;
    this.ui = ui;
  }

  public void watch(Consumer<What> watcher) {
    watchers.add(watcher);
  }

  private void tell(What what) {
    List.copyOf(watchers).forEach(w -> w.accept(what));
  }

  /** Whether a verdict or a check is awaited. */
  public boolean busy() {
    boolean quickly = project != null && (result == null || stale());
    return checking != null || (quickly && verdict.equals(Quick.Verdict.WAITING));
  }

  /** Said in the strip; plain words. */
  public void say(String words) {
    message = words;
    bad = false;
    tell(What.MESSAGE);
  }

  /** Something went wrong; plain words. */
  public void complain(String words) {
    message = words;
    bad = true;
    tell(What.MESSAGE);
  }

  public String message() {
    return message;
  }

  /** Whether the message is of something that went wrong. */
  public boolean bad() {
    return bad;
  }

  public Optional<Opened> opened() {
    return Optional.ofNullable(opened);
  }

  public Optional<Project> project() {
    return Optional.ofNullable(project);
  }

  public Quick.Verdict verdict() {
    return verdict;
  }

  public Optional<StoredRun> result() {
    return Optional.ofNullable(result);
  }

  /** Whether the case was changed since its result was calculated. */
  public boolean stale() {
    return result != null && project != null && !project.now().text().equals(resultText);
  }

  /** The part as it freezes while it is checked; empty when no check is going on. */
  public Optional<LiveFreezing> freezing() {
    return checking == null || freezing == null
        ? Optional.empty()
        : Optional.of(LiveFreezing.of(freezing, verdict));
  }

  /** The newest answer to what helps. */
  public Optional<Help> help() {
    return Optional.ofNullable(help);
  }

  /** The second design's result. */
  public Optional<StoredRun> other() {
    return Optional.ofNullable(other);
  }

  public Optional<Progressing> checking() {
    return Optional.ofNullable(checking);
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
    threads
        .reading()
        .execute(
            () -> {
              Opened o = Opener.open(path, unit);
              ui.execute(() -> take(o));
            });
  }

  /** Opens a result beside the one that is shown. */
  public void openBeside(Path folder) {
    threads
        .reading()
        .execute(
            () -> {
              Opened o = Opener.open(folder);
              ui.execute(
                  () -> {
                    if (o instanceof Opened.AResult r) {
                      compareWith(r.run());
                    } else {
                      complain(folder + ": is no result folder");
                    }
                  });
            });
  }

  /** Goes on with edits that a window left which ended unexpectedly. */
  public void recover(Recovery.Edits edits) {
    threads
        .reading()
        .execute(
            () -> {
              Opened o = Opener.recovered(edits);
              ui.execute(
                  () -> {
                    take(o);
                    if (project != null) {
                      say("Your last changes were not saved: here they are again.");
                      tell(What.CASE);
                    }
                  });
            });
  }

  /** Goes on with what was opened; for work that was kept from an earlier time, too. */
  public void take(Opened o) {
    if (o instanceof Opened.Nothing n) {
      complain(n.why().contains(String.valueOf(n.file())) ? n.why() : n.file() + ": " + n.why());
      return;
    }
    stopCheck();
    opened = o;
    result = null;
    other = null;
    project = null;
    help = null;
    if (o instanceof Opened.ACase c) {
      project = c.project();
      say(c.notes().isEmpty() ? "" : String.join(" ", c.notes()));
    } else if (o instanceof Opened.AResult r) {
      result = r.run();
      project = r.project().orElse(null);
      resultText = r.run().caseText();
      say(project == null ? "The part's mesh was not found, so this result can only be read." : "");
    } else if (o instanceof Opened.ABrokenMesh b) {
      complain(b.why().get(0));
    }
    startQuick();
    tell(What.OPENED);
    askQuick();
  }

  private void startQuick() {
    if (quick != null) {
      quick.stop();
    }
    quick =
        project == null
            ? null
            : new Quick(
                project.now(),
                project.part(),
                threads.workers(),
                threads.quick(),
                ui,
                this::quickly);
  }

  private void quickly(Quick.Verdict v) {
    verdict = v;
    tell(What.QUICK);
  }

  /** A result of the case as it stands needs no quick verdict. */
  private void askQuick() {
    if (quick != null && (result == null || stale())) {
      if (!quick.fits(project.now())) {
        startQuick();
      }
      quick.ask(project.now());
    }
  }

  /**
   * Changes the case.
   *
   * @return what is wrong, in words; empty: done
   */
  public Optional<String> change(List<Change> changes) {
    return attempt(() -> project.change(changes));
  }

  /** As above, within a drag: no step of its own. */
  public Optional<String> goOn(List<Change> changes) {
    return attempt(() -> project.goOn(changes));
  }

  /** The case of a proposal. */
  public void become(LoadedCase proposed) {
    attempt(() -> project.become(proposed));
  }

  private Optional<String> attempt(Runnable step) {
    if (project == null) {
      return Optional.of("nothing is open that could be changed");
    }
    try {
      step.run();
    } catch (CaseException e) {
      return Optional.of(
          e.mistakes().stream().map(Mistake::message).collect(Collectors.joining("; ")));
    } catch (IllegalArgumentException e) {
      return Optional.of(String.valueOf(e.getMessage()));
    }
    changed();
    return Optional.empty();
  }

  private void changed() {
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
    Project p = project;
    LoadedCase from = p.now();
    Path folder = file.toAbsolutePath().normalize().getParent();
    if (!folder.equals(from.folder().toAbsolutePath().normalize())) {
      p.become(CaseMove.seenFrom(from, folder));
    }
    Path next = folder.resolve(file.getFileName() + ".new");
    Files.writeString(next, p.now().text());
    Files.move(next, file, StandardCopyOption.REPLACE_EXISTING);
    p.saved(file);
    tell(What.CASE);
  }

  /** Calculates the case as it stands, at its own level. */
  public void check() {
    if (project == null || checking != null) {
      return;
    }
    LoadedCase loaded = project.now();
    if (quick != null) {
      quick.stop(); // it would only take turns with the check
    }
    Progressing p = new Progressing(() -> ui.execute(() -> tell(What.CHECK)));
    begin(p);
    threads.check().execute(() -> calculate(loaded, p));
  }

  private void begin(Progressing p) {
    checking = p;
    freezing = null;
    say("");
    tell(What.CHECK);
  }

  /** What is asked about a design, on a thread of its own. */
  public interface Asking {
    Help answer(LoadedCase loaded, TriangleMesh part, Backgrounds threads, Progress progress);
  }

  /** Asks what helps; goes on like a check, and is stopped like one. */
  public void ask(String what, Asking asking) {
    if (project == null || checking != null) {
      return;
    }
    LoadedCase loaded = project.now();
    TriangleMesh part = project.part();
    Progressing p = new Progressing(() -> ui.execute(() -> tell(What.CHECK)));
    quick.stop();
    begin(p);
    threads.check().execute(() -> answer(p, loaded, part, asking));
  }

  private void answer(Progressing p, LoadedCase loaded, TriangleMesh part, Asking asking) {
    try {
      Help h = asking.answer(loaded, part, threads, p.plain());
      ui.execute(() -> answered(p, h));
    } catch (CancelledException e) {
      ui.execute(() -> over(p, "Stopped.", false));
    } catch (IllegalArgumentException e) { // in words: there is nothing to size
      ui.execute(() -> over(p, String.valueOf(e.getMessage()), true));
    } catch (RuntimeException | OutOfMemoryError e) {
      ui.execute(() -> over(p, Quick.words(e, loaded), true));
    }
  }

  private void answered(Progressing p, Help h) {
    if (checking == p) {
      help = h;
      over(p, "", false);
      tell(What.HELP);
      askQuick();
    }
  }

  private void calculate(LoadedCase loaded, Progressing p) {
    try {
      StoredRun run =
          StoredRuns.run(
              loaded,
              threads.workers(),
              p,
              Runs.provenance(),
              new Freezing(
                  loaded.setup().plastisol().noFlow(), m -> ui.execute(() -> freezes(p, m))));
      ui.execute(() -> checked(p, loaded, run));
    } catch (CancelledException e) {
      ui.execute(() -> over(p, "Stopped.", false));
    } catch (RuntimeException | OutOfMemoryError e) {
      ui.execute(() -> over(p, Quick.words(e, loaded), true));
    }
  }

  private void freezes(Progressing p, Freezing.Moment m) {
    if (checking == p) {
      freezing = m;
      tell(What.FREEZING);
    }
  }

  private void checked(Progressing p, LoadedCase loaded, StoredRun run) {
    if (checking == p) {
      result = run;
      resultText = loaded.text();
      checking = null;
      tell(What.RESULT);
      say("");
      tell(What.CHECK);
    }
  }

  private void over(Progressing p, String words, boolean wrong) {
    if (checking == p) {
      checking = null;
      if (wrong) {
        complain(words);
      } else {
        say(words);
      }
      tell(What.CHECK);
    }
  }

  /** At once: what still runs is not waited for. */
  public void stopCheck() {
    if (checking != null) {
      Progressing p = checking;
      p.stop();
      over(p, "Stopped.", false);
      askQuick();
    }
  }

  /** The result stands beside the next one. */
  public void keepForComparison() {
    other = result;
    tell(What.OTHER);
  }

  /**
   * @param run null: nothing beside it
   */
  public void compareWith(StoredRun run) {
    other = run;
    tell(What.OTHER);
  }
}
