// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.finding.Opening;
import gelfront.finding.Severity;

/** What becomes of a part whose mould the clock opens, in words. */
final class OpeningWords {
  private static final String SIGN =
      "It comes out round and goes flat on two sides across from each other while it cools on the"
          + " bench, the more the sooner it is opened. Those sides still show the cavity's texture.";

  private final Units units;

  OpeningWords(Units units) {
    this.units = units;
  }

  /**
   * @param firmAt s at which all of the part is firm
   * @return empty where it is opened firm
   */
  String sentence(Opening o, double firmAt) {
    if (o.severity() != Severity.CLEAN) {
      return Quantities.say(
          "Opened after %.0f s the core is still liquid and the skin too thin to stay round: out of the"
              + " mould the part %s oval, its flat sides %s in, round %s. Shut until %.0f s"
              + " no oval is seen.",
          o.at(), goes(o), units.length(o.oval(), 2), Words.place(units, o.place()), o.shutUntil());
    }
    if (o.liquid() > 0) {
      return Quantities.say(
          "Opened after %.0f s the core is still liquid (%s). By its shrinking alone it goes oval by"
              + " less than %s; but the heat inside can soften the skin again, and what bends"
              + " it before it is firm, after %.0f s, may stay.",
          o.at(), Quantities.ml(o.liquid()), units.length(o.oval() + 1e-5, 2), firmAt);
    }
    return o.at() < firmAt
        ? Quantities.say(
            "Opened after %.0f s the part has set through but is soft until %.0f s: what bends it"
                + " before may stay.",
            o.at(), firmAt)
        : "";
  }

  /** What a maker sees at the bench; empty where no oval is seen. */
  static String sign(Opening o) {
    return o.severity() == Severity.CLEAN ? "" : SIGN;
  }

  private static String goes(Opening o) {
    return o.severity() == Severity.WILL_DENT ? "goes" : "may go";
  }

  /** The oval as a verdict. */
  String verdict(Opening o) {
    return Quantities.say(
        "Opened after %.0f s this part %s oval: %s round %s, because its core is still liquid.",
        o.at(), goes(o), units.length(o.oval(), 2), Words.place(units, o.place()));
  }

  /** What to change. */
  static String advice(Opening o) {
    return Quantities.say(
        "Leave the mould shut until %.0f s (now opened after %.0f s): the core must have set further"
            + " before the wall lets go of the skin.",
        Math.ceil(o.shutUntil()), o.at());
  }
}
