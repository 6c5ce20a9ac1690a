// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.finding.Amounts;

/** How much to melt for a shot. */
final class MeltSection {
  private MeltSection() {}

  static void write(Html h, Amounts a) {
    h.open("section").element("h2", "What to melt").open("table").open("tbody");
    String part = "Part" + (a.cavities() > 1 ? ", each of " + a.cavities() : "");
    h.row(part, amount(a.partVolume(), a.partMass()));
    h.row("Gate, runner, sprue", amount(a.feedVolume(), a.feedMass()));
    h.row("Drawn in while it shrinks (top-up)", amount(a.topUpVolume(), a.topUpMass()));
    h.row("One shot with all of it", Say.ml(a.shotVolume()));
    String holds = a.injectorHoldsIt() ? ": holds it" : ": too small";
    a.injectorCapacity().ifPresent(c -> h.row("Injector", Say.ml(c) + holds));
    h.close().close().close();
  }

  private static String amount(double volume, double mass) {
    return Say.ml(volume) + ", " + Say.grams(mass);
  }
}
