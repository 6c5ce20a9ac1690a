// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import java.util.List;

/** The part cut open, and its pockets as a table and each cut across. */
final class WhereSection {
  private static final int MOST_PICTURED = 4;

  private WhereSection() {}

  static void write(Html h, Findings f, Scene scene, Pictures pictures) {
    h.open("section").element("h2", "Where it happens");
    h.element(
        "p",
        "Cut open lengthwise. Light places stay soft longest. What lies inside the white line was"
            + " still liquid when nothing could flow to it any more.");
    h.open("figure");
    Overlay.cutOpen(h, pictures.cutOpen(), f);
    Legend.draw(h, scene.timeScale(), "stays soft for, seconds");
    h.close().close();
    if (!f.pockets().isEmpty()) {
      table(h, f.pockets());
      across(h, f.pockets(), pictures);
      h.element(
          "p",
          "How deep the surface is pulled in, everywhere on the part: dents.glb beside this page, to"
              + " turn in any viewer of glTF files, as deep as it is and deeper; dents.ply to measure"
              + " on.");
    }
  }

  private static void table(Html h, List<Pocket> pockets) {
    h.open("section").element("h3", "Pockets, deepest dent first");
    h.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", "pockets");
    h.open("table").open("thead").open("tr");
    for (String s : List.of("No.", "Verdict", "Where, x y z in mm", "Cut off by")) {
      h.element("th", s, "scope", "col");
    }
    for (String s :
        List.of("closed at", "needed until", "sets at", "liquid then", "can't be fed", "dent")) {
      h.element("th", s, "scope", "col", "class", "n");
    }
    h.close().close().open("tbody");
    pockets.forEach(p -> row(h, p));
    h.close().close().close().close();
  }

  private static void row(Html h, Pocket p) {
    h.open("tr").open("td").element("span", String.valueOf(p.number()), "class", "number").close();
    h.element("td", Say.severity(p.severity()), "class", Say.tone(p.severity()));
    h.element("td", Say.place(p.centre()) + cavities(p));
    String culprit = Say.culprit(p.constriction().kind());
    String width = Say.mm(p.constriction().width());
    h.element("td", culprit + ", " + width + " wide, at " + Say.place(p.constriction().place()));
    number(h, Say.time(p.cutOff()));
    number(h, p.margin() > 0 ? Say.time(p.openUntil()) : "no longer");
    number(h, Say.time(p.lastSet()));
    number(h, Say.ml(p.volume()));
    number(h, Say.ml(p.unfedLow()) + " to " + Say.ml(p.unfedHigh()));
    number(h, p.dents().isEmpty() ? "none" : Say.depth(p.dents().get(0)));
    h.close();
  }

  private static void sign(Html h, Pocket p) {
    if (!p.sign().isEmpty()) {
      h.open("p", "class", "sign").element("b", "At the bench: ").text(p.sign()).close();
    }
  }

  private static String cavities(Pocket p) {
    List<String> numbers = p.cavities().stream().map(String::valueOf).toList();
    return numbers.isEmpty() ? "" : "; cavity " + String.join(", ", numbers);
  }

  private static void number(Html h, String s) {
    h.element("td", s, "class", "n");
  }

  private static void across(Html h, List<Pocket> pockets, Pictures pictures) {
    h.open("div", "class", "two");
    for (Pocket p : pockets.subList(0, Math.min(MOST_PICTURED, pockets.size()))) {
      h.open("figure");
      Overlay.plain(h, pictures.across(p), "pocket " + p.number() + " cut across");
      String where = "Pocket " + p.number() + ", cut across at " + Say.place(p.centre()) + " mm. ";
      h.element("figcaption", where + p.sentence());
      sign(h, p);
      h.close();
    }
    h.close();
  }
}
