// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.answer.Sizing;
import gelfront.base.Progress;
import gelfront.base.Told;
import gelfront.base.Units;
import gelfront.finding.Constriction;
import gelfront.mesh.Vec3;
import gelfront.setup.LoadedCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Sizes a gate that is part of the mesh by filing it open all round, as a maker would; its sprue
 * and runner stay. The smallest width that leaves neither a dent nor an oval to be seen is run at
 * level normal.
 */
public final class FiledGate {
  /** Runs at level normal. */
  private static final int NORMAL = 2;

  /** Widths that are tried on top of these where neither holds. */
  private static final int LARGER = 2;

  private static final double HALF = 0.5e-3;

  private static final double TENTH = 0.1e-3;

  private final Study study;
  private final LoadedCase base;
  private final int runs;
  private final Progress progress;
  private final List<LoadedCase> chosen = new ArrayList<>();

  /**
   * @param study of a case with its feed in the mesh
   * @param runs at most, 6 or more
   */
  public FiledGate(Study study, int runs, Progress progress) {
    this.study = study;
    this.base = study.base();
    this.runs = runs;
    this.progress = progress;
  }

  /** Cases of the choices, in their order, to be written out. */
  public List<LoadedCase> chosenCases() {
    return List.copyOf(chosen);
  }

  /**
   * @throws IllegalArgumentException in words, if the case as it is gives no result
   */
  public Sizing run() {
    Job asItIs = Job.of("as it is", base, List.of()).quick();
    Ran before = study.run("as it is", List.of(asItIs), progress).get(0);
    RunOutcome o =
        before
            .outcome()
            .orElseThrow(() -> new IllegalArgumentException(base.file() + ": " + before.error()));
    Optional<Constriction> gate =
        o.blamed()
            .filter(c -> c.kind() == Constriction.Kind.GATE)
            .filter(c -> dents(o) && !o.goesOval(visible()));
    if (gate.isEmpty()) {
      return answer(untouched(o), -1);
    }
    NeckSearch search =
        new NeckSearch(study, base, gate.get().width(), gate.get(), before, widest(gate.get()));
    Sizing.Cure cure = search.search(runs - NORMAL - LARGER - 1, progress);
    List<Sizing.Choice> choices =
        cure.wanted().map(w -> confirmed(search, gate.get(), w)).orElse(List.of());
    boolean holds = choices.stream().anyMatch(c -> c.holds(visible()));
    Optional<Sizing.Cure> neck =
        cure.wanted().isPresent() ? Optional.empty() : neck(search, gate.get(), cure.ran());
    Told words = u -> words(u, gate.get(), cure, neck, choices);
    return answer(place(gate.get(), search.points(), choices, words, neck), holds ? 0 : -1);
  }

  /** Beside the widest gate: how thick the neck must be that is to blame then, if one is. */
  private Optional<Sizing.Cure> neck(NeckSearch gates, Constriction gate, Ran ran) {
    double filed = widest(gate);
    return ran.outcome()
        .flatMap(NeckSearch::blamed)
        .map(c -> new NeckSearch(study, gates.job(filed).loaded(), filed, c, ran, 2 * c.width()))
        .map(this::thickened);
  }

  private Sizing.Cure thickened(NeckSearch neck) {
    Sizing.Cure found = neck.search(NORMAL + LARGER - 1, progress);
    List<Job> job = neck.confirming(found).stream().toList();
    return job.isEmpty()
        ? found
        : found.at(study.run("confirming at level normal", job, progress).get(0));
  }

  /**
   * Metres, in tenths of a millimetre: what the case accepts, else as wide as the part is thick,
   * twice the gate at least.
   */
  private double widest(Constriction gate) {
    double thick = new GatePlaces(study.part()).widestGate(gate.place());
    double wide = base.setup().limits().gateWidest().orElse(Math.max(2 * gate.width(), thick));
    return Math.floor(wide / TENTH + 1e-6) * TENTH;
  }

  private boolean dents(RunOutcome o) {
    return o.dentHigh() >= visible();
  }

  private double visible() {
    return base.setup().visibleDent();
  }

  private Sizing answer(Sizing.Place place, int chosen) {
    return new Sizing(
        base.setup().name(),
        visible(),
        List.of(place),
        chosen,
        place.told(),
        study.calculated() + study.reused());
  }

  private Sizing.Place untouched(RunOutcome o) {
    Constriction c =
        o.blamed().orElse(new Constriction(Constriction.Kind.GATE, Vec3.ZERO, Double.NaN, 0));
    Told words = u -> untouched(new SizeWords(u), o);
    return place(c, List.of(), List.of(), words, Optional.empty());
  }

  private String untouched(SizeWords words, RunOutcome o) {
    String depth = words.worst(o) + " at level quick";
    if (o.goesOval(visible())) {
      return "Filing the gate, which is part of the mesh, doesn't help ("
          + depth
          + "): "
          + SizeWords.openLater(o.opening())
          + words.apart(o, visible());
    }
    return dents(o)
        ? "The gate, which is part of the mesh, is not what closes ("
            + depth
            + "): "
            + words.blame(o)
            + " What a file or another sprue does: remedies."
        : "Nothing to size: the deepest dent isn't seen (" + depth + ").";
  }

  private Sizing.Place place(
      Constriction gate,
      List<Sizing.Point> curve,
      List<Sizing.Choice> choices,
      Told told,
      Optional<Sizing.Cure> neck) {
    double thick = new GatePlaces(study.part()).thickness(gate.place());
    return new Sizing.Place("as drawn", gate.place(), Vec3.ZERO, thick, curve, choices, told, neck);
  }

  /** The width itself and the next whole half of a millimetre; where neither holds, larger ones. */
  private List<Sizing.Choice> confirmed(NeckSearch search, Constriction gate, double width) {
    double up = Math.ceil(width / HALF + 1e-6) * HALF;
    List<Double> wanted =
        Stream.of(width, up).filter(w -> w == width || w <= widest(gate) + 1e-9).toList();
    List<Sizing.Choice> choices = new ArrayList<>(confirm(search, gate, wanted));
    double next = up + HALF;
    for (int i = 0; i < LARGER && next <= widest(gate) + 1e-9; i++) {
      if (choices.stream().anyMatch(c -> c.holds(visible()))) {
        break;
      }
      choices.addAll(confirm(search, gate, List.of(next)));
      next += HALF;
    }
    return choices;
  }

  private List<Sizing.Choice> confirm(NeckSearch search, Constriction gate, List<Double> widths) {
    List<Job> jobs = widths.stream().map(w -> search.job(w).normal()).toList();
    List<Ran> ran = study.run("confirming at level normal", jobs, progress);
    List<Sizing.Choice> choices = new ArrayList<>();
    for (int i = 0; i < ran.size(); i++) {
      double w = widths.get(i);
      String label = "filed to " + Cutters.plainMm(w);
      choices.add(
          new Sizing.Choice(label, w, u -> u.plain(w), Double.NaN, ran.get(i), sheet(gate, w)));
      chosen.add(jobs.get(i).loaded());
    }
    return choices;
  }

  private static List<Sizing.SheetLine> sheet(Constriction gate, double width) {
    double off = 0.5 * (width - gate.width());
    return List.of(
        new Sizing.SheetLine("gate, width", width, "as wide on all sides"),
        new Sizing.SheetLine("to be filed off all round", off, "a little at a time"));
  }

  private String words(
      Units units,
      Constriction gate,
      Sizing.Cure cure,
      Optional<Sizing.Cure> neck,
      List<Sizing.Choice> choices) {
    String now = ", " + units.plain(gate.width()) + " wide now and part of the mesh,";
    String at = "The gate at " + SizeWords.at(units, gate.place()) + now;
    Optional<Sizing.Choice> holds = choices.stream().filter(c -> c.holds(visible())).findFirst();
    if (holds.isPresent()) {
      return at
          + " does when filed to "
          + holds.get().size().in(units)
          + ": the deepest dent stays under "
          + units.length(holds.get().normal().outcome().orElseThrow().dentHigh(), 2)
          + " (run at level normal).";
    }
    Optional<RunOutcome> last = cure.ran().outcome();
    String came = last.map(o -> new SizeWords(units).worst(o) + still(o)).orElse("no result");
    return cure.wanted().isPresent()
        ? at
            + " does when filed to "
            + units.plain(cure.wanted().get())
            + " at level quick, but not at level normal: too close to call."
        : at
            + " doesn't do even when filed to "
            + units.plain(widest(gate))
            + " ("
            + came
            + "): "
            + last.filter(o -> o.goesOval(visible()))
                .map(o -> SizeWords.openLater(o.opening()) + ".")
                .or(() -> neck.map(n -> new SizeWords(units).cure(n, visible())))
                .orElse(
                    "draw sprue and gate wider, or describe them in [gate] and [sprue] instead.");
  }

  private String still(RunOutcome o) {
    return o.goesOval(visible()) ? "" : " still";
  }
}
