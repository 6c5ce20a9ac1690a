// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.finding.Findings;
import gelfront.result.Inputs;
import gelfront.result.StoredRun;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One page on two designs of a part, the one that dents and its cure, with and without flow. */
public final class StoryPage {
  private StoryPage() {}

  /**
   * One design.
   *
   * @param run with flow
   * @param alone what conduction alone says of it
   * @param link to its own report
   */
  public record Chapter(StoredRun run, Findings alone, String link) {}

  /** The page; loads nothing. */
  public static String of(Chapter before, Chapter after) {
    String css = PageParts.text("report.css");
    Html h = new Html().trusted("<!DOCTYPE html>\n");
    h.open("html", "lang", "en").open("head").empty("meta", "charset", "utf-8");
    String policy = "default-src 'none'; img-src data:; style-src " + PageParts.hash(css);
    h.empty("meta", "http-equiv", "Content-Security-Policy", "content", policy);
    h.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    h.element("title", "A part that dents, and its cure");
    h.open("style").trusted(css).close().close();
    h.open("body").open("main").element("h1", "A part that dents, and its cure");
    chapter(h, "As it was drawn", before);
    changes(h, before.run().inputs(), after.run().inputs());
    chapter(h, "Changed", after);
    table(h, before, after);
    return h.close().close().close().toString();
  }

  private static void chapter(Html h, String title, Chapter c) {
    Findings f = c.run().findings();
    Scene scene = new Scene(c.run());
    h.open("section").element("h2", title + ": " + c.run().name());
    h.element("div", Say.severity(f.severity()), "class", "stamp " + Say.tone(f.severity()));
    h.element("p", f.verdict()).element("p", f.explanation());
    h.open("figure");
    Overlay.cutOpen(h, new Pictures(scene).cutOpen(), f);
    Legend.draw(h, scene.timeScale(), "stays soft for, seconds");
    h.close();
    if (!f.pockets().isEmpty() && !f.pockets().get(0).sign().isEmpty()) {
      String sign = f.pockets().get(0).sign();
      h.open("p", "class", "sign").element("b", "At the bench: ").text(sign).close();
    }
    h.open("p").element("a", "Its whole report", "href", c.link()).close().close();
  }

  /** What the two case files say differently. */
  private static void changes(Html h, Inputs before, Inputs after) {
    Map<String, String> was = new LinkedHashMap<>();
    before.given().forEach(l -> was.put(l.name(), l.value()));
    h.open("section").element("h2", "What was changed").open("table").open("thead").open("tr");
    for (String s : List.of("", "as drawn", "changed")) {
      h.element("th", s, "scope", "col");
    }
    h.close().close().open("tbody");
    for (Inputs.Line l : after.given()) {
      String old = was.getOrDefault(l.name(), "");
      if (!old.equals(l.value()) && !l.name().equals("name")) {
        h.row(l.name(), old, l.value());
      }
    }
    h.close().close().close();
  }

  private static void table(Html h, Chapter before, Chapter after) {
    h.open("section").element("h2", "Side by side");
    h.element(
        "p",
        "Conduction alone leaves out that liquid is drawn in and carries heat: compare it with the"
            + " columns beside it to see what the flow decides.");
    h.open("div", "class", "scroll").open("table").open("thead").open("tr");
    h.element("th", "");
    for (String s : List.of("as drawn, conduction alone", "as drawn, with flow")) {
      h.element("th", s, "scope", "col");
    }
    for (String s : List.of("changed, conduction alone", "changed, with flow")) {
      h.element("th", s, "scope", "col");
    }
    h.close().close().open("tbody");
    List<Findings> all =
        List.of(before.alone(), before.run().findings(), after.alone(), after.run().findings());
    for (Comparison.Row r : Comparison.of(all)) {
      h.row(r.name(), r.values().toArray(String[]::new));
    }
    h.close().close().close().close();
  }
}
