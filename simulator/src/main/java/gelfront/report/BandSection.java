// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.Band;
import gelfront.base.Entries;
import gelfront.result.Series;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Curves over time as bands of plausible cases. */
final class BandSection {
  /** What the curves of each unit are of. */
  private static final Map<String, String> WHAT = what();

  private BandSection() {}

  private static Map<String, String> what() {
    Map<String, String> m = new LinkedHashMap<>();
    m.put("°C", "temperatures");
    m.put("ml", "volumes");
    m.put("", "share");
    m.put("mm", "sprue");
    m.put("Pa", "suction");
    return m;
  }

  /** A section with every curve's median in its band; nothing where there are none. */
  static void write(Html h, List<Band> bands) {
    if (bands.isEmpty()) {
      return;
    }
    h.open("section").element("h2", "Over time, in all plausible cases");
    h.element("p", meaning(bands) + " Lines: the middle case.");
    WHAT.forEach(
        (unit, what) -> {
          List<Band> some = bands.stream().filter(b -> b.unit().equals(unit)).toList();
          if (!some.isEmpty()) {
            h.open("figure");
            Chart.of(h, medians(some), some, unit, what, List.of());
            h.close();
          }
        });
    h.close();
  }

  /** Bands of one unit have the same times. */
  private static Series medians(List<Band> some) {
    return new Series(
        some.get(0).time(),
        some.stream()
            .map(b -> new Series.Curve(b.key(), b.label(), b.unit(), b.middle()))
            .toList());
  }

  /** What a report shows of them beside its own temperatures and volumes. */
  static void others(Html h, Series series, List<Band> bands, List<Chart.Mark> marks) {
    h.element("p", meaning(bands) + " Lines: this run.");
    for (String unit : List.of("", "mm", "Pa")) {
      if (series.curves().stream().anyMatch(c -> c.unit().equals(unit))) {
        h.open("figure");
        Chart.of(h, series, bands, unit, Entries.of(WHAT, unit), marks);
        h.close();
      }
    }
  }

  private static String meaning(List<Band> bands) {
    int most = bands.stream().mapToInt(Band::cases).max().orElse(0);
    return "Shaded: between 5 and 95 % of the "
        + most
        + " plausible cases at each moment, moved by what level normal says otherwise of the case as"
        + " it is (not the suction). Temperatures as far as no case has ended.";
  }
}
