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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How wide a neck, or a gate in the mesh, must be filed all round to leave nothing to be seen. */
final class NeckSearch {
  private static final double TOLERANCE = 0.5e-3;

  private static final double STEP = 0.1e-3;

  /** Widths of the neck within which metal is filed off round its middle. */
  private static final double REACH = 1.5;

  private final Study study;
  private final LoadedCase base;
  private final double gate;
  private final double widest;
  private final Constriction neck;
  private final double visible;
  private final Map<Double, Ran> ran = new java.util.TreeMap<>();

  /**
   * @param base with the gate that it is tried with
   * @param gate metres
   * @param widest metres that it may be filed to
   */
  NeckSearch(Study study, LoadedCase base, double gate, Constriction neck, double widest) {
    this.widest = whole(widest);
    this.study = study;
    this.base = base;
    this.gate = gate;
    this.neck = neck;
    this.visible = base.setup().visibleDent();
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
    Bracket bracket = new Bracket(TOLERANCE, STEP);
    double was = neck.width();
    bracket.know(was, 1);
    List<Double> next =
        List.of(Math.min(whole(1.4 * was), widest), widest).stream().distinct().toList();
    while (!next.isEmpty() && ran.size() + next.size() <= runs) {
      List<Double> widths = next;
      List<Ran> came = study.run("thicker neck", widths.stream().map(this::job).toList(), progress);
      for (int i = 0; i < widths.size(); i++) {
        ran.put(widths.get(i), came.get(i));
        bracket.know(
            widths.get(i), came.get(i).outcome().map(o -> o.defect() - visible).orElse(Double.NaN));
      }
      next = fresh(bracket.next(1));
    }
    double does = bracket.does();
    double shown = Double.isNaN(does) ? widest : does;
    return new Sizing.Cure(
        neck.place(),
        was,
        Double.isNaN(does) ? Optional.empty() : Optional.of(does),
        gate,
        Entries.of(ran, shown));
  }

  /** All that was run, by width, as points of a curve. */
  List<Sizing.Point> points() {
    return ran.entrySet().stream()
        .map(e -> new Sizing.Point(e.getKey(), Double.NaN, "quick", e.getValue()))
        .toList();
  }

  private List<Double> fresh(List<Double> sizes) {
    List<Double> all = new ArrayList<>();
    sizes.stream().filter(s -> !ran.containsKey(s)).forEach(all::add);
    return all.stream().distinct().toList();
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
