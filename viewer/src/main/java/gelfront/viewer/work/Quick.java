// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.base.Workers;
import gelfront.finding.Dent;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import gelfront.live.LiveModel;
import gelfront.mesh.TriangleMesh;
import gelfront.setup.LoadedCase;
import gelfront.setup.Numerics;
import gelfront.setup.PartShape;
import gelfront.voxelize.VoxelException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** The quick verdict after each change: the newest request wins, older ones are given up. */
public final class Quick {
  private final PartShape shape;
  private final LiveModel live;
  private final Executor ui;
  private final Consumer<Verdict> told;
  private final AtomicInteger asked = new AtomicInteger();

  /**
   * What is known of the case as it stands.
   *
   * @param findings absent while it is calculated, or where it can't be
   * @param error in words; empty where there is none
   */
  public record Verdict(Optional<Findings> findings, String error) {
    /** Being calculated. */
    public static final Verdict WAITING = new Verdict(Optional.empty(), "");

    /** Of a line beside the gate. */
    private static final int WIDE = 46;

    private static final int MOST = 4;

    /** Some short lines. */
    public List<String> lines(Units units) {
      if (!error.isEmpty()) {
        List<String> lines = new ArrayList<>(List.of("No quick verdict"));
        lines.addAll(wrapped(error.lines().findFirst().orElse("")));
        return lines;
      }
      return findings
          .map(f -> List.of("quick: " + words(f, units), cause(f)))
          .orElse(List.of("quick: calculating"));
    }

    /** Beside the gate; where it is is seen there. */
    private static List<String> wrapped(String words) {
      List<String> lines = new ArrayList<>(List.of(""));
      for (String word : words.replaceAll(" at \\([^)]*\\) mm", "").split(" ", -1)) {
        String last = lines.get(lines.size() - 1);
        if (!last.isEmpty() && last.length() + word.length() > WIDE) {
          lines.add(word);
        } else {
          lines.set(lines.size() - 1, last.isEmpty() ? word : last + " " + word);
        }
      }
      return lines.size() <= MOST ? lines : cut(lines);
    }

    private static List<String> cut(List<String> lines) {
      List<String> kept = new ArrayList<>(lines.subList(0, MOST));
      kept.set(MOST - 1, kept.get(MOST - 1) + " ...");
      return kept;
    }

    private static String words(Findings f, Units units) {
      if (oval(f)) {
        return "goes oval when opened, " + units.length(f.opening().oval(), 1);
      }
      Optional<Dent> worst = f.pockets().stream().flatMap(p -> p.dents().stream()).findFirst();
      String depth =
          worst.map(d -> units.lengths("%s to %s", 1, d.depthLow(), d.depthHigh())).orElse("0");
      return switch (f.severity()) {
        case CLEAN -> "no dent to be seen";
        case MAY_DENT -> "may dent, " + depth;
        case WILL_DENT -> "dents, " + depth;
      };
    }

    /** Whether opening does worse to it than what was not fed. */
    private static boolean oval(Findings f) {
      Severity dents =
          f.pockets().stream()
              .map(Pocket::severity)
              .max(Comparator.naturalOrder())
              .orElse(Severity.CLEAN);
      return f.opening().severity().compareTo(dents) > 0;
    }

    private static String cause(Findings f) {
      if (oval(f)) {
        return Quantities.say("leave it shut for %.0f s", Math.ceil(f.opening().shutUntil()));
      }
      if (f.severity() == Severity.CLEAN || f.pockets().isEmpty()) {
        return Quantities.say("the gate stays open for %.0f s", f.gateSets());
      }
      var c = f.pockets().get(0).constriction();
      String what = c.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
      return c.kind() == gelfront.finding.Constriction.Kind.TOO_THICK
          ? "the part is too thick there"
          : Quantities.say("the %s closes at %.0f s", what, c.closedAt());
    }
  }

  /**
   * @param part of the case, closed, outward-wound, metres
   * @param background one thread of it calculates
   * @param ui the window's thread
   * @param told on {@code ui}
   */
  public Quick(
      LoadedCase loaded,
      TriangleMesh part,
      Workers workers,
      Executor background,
      Executor ui,
      Consumer<Verdict> told) {
    this.shape = loaded.setup().part();
    this.live = LiveModel.open(loaded.setup().part(), part, workers, background);
    this.ui = ui;
    this.told = told;
  }

  /** Whether the case is of the part that this knows, from the same files. */
  public boolean fits(LoadedCase loaded) {
    return loaded.setup().part().equals(shape);
  }

  /** Asks anew; on the window's thread. */
  public void ask(LoadedCase loaded) {
    int mine = asked.incrementAndGet();
    told.accept(Verdict.WAITING);
    Numerics quick = loaded.setup().numerics().at(Numerics.Level.QUICK);
    CompletableFuture<Findings> answer =
        live.request(loaded.setup().with(quick), (stage, f) -> mine == asked.get());
    var unused = answer.whenComplete((f, e) -> ui.execute(() -> answer(mine, f, e, loaded)));
  }

  /** Gives up what is being calculated. */
  public void stop() {
    asked.incrementAndGet();
  }

  private void answer(int mine, Findings f, Throwable e, LoadedCase loaded) {
    if (mine != asked.get()) {
      return;
    }
    Throwable cause = e instanceof CompletionException c && c.getCause() != null ? c.getCause() : e;
    if (cause == null) {
      told.accept(new Verdict(Optional.of(f), ""));
    } else if (!(cause instanceof CancellationException)) {
      told.accept(new Verdict(Optional.empty(), words(cause, loaded)));
    }
  }

  static String words(Throwable e, LoadedCase loaded) {
    if (e instanceof VoxelException v) {
      return v.getMessage() + " (" + v.key() + ")";
    }
    if (e instanceof OutOfMemoryError) {
      return "too fine for the memory: choose a coarser level";
    }
    @Nullable String message = e.getMessage();
    boolean ours = e.getClass().getName().startsWith("gelfront.");
    return ours && message != null ? message : "a fault in the program: " + e;
  }
}
