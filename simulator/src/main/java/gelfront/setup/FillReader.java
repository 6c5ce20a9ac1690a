// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads [fill]; a case without it doesn't calculate the shot itself. */
final class FillReader {
  private static final String SOURCE = "own estimate, no source";

  private final CaseTable table;
  private final List<Statement> assumed;

  /**
   * @param assumed collects what is filled in
   */
  FillReader(CaseTable table, List<Statement> assumed) {
    this.table = table;
    this.assumed = assumed;
  }

  Fill read() {
    if (!table.present()) {
      return Fill.OFF;
    }
    boolean on = !table.has("on") || table.flag("on");
    OptionalDouble pressure = table.quantity("pressure", Dimension.PRESSURE, 100, 5e6);
    double most =
        pressure.isPresent()
            ? table.quantity("most_pressure", Dimension.PRESSURE, 100, 5e6).orElse(Fill.BY_HAND)
            : or("most_pressure", Dimension.PRESSURE, 100, 5e6, Fill.BY_HAND, "200 kPa");
    if (pressure.isPresent() && table.has("most_pressure")) {
      table.mistake("most_pressure", "pressure says what the plunger keeps up: state one of both");
    }
    double gap = or("parting_gap", Dimension.LENGTH, 0, 0.5e-3, Fill.GAP, "0.025 mm");
    return new Fill(on, pressure, most, Math.max(0, gap), vents());
  }

  private List<Fill.Vent> vents() {
    List<Fill.Vent> vents = new ArrayList<>();
    for (CaseTable t : table.list("vent")) {
      Optional<Vec3> at = t.place("at");
      if (at.isEmpty()) {
        t.mistake("", "[[fill.vent]] needs at = [x, y, z], where it meets the cavity");
      }
      double width = t.need("width", Dimension.LENGTH, 0.2e-3, 0.05);
      double depth = t.need("depth", Dimension.LENGTH, 2e-6, 1e-3);
      double length = t.need("length", Dimension.LENGTH, 0.5e-3, 0.2);
      if (at.isPresent() && width > 0 && depth > 0 && length > 0) {
        vents.add(new Fill.Vent(at.get(), width, depth, length));
      }
    }
    return vents;
  }

  private double or(
      String key, Dimension d, double low, double high, double otherwise, String shown) {
    if (!table.has(key)) {
      assumed.add(new Statement("fill: " + key.replace('_', ' '), shown, SOURCE));
      return otherwise;
    }
    return table.quantity(key, d, low, high).orElse(otherwise);
  }

  /** What a shot that is calculated can't do. */
  static void contradict(CaseTable recipe, Fill fill, Shot shot) {
    if (fill.on() && fill.pressure().isEmpty() && shot.fillTime() == 0) {
      recipe.mistake(
          "fill_time",
          Quantities.say(
              "a fill time of zero can't be calculated: state how long it takes, or the plunger's"
                  + " pressure as [fill] pressure = \"%.0f kPa\"",
              1e-3 * Fill.BY_HAND));
    }
  }
}
