// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.RunOutcome;
import gelfront.finding.Constriction;
import gelfront.finding.Dent;
import gelfront.finding.Filled;
import gelfront.finding.Findings;
import gelfront.finding.HotSpot;
import gelfront.finding.Pocket;
import gelfront.run.CaseRunner;
import gelfront.run.Clamping;
import gelfront.run.Storing;
import gelfront.setup.Case;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A run's findings in a few numbers. */
final class Outcomes {
  private Outcomes() {}

  static RunOutcome of(Case c, CaseRunner.Outcome o, double seconds) {
    Findings f = o.judgement().findings();
    Optional<Pocket> worst = f.pockets().stream().findFirst();
    Optional<Dent> dent = worst.map(p -> p.dents().get(0));
    double[] mould = o.shot().mouldAtWall();
    return new RunOutcome(
        f.severity(),
        f.verdict(),
        dent.map(Dent::depthLow).orElse(0.0),
        dent.map(Dent::depthHigh).orElse(0.0),
        dent.map(Dent::place),
        worst.map(Pocket::constriction),
        worst.map(Pocket::centre),
        worst.flatMap(Outcomes::parted),
        worst.map(Pocket::openUntil).orElse(0.0),
        f.fed().demand(),
        f.fed().unfed(),
        f.gateSets(),
        f.partSets(),
        cycle(c, f.firmAt()),
        f.amounts().feedVolume(),
        f.amounts().topUpVolume(),
        mould[mould.length - 1],
        Clamping.pressing(c, o),
        filling(f.filled()),
        f.fed().halfAt(),
        f.opening(),
        o.voxels().cavities().count() > 1 ? cavities(f, o.voxels().cavities().count()) : List.of(),
        o.voxels().model().cavity().count(),
        seconds,
        RunCurves.of(Storing.series(o)));
  }

  private static RunOutcome.Filling filling(Filled f) {
    RunOutcome.Filling known =
        f.mayNotFill() ? RunOutcome.Filling.MAY_NOT_FILL : RunOutcome.Filling.FILLS;
    return f.calculated() ? known : RunOutcome.Filling.UNKNOWN;
  }

  private static Optional<Constriction> parted(Pocket p) {
    List<HotSpot> others = p.spots().subList(1, p.spots().size());
    return others.stream()
        .map(HotSpot::neck)
        .filter(n -> n.kind() == Constriction.Kind.NECK)
        .min(Comparator.comparingDouble(Constriction::width));
  }

  private static List<RunOutcome.OfCavity> cavities(Findings f, int count) {
    return IntStream.rangeClosed(1, count).mapToObj(k -> cavity(f, k)).toList();
  }

  private static RunOutcome.OfCavity cavity(Findings f, int number) {
    Optional<Pocket> worst =
        f.pockets().stream().filter(p -> p.cavities().contains(number)).findFirst();
    Optional<Dent> dent = worst.flatMap(p -> p.dents().stream().findFirst());
    return new RunOutcome.OfCavity(
        number,
        dent.map(Dent::depthLow).orElse(0.0),
        dent.map(Dent::depthHigh).orElse(0.0),
        worst.map(p -> p.constriction().closedAt()).orElse(Double.POSITIVE_INFINITY));
  }

  /** The clock never opens it under the injector: no case is read that says so. */
  private static double cycle(Case c, double firmAt) {
    double pressed = c.shot().fillTime() + c.shot().holdTime();
    return c.opensAt().orElse(Math.max(pressed, firmAt));
  }
}
