// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.Band;
import gelfront.base.Quantities;
import gelfront.finding.Fed;
import gelfront.finding.Findings;
import gelfront.result.StoredRun;
import java.util.ArrayList;
import java.util.List;

/** Curves over time, and the part cut open at a few moments. */
final class CoolingSection {
  private CoolingSection() {}

  /**
   * @param bands of plausible cases, drawn behind the run's own curves; empty: not calculated
   */
  static void write(Html h, StoredRun run, List<Band> bands, Scene scene, Pictures pictures) {
    h.open("section").element("h2", "While it cools").open("figure");
    Chart.of(h, run.series(), bands, "°C", "temperatures", marks(run.findings()));
    h.element(
        "figcaption",
        "Temperatures in the middle of the gate, where the pockets set last, and of the mould at"
            + " its wall.");
    h.close();
    if (run.findings().fed().byFlow()) {
      h.open("figure");
      Chart.of(h, run.series(), bands, "ml", "volumes", marks(run.findings()));
      h.element("figcaption", fed(run.findings())).close();
    }
    if (!bands.isEmpty()) {
      BandSection.others(h, run.series(), bands, marks(run.findings()));
    }
    h.close();
    moments(h, scene, pictures.moments());
  }

  private static String fed(Findings f) {
    Fed fed = f.fed();
    return Quantities.say(
        "What the part lacks, and what has been drawn in for part, gate and sprue. The part shrinks by"
            + " %s while it can flow: %s of that is fed, %s is not. %s",
        Quantities.ml(fed.demand()),
        Quantities.ml(fed.fed()),
        Quantities.ml(fed.unfed()),
        sprue(fed));
  }

  private static String sprue(Fed fed) {
    if (Double.isFinite(fed.sprueDry())) {
      return Quantities.say("The sprue runs dry after %.0f s.", fed.sprueDry());
    }
    return fed.sprueFell() < 1e-4
        ? "The sprue's surface stays where it is."
        : Quantities.say(
            "The sprue's surface sinks by %.1f mm: a ruler checks it.", fed.sprueFell() * 1e3);
  }

  private static List<Chart.Mark> marks(Findings f) {
    List<Chart.Mark> marks = new ArrayList<>();
    if (Double.isFinite(f.gateSets())) {
      marks.add(new Chart.Mark(f.gateSets(), "gate closes"));
    }
    if (Double.isFinite(f.firmAt())) {
      marks.add(new Chart.Mark(f.firmAt(), "firm"));
    }
    return marks;
  }

  private static void moments(Html h, Scene scene, List<Pictures.Moment> moments) {
    if (moments.isEmpty()) {
      return;
    }
    h.open("section").element("h3", "What still flows, and when");
    h.element("p", "Light is hot. Inside the white line it still flows.");
    h.open("div", "class", "two");
    for (Pictures.Moment m : moments) {
      String when = Say.time(m.time());
      h.open("figure");
      Overlay.plain(h, m.picture(), "temperature after " + when);
      h.element("figcaption", "After " + when).close();
    }
    h.close();
    Legend.draw(h, scene.heatScale(), "temperature, °C");
    h.close();
  }
}
