// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The table [limits]. */
record LimitsReader(CaseTable table) {
  Limits read() {
    OptionalDouble least = table.quantity("gate_least", Dimension.LENGTH, 0.3e-3, 0.05);
    OptionalDouble widest = table.quantity("gate_widest", Dimension.LENGTH, 0.3e-3, 0.05);
    OptionalDouble sprue = table.quantity("sprue_widest", Dimension.LENGTH, 1e-3, 0.1);
    List<Limits.GatePlace> places = places();
    if (least.orElse(0) >= widest.orElse(Double.POSITIVE_INFINITY)) {
      table.mistake(
          "gate_widest",
          Quantities.say(
              "the widest gate (%s) must be wider than the thinnest (%s): no gate is left",
              Quantities.mm(widest.getAsDouble()), Quantities.mm(least.getAsDouble())));
      return Limits.NONE;
    }
    if (least.orElse(0) >= sprue.orElse(Double.POSITIVE_INFINITY)) {
      table.mistake(
          "sprue_widest",
          Quantities.say(
              "the widest sprue (%s) must be wider than the thinnest gate (%s): no gate is left",
              Quantities.mm(sprue.getAsDouble()), Quantities.mm(least.getAsDouble())));
      return Limits.NONE;
    }
    return new Limits(least, widest, sprue, places);
  }

  private List<Limits.GatePlace> places() {
    List<Limits.GatePlace> all = new ArrayList<>();
    for (CaseTable t : table.list("gate_place")) {
      Optional<Vec3> at = t.place("at");
      Optional<Vec3> direction = t.direction("direction");
      if (at.isPresent() && direction.isPresent()) {
        all.add(new Limits.GatePlace(at.get(), direction.get()));
      } else {
        t.mistake("", "[[limits.gate_place]] needs at = [x, y, z] and direction = [x, y, z]");
      }
    }
    return all;
  }
}
