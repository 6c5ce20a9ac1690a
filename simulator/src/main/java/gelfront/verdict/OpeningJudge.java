// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.base.Quantities;
import gelfront.dent.Oval;
import gelfront.finding.Opening;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;

/**
 * What a mould that is opened by the clock does to its part: nothing where it is firm by then; soft
 * where it has only set; oval where its core still flows and the skin doesn't hold it round.
 */
final class OpeningJudge {
  private static final String SIGN =
      "It comes out round and goes flat on two sides across from each other while it cools on the"
          + " bench, the more the sooner it is opened. Those sides still show the cavity's texture.";

  private final double visible;
  private final double firmAt;

  /**
   * @param visible metres from which an oval is seen
   * @param firmAt s at which all of the part is firm
   */
  OpeningJudge(double visible, double firmAt) {
    this.visible = visible;
    this.firmAt = firmAt;
  }

  /**
   * @param at s at which the mould is opened
   */
  Opening of(double at, Oval o) {
    Opening bare =
        new Opening(
            at, severity(o), o.liquid(), o.depth(), o.least(), o.place(), o.shutUntil(), "", "");
    return bare.told(sentence(bare), bare.severity() == Severity.CLEAN ? "" : SIGN);
  }

  private Severity severity(Oval o) {
    if (o.least() >= visible) {
      return Severity.WILL_DENT;
    }
    return o.depth() >= visible ? Severity.MAY_DENT : Severity.CLEAN;
  }

  private String sentence(Opening o) {
    if (o.severity() != Severity.CLEAN) {
      return Quantities.say(
          "Opened after %.0f s the core is still liquid and the skin too thin to stay round: out of the"
              + " mould the part %s oval, its flat sides %.2f mm in, round %s. Shut until %.0f s"
              + " no oval is seen.",
          o.at(), goes(o), o.oval() * 1e3, place(o.place()), o.shutUntil());
    }
    if (o.liquid() > 0) {
      return Quantities.say(
          "Opened after %.0f s the core is still liquid (%s). By its shrinking alone it goes oval by"
              + " less than %.2f mm; but the heat inside can soften the skin again, and what bends"
              + " it before it is firm, after %.0f s, may stay.",
          o.at(), Quantities.ml(o.liquid()), o.oval() * 1e3 + 0.01, firmAt);
    }
    return o.at() < firmAt
        ? Quantities.say(
            "Opened after %.0f s the part has set through but is soft until %.0f s: what bends it"
                + " before may stay.",
            o.at(), firmAt)
        : "";
  }

  private static String goes(Opening o) {
    return o.severity() == Severity.WILL_DENT ? "goes" : "may go";
  }

  /** The oval as a verdict. */
  static String verdict(Opening o) {
    return Quantities.say(
        "Opened after %.0f s this part %s oval: %.2f mm round %s, because its core is still liquid.",
        o.at(), goes(o), o.oval() * 1e3, place(o.place()));
  }

  /** What to change. */
  static String advice(Opening o) {
    return Quantities.say(
        "Leave the mould shut until %.0f s (now opened after %.0f s): the core must have set further"
            + " before the wall lets go of the skin.",
        Math.ceil(o.shutUntil()), o.at());
  }

  private static String place(Vec3 p) {
    return Words.at(p);
  }
}
