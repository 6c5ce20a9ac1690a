// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.setup.Change;
import gelfront.setup.FeedSystem;
import gelfront.setup.Limits;
import gelfront.setup.LoadedCase;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A further gate near a place that is starved, and a runner from it over the part to the sprue:
 * away from the part until the runner clears it all, along it, and down into the sprue.
 *
 * @param at on the part's surface, metres
 * @param gate its width, metres
 * @param change of the case
 */
record SecondGate(Vec3 at, double gate, Change change) {
  private static final int PLACES = 4;

  /** Metres of land, and of metal between runner and part: common practice, no source. */
  private static final double LAND = 2e-3;

  private static final double METAL = 3e-3;

  /** Gate widths that its runner is wide at least, so that it sets after the gate, and at most. */
  private static final double NARROW = 1.2;

  private static final double WIDE = 1.5;

  /**
   * @param base with a declared feed
   * @param starved where the part isn't fed, metres
   * @param widest metres that the gate is wide at most
   * @return absent where the thick place nearest to it is the gate's own, or the runner would have
   *     to lead along the sprue
   */
  static Optional<SecondGate> near(
      LoadedCase base, GatePlaces places, Vec3 starved, double widest) {
    FeedSystem.Declared feed = (FeedSystem.Declared) base.setup().feed();
    Vec3 first = feed.gate().at();
    Optional<Limits.GatePlace> place =
        places.propose(PLACES, feed.sprue().direction()).stream()
            .filter(p -> p.at().distance(first) > 0.5 * places.thickness(first))
            .min(Comparator.comparingDouble(p -> p.at().distance(starved)));
    if (place.isEmpty() || Math.abs(place.get().direction().dot(feed.sprue().direction())) > 0.9) {
      return Optional.empty();
    }
    double gate = Math.min(widest, places.proposedGate(place.get().at()));
    return Optional.of(of(feed, places.part(), place.get(), gate));
  }

  private static SecondGate of(
      FeedSystem.Declared feed, TriangleMesh part, Limits.GatePlace p, double gate) {
    double runner = runner(gate, feed.sprue().mouthDiameter());
    Vec3 d = p.direction();
    double level = height(part, p.at(), d) + METAL + 0.5 * runner;
    level = Math.max(level, LAND + 0.5 * runner);
    Vec3 over = p.at().plus(d.times(level));
    Vec3 sprue = feed.inner().plus(feed.sprue().direction().times(0.5 * runner));
    Vec3 above = sprue.plus(d.times(level - sprue.minus(p.at()).dot(d)));
    Map<String, String> table = new LinkedHashMap<>();
    table.put("at", Change.place(p.at()));
    table.put("direction", Change.direction(d));
    table.put("size", Change.quantity(gate * 1e3, "mm"));
    table.put("land", Change.quantity(LAND * 1e3, "mm"));
    table.put("runner", Change.quantity(runner * 1e3, "mm"));
    table.put("way", "[" + Change.place(over) + ", " + Change.place(above) + "]");
    return new SecondGate(p.at(), gate, new Change.Add("another_gate", table));
  }

  /** No wider than the sprue, if that will do: what a wider one holds is trimmed, not fed. */
  private static double runner(double gate, double sprue) {
    return Math.max(NARROW * gate, Math.min(WIDE * gate, sprue));
  }

  /** How far the part reaches beyond a place along a direction, metres. */
  private static double height(TriangleMesh part, Vec3 from, Vec3 d) {
    double most = 0;
    for (int v = 0; v < part.vertexCount(); v++) {
      most = Math.max(most, part.vertex(v).minus(from).dot(d));
    }
    return most;
  }

  /** As a maker says it. */
  String words(Units units) {
    return Quantities.say(
        "a second gate, %s wide, at %s", units.plain(gate), SizeWords.at(units, at));
  }
}
