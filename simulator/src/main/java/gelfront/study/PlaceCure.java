// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.answer.Sizing;
import gelfront.base.Progress;
import gelfront.base.Units;
import gelfront.finding.Constriction;
import gelfront.mesh.Vec3;
import gelfront.setup.LoadedCase;
import java.util.List;
import java.util.Optional;

/** What else is changed where no gate will do at a place: the neck, or a second gate behind it. */
final class PlaceCure {
  /** Share of the visible depth within which two gates' dents are the same: own judgement. */
  private static final double SAME = 0.05;

  private final Study study;
  private final GatePlaces thickness;
  private final Progress progress;

  PlaceCure(Study study, GatePlaces thickness, Progress progress) {
    this.study = study;
    this.thickness = thickness;
    this.progress = progress;
  }

  /** Absent where no neck is to blame, or no run is left. */
  Optional<Sizing.Cure> of(PlaceSearch p) {
    Optional<Sizing.Point> with = wideEnough(p);
    if (with.isEmpty() || p.left() < 2) {
      return Optional.empty();
    }
    double gate = with.get().gate();
    Ran was = with.get().ran();
    Constriction neck = was.outcome().flatMap(NeckSearch::blamed).orElseThrow();
    LoadedCase base = p.job(gate).loaded();
    NeckSearch search = new NeckSearch(study, base, gate, neck, was, 2 * neck.width());
    Sizing.Cure found = search.confirmed(search.search(p.left(), progress), progress);
    boolean sure =
        found.normal().flatMap(Ran::outcome).filter(o -> o.clean(visible(p))).isPresent();
    return Optional.of(found.beside(second(p, !sure)));
  }

  private static double visible(PlaceSearch p) {
    return p.base().setup().visibleDent();
  }

  /** The smallest gate that a neck is to blame with, and that a wider one does no better than. */
  private static Optional<Sizing.Point> wideEnough(PlaceSearch p) {
    double visible = visible(p);
    double widest = p.atWidest().map(RunOutcome::defect).orElse(Double.NaN);
    return p.points().stream()
        .filter(g -> g.sprue() >= p.sprueFor(g.gate()) - 1e-9)
        .filter(g -> g.ran().outcome().flatMap(NeckSearch::blamed).isPresent())
        .filter(g -> p.excess(g.ran()) <= widest - visible + SAME * visible)
        .findFirst();
  }

  /**
   * Beside the first gate that came closest.
   *
   * @param confirm whether it is run at level normal, too, where it does at level quick
   */
  private Optional<Sizing.Second> second(PlaceSearch p, boolean confirm) {
    Optional<Sizing.Point> best = p.best();
    Optional<Vec3> starved = best.flatMap(b -> b.ran().outcome()).flatMap(RunOutcome::pocketCentre);
    if (best.isEmpty() || starved.isEmpty()) {
      return Optional.empty();
    }
    double widest = p.base().setup().limits().gateWidest().orElse(Double.POSITIVE_INFINITY);
    double first = best.get().gate();
    return SecondGate.near(p.base(), thickness, starved.get(), widest)
        .map(g -> run(p, first, g, confirm));
  }

  private Sizing.Second run(PlaceSearch p, double first, SecondGate g, boolean confirm) {
    try {
      Job job = Job.of(g.words(Units.METRIC), p.job(first).loaded(), List.of(g.change()));
      Ran quick = study.run("second gate", List.of(job.quick()), progress).get(0);
      Optional<Ran> normal =
          quick
              .outcome()
              .filter(o -> confirm && o.clean(visible(p)))
              .map(o -> study.run("confirming at level normal", List.of(job.normal()), progress))
              .map(ran -> ran.get(0));
      return new Sizing.Second(g.at(), g.gate(), first, quick, normal);
    } catch (IllegalArgumentException e) {
      Ran failed = Ran.failed(String.valueOf(e.getMessage()));
      return new Sizing.Second(g.at(), g.gate(), first, failed, Optional.empty());
    }
  }
}
