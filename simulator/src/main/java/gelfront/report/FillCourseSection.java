// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.finding.Filled;
import gelfront.result.Series;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The shot over time: what is in, what presses, where the front is. */
final class FillCourseSection {
  /** Shares of the liquid for which the table has a line. */
  private static final double[] SHARES = {0.1, 0.25, 0.5, 0.75, 0.9, 1};

  private FillCourseSection() {}

  static void write(Html h, Filled f) {
    List<Filled.Moment> course = f.course();
    if (course.size() < 2) {
      return;
    }
    h.open("section").element("h3", "The front over time");
    Series s = series(course);
    Chart.filling(h, s, "ml", "volume that is in while it fills");
    Chart.filling(h, s, "kPa", "pressure while it fills");
    h.element(
        "p",
        "At its end the pressure goes up to all that the plunger gives: the last fiftieth of the"
            + " cavity, corners and thin tips, fills no faster for it.");
    table(h, course);
    h.close();
  }

  private static Series series(List<Filled.Moment> course) {
    return new Series(
        values(course, Filled.Moment::time),
        List.of(
            new Series.Curve("in", "liquid in feed and part", "ml", in(course)),
            new Series.Curve("mouth", "pressure at the mouth", "kPa", pressure(course)),
            new Series.Curve("gate", "pressure in the gate", "kPa", atGate(course))));
  }

  private static double[] in(List<Filled.Moment> course) {
    return values(course, m -> m.volume() * 1e6);
  }

  private static double[] pressure(List<Filled.Moment> course) {
    return values(course, m -> m.mouth() * 1e-3);
  }

  private static double[] atGate(List<Filled.Moment> course) {
    return values(course, m -> m.gate() * 1e-3);
  }

  private static double[] values(List<Filled.Moment> course, ToDoubleFunction<Filled.Moment> of) {
    return course.stream().mapToDouble(of).toArray();
  }

  private static void table(Html h, List<Filled.Moment> course) {
    FillSection.head(h, "the front over time", List.of("Front has come to, x y z in mm"));
    for (String s : List.of("after", "in", "at the mouth", "in the gate")) {
      h.element("th", s, "scope", "col", "class", "n");
    }
    h.close().close().open("tbody");
    double all = course.get(course.size() - 1).volume();
    for (double share : SHARES) {
      Filled.Moment m = at(course, share * all);
      h.open("tr").element("td", Say.place(m.front()));
      FillSection.number(h, Say.time(m.time()));
      FillSection.number(h, Say.ml(m.volume()));
      FillSection.number(h, Say.fixed(m.mouth() * 1e-3, 0) + " kPa");
      FillSection.number(h, Say.fixed(m.gate() * 1e-3, 0) + " kPa");
      h.close();
    }
    h.close().close().close();
  }

  /** The first moment by which so much is in. */
  private static Filled.Moment at(List<Filled.Moment> course, double volume) {
    return course.stream()
        .filter(m -> m.volume() >= volume * (1 - 1e-9))
        .findFirst()
        .orElse(course.get(course.size() - 1));
  }
}
