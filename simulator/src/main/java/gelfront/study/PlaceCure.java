// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.answer.Sizing;
import gelfront.base.Progress;
import gelfront.base.Units;
import gelfront.finding.Constriction;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.Optional;

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
    Optional<RunOutcome> before = p.atWidest();
    Optional<Constriction> neck = before.flatMap(NeckSearch::blamed);
    if (neck.isEmpty() || p.left() < 2) {
      return Optional.empty();
    }
    Job widest = p.job(p.widest());
    double most = 2 * neck.get().width();
    Ran was = Ran.well(before.get());
    NeckSearch search = new NeckSearch(study, widest.loaded(), p.widest(), neck.get(), was, most);
    return Optional.of(search.search(p.left(), progress).beside(second(p)));
  }

  /** Beside the first gate that came closest. */
  private Optional<Sizing.Second> second(PlaceSearch p) {
    Optional<Sizing.Point> best = p.best();
    Optional<Vec3> starved = best.flatMap(b -> b.ran().outcome()).flatMap(RunOutcome::pocketCentre);
    if (best.isEmpty() || starved.isEmpty()) {
      return Optional.empty();
    }
    double widest = p.base().setup().limits().gateWidest().orElse(Double.POSITIVE_INFINITY);
    double first = best.get().gate();
    return SecondGate.near(p.base(), thickness, starved.get(), widest)
        .map(g -> new Sizing.Second(g.at(), g.gate(), first, run(p, first, g)));
  }

  private Ran run(PlaceSearch p, double first, SecondGate g) {
    try {
      Job job = Job.of(g.words(Units.METRIC), p.job(first).loaded(), List.of(g.change())).quick();
      return study.run("second gate", List.of(job), progress).get(0);
    } catch (IllegalArgumentException e) {
      return Ran.failed(String.valueOf(e.getMessage()));
    }
  }
}
