// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Remedies.Effort;
import gelfront.answer.RunOutcome;
import gelfront.base.Told;
import gelfront.mesh.Vec3;
import gelfront.setup.Change;
import gelfront.setup.FeedSystem;
import gelfront.setup.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What can be done where gate and sprue are drawn by numbers. */
final class DrawnFeedRemedies {
  private static final double TUBE = 20e-3;
  private static final double LONGER = 10e-3;
  private static final double RESERVOIR = 8e-3;
  private static final double WIDER = 2e-3;
  private static final double MUCH_WIDER = 5e-3;
  private static final double[] GATES = {0.5e-3, 1e-3, 1.5e-3, 2e-3};

  private final RemedyShelf shelf;
  private final FeedSystem.Declared d;
  private final GatePlaces places;

  DrawnFeedRemedies(RemedyShelf shelf, FeedSystem.Declared d, GatePlaces places) {
    this.shelf = shelf;
    this.d = d;
    this.places = places;
  }

  void fill() {
    double gate = d.gate().section().width();
    double sprue = d.sprue().innerDiameter();
    extender();
    gates();
    widerSprue(gate, sprue, WIDER, Effort.FILE_WORK);
    double length = d.sprue().length();
    shelf.add(
        Effort.FILE_WORK,
        "sprue length",
        u -> "sprue " + u.length(length + LONGER, 0) + " long instead of " + u.length(length, 0),
        "The block must be that thick there, or the injector's seat is moved.",
        List.of(Change.mm("sprue.length", length + LONGER)));
    new FilingRemedies(shelf).bush();
    elsewhere(gate, sprue);
    second();
    widerSprue(gate, sprue, MUCH_WIDER, Effort.REDESIGN);
    reservoir(gate);
  }

  private void widerSprue(double gate, double sprue, double by, Effort effort) {
    double wide = sprue + by;
    if (wide > sprueWidest() + 1e-9) {
      shelf.leave(u -> "sprue " + u.plain(wide), "wider than [limits] accepts");
      return;
    }
    List<Change> changes = new FeedChange(gate, wide).of(shelf.base());
    Told what = u -> "sprue " + u.plain(wide) + " wide instead of " + u.plain(sprue);
    String caution = "More to melt, to trim and to wait for.";
    shelf.add(effort, "sprue", what, caution, changes);
  }

  private double sprueWidest() {
    return shelf.setup().limits().sprueWidest().orElse(Double.POSITIVE_INFINITY);
  }

  private boolean widened(double sprue) {
    return sprue > d.sprue().innerDiameter();
  }

  private void extender() {
    Told what = u -> "a silicone tube of " + u.plain(TUBE) + " on the sprue";
    if (d.sprue().extender().isPresent()) {
      shelf.leave(what, "there is one already");
      return;
    }
    shelf.add(
        Effort.RECIPE,
        "extender",
        what,
        "It stands full of hot plastisol: hold it, and keep hands and face away.",
        List.of(
            Change.mm("extender.bore", d.sprue().mouthDiameter()),
            Change.mm("extender.height", TUBE),
            Change.mm("extender.wall", 4e-3),
            Change.word("extender.material", "silicone")));
  }

  private void gates() {
    double now = d.gate().section().width();
    double widest = shelf.setup().limits().gateWidest().orElse(Double.POSITIVE_INFINITY);
    for (double more : GATES) {
      double gate = now + more;
      Told what = u -> "gate " + u.plain(gate) + " instead of " + u.plain(now);
      double sprue = Math.max(d.sprue().innerDiameter(), gate);
      if (gate > widest + 1e-9 || (widened(sprue) && sprue > sprueWidest() + 1e-9)) {
        shelf.leave(what, "wider than [limits] accepts");
        continue;
      }
      List<Change> changes = new FeedChange(gate, sprue).of(shelf.base());
      String caution = "More to trim. File a little, shoot one, file again.";
      shelf.add(Effort.FILE_WORK, "gate", what, caution, changes);
    }
  }

  /** As wide as it is, and as wide as a thick place wants it. */
  private void elsewhere(double gate, double sprue) {
    double near = 0.5 * places.thickness(d.gate().at());
    Optional<Limits.GatePlace> thick =
        places.propose(3, d.sprue().direction()).stream()
            .filter(p -> p.at().distance(d.gate().at()) > near)
            .filter(p -> fed().noneMatch(g -> p.at().distance(g) < near))
            .findFirst();
    if (thick.isEmpty()) {
      shelf.leave("the gate elsewhere", "there is a gate at the thickest place already");
      return;
    }
    Vec3 at = thick.get().at();
    Told where = u -> "the gate at the thick place, " + SizeWords.at(u, at);
    String caution = "The mark of the gate is there, too.";
    List<Change> moved = moved(thick.get());
    shelf.add(Effort.REDESIGN, "place", where, caution, moved);
    Limits limits = shelf.setup().limits();
    double proposed = places.proposedGate(thick.get().at());
    double wide = Math.min(limits.gateWidest().orElse(proposed), proposed);
    double fat = PlaceSearch.sprueFor(wide, sprue, limits.sprueWidest().orElse(2 * wide));
    if (wide > gate && fat >= wide) {
      List<Change> all = new ArrayList<>(moved);
      all.addAll(new FeedChange(wide, fat).of(shelf.base()));
      Told sized = u -> where.in(u) + "; " + u.plain(wide) + " wide, sprue " + u.plain(fat);
      shelf.add(Effort.REDESIGN, "place", sized, caution + " More to trim.", all);
    }
  }

  private static List<Change> moved(Limits.GatePlace p) {
    return List.of(
        new Change.Set("gate.at", Change.place(p.at())),
        new Change.Set("gate.direction", Change.direction(p.direction())),
        new Change.Remove("sprue.at"),
        new Change.Remove("sprue.direction"));
  }

  /** Where the further gates are. */
  private Stream<Vec3> fed() {
    return d.others().stream().map(b -> b.gate().at());
  }

  /** Where the deepest pocket is, and at the far end, as wide as the part wants it there. */
  private void second() {
    if (!d.others().isEmpty()) {
      shelf.leave("a further gate", "there are two or more already");
      return;
    }
    double widest = shelf.setup().limits().gateWidest().orElse(Double.POSITIVE_INFINITY);
    List<Vec3> starved = new ArrayList<>();
    shelf.before().flatMap(RunOutcome::pocketCentre).ifPresent(starved::add);
    starved.add(places.farthest(d.gate().at()));
    List<SecondGate> gates =
        starved.stream()
            .flatMap(p -> SecondGate.near(shelf.base(), places, p, widest).stream())
            .distinct()
            .toList();
    if (gates.isEmpty()) {
      shelf.leave("a second gate", "there is no other thick place that a runner leads to");
    }
    String caution = "Two marks, and where both flows meet air may be caught: vent there.";
    for (SecondGate g : gates) {
      shelf.add(Effort.REDESIGN, "place", g::words, caution, List.of(g.change()));
    }
  }

  private void reservoir(double gate) {
    String label = "a reservoir ahead of the gate";
    if (d.reservoir().isPresent()) {
      shelf.leave(label, "there is one already");
      return;
    }
    double wide = Math.max(2 * gate, 1.25 * d.sprue().innerDiameter());
    shelf.add(
        Effort.REDESIGN,
        "reservoir",
        u -> label + ", " + u.plain(wide) + " wide and " + u.plain(RESERVOIR) + " long",
        "",
        List.of(Change.mm("reservoir.diameter", wide), Change.mm("reservoir.length", RESERVOIR)));
  }
}
