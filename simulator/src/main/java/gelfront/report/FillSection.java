// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.finding.Filled;
import gelfront.result.StoredRun;
import java.util.List;

/** The shot itself: when the front came where, what may not fill, air that is trapped, seams. */
final class FillSection {
  private FillSection() {}

  static void write(Html h, StoredRun run, Scene scene, Pictures pictures) {
    Filled f = run.findings().filled();
    if (!f.calculated()) {
      return;
    }
    h.open("section").element("h2", "How it fills").element("p", f.sentence());
    if (run.fields().filled()) {
      h.open("figure");
      Overlay.filled(h, pictures.filling(), f.air());
      Legend.draw(h, scene.fillScale(), "the front comes after, seconds");
      h.element(
          "figcaption",
          "Dark places fill first. Letters name trapped air, apart from the dents' numbers.");
      h.close();
    }
    FillCourseSection.write(h, f);
    cold(h, f.cold());
    air(h, f.air());
    welds(h, f.welds());
    h.close();
  }

  private static void cold(Html h, List<Filled.Cold> cold) {
    if (cold.isEmpty()) {
      return;
    }
    h.open("section").element("h3", "May not fill");
    head(h, "places that may not fill", List.of("Where, x y z in mm", "Liquid"));
    for (String s : List.of("volume", "above no-flow", "to spare")) {
      h.element("th", s, "scope", "col", "class", "n");
    }
    h.close().close().open("tbody");
    for (Filled.Cold c : cold) {
      h.open("tr").element("td", Say.place(c.place()));
      h.element("td", c.reached() ? "comes, but nearly too cold" : "does not come");
      number(h, Say.ml(c.volume()));
      number(h, c.reached() ? Say.fixed(c.margin(), 0) + " K" : "");
      number(h, c.reached() ? Say.time(c.spare()) : "");
      h.close();
    }
    h.close().close().close().close();
  }

  private static void air(Html h, List<Filled.TrappedAir> air) {
    h.open("section").element("h3", "Trapped air").element("p", Filled.APART);
    if (air.isEmpty()) {
      h.element("p", "None larger than a grain of salt.").close();
      return;
    }
    head(h, "trapped air", List.of("Air", "Where, x y z in mm", "What lets it out"));
    for (String s : List.of("cut off at", "volume then", "held at", "pressed to")) {
      h.element("th", s, "scope", "col", "class", "n");
    }
    h.close().close().open("tbody");
    for (Filled.TrappedAir a : air) {
      h.open("tr").open("td").element("span", a.letter(), "class", "number").close();
      h.element("td", Say.place(a.place())).element("td", a.proposal());
      number(h, Say.time(a.since()));
      number(h, Say.ml(a.began()));
      number(h, Say.ml(a.volume()));
      number(h, Say.fixed(a.pressure() * 1e-3, 0) + " kPa");
      h.close();
    }
    h.close().close().close();
    h.element(
        "p",
        "Hot plastisol can spit out of a vent: keep it shallow, let it end away from hands and face,"
            + " and stand aside while you press.",
        "class",
        "sign");
    h.close();
  }

  private static void welds(Html h, List<Filled.Weld> welds) {
    if (welds.isEmpty()) {
      return;
    }
    h.open("section").element("h3", "Where fronts meet");
    head(h, "welds", List.of("Where, x y z in mm", "Seam"));
    for (String s : List.of("area", "cooler front")) {
      h.element("th", s, "scope", "col", "class", "n");
    }
    h.close().close().open("tbody");
    for (Filled.Weld w : welds) {
      h.open("tr").element("td", Say.place(w.place()));
      h.element("td", w.cool() ? "cool: it may show or tear" : "hot: it melts together");
      number(h, Say.significant(w.area() * 1e6, 2) + " mm²");
      number(h, Say.fixed(w.temperature(), 0) + " °C");
      h.close();
    }
    h.close().close().close().close();
  }

  static void head(Html h, String label, List<String> words) {
    h.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", label);
    h.open("table").open("thead").open("tr");
    words.forEach(s -> h.element("th", s, "scope", "col"));
  }

  static void number(Html h, String s) {
    h.element("td", s, "class", "n");
  }
}
