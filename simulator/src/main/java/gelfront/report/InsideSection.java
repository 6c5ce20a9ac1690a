// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.finding.Pocket;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.stream.Stream;

/**
 * The body in three dimensions, cut open where the reader wants, over time. Everything in it is
 * hidden until the script finds that it can draw; a sentence stands there until then.
 */
final class InsideSection {
  private InsideSection() {}

  static void write(Html h, Scene scene) {
    h.open("section", "id", "inside").element("h2", "Look inside");
    h.element(
        "p",
        "This view needs a browser that runs scripts and has WebGL 2. The pictures on this page"
            + " show the same without.",
        "id",
        "inside-note");
    h.open("div", "id", "inside-stage", "hidden", "");
    h.element(
        "p",
        "Drag it to turn it, or use the arrow keys; + and - zoom. It is grey outside and coloured"
            + " where it is cut open. Inside the white line the plastisol still flows.");
    view(h, scene.run().findings().pockets());
    Legend.draw(h, scene.heatScale(), "temperature, °C", "id", "inside-heat");
    Legend.draw(h, scene.timeScale(), "stays soft for, seconds", "id", "inside-set");
    h.element("p", "", "id", "inside-says", "class", "says");
    controls(h, scene);
    h.close();
    h.open("script", "type", "application/json", "id", "inside-data");
    h.trusted(InsideData.of(scene)).close().close();
  }

  private static void view(Html h, List<Pocket> pockets) {
    h.open("div", "class", "view");
    h.element(
        "canvas",
        "",
        "id",
        "inside-canvas",
        "tabindex",
        "0",
        "role",
        "application",
        "aria-label",
        "the part in three dimensions: arrow keys turn it, plus and minus zoom, Home turns it back");
    h.open("svg", "id", "inside-marks", "role", "img", "aria-label", "numbers of the pockets");
    for (Pocket p : pockets) {
      h.open("g").empty("line", "class", "casing").empty("line").empty("circle", "r", "5");
      h.open("g", "class", "badge").empty("circle", "r", "14");
      h.element("text", String.valueOf(p.number()), "text-anchor", "middle").close().close();
    }
    h.close();
    h.open("div", "class", "zoom");
    button(h, "out", "−", "aria-label", "smaller");
    button(h, "in", "+", "aria-label", "larger");
    button(h, "home", "⟲", "aria-label", "turn back");
    h.close().close();
  }

  private static void controls(Html h, Scene scene) {
    h.open("div", "class", "controls");
    h.open("div", "class", "line");
    button(h, "play", "Play");
    button(h, "start", "Just filled");
    button(h, "gate", "Gate closes");
    h.close();
    slider(h, "time", "Time");
    slider(h, "cut", "Cut at");
    h.open("div", "class", "line");
    Axes axes = scene.axes();
    choice(
        h,
        "axis",
        "Cut it",
        List.of(letter(axes.through()), letter(axes.up()), letter(axes.along())),
        List.of("lengthwise", "lengthwise, the other way", "across"));
    choice(
        h,
        "colour",
        "Colour shows",
        List.of("heat", "set"),
        List.of("temperature", "how long it stays soft"));
    h.close().close();
  }

  private static void button(Html h, String id, String text, String... attributes) {
    h.open(
        "button",
        Stream.concat(Stream.of("id", "inside-" + id, "type", "button"), Stream.of(attributes))
            .toArray(String[]::new));
    h.text(text).close();
  }

  private static void slider(Html h, String id, String text) {
    h.open("label", "class", "slide").element("span", text);
    h.empty("input", "id", "inside-" + id, "type", "range", "min", "0", "max", "1000");
    h.element("b", "", "id", "inside-" + id + "-now").close();
  }

  private static void choice(
      Html h, String id, String text, List<String> values, List<String> words) {
    h.open("label").element("span", text).open("select", "id", "inside-" + id);
    for (int i = 0; i < values.size(); i++) {
      h.element("option", words.get(i), "value", values.get(i));
    }
    h.close().close();
  }

  /** The coordinate axis that a unit vector lies along. */
  private static String letter(Vec3 v) {
    return Math.abs(v.x()) > 0.5 ? "x" : Math.abs(v.y()) > 0.5 ? "y" : "z";
  }
}
