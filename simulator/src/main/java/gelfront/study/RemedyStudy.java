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
import java.util.stream.Stream;

/**
 * Runs every remedy at one level, quick most often, then the most promising pairs, and confirms the
 * answer at level normal: the least effort that leaves nothing to be seen, neither a dent nor,
 * where a clock opens the mould, an oval. What may not fill, or is pressed open, is shown and never
 * the answer.
 */
public final class RemedyStudy {
  /** Answers that are put to the test at level normal, one after another, before more is tried. */
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
    if (before.outcome().isEmpty() || Line.cures(before, visible) || Line.cures(normal, visible)) {
      return nothingToDo(before, normal);
    }
    RemedyShelf shelf = RemedyShelf.of(base, before.outcome(), new GatePlaces(study.part()));
    left.addAll(shelf.notRun());
    Map<Remedy, Line> lines = tried("remedies", shelf.remedies());
    Map<Remedy, Line> pairs = new LinkedHashMap<>();
    Optional<Line> answer = Optional.empty();
    for (List<Remedy> more : new RemedyPairs(base.setup(), lines).of(before.outcome().get())) {
      if (answer.isEmpty()) {
        pairs.putAll(tried("pairs", more));
        answer = confirmed(curing(lines, pairs), lines, pairs);
      }
    }
    if (answer.isEmpty()) {
      answer = confirmed(deepest(lines, pairs), lines, pairs);
    }
    return remedies(
        before, normal, List.copyOf(lines.values()), List.copyOf(pairs.values()), answer);
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

  private static double defect(Ran ran) {
    return ran.outcome().map(RunOutcome::defect).orElse(Double.POSITIVE_INFINITY);
  }

  /** The first of them that cures at level normal, too; what is run takes its place in its map. */
  private Optional<Line> confirmed(
      List<Remedy> candidates, Map<Remedy, Line> lines, Map<Remedy, Line> pairs) {
    for (Remedy r : candidates) {
      List<Job> job = List.of(Job.of(r.label(), base, r.changes()).normal());
      Ran came = study.run("confirming at level normal", job, progress).get(0);
      lines.computeIfPresent(r, (k, l) -> l.at(came));
      pairs.computeIfPresent(r, (k, l) -> l.at(came));
      if (Line.cures(came, visible)) {
        return Optional.of(lines.containsKey(r) ? Entries.of(lines, r) : Entries.of(pairs, r));
      }
    }
    return Optional.empty();
  }

  private Remedies remedies(
      Ran before, Ran normal, List<Line> lines, List<Line> pairs, Optional<Line> answer) {
    return new Remedies(
        base.setup().name(),
        visible,
        levelName(),
        before,
        Optional.of(normal),
        lines,
        pairs,
        left,
        answer,
        u -> new RemedyWords(u).verdict(normal, answer, lines, pairs, visible));
  }

  /** Not confirmed yet, that cure at level quick: the least effort first, single ones first. */
  private List<Remedy> curing(Map<Remedy, Line> lines, Map<Remedy, Line> pairs) {
    return open(lines, pairs)
        .filter(e -> Line.cures(e.getValue().quick(), visible))
        .map(Map.Entry::getKey)
        .limit(CONFIRMED)
        .toList();
  }

  /** Those that leave least, where fewer than may be have been confirmed. */
  private List<Remedy> deepest(Map<Remedy, Line> lines, Map<Remedy, Line> pairs) {
    long confirmed =
        Stream.of(lines, pairs)
            .flatMap(m -> m.values().stream())
            .filter(l -> l.normal().isPresent())
            .count();
    return open(lines, pairs)
        .sorted(Comparator.comparingDouble(e -> defect(e.getValue().quick())))
        .map(Map.Entry::getKey)
        .limit(Math.max(0, CONFIRMED - confirmed))
        .toList();
  }

  /** What may be the answer and was not put to the test. */
  private static Stream<Map.Entry<Remedy, Line>> open(
      Map<Remedy, Line> lines, Map<Remedy, Line> pairs) {
    return Stream.of(lines, pairs)
        .flatMap(m -> m.entrySet().stream())
        .filter(e -> e.getValue().doubt().isEmpty() && e.getValue().normal().isEmpty());
  }
}
