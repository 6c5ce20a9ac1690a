// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.answer.Sizing;
import gelfront.base.Entries;
import gelfront.base.Progress;
import gelfront.finding.Constriction;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * How wide a neck, or a gate in the mesh, must be filed all round to leave nothing to be seen,
 * neither a dent nor, where a clock opens the mould, an oval.
 */
final class NeckSearch {
  private static final double TOLERANCE = 0.5e-3;

  private static final double STEP = 0.1e-3;

  /** Widths of the neck that it is filed to first; the widest only where these don't do. */
  private static final double LITTLE = 1.2;

  private static final double MUCH = 1.5;

  /** Widths of the neck within which metal is filed off round its middle. */
  private static final double REACH = 1.5;

  private final Study study;
  private final LoadedCase base;
  private final double gate;
  private final double widest;
  private final Constriction neck;
  private final double visible;
  private final Bracket bracket = new Bracket(TOLERANCE, STEP);
  private final NavigableMap<Double, Ran> ran = new TreeMap<>();

  /**
   * @param base with the gate that it is tried with
   * @param gate metres
   * @param neck that is to blame in it
   * @param before what came of it, level quick
   * @param widest metres that it may be filed to
   */
  NeckSearch(
      Study study, LoadedCase base, double gate, Constriction neck, Ran before, double widest) {
    this.widest = whole(widest);
    this.study = study;
    this.base = base;
    this.gate = gate;
    this.neck = neck;
    this.visible = base.setup().visibleDent();
    know(neck.width(), before);
  }

  /** The neck that a run blames: the one that closed, or that parts what it cut off. */
  static Optional<Constriction> blamed(RunOutcome o) {
    Optional<Constriction> closed = o.blamed().filter(c -> c.kind() == Constriction.Kind.NECK);
    return closed.isPresent() ? closed : o.partedBy();
  }

  /**
   * @param runs at most, two or more
   */
  Sizing.Cure search(int runs, Progress progress) {
    double was = neck.width();
    double much = runs > 2 ? Math.min(whole(MUCH * was), widest) : widest;
    List<Double> next = List.of(Math.min(whole(LITTLE * was), much));
    for (int left = runs; !next.isEmpty() && next.size() <= left; next = next(much)) {
      List<Ran> came = study.run("thicker neck", next.stream().map(this::job).toList(), progress);
      for (int i = 0; i < came.size(); i++) {
        know(next.get(i), came.get(i));
      }
      left -= came.size();
    }
    double does = bracket.does();
    double shown = Double.isNaN(does) ? widest : does;
    return new Sizing.Cure(
        neck.place(),
        was,
        Double.isNaN(does) ? Optional.empty() : Optional.of(does),
        gate,
        Entries.of(ran, shown),
        Optional.empty(),
        Optional.empty());
  }

  /** What tells at level normal whether it holds; absent where nothing was found. */
  Optional<Job> confirming(Sizing.Cure found) {
    return found.wanted().map(w -> job(w).normal());
  }

  private void know(double width, Ran came) {
    ran.put(width, came);
    bracket.know(width, came.outcome().map(o -> o.defect() - visible).orElse(Double.NaN));
  }

  private List<Double> next(double much) {
    List<Double> wanted;
    if (!Double.isNaN(bracket.does())) {
      wanted = bracket.next(1);
    } else if (!ran.containsKey(much)) {
      wanted = List.of(much);
    } else if (!ran.containsKey(widest)) {
      wanted = List.of(widest);
    } else {
      OptionalDouble middle = new DentOrOval(visible, TOLERANCE).between(points());
      wanted = middle.stream().mapToObj(NeckSearch::whole).toList();
    }
    return wanted.stream().filter(s -> !ran.containsKey(s)).toList();
  }

  /** All that was run, and it as it was, by width, as points of a curve. */
  List<Sizing.Point> points() {
    return ran.entrySet().stream()
        .map(e -> new Sizing.Point(e.getKey(), Double.NaN, "quick", e.getValue()))
        .toList();
  }

  private static double whole(double size) {
    return Math.ceil(size / STEP - 1e-6) * STEP;
  }

  /** The neck filed to a width, metres; level quick. */
  Job job(double width) {
    Map<String, String> filing = new java.util.LinkedHashMap<>();
    filing.put("at", Change.place(neck.place()));
    filing.put("reach", Change.quantity(REACH * neck.width() * 1e3, "mm"));
    filing.put("depth", Change.quantity(0.5 * (width - neck.width()) * 1e3, "mm"));
    return Job.of("neck " + Cutters.plainMm(width), base, List.of(new Change.Add("filing", filing)))
        .quick();
  }
}
