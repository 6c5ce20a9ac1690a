// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.Sizing;
import gelfront.base.Progress;
import gelfront.base.Told;
import gelfront.setup.FeedSystem;
import gelfront.setup.Limits;
import gelfront.setup.LoadedCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A place's answer run at level normal: the size itself and what it is rounded up to. */
final class SizeChoices {
  /** Cutter sizes up that are tried where the answer fails at level normal. */
  private static final int LARGER = 2;

  /**
   * Metres by which a cutter may be too thin by level quick where none wider is accepted: level
   * normal tells whether it does.
   */
  private static final double LITTLE = 2 * PlaceSearch.TOLERANCE;

  private final Study study;
  private final PlaceSearch search;
  private final Progress progress;
  private final NearSearch near;
  private final List<Sizing.Choice> choices = new ArrayList<>();
  private final List<LoadedCase> cases = new ArrayList<>();
  private final List<Cutters> tooWide = new ArrayList<>();

  SizeChoices(Study study, PlaceSearch search, Progress progress) {
    this.study = study;
    this.search = search;
    this.progress = progress;
    this.near = new NearSearch(study, search, progress);
  }

  private record Named(String label, Told size, FeedChange feed) {}

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
        confirm(List.of(exact(near.closest())));
      } else {
        rounded(near.does());
      }
    }
  }

  /** Cutters that can't make the answer within the case's limits. */
  List<Cutters> tooWide() {
    return List.copyOf(tooWide);
  }

  /** The answer and its rounded neighbours; where none holds at level normal, larger cutters. */
  private void rounded(double gate) {
    List<Named> wanted = new ArrayList<>(List.of(exact(gate)));
    for (Cutters kind : Cutters.values()) {
      cut(kind, kind.label(), gate).ifPresentOrElse(wanted::add, () -> tooWide.add(kind));
    }
    confirm(wanted);
    for (int i = 0; i < LARGER && !hold(); i++) {
      double most = choices.stream().mapToDouble(Sizing.Choice::gate).max().orElseThrow();
      Optional<Named> next =
          cut(Cutters.MM, "next cutter up", most + 0.1e-3)
              .filter(n -> n.feed().gate() <= search.widest() + 1e-9);
      if (next.isEmpty()) {
        break;
      }
      confirm(List.of(next.get()));
    }
  }

  private Named exact(double gate) {
    return new Named(
        "as calculated", u -> u.plain(gate), new FeedChange(gate, search.sprueFor(gate)));
  }

  /** What cuts it goes by its own name; absent where no cutter is within the case's limits. */
  private Optional<Named> cut(Cutters kind, String label, double gate) {
    Limits limits = search.base().setup().limits();
    double most = limits.sprueWidest().orElse(Double.POSITIVE_INFINITY);
    return kind.within(gate - LITTLE, gate, limits.gateWidest().orElse(Double.POSITIVE_INFINITY))
        .flatMap(
            g ->
                kind.within(g.size(), search.sprueFor(g.size()), most)
                    .map(s -> new FeedChange(g.size(), s.size(), Optional.of(kind)))
                    .map(feed -> new Named(label, Told.of(g.words()), feed)));
  }

  private void confirm(List<Named> wanted) {
    List<Job> jobs = wanted.stream().map(w -> search.job(w.feed()).normal()).toList();
    List<Ran> ran = study.run("confirming at level normal", jobs, progress);
    for (int i = 0; i < wanted.size(); i++) {
      Named w = wanted.get(i);
      FeedSystem.Declared feed = (FeedSystem.Declared) jobs.get(i).setup().feed();
      choices.add(
          new Sizing.Choice(
              w.label(),
              w.feed().gate(),
              w.size(),
              feed.sprue().innerDiameter(),
              ran.get(i),
              FeedChange.sheet(feed)));
      cases.add(jobs.get(i).loaded());
    }
  }
}
