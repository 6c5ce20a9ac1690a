// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.Sizing;
import gelfront.base.Progress;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where no gate does at level quick but some nearly do: the smallest that does at level normal.
 * Those that came close are run again from the thinnest up; then a bracket is narrowed.
 */
final class NearSearch {
  /** Runs at level normal at most: each takes as long as two or three at level quick. */
  private static final int RUNS = 4;

  /** At once: one for each of two processors. */
  private static final int PAIR = 2;

  private final Study study;
  private final PlaceSearch search;
  private final Progress progress;
  private final Bracket bracket = new Bracket(PlaceSearch.TOLERANCE, PlaceSearch.STEP);
  private final List<Sizing.Point> points = new ArrayList<>();

  NearSearch(Study study, PlaceSearch search, Progress progress) {
    this.study = study;
    this.search = search;
    this.progress = progress;
  }

  /** Runs what is needed. */
  void run() {
    int most = Math.max(1, Math.min(RUNS, search.left()));
    for (List<Double> next = next(most); !next.isEmpty(); next = next(most - points.size())) {
      List<Job> jobs = next.stream().map(g -> search.job(g).normal()).toList();
      List<Ran> ran = study.run("close ones at level normal", jobs, progress);
      for (int i = 0; i < ran.size(); i++) {
        double gate = next.get(i);
        points.add(new Sizing.Point(gate, search.sprueFor(gate), "normal", ran.get(i)));
        bracket.know(gate, search.excess(ran.get(i)));
      }
    }
  }

  private List<Double> next(int most) {
    int n = Math.min(PAIR, most);
    if (n < 1) {
      return List.of();
    }
    if (points.isEmpty()) {
      return first(n);
    }
    if (Double.isNaN(bracket.does())) {
      return untried(search.close()).stream().limit(n).toList();
    }
    List<Double> below = search.belowClose().stream().boxed().toList();
    return Double.isNaN(bracket.tooSmall()) ? untried(below) : bracket.next(n);
  }

  /** The thinnest close one; beside it the next one up or, where there is none, down. */
  private List<Double> first(int n) {
    List<Double> close = search.close();
    if (n < PAIR || close.size() >= PAIR) {
      return close.subList(0, n);
    }
    return Stream.concat(search.belowClose().stream().boxed(), close.stream()).toList();
  }

  private List<Double> untried(List<Double> gates) {
    return gates.stream()
        .filter(g -> points.stream().noneMatch(p -> Math.abs(p.gate() - g) < 1e-9))
        .toList();
  }

  /** Metres: the smallest gate that does at level normal; NaN: none of those that were run. */
  double does() {
    return bracket.does();
  }

  /** Metres: of those that were run, the gate that leaves the least at level normal. */
  double closest() {
    return points.stream()
        .min(Comparator.comparingDouble(p -> search.excess(p.ran())))
        .map(Sizing.Point::gate)
        .orElseThrow();
  }

  /** What was run, rising. */
  List<Sizing.Point> points() {
    return points.stream().sorted(Comparator.comparingDouble(Sizing.Point::gate)).toList();
  }
}
