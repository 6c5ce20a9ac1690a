// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Remedies.Effort;
import gelfront.answer.RunOutcome;
import gelfront.base.Quantities;
import gelfront.base.Told;
import gelfront.finding.Opening;
import gelfront.setup.Case;
import gelfront.setup.Change;
import java.util.List;

/**
 * Leaving the mould shut for longer, where a clock opens it so early that the part goes oval: until
 * its skin holds it round, or until it is firm.
 */
final class OpenLater {
  /** The clock that opens the mould. */
  static final String KNOB = "open";

  /** On top of the time from which no oval is seen: levels differ by up to 4 % in it. */
  private static final double SPARE = 1.1;

  private final Case setup;

  OpenLater(Case setup) {
    this.setup = setup;
  }

  /** The soonest first; none where no oval is seen. */
  List<Remedy> than(RunOutcome o) {
    return o.goesOval(setup.visibleDent())
        ? List.of(round(o.opening()), firm(o.opening()))
        : List.of();
  }

  private Remedy round(Opening now) {
    double later = Math.ceil(SPARE * now.shutUntil());
    return remedy(
        Quantities.say("open after %.0f s instead of %.0f s", later, at()),
        "It comes out soft: lay it down so that nothing bends it before it is firm.",
        byShot()
            ? Change.seconds("shot.open_at", later)
            : Change.seconds("series.cycle", later + setup.rhythm().idle()));
  }

  private Remedy firm(Opening now) {
    return remedy(
        Quantities.say("open when the part is firm instead of after %.0f s", now.at()),
        "",
        new Change.Remove(byShot() ? "shot.open_at" : "series.cycle"));
  }

  private double at() {
    return setup.opensAt().orElseThrow();
  }

  private boolean byShot() {
    return setup.shot().openAt().isPresent();
  }

  private static Remedy remedy(String what, String caution, Change change) {
    return new Remedy(Effort.RECIPE, KNOB, Told.of(what), List.of(change), caution, false);
  }
}
