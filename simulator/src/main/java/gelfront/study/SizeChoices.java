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
  private final NearSearch near;
  private final List<Sizing.Choice> choices = new ArrayList<>();
  private final List<LoadedCase> cases = new ArrayList<>();

  SizeChoices(Study study, PlaceSearch search, Progress progress) {
    this.study = study;
    this.search = search;
    this.progress = progress;
    this.near = new NearSearch(study, search, progress);
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

  List<Sizing.Choice> choices() {
    return List.copyOf(choices);
  }

  /** Whether one of them leaves nothing to be seen. */
  boolean hold() {
    return choices.stream().anyMatch(c -> c.holds(search.base().setup().visibleDent()));
  }

  /** What was run at level normal to find the answer, where level quick couldn't tell. */
  List<Sizing.Point> near() {
    return near.points();
  }

  /** Runs them; none where no gate does and none comes close. */
  void run() {
    if (!Double.isNaN(search.does())) {
      rounded(search.does());
    } else if (!search.close().isEmpty()) {
      near.run();
      if (Double.isNaN(near.does())) {
        double closest = search.best().orElseThrow().gate();
        confirm(List.of(Named.exact(closest, search.sprue())));
      } else {
        rounded(near.does());
      }
    }
  }

  /** The answer and its rounded neighbours; where none holds at level normal, larger cutters. */
  private void rounded(double gate) {
    Cutters.Size mm = Cutters.mm(gate);
    Cutters.Size inch = Cutters.inch(gate);
    confirm(
        List.of(
            Named.exact(gate, search.sprue()),
            new Named("cutters in mm", mm, Cutters.mm(search.sprueFor(mm.size())).size()),
            new Named("cutters in inch", inch, Cutters.inch(search.sprueFor(inch.size())).size())));
    for (int i = 0; i < LARGER; i++) {
      double most = choices.stream().mapToDouble(Sizing.Choice::gate).max().orElseThrow();
      Cutters.Size next = Cutters.mm(most + 0.1e-3);
      if (hold() || next.size() > search.widest() + 1e-9) {
        break;
      }
      confirm(List.of(new Named("next cutter up", next, search.sprue())));
    }
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
