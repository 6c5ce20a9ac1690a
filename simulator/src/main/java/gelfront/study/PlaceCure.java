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
import java.util.stream.Stream;

/** What else is changed where no gate will do at a place: the neck, or a second gate behind it. */
final class PlaceCure {
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
    return Optional.of(confirmed(p, search, search.search(p.left(), progress)));
  }

  /** Beside a second gate; at level normal, too, where that does at level quick: the neck first. */
  private Sizing.Cure confirmed(PlaceSearch p, NeckSearch search, Sizing.Cure found) {
    Optional<Job> neck = search.confirming(found);
    Optional<Second> second = second(p);
    List<Ran> ran = run(Stream.concat(neck.stream(), second.map(s -> s.job.quick()).stream()));
    Sizing.Cure cure = neck.isPresent() ? found.at(ran.get(0)) : found;
    if (second.isEmpty()) {
      return cure;
    }
    Ran quick = ran.get(ran.size() - 1);
    boolean needed = !clean(p, cure.normal()) && clean(p, Optional.of(quick));
    Optional<Ran> normal =
        needed ? run(Stream.of(second.get().job.normal())).stream().findFirst() : Optional.empty();
    return cure.beside(Optional.of(second.get().told(quick, normal)));
  }

  private List<Ran> run(Stream<Job> jobs) {
    List<Job> all = jobs.toList();
    return all.isEmpty() ? List.of() : study.run("neck and second gate", all, progress);
  }

  private static boolean clean(PlaceSearch p, Optional<Ran> ran) {
    return ran.flatMap(Ran::outcome).filter(o -> o.clean(visible(p))).isPresent();
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
        .filter(g -> p.excess(g.ran()) <= widest - visible + PlaceSearch.SAME * visible)
        .findFirst();
  }

  /**
   * A second gate.
   *
   * @param first size of the first one, metres
   */
  private record Second(SecondGate gate, double first, Job job) {
    Sizing.Second told(Ran quick, Optional<Ran> normal) {
      return new Sizing.Second(gate.at(), gate.gate(), first, quick, normal);
    }
  }

  /** Beside the first gate that came closest; absent where there is no place for one. */
  private Optional<Second> second(PlaceSearch p) {
    Optional<Sizing.Point> best = p.best();
    Optional<Vec3> starved = best.flatMap(b -> b.ran().outcome()).flatMap(RunOutcome::pocketCentre);
    if (best.isEmpty() || starved.isEmpty()) {
      return Optional.empty();
    }
    double widest = p.base().setup().limits().gateWidest().orElse(Double.POSITIVE_INFINITY);
    double first = best.get().gate();
    return SecondGate.near(p.base(), thickness, starved.get(), widest)
        .flatMap(g -> job(p, first, g).map(j -> new Second(g, first, j)));
  }

  /** Absent where the case can't have it. */
  private static Optional<Job> job(PlaceSearch p, double first, SecondGate g) {
    try {
      return Optional.of(Job.of(g.words(Units.METRIC), p.job(first).loaded(), List.of(g.change())));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
