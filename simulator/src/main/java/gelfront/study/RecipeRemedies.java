// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Remedies.Effort;
import gelfront.base.Quantities;
import gelfront.base.Told;
import gelfront.mesh.Vec3;
import gelfront.setup.Block;
import gelfront.setup.Change;
import gelfront.setup.Shot;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What can be done at the bench, with the mould as it is. */
final class RecipeRemedies {
  private static final double COOLER = 10;
  private static final double WARMER = 15;
  private static final double SPOT = 40;
  private static final double LONGER = 15;

  /** K between shot and no-flow below which nobody shoots. */
  private static final double LEAST_HEAT = 15;

  private final RemedyShelf shelf;

  RecipeRemedies(RemedyShelf shelf) {
    this.shelf = shelf;
  }

  void fill() {
    Shot shot = shelf.setup().shot();
    shelf.before().ifPresent(o -> new OpenLater(shelf.setup()).than(o).forEach(shelf::add));
    hold(shot);
    topUp(shot);
    cooler(shot);
    warmer();
    row();
    spot();
  }

  private void hold(Shot shot) {
    double hold = shot.holdTime() + LONGER;
    shelf.add(
        Effort.RECIPE,
        "hold",
        "hold the plunger " + seconds(hold) + " instead of " + seconds(shot.holdTime()),
        "Hold with the pressure of before, no more: what it pushes the halves apart with stands in the"
            + " table.",
        List.of(Change.seconds("shot.hold_time", hold)));
  }

  private void topUp(Shot shot) {
    double first = shot.holdTime() + 5;
    double second = first + 10;
    String what = "top the sprue up at " + seconds(first) + " and " + seconds(second);
    if (shelf.setup().opensAt().orElse(Double.POSITIVE_INFINITY) < second) {
      shelf.leave(what, "the mould is opened before");
      return;
    }
    String times = Quantities.say("\"%.1f s\", \"%.1f s\"", first, second);
    shelf.add(
        Effort.RECIPE,
        "top-up",
        what,
        "Top up with fresh hot plastisol, slowly: a splash into a hot sprue spits.",
        List.of(new Change.Set("shot.top_up", "[" + times + "]")));
  }

  private static String seconds(double s) {
    return Quantities.say("%.1f", s).replaceFirst("\\.0$", "") + " s";
  }

  private void cooler(Shot shot) {
    double t = shot.temperature() - COOLER;
    Told what =
        u -> "shoot at " + u.temperature(t) + " instead of " + u.temperature(shot.temperature());
    if (t < shelf.setup().plastisol().noFlow() + LEAST_HEAT) {
      shelf.leave(what, "too close to the no-flow temperature to be injected");
      return;
    }
    String caution = "Only as long as thin places still fill: try that first.";
    shelf.addColder("shot", what, caution, Change.degC("shot.temperature", t));
  }

  private void warmer() {
    double start = shelf.setup().block().startTemperature();
    double t = start + WARMER;
    Told what = u -> "mould at " + u.temperature(t) + " instead of " + u.temperature(start);
    if (t >= shelf.setup().plastisol().firm() - 5) {
      shelf.leave(what, "the part would hardly get firm in a mould that warm");
      return;
    }
    shelf.add(
        Effort.RECIPE,
        "mould",
        what,
        "Warm it evenly and dry, and measure: hot metal looks like cold.",
        List.of(Change.degC("block.start", t)));
  }

  private void row() {
    int shots = shelf.setup().rhythm().shots() + 2;
    shelf.add(
        Effort.RECIPE,
        "row",
        "take shot " + shots + " of a row, throw away those before",
        "",
        List.of(new Change.Set("series.shots", String.valueOf(shots))));
  }

  private void spot() {
    Optional<Vec3> at = shelf.gatePlace();
    if (at.isEmpty()) {
      shelf.leave("warm the mould round the gate", "the case doesn't say where the gate is");
      shelf.leave("a PTFE bush round the gate", "the case doesn't say where the gate is");
      return;
    }
    Block block = shelf.setup().block();
    double t = Math.min(100, block.startTemperature() + SPOT);
    double radius = shelf.gateWidth() + 5e-3;
    double seconds =
        radius * radius * block.material().volumetricHeat() / block.material().conductivity();
    Map<String, String> spot = new LinkedHashMap<>();
    spot.put("centre", Change.place(at.get()));
    spot.put("radius", Change.quantity(radius * 1e3, "mm"));
    spot.put("temperature", Change.quantity(t, "degC"));
    shelf.add(
        Effort.RECIPE,
        "spot",
        u -> "warm " + u.length(radius, 0) + " round the gate to " + u.temperature(t),
        Quantities.say(
            "In this block a warm spot evens out in about %.0f s by itself (radius squared over"
                + " diffusivity): warm it right before the shot, or by a cartridge. Aluminium under a"
                + " torch shows no colour before it melts.",
            Math.ceil(seconds)),
        List.of(new Change.Add("block.warm_spot", spot)));
  }
}
