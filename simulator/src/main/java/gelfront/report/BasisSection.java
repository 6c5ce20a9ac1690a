// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.base.Told;
import gelfront.result.Health;
import gelfront.result.Inputs;
import gelfront.result.StoredRun;
import java.util.List;

/** What went in, how far to trust the run, and what to mind. */
final class BasisSection {
  private BasisSection() {}

  static void write(Html h, StoredRun run) {
    inputs(h, run.inputs());
    trust(h, run.health());
    cautions(h, run.cautions().stream().map(Told::metric).toList());
  }

  private static void inputs(Html h, Inputs in) {
    h.open("section", "class", "long").element("h2", "What went in").element("h3", "You gave");
    h.open("table").open("tbody");
    in.given().forEach(l -> h.row(l.name(), l.value()));
    h.close().close().element("h3", "Assumed, because not given").open("table").open("tbody");
    in.assumed().forEach(l -> h.row(l.name(), l.value(), l.source()));
    h.close().close();
    h.element(
        "p",
        "Sources: S and number: published, listed in the material table; E: estimate; C: computed;"
            + " M: from memory.");
    h.close();
  }

  private static void trust(Html h, Health health) {
    h.open("section").element("h2", "Can you trust this run?").open("table").open("tbody");
    for (Health.Line l : health.lines()) {
      h.open("tr").element("th", l.check(), "scope", "row").element("td", l.result());
      h.element("td", word(l.mark()), "class", tone(l.mark())).close();
    }
    h.close().close();
    h.element("h3", "Dent or trapped air?");
    h.element(
        "p",
        "A dent still shows the cavity's texture: the skin was pulled in after it had touched the"
            + " wall. Trapped air leaves a polished hollow with rounded rims and no texture: the"
            + " plastisol never got there. This page is about dents.");
    h.close();
  }

  private static String word(Health.Mark m) {
    return switch (m) {
      case GOOD -> "good";
      case LOOK_AT_IT -> "look at it";
      case BAD -> "bad";
    };
  }

  private static String tone(Health.Mark m) {
    return switch (m) {
      case GOOD -> "clean";
      case LOOK_AT_IT -> "may";
      case BAD -> "will";
    };
  }

  private static void cautions(Html h, List<String> own) {
    h.open("section").element("h2", "Cautions").open("ul", "class", "cautions");
    own.forEach(c -> h.element("li", c));
    Cautions.ALL.forEach(c -> h.element("li", c));
    h.close().close();
  }
}
