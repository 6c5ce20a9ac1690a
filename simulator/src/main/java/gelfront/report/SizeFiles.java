// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.answer.Sizing;

/** A sizing as JSON, its curve and its dimension sheet as tables for spreadsheets. */
public final class SizeFiles {
  private SizeFiles() {}

  /** {@code gelfront size 1}. */
  public static String json(Sizing s) {
    ObjectNode n = Answers.open("gelfront size 1");
    n.put("name", s.name());
    n.put("verdict", s.verdict());
    Answers.number(n, "visible_dent_mm", s.visible() * 1e3);
    n.put("runs", s.runs());
    s.best().ifPresentOrElse(p -> n.put("best", p.label()), () -> n.putNull("best"));
    var places = n.putArray("places");
    s.places().forEach(p -> place(places.addObject(), p, s.visible()));
    return Answers.text(n);
  }

  private static void place(ObjectNode n, Sizing.Place p, double visible) {
    n.put("label", p.label());
    Answers.place(n, "at_mm", p.at());
    var d = n.putArray("direction");
    d.add(p.direction().x()).add(p.direction().y()).add(p.direction().z());
    Answers.number(n, "thickness_mm", p.thickness() * 1e3);
    n.put("words", p.words());
    var curve = n.putArray("curve");
    for (Sizing.Point point : p.curve()) {
      ObjectNode o = curve.addObject();
      Answers.number(o, "gate_mm", point.gate() * 1e3);
      Answers.number(o, "sprue_mm", point.sprue() * 1e3);
      o.put("level", point.level());
      Answers.put(o, point.ran());
    }
    var choices = n.putArray("choices");
    p.choices().forEach(c -> choice(choices.addObject(), c, visible));
    p.cure().ifPresent(c -> cure(n.putObject("neck"), c));
  }

  private static void choice(ObjectNode n, Sizing.Choice c, double visible) {
    n.put("label", c.label());
    n.put("gate", c.gateWords());
    Answers.number(n, "gate_mm", c.gate() * 1e3);
    Answers.number(n, "sprue_mm", c.sprue() * 1e3);
    n.put("does", c.holds(visible));
    c.normal()
        .outcome()
        .ifPresent(o -> Answers.number(n, "margin_mm", (visible - o.defect()) * 1e3));
    Answers.put(n.putObject("normal"), c.normal());
    ObjectNode sheet = n.putObject("sheet_mm");
    c.sheet().forEach(l -> Answers.number(sheet, l.name(), l.value() * 1e3));
  }

  private static void cure(ObjectNode n, Sizing.Cure c) {
    Answers.place(n, "at_mm", c.neck());
    Answers.number(n, "width_mm", c.was() * 1e3);
    Answers.number(n, "wanted_mm", c.wanted().orElse(Double.NaN) * 1e3);
    Answers.number(n, "with_gate_mm", c.gate() * 1e3);
    Answers.put(n.putObject("then"), c.ran());
    c.normal().ifPresent(r -> Answers.put(n.putObject("then_at_normal"), r));
    c.second().ifPresent(s -> second(n.putObject("second_gate"), s));
  }

  private static void second(ObjectNode n, Sizing.Second s) {
    Answers.place(n, "at_mm", s.at());
    Answers.number(n, "gate_mm", s.gate() * 1e3);
    Answers.number(n, "first_gate_mm", s.first() * 1e3);
    Answers.put(n.putObject("then"), s.ran());
    s.normal().ifPresent(r -> Answers.put(n.putObject("then_at_normal"), r));
  }

  /** What to cut: one line a dimension, for each choice in mm and inch. */
  public static String sheet(Sizing s) {
    StringBuilder t = new StringBuilder("choice,dimension,mm,inch,note\r\n");
    for (Sizing.Choice c : s.best().orElseThrow().choices()) {
      for (Sizing.SheetLine l : c.sheet()) {
        t.append(PocketsCsv.cell(c.label())).append(',').append(PocketsCsv.cell(l.name()));
        t.append(',').append(PocketsCsv.number(l.value() * 1e3, 3)).append(',');
        t.append(PocketsCsv.number(l.value() / 0.0254, 4)).append(',');
        t.append(PocketsCsv.cell(l.note())).append("\r\n");
      }
    }
    return t.toString();
  }
}
