// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.Remedies.Effort;
import gelfront.answer.Remedies.Line;
import gelfront.answer.RunOutcome;
import gelfront.base.Entries;
import gelfront.setup.Case;
import gelfront.setup.Change;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Which two remedies are worth doing at once, by what each alone came to. */
final class RemedyPairs {
  private final Case setup;
  private final Map<Remedy, Line> lines;

  /**
   * @param lines that were run, in order of effort
   */
  RemedyPairs(Case setup, Map<Remedy, Line> lines) {
    this.setup = setup;
    this.lines = lines;
  }

  /**
   * Each of them once, by the work that they ask for: a recipe with another or with file work, a
   * recipe with another design, and those with which both halves are work on the mould. Any list
   * may be empty.
   */
  List<List<Remedy>> of(RunOutcome before) {
    Map<String, Pair> pairs = new LinkedHashMap<>();
    Stream.of(shutLonger(before), filed(before), deepest(before))
        .flatMap(List::stream)
        .forEach(p -> pairs.putIfAbsent(p.both().label(), p));
    return Arrays.stream(Work.values())
        .map(w -> pairs.values().stream().filter(p -> p.work() == w))
        .map(some -> some.map(Pair::both).toList())
        .toList();
  }

  /** What a pair asks for. */
  private enum Work {
    FILE_AT_MOST,
    ONE_DESIGN,
    TWICE
  }

  /** The one that takes less effort, and the other. */
  private record Pair(Remedy easier, Remedy harder) {
    static Pair of(Remedy a, Remedy b) {
      return a.effort().compareTo(b.effort()) < 0 ? new Pair(a, b) : new Pair(b, a);
    }

    Work work() {
      if (easier.effort() != Effort.RECIPE) {
        return Work.TWICE;
      }
      return harder.effort() == Effort.REDESIGN ? Work.ONE_DESIGN : Work.FILE_AT_MOST;
    }

    Remedy both() {
      return easier.and(harder);
    }
  }

  /** Nothing that may not fill, nor opens the mould; of equal ones the least effort first. */
  private List<Remedy> by(ToDoubleFunction<RunOutcome> left) {
    return lines.keySet().stream()
        .filter(r -> line(r).doubt().isEmpty())
        .sorted(Comparator.comparingDouble(r -> left.applyAsDouble(outcome(r))))
        .toList();
  }

  /**
   * Where both a dent and an oval are seen: what takes the dent away with the least effort, and
   * what leaves the least of it, each with the mould shut for as long as its own run asks for.
   */
  private List<Pair> shutLonger(RunOutcome before) {
    if (before.dentHigh() < setup.visibleDent() || !before.goesOval(setup.visibleDent())) {
      return List.of();
    }
    List<Remedy> deepest = by(RunOutcome::dentHigh);
    Optional<Remedy> least =
        lines.keySet().stream()
            .filter(deepest::contains)
            .filter(r -> outcome(r).dentHigh() < setup.visibleDent())
            .findFirst();
    OpenLater later = new OpenLater(setup);
    return Stream.concat(least.stream(), deepest.stream().limit(1))
        .flatMap(r -> later.than(outcome(r)).stream().limit(1).map(o -> new Pair(o, r)))
        .toList();
  }

  /** What leaves the least of all file work, with others; where the least of all is a design. */
  private List<Pair> filed(RunOutcome before) {
    return by(RunOutcome::defect).stream()
        .filter(r -> r.effort() == Effort.FILE_WORK)
        .findFirst()
        .map(r -> with(r, before))
        .orElse(List.of());
  }

  /** What leaves the least of all, with others. */
  private List<Pair> deepest(RunOutcome before) {
    List<Remedy> order = by(RunOutcome::defect);
    if (order.isEmpty()) {
      return List.of();
    }
    List<Pair> pairs = new ArrayList<>(with(order.get(0), before));
    if (!pairs.isEmpty()) {
      pairs.addAll(secondGates(by(RunOutcome::dentHigh)));
    }
    return pairs;
  }

  /**
   * One that helps, with the best of what is done with the mould as it is where that isn't, and the
   * other way round; with what its own run blames, and with a longer hold.
   */
  private List<Pair> with(Remedy best, RunOutcome before) {
    if (outcome(best).defect() >= before.defect()) {
      return List.of();
    }
    List<Remedy> others = by(RunOutcome::dentHigh).stream().filter(best::fitsWith).toList();
    Set<String> blamed = knobs(line(best).quick());
    List<Remedy> partners = new ArrayList<>();
    others.stream()
        .filter(r -> (r.effort() == Effort.RECIPE) != (best.effort() == Effort.RECIPE))
        .findFirst()
        .ifPresent(partners::add);
    others.stream().filter(r -> blamed.contains(r.knob())).findFirst().ifPresent(partners::add);
    others.stream().filter(r -> r.knob().equals("hold")).forEach(partners::add);
    return partners.stream().distinct().map(p -> Pair.of(p, best)).toList();
  }

  /** The best width of the gate as it is, beside a gate behind what it can't feed through. */
  private static List<Pair> secondGates(List<Remedy> order) {
    Optional<Remedy> gate = order.stream().filter(r -> r.knob().equals("gate")).findFirst();
    return order.stream()
        .filter(r -> r.changes().stream().anyMatch(RemedyPairs::another))
        .flatMap(r -> gate.map(g -> new Pair(g, r)).stream())
        .toList();
  }

  private static boolean another(Change c) {
    return c instanceof Change.Add a && a.table().equals("another_gate");
  }

  /** What turns at the place that a run blames. */
  private static Set<String> knobs(Ran ran) {
    return ran.outcome()
        .flatMap(RunOutcome::blamed)
        .map(
            c ->
                switch (c.kind()) {
                  case GATE, RUNNER -> Set.of("gate", "spot", "bush");
                  case SPRUE -> Set.of("sprue");
                  case DRY_SPRUE -> Set.of("top-up", "sprue length", "extender");
                  case NECK -> Set.of("neck", "place");
                  case TOO_THICK -> Set.of("place", "mould");
                })
        .orElse(Set.of());
  }

  private Line line(Remedy r) {
    return Entries.of(lines, r);
  }

  /** Of one that is not in doubt: those have one. */
  private RunOutcome outcome(Remedy r) {
    return line(r).quick().outcome().orElseThrow();
  }
}
