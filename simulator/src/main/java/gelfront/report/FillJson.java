// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.finding.Filled;

/** The shot itself in findings.json; there only where it was calculated. */
final class FillJson {
  private FillJson() {}

  static void put(ObjectNode n, Filled f) {
    n.put("may_not_fill", f.mayNotFill());
    n.put("sentence", f.sentence());
    FindingsJson.number(n, "time_s", f.time());
    FindingsJson.number(n, "pressure_kPa", f.pressure() * 1e-3);
    FindingsJson.number(n, "gate_speed_m_per_s", f.speed());
    FindingsJson.number(n, "reynolds", f.reynolds());
    FindingsJson.number(n, "coldest_front_degC", f.coldest());
    FindingsJson.place(n, "coldest_at_mm", f.coldestAt());
    FindingsJson.number(n, "margin_K", f.margin());
    FindingsJson.number(n, "spare_s", f.spare());
    FindingsJson.place(n, "last_at_mm", f.last());
    FindingsJson.number(n, "last_s", f.lastAt());
    FindingsJson.number(n, "unfilled_mm3", f.unfilled() * 1e9);
    ArrayNode cold = n.putArray("cold_places");
    f.cold().forEach(c -> cold(cold.addObject(), c));
    ArrayNode air = n.putArray("trapped_air");
    f.air().forEach(a -> air(air.addObject(), a));
    ArrayNode welds = n.putArray("welds");
    f.welds().forEach(w -> weld(welds.addObject(), w));
    ArrayNode course = n.putArray("course");
    f.course().forEach(m -> moment(course.addObject(), m));
  }

  private static void cold(ObjectNode n, Filled.Cold c) {
    FindingsJson.place(n, "place_mm", c.place());
    FindingsJson.number(n, "volume_mm3", c.volume() * 1e9);
    n.put("reached", c.reached());
    FindingsJson.number(n, "margin_K", c.margin());
    FindingsJson.number(n, "spare_s", c.spare());
  }

  private static void air(ObjectNode n, Filled.TrappedAir a) {
    n.put("air", a.letter());
    FindingsJson.place(n, "place_mm", a.place());
    FindingsJson.number(n, "cut_off_s", a.since());
    FindingsJson.number(n, "volume_then_mm3", a.began() * 1e9);
    FindingsJson.number(n, "volume_held_mm3", a.volume() * 1e9);
    FindingsJson.number(n, "pressure_kPa", a.pressure() * 1e-3);
    FindingsJson.place(n, "vent_mm", a.vent());
    FindingsJson.number(n, "off_parting_face_mm", a.offFace() * 1e3);
    n.put("proposal", a.proposal());
  }

  private static void moment(ObjectNode n, Filled.Moment m) {
    FindingsJson.number(n, "time_s", m.time());
    FindingsJson.number(n, "filled_mm3", m.volume() * 1e9);
    FindingsJson.number(n, "mouth_kPa", m.mouth() * 1e-3);
    FindingsJson.number(n, "gate_kPa", m.gate() * 1e-3);
    FindingsJson.place(n, "front_mm", m.front());
  }

  private static void weld(ObjectNode n, Filled.Weld w) {
    FindingsJson.place(n, "place_mm", w.place());
    FindingsJson.number(n, "area_mm2", w.area() * 1e6);
    FindingsJson.number(n, "cooler_front_degC", w.temperature());
    n.put("cool", w.cool());
  }
}
