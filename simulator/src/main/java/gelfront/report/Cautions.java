// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import java.util.List;

/** What every report and the help say about safety. */
public final class Cautions {
  /** One sentence or two each. */
  public static final List<String> ALL =
      List.of(
          "Hot plastisol sticks and burns to the bone: long sleeves, gloves, face shield. Cool a burn"
              + " with running water and don't peel the plastic off.",
          "Fumes: work under local exhaust or outdoors. Above 190 °C plastisol gives off hydrogen"
              + " chloride; never go there.",
          "Water in or on a mould flashes to steam and throws hot plastisol: moulds must be dry.",
          "Aluminium under a torch shows no colour before it softens or melts; warm it gently and"
              + " measure.",
          "A blocked injector stores pressure: point it away from people and let it cool before you"
              + " take it apart.",
          "Filing and milling aluminium: eye protection, no loose sleeves, and keep the dust out of"
              + " your lungs.",
          "Local rules, the material's safety data sheet and trained people come before this page.",
          "A calculation is an estimate: trust the order of the pockets more than the last tenth of a"
              + " millimetre, and shoot one before you cut fifty.");

  private Cautions() {}

  /** The section that ends a page. */
  static void section(Html h) {
    h.open("section").element("h2", "Cautions").open("ul", "class", "cautions");
    ALL.forEach(c -> h.element("li", c));
    h.close().close();
  }
}
