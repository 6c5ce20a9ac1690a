// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.Remedies;
import gelfront.answer.Remedies.Line;
import gelfront.answer.RunOutcome;
import gelfront.base.Entries;
import gelfront.base.Progress;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Runs every remedy at one level, quick most often, then the most promising pairs, and confirms the
 * answer at level normal: the least effort that leaves nothing to be seen, neither a dent nor,
 * where a clock opens the mould, an oval. What may not fill, or is pressed open, is shown and never
 * the answer.
 */
public final class RemedyStudy {
  /** Answers that are put to the test at level normal, one after another. */
  private static final int CONFIRMED = 2;

  private final Study study;
  private final LoadedCase base;
  private final double visible;
  private final UnaryOperator<Job> level;
  private final Progress progress;
  private final List<Remedies.Left> left = new ArrayList<>();

  /** Of what was tried, by label. */
  private final Map<String, List<Change>> changes = new LinkedHashMap<>();

  /**
   * @param level puts a job on the level that remedies are tried at
   */
  public RemedyStudy(Study study, UnaryOperator<Job> level, Progress progress) {
    this.study = study;
    this.level = level;
    this.base = study.base();
    this.visible = base.setup().visibleDent();
    this.progress = progress;
  }

  /** All of it. */
  public Remedies run() {
    Job asItIs = Job.of("as it is", base, List.of());
    List<Job> both = List.of(level.apply(asItIs), asItIs.normal());
    List<Ran> ran = study.run("as it is", both, progress);
    Ran before = ran.get(0);
    Ran normal = ran.get(1);
    if (before.outcome().isEmpty() || Line.cures(before, visible)) {
      return nothingToDo(before, normal);
    }
    RemedyShelf shelf = RemedyShelf.of(base, before.outcome(), new GatePlaces(study.part()));
    left.addAll(shelf.notRun());
    Map<Remedy, Line> lines = tried("remedies", shelf.remedies());
    Map<Remedy, Line> pairs = new LinkedHashMap<>();
    for (List<Remedy> more : new RemedyPairs(base.setup(), lines).of(before.outcome().get())) {
      if (pairs.isEmpty() || !(anyCures(lines) || anyCures(pairs))) {
        pairs.putAll(tried("pairs", more));
      }
    }
    return confirmed(before, normal, lines, pairs);
  }

  /**
   * The design that a line is about, as a case of its own.
   *
   * @return empty for a line that this study has not tried
   */
  public Optional<LoadedCase> changed(Line line) {
    return Optional.ofNullable(changes.get(line.label()))
        .map(c -> Job.of(line.label(), base, c).loaded());
  }

  private Remedies nothingToDo(Ran before, Ran atNormal) {
    Optional<Ran> normal = before.outcome().map(o -> atNormal);
    return new Remedies(
        base.setup().name(),
        visible,
        levelName(),
        before,
        normal,
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        u -> new RemedyWords(u).nothingToDo(before, normal, visible));
  }

  private String levelName() {
    Job any = level.apply(Job.of("as it is", base, List.of()));
    return any.setup().numerics().level().name().toLowerCase(Locale.ROOT);
  }

  private Map<Remedy, Line> tried(String what, List<Remedy> remedies) {
    List<Remedy> can = new ArrayList<>();
    List<Job> jobs = new ArrayList<>();
    for (Remedy r : remedies) {
      try {
        jobs.add(level.apply(Job.of(r.label(), base, r.changes())));
        can.add(r);
      } catch (IllegalArgumentException e) {
        left.add(new Remedies.Left(r.what(), why(r, e)));
      }
    }
    List<Ran> ran = jobs.isEmpty() ? List.of() : study.run(what, jobs, progress);
    Map<Remedy, Line> lines = new LinkedHashMap<>();
    for (int i = 0; i < ran.size(); i++) {
      Remedy r = can.get(i);
      changes.put(r.label(), r.changes());
      Line line =
          new Line(
              r.effort(),
              r.what(),
              r.caution(),
              ran.get(i),
              Optional.empty(),
              doubt(r, ran.get(i)));
      lines.put(r, line);
    }
    return lines;
  }

  /** Without the label, which stands beside it. */
  private static String why(Remedy r, IllegalArgumentException e) {
    return String.valueOf(e.getMessage()).replace(r.label() + ": ", "");
  }

  /** Why it is not recommended whatever came out; empty where it may be. */
  private static String doubt(Remedy r, Ran ran) {
    if (ran.outcome().isEmpty()) {
      return "it gives no result";
    }
    RunOutcome o = ran.outcome().get();
    if (o.filling() == RunOutcome.Filling.MAY_NOT_FILL) {
      return "it may not fill";
    }
    if (r.fillsWorse() && o.filling() != RunOutcome.Filling.FILLS) {
      return "whether it still fills was not calculated";
    }
    boolean opens = o.pressing().margin().orElse(0) < 0;
    return opens ? "the plunger's pressure opens the mould" : "";
  }

  private boolean anyCures(Map<Remedy, Line> lines) {
    return lines.values().stream()
        .anyMatch(l -> l.doubt().isEmpty() && Line.cures(l.quick(), visible));
  }

  private static double defect(Ran ran) {
    return ran.outcome().map(RunOutcome::defect).orElse(Double.POSITIVE_INFINITY);
  }

  private Remedies confirmed(
      Ran before, Ran normal, Map<Remedy, Line> lines, Map<Remedy, Line> pairs) {
    Optional<Line> chosen = Optional.empty();
    for (Remedy r : candidates(lines, pairs)) {
      List<Job> job = List.of(Job.of(r.label(), base, r.changes()).normal());
      Ran came = study.run("confirming at level normal", job, progress).get(0);
      lines.computeIfPresent(r, (k, l) -> l.at(came));
      pairs.computeIfPresent(r, (k, l) -> l.at(came));
      if (Line.cures(came, visible)) {
        chosen = Optional.of(lines.containsKey(r) ? Entries.of(lines, r) : Entries.of(pairs, r));
        break;
      }
    }
    List<Line> all = List.copyOf(lines.values());
    List<Line> both = List.copyOf(pairs.values());
    Optional<Line> answer = chosen;
    return new Remedies(
        base.setup().name(),
        visible,
        levelName(),
        before,
        Optional.of(normal),
        all,
        both,
        left,
        chosen,
        u -> new RemedyWords(u).verdict(normal, answer, all, both));
  }

  /**
   * Up to two to be confirmed: those that cure at level quick, the least effort first, single ones
   * before pairs; filled up with the deepest reductions.
   */
  private List<Remedy> candidates(Map<Remedy, Line> lines, Map<Remedy, Line> pairs) {
    Map<Remedy, Line> all = new LinkedHashMap<>(lines);
    all.putAll(pairs);
    List<Remedy> may =
        all.entrySet().stream()
            .filter(e -> e.getValue().doubt().isEmpty())
            .map(Map.Entry::getKey)
            .toList();
    List<Remedy> order =
        new ArrayList<>(
            may.stream()
                .filter(r -> Line.cures(Entries.of(all, r).quick(), visible))
                .limit(CONFIRMED)
                .toList());
    may.stream()
        .sorted(Comparator.comparingDouble(r -> defect(Entries.of(all, r).quick())))
        .filter(r -> !order.contains(r))
        .limit(Math.max(0, CONFIRMED - order.size()))
        .forEach(order::add);
    return order;
  }
}
