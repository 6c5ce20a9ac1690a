// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.Sizing;
import gelfront.base.Progress;
import gelfront.base.Quantities;
import gelfront.mesh.Vec3;
import gelfront.setup.Change;
import gelfront.setup.FeedSystem;
import gelfront.setup.Limits;
import gelfront.setup.LoadedCase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Sizes gate, runner and sprue: for each place the smallest gate that leaves nothing to be seen,
 * neither a dent nor, where a clock opens the mould, an oval, by runs at level quick; the answer
 * and what it is rounded up to are run at level normal. Where a part opened too early goes oval
 * with any gate, neither other places nor necks are tried: they don't set its core.
 */
public final class Sizer {
  /** Runs at level normal at most, of those allowed a place. */
  private static final int NORMAL = 3;

  /** Metres: thinner than this nobody cuts a gate. */
  private static final double LEAST = 1e-3;

  private final Study study;
  private final LoadedCase base;
  private final Limits limits;
  private final GatePlaces thickness;
  private final PlaceCure cures;
  private final int runs;
  private final int atOnce;
  private final Progress progress;
  private final List<Search> searches = new ArrayList<>();

  /** Places from here on are only tried where no other will do: no neck is sized for them. */
  private int asked;

  private final List<LoadedCase> chosenCases = new ArrayList<>();

  private record Search(
      String label, Limits.GatePlace place, PlaceSearch of, SizeChoices choices) {}

  /**
   * @param runs a place at most, 6 or more
   * @param atOnce that go side by side
   * @throws IllegalArgumentException in words, if there is no gate to size, or the case's limits
   *     leave no sprue
   */
  public Sizer(Study study, int runs, int atOnce, Progress progress) {
    this.study = study;
    this.base = study.base();
    this.limits = base.setup().limits();
    this.runs = runs;
    this.atOnce = atOnce;
    this.progress = progress;
    if (!(base.setup().feed() instanceof FeedSystem.Declared)) {
      throw new IllegalArgumentException(
          "the gate is part of the mesh: it can be filed, not sized with its sprue");
    }
    contradict(base);
    if (runs < 6) {
      throw new IllegalArgumentException("sizing takes 6 runs or more");
    }
    this.thickness = new GatePlaces(study.part());
    this.cures = new PlaceCure(study, thickness, progress);
  }

  /** With its line: a map, or a check, may well go beyond what is accepted, and isn't refused. */
  private static void contradict(LoadedCase base) {
    double now = ((FeedSystem.Declared) base.setup().feed()).sprue().innerDiameter();
    double widest = base.setup().limits().sprueWidest().orElse(now);
    if (widest < now - 1e-9) {
      throw new IllegalArgumentException(
          base.told(
              "limits.sprue_widest",
              Quantities.say(
                  "the widest sprue that is accepted (%s) is narrower than the case's own (%s)",
                  Quantities.mm(widest), Quantities.mm(now))));
    }
  }

  /**
   * @param propose gate places beside the case's own, or its list
   * @throws IllegalArgumentException in words, if nothing that was run gives a result
   */
  public Sizing run(int propose) {
    List<Limits.GatePlace> given = limits.gatePlaces();
    if (given.isEmpty()) {
      add(Sizing.Place.AS_IT_IS, here());
    }
    for (int i = 0; i < given.size(); i++) {
      add("place " + (i + 1) + " of the list", given.get(i));
    }
    propose(propose);
    asked = searches.size();
    search(0);
    boolean none = searches.stream().noneMatch(Sizer::does);
    boolean openLater = searches.stream().anyMatch(s -> s.of().openedTooEarly().isPresent());
    if (none && !openLater && propose == 0 && given.isEmpty()) {
      propose(2);
      search(asked);
    }
    return answer();
  }

  /** Cases of the best place's choices, in their order, to be written out. */
  public List<LoadedCase> chosenCases() {
    return List.copyOf(chosenCases);
  }

  private Limits.GatePlace here() {
    FeedSystem.Gate g = ((FeedSystem.Declared) base.setup().feed()).gate();
    return new Limits.GatePlace(g.at(), g.direction());
  }

  private void propose(int most) {
    int found = 0;
    Vec3 sprue = ((FeedSystem.Declared) base.setup().feed()).sprue().direction();
    for (Limits.GatePlace p : thickness.propose(most + 1, sprue)) {
      double near = 0.5 * thickness.thickness(p.at());
      boolean there = searches.stream().anyMatch(s -> s.place().at().distance(p.at()) < near);
      if (!there && found < most) {
        found++;
        add(found == 1 ? "thickest place" : "thick place " + found, p);
      }
    }
  }

  private void add(String label, Limits.GatePlace p) {
    FeedSystem.Declared feed = (FeedSystem.Declared) base.setup().feed();
    double least = limits.gateLeast().orElse(Math.min(LEAST, limits.gateWidest().orElse(LEAST)));
    double widest =
        Math.min(
            limits.sprueWidest().orElse(Double.POSITIVE_INFINITY), // no gate is wider than it
            limits
                .gateWidest()
                .orElse(Math.max(thickness.widestGate(p.at()), feed.gate().section().width())));
    if (!(least < widest)) {
      throw new IllegalArgumentException(
          label + ": the part is thinner there than the thinnest gate that can be cut");
    }
    double sprue =
        limits
            .sprueWidest()
            .orElse(Math.max(1.2 * thickness.thickest(), 1.25 * feed.sprue().innerDiameter()));
    boolean elsewhere = !label.equals(Sizing.Place.AS_IT_IS);
    LoadedCase moved = elsewhere ? moved(label, p) : base;
    int quick = runs - NORMAL;
    double up = Math.floor(widest / 0.1e-3 + 1e-6) * 0.1e-3;
    PlaceSearch.Sizes sizes =
        new PlaceSearch.Sizes(least, thickness.proposedGate(p.at()), Math.max(least, up));
    PlaceSearch search = new PlaceSearch(moved, elsewhere, sizes, sprue, quick);
    searches.add(new Search(label, p, search, new SizeChoices(study, search, progress)));
  }

  private LoadedCase moved(String label, Limits.GatePlace p) {
    return Job.of(
            label,
            base,
            List.of(
                new Change.Set("gate.at", Change.place(p.at())),
                new Change.Set("gate.direction", Change.direction(p.direction())),
                new Change.Remove("sprue.at"),
                new Change.Remove("sprue.direction")))
        .loaded();
  }

  /** All places from one on, in rounds: what one asks for doesn't wait for another's answer. */
  private void search(int from) {
    List<Search> open = new ArrayList<>(searches.subList(from, searches.size()));
    while (!open.isEmpty()) {
      int each = open.size() >= atOnce ? 1 : 2;
      List<Search> who = new ArrayList<>();
      List<Double> gates = new ArrayList<>();
      List<Job> jobs = new ArrayList<>();
      for (Search s : List.copyOf(open)) {
        List<Double> next = s.of().next(s.of().points().isEmpty() ? 2 : each);
        for (double gate : next) {
          who.add(s);
          gates.add(gate);
          jobs.add(s.of().job(gate).quick());
        }
        if (next.isEmpty()) {
          open.remove(s);
        }
      }
      List<Ran> ran = jobs.isEmpty() ? List.of() : study.run("sizing", jobs, progress);
      for (int i = 0; i < ran.size(); i++) {
        who.get(i).of().know(gates.get(i), ran.get(i));
      }
    }
    for (Search s : searches.subList(from, searches.size())) {
      narrowSprue(s);
      s.choices().run();
    }
  }

  /** Whether a gate does at a place, by level quick or, where that can't tell, by normal. */
  private static boolean does(Search s) {
    return !Double.isNaN(s.of().does()) || s.choices().hold();
  }

  /** Where the sprue had to be widened: half way back, twice at most. */
  private void narrowSprue(Search s) {
    PlaceSearch p = s.of();
    if (!p.sprueWidened() || Double.isNaN(p.does())) {
      return;
    }
    double low = ((FeedSystem.Declared) p.base().setup().feed()).sprue().innerDiameter();
    for (int i = 0; i < 2 && p.left() > 0; i++) {
      double before = p.sprue();
      double middle = Math.round(0.5 * (low + before) / 0.5e-3) * 0.5e-3;
      if (middle <= Math.max(low, p.does()) || middle >= before) {
        return;
      }
      Ran ran = study.run("sprue", List.of(p.job(p.does(), middle).quick()), progress).get(0);
      p.knowSprue(p.does(), middle, ran);
      low = p.sprue() < before ? low : middle;
    }
  }

  private Sizing answer() {
    List<Ran> all =
        searches.stream().flatMap(s -> s.of().points().stream()).map(Sizing.Point::ran).toList();
    if (all.stream().allMatch(r -> r.outcome().isEmpty())) {
      throw new IllegalArgumentException(base.file() + ": " + all.get(0).error());
    }
    List<Sizing.Place> places = new ArrayList<>();
    searches.forEach(s -> places.add(place(s)));
    int best = best(places);
    if (best >= 0) {
      chosenCases.addAll(searches.get(best).choices().cases());
    }
    double visible = base.setup().visibleDent();
    return new Sizing(
        base.setup().name(),
        visible,
        places,
        best,
        u -> new SizeWords(u).verdict(base, places, best),
        study.calculated() + study.reused());
  }

  private int best(List<Sizing.Place> places) {
    double visible = base.setup().visibleDent();
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < places.size(); i++) {
      OptionalDouble gate =
          places.get(i).choices().stream()
              .filter(c -> c.holds(visible))
              .mapToDouble(Sizing.Choice::gate)
              .min();
      if (gate.isPresent() && gate.getAsDouble() < least - 1e-9) {
        least = gate.getAsDouble();
        best = i;
      }
    }
    return best;
  }

  private Sizing.Place place(Search s) {
    boolean hopeless = searches.indexOf(s) >= asked || s.of().openedTooEarly().isPresent();
    Optional<Sizing.Cure> cure = does(s) || hopeless ? Optional.empty() : cures.of(s.of());
    List<Sizing.Point> curve = new ArrayList<>(s.of().points());
    curve.addAll(s.choices().near());
    return new Sizing.Place(
        s.label(),
        s.place().at(),
        s.place().direction(),
        thickness.thickness(s.place().at()),
        curve.stream().sorted(Comparator.comparingDouble(Sizing.Point::gate)).toList(),
        s.choices().choices(),
        u -> new SizeWords(u).place(base, s.of(), s.choices(), cure),
        cure);
  }
}
