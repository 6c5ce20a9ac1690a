// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.Sizing;
import gelfront.base.Progress;
import gelfront.base.Told;
import gelfront.setup.FeedSystem;
import gelfront.setup.LoadedCase;
import java.util.ArrayList;
import java.util.List;

/** A place's answer run at level normal: the size itself and what it is rounded up to. */
final class SizeChoices {
  /** Cutter sizes up that are tried where the answer fails at level normal. */
  private static final int LARGER = 2;

  private final Study study;
  private final PlaceSearch search;
  private final Progress progress;
  private final List<Sizing.Choice> choices = new ArrayList<>();
  private final List<LoadedCase> cases = new ArrayList<>();

  SizeChoices(Study study, PlaceSearch search, Progress progress) {
    this.study = study;
    this.search = search;
    this.progress = progress;
  }

  private record Named(String label, double gate, Told size, double sprue) {
    /** What cuts it goes by its own name. */
    Named(String label, Cutters.Size cutter, double sprue) {
      this(label, cutter.size(), Told.of(cutter.words()), sprue);
    }

    static Named exact(double gate, double sprue) {
      return new Named("as calculated", gate, u -> u.plain(gate), sprue);
    }
  }

  /** Cases of the choices so far, in their order. */
  List<LoadedCase> cases() {
    return List.copyOf(cases);
  }

  /** The answer and its rounded neighbours; where none holds at level normal, larger cutters. */
  List<Sizing.Choice> rounded() {
    double gate = search.does();
    Cutters.Size mm = Cutters.mm(gate);
    Cutters.Size inch = Cutters.inch(gate);
    confirm(
        List.of(
            Named.exact(gate, search.sprue()),
            new Named("cutters in mm", mm, Cutters.mm(search.sprueFor(mm.size())).size()),
            new Named("cutters in inch", inch, Cutters.inch(search.sprueFor(inch.size())).size())));
    double visible = search.base().setup().visibleDent();
    for (int i = 0; i < LARGER; i++) {
      double most = choices.stream().mapToDouble(Sizing.Choice::gate).max().orElseThrow();
      Cutters.Size next = Cutters.mm(most + 0.1e-3);
      boolean there = choices.stream().anyMatch(c -> c.holds(visible));
      if (there || next.size() > search.widest() + 1e-9) {
        break;
      }
      confirm(List.of(new Named("next cutter up", next, search.sprue())));
    }
    return List.copyOf(choices);
  }

  /** What came closest where none does, for level normal to tell. */
  List<Sizing.Choice> near() {
    Sizing.Point best = search.best().orElseThrow();
    confirm(List.of(Named.exact(best.gate(), search.sprue())));
    return List.copyOf(choices);
  }

  private void confirm(List<Named> wanted) {
    List<Job> jobs = wanted.stream().map(w -> search.job(w.gate(), w.sprue()).normal()).toList();
    List<Ran> ran = study.run("confirming at level normal", jobs, progress);
    for (int i = 0; i < wanted.size(); i++) {
      Named w = wanted.get(i);
      FeedSystem.Declared feed = (FeedSystem.Declared) jobs.get(i).setup().feed();
      choices.add(
          new Sizing.Choice(
              w.label(),
              w.gate(),
              w.size(),
              feed.sprue().innerDiameter(),
              ran.get(i),
              FeedChange.sheet(feed)));
      cases.add(jobs.get(i).loaded());
    }
  }
}
