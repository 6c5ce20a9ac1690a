// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.finding.Pocket;
import java.util.List;
import java.util.Locale;

/** Designs side by side as a page with pictures at one scale and one colour, and as JSON. */
public final class ComparePage {
  private ComparePage() {}

  /** The page; loads nothing. */
  public static String of(Designs d) {
    return AnswerPage.withPictures("Designs side by side", h -> content(h, d));
  }

  private static void content(Html h, Designs d) {
    h.element("p", d.verdict());
    h.open("section").element("h2", "What was changed");
    if (d.changed().isEmpty()) {
      h.element("p", "Nothing: all inputs are the same.");
    } else {
      table(h, d, d.changed());
    }
    h.close();
    h.open("section").element("h2", "What came out");
    table(h, d, d.outcomes());
    h.close();
    pictures(h, d);
    Cautions.section(h);
  }

  private static void table(Html h, Designs d, List<Comparison.Row> rows) {
    h.open("div", "class", "scroll").open("table").open("thead").open("tr").element("th", "");
    d.all().forEach(one -> h.element("th", one.label(), "scope", "col"));
    h.close().close().open("tbody");
    rows.forEach(r -> h.row(r.name(), r.values().toArray(String[]::new)));
    h.close().close().close();
  }

  private static void pictures(Html h, Designs d) {
    List<Scene> scenes = d.all().stream().map(one -> new Scene(one.run())).toList();
    double longest = scenes.stream().mapToDouble(s -> s.timeScale().high()).max().orElseThrow();
    Scale time = Scale.exact(0, longest, 7);
    View size = Pictures.common(scenes);
    h.open("section").element("h2", "Where it stays soft");
    h.element(
        "p",
        "Cut open, all at one scale, one colour for one time. The white line is round what was cut off"
            + " while it was still liquid.");
    for (int i = 0; i < scenes.size(); i++) {
      Designs.Design one = d.all().get(i);
      h.open("figure").element("h3", one.label());
      h.element("p", one.findings().verdict(), "class", Say.tone(one.findings().severity()));
      Overlay.cutOpen(h, new Pictures(scenes.get(i)).cutOpen(time, size), one.findings());
      h.close();
    }
    Legend.draw(h, time, "stays soft for, seconds");
    h.close();
  }

  /** {@code gelfront compare 1}. */
  public static String json(Designs d) {
    ObjectNode n = Answers.open("gelfront compare 1");
    n.put("verdict", d.verdict());
    var designs = n.putArray("designs");
    d.all().forEach(one -> put(designs.addObject(), one));
    var changed = n.putArray("changed");
    for (Comparison.Row r : d.changed()) {
      ObjectNode row = changed.addObject();
      row.put("input", r.name());
      r.values().forEach(row.putArray("values")::add);
    }
    return Answers.text(n);
  }

  private static void put(ObjectNode n, Designs.Design d) {
    n.put("label", d.label());
    n.put("name", d.run().name());
    n.put("severity", d.findings().severity().name().toLowerCase(Locale.ROOT));
    n.put("verdict", d.findings().verdict());
    List<Pocket> pockets = d.findings().pockets();
    boolean dented = !pockets.isEmpty() && !pockets.get(0).dents().isEmpty();
    double low = dented ? pockets.get(0).dents().get(0).depthLow() : 0;
    Answers.number(n, "dent_low_mm", low * 1e3);
    Answers.number(n, "dent_high_mm", d.dent() * 1e3);
    if (dented) {
      String kind = pockets.get(0).constriction().kind().name();
      n.put("blamed", kind.toLowerCase(Locale.ROOT));
    }
    Answers.number(n, "gate_sets_s", d.findings().gateSets());
    Answers.number(n, "part_sets_s", d.findings().partSets());
    Answers.number(n, "firm_s", d.findings().firmAt());
    Answers.number(n, "unfed_ml", d.findings().fed().unfed() * 1e6);
    Answers.number(n, "feed_volume_ml", d.findings().amounts().feedVolume() * 1e6);
    Answers.number(n, "shot_volume_ml", d.findings().amounts().shotVolume() * 1e6);
  }
}
