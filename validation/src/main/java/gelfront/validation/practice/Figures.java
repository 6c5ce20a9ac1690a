// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.practice;

import com.fasterxml.jackson.annotation.JsonIgnore;
import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.finding.Dent;
import gelfront.finding.Fed;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.run.CaseRunner;
import gelfront.setup.Case;
import gelfront.setup.CaseFile;
import gelfront.setup.FeedSystem;
import gelfront.setup.PartLoader;
import gelfront.verdict.FlowRecord;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;

/**
 * What a case came to, rounded to what is stored.
 *
 * @param unfedPercent of the part's volume
 * @param dentLowMm of the deepest dent
 * @param dentHighMm of the same
 * @param cause constriction of its pocket, in lower case; "none" without a pocket
 * @param halfS s at which less than half of what the part needs comes
 * @param sinksMm that the sprue's surface sinks from then on, top-ups taken off
 */
record Figures(
    double unfedPercent,
    double dentLowMm,
    double dentHighMm,
    String cause,
    double halfS,
    double sinksMm) {

  static Figures of(String caseText) {
    Case setup = CaseFile.parse("practice", caseText, Path.of("")).setup();
    CaseRunner.Outcome o =
        CaseRunner.run(setup, PartLoader.load(setup.part()).mesh(), Workers.SERIAL, Progress.NONE);
    Findings found = o.judgement().findings();
    Optional<Pocket> worst = found.pockets().stream().filter(p -> !p.dents().isEmpty()).findFirst();
    Optional<Dent> dent =
        worst.flatMap(p -> p.dents().stream().max(Comparator.comparingDouble(Dent::depthHigh)));
    Fed fed = found.fed();
    return new Figures(
        round(100 * fed.unfed() / found.amounts().partVolume(), 3),
        round(1e3 * dent.map(Dent::depthLow).orElse(0.0), 3),
        round(1e3 * dent.map(Dent::depthHigh).orElse(0.0), 3),
        worst.map(p -> word(p.constriction().kind().name())).orElse("none"),
        round(fed.halfAt(), 2),
        round(1e3 * sinks(o.shot().flow().orElseThrow(), setup), 2));
  }

  private static String word(String name) {
    return name.toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }

  /** By volume: the surface itself is told in voxels. */
  private static double sinks(FlowRecord flow, Case setup) {
    double[] time = flow.trace().time();
    double[] drawn = flow.trace().drawn();
    double before = 0;
    for (int i = 0; i < time.length && time[i] <= flow.half(); i++) {
      before = drawn[i];
    }
    FeedSystem.Declared feed = (FeedSystem.Declared) setup.feed();
    double across = feed.sprue().mouthDiameter();
    return (drawn[drawn.length - 1] - before) / (Math.PI / 4 * across * across);
  }

  private static double round(double v, int digits) {
    double tens = Math.pow(10, digits);
    return Math.rint(v * tens) / tens;
  }

  /** Middle of the deepest dent's bounds. */
  @JsonIgnore
  double dentMm() {
    return 0.5 * (dentLowMm + dentHighMm);
  }
}
