// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.SeriesAnswer;
import gelfront.answer.ShotRow;
import gelfront.base.Units;
import gelfront.finding.Severity;
import java.util.List;

/** A row of shots as a page: what to throw away, how fast it may go, each shot. */
public final class SeriesPage {
  private static final String MODEL =
      "Each shot begins full, in the mould as the one before left it. When the part is out, the halves"
          + " lie apart in the air, their parting faces and the cavity's walls bare, and lose heat as"
          + " the block's outside does; then the mould is closed and empty. A hand that warms or a"
          + " bench that cools a half is not in it.";

  private SeriesPage() {}

  /** The page; loads nothing. */
  public static String of(SeriesAnswer a) {
    return AnswerPage.of(a.name() + ": shots in a row", h -> content(h, a));
  }

  private static void content(Html h, SeriesAnswer a) {
    Severity end = a.last().severity();
    h.element("div", Say.severity(end), "class", "stamp " + Say.tone(end));
    h.element("p", verdict(a)).element("p", pace(a));
    h.open("section").element("h2", "Shot by shot").open("figure");
    new ShotsChart(a).draw(h);
    h.close();
    table(h, a);
    h.close();
    h.open("section").element("h2", "How it was calculated");
    h.element("p", MODEL);
    h.element(
        "p",
        "Between opening and the next shot "
            + Say.time(a.idle())
            + ", the halves apart for "
            + Say.time(a.open())
            + " of it. Calculated at level "
            + a.level()
            + "; the way from the last numbered shot to the settled one was cut short, the settled"
            + " one itself calculated. Heat closes to "
            + String.format(java.util.Locale.ROOT, "%.0e", a.imbalance())
            + " of what was moved.");
    h.close();
    Cautions.section(h);
  }

  /** What becomes of the first shots, and of the rest; millimetres. */
  public static String verdict(SeriesAnswer a) {
    return verdict(a, Units.METRIC);
  }

  /** As above, in other units. */
  public static String verdict(SeriesAnswer a, Units units) {
    ShotRow first = a.shots().get(0);
    ShotRow last = a.last();
    String end = units.range(last.dentLow(), last.dentHigh(), 2);
    int away = a.throwAway();
    if (away > 0 && last.severity() == Severity.CLEAN) {
      return away == a.shots().size()
          ? "None of the first "
              + away
              + " shots is free of dents; it takes more to warm the mould."
          : "Throw away the first "
              + (away == 1 ? "shot" : away + " shots")
              + ": from shot "
              + (away + 1)
              + " on the part comes out clean.";
    }
    if (a.better() > 0) {
      return "The first "
          + (a.better() == 1 ? "shot comes" : a.better() + " shots come")
          + " out better than those that follow: the warm mould is the worse one here, with dents "
          + end
          + " deep.";
    }
    if (last.severity() == Severity.CLEAN) {
      return "Every shot comes out clean, the first into the cold mould, too.";
    }
    return "Shots in a row are no cure here: the first has a dent "
        + units.range(first.dentLow(), first.dentHigh(), 2)
        + (a.settled().isPresent() ? " deep, the settled one " : " deep, the last one made ")
        + end
        + ".";
  }

  /** When it repeats, and how fast it may go; °C. */
  public static String pace(SeriesAnswer a) {
    return pace(a, Units.METRIC);
  }

  /** As above, in other units. */
  public static String pace(SeriesAnswer a, Units units) {
    StringBuilder s = new StringBuilder();
    if (a.settled().isEmpty()) {
      s.append("The mould was not seen to settle. ");
    } else {
      String at = units.temperature(a.settled().get().mouldBefore()) + " before a shot";
      s.append("The mould settles at ").append(at);
      int from = a.repeatsFrom();
      s.append(
          from > 0
              ? ", to within " + units.difference(1) + " from shot " + from + " on. "
              : "; after " + a.shots().size() + " shots it is not there yet. ");
    }
    long soft = a.shots().stream().filter(r -> !r.firm()).count() + (a.last().firm() ? 0 : 1);
    if (soft > 0) {
      s.append("The clock opens the mould too soon: parts are still soft inside. ");
    }
    a.fastest()
        .ifPresent(
            r ->
                s.append("The fastest cycle that still opens firm parts, sprue included: ")
                    .append(Say.time(r.cycle()))
                    .append(" from shot to shot, opened after ")
                    .append(Say.time(r.openedAt()))
                    .append(" and refilled ")
                    .append(Say.time(a.idle()))
                    .append(" later.")
                    .append(worse(a, r, units)));
    return s.toString().trim();
  }

  /** The hotter mould of a faster cycle may dent what the stated one doesn't. */
  private static String worse(SeriesAnswer a, ShotRow fastest, Units units) {
    return fastest.severity().compareTo(a.last().severity()) <= 0
        ? ""
        : " But at that pace the part "
            + Say.severity(fastest.severity())
            + ", "
            + units.range(fastest.dentLow(), fastest.dentHigh(), 2)
            + " deep.";
  }

  private static void table(Html h, SeriesAnswer a) {
    h.open("div", "class", "scroll").open("table").open("thead").open("tr");
    for (String head :
        List.of(
            "shot",
            "mould before it",
            "block when opened",
            "dent",
            "verdict",
            "gate sets",
            "all firm",
            "opened",
            "shot to shot")) {
      h.element("th", head, "scope", "col");
    }
    h.close().close().open("tbody");
    a.shots().forEach(r -> row(h, String.valueOf(r.number()), r));
    a.settled().ifPresent(r -> row(h, "settled", r));
    a.fastest()
        .filter(r -> a.clock().isPresent() || !a.settled().equals(a.fastest()))
        .ifPresent(r -> row(h, "opened as soon as firm", r));
    h.close().close().close();
  }

  private static void row(Html h, String which, ShotRow r) {
    h.row(
        which,
        Say.fixed(r.mouldBefore(), 1) + " °C",
        Say.fixed(r.mouldOpened(), 1) + " °C",
        Say.depth(r.dentLow(), r.dentHigh()),
        Say.severity(r.severity()),
        Say.time(r.gateSets()),
        Say.time(r.firmAt()),
        Say.time(r.openedAt()) + (r.firm() ? "" : ", too soon"),
        Say.time(r.cycle()));
  }
}
