// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.finding.Filled;
import java.awt.BorderLayout;
import java.awt.Component;
import java.util.function.Consumer;
import javax.swing.JPanel;

/** How the shot fills: the verdict on it, and trapped air by letter, apart from dents. */
final class ShotCard {
  private ShotCard() {}

  /**
   * @param card to be filled
   * @param units of its figures
   * @param chosen is told the trapped air that the user picks
   */
  static void fill(JPanel card, Filled f, Units units, Consumer<Filled.TrappedAir> chosen) {
    card.setName("shot card");
    card.add(Ui.head("How it fills"));
    card.add(Ui.text(f.sentence()));
    for (Filled.Cold c : f.cold()) {
      card.add(Ui.text(cold(c, units)));
    }
    card.add(Ui.gap(6));
    card.add(Ui.head("Trapped air is no dent"));
    card.add(Ui.text(Filled.APART));
    if (f.air().isEmpty()) {
      card.add(Ui.text("None larger than a grain of salt."));
    }
    f.air().forEach(a -> card.add(row(a, chosen)));
  }

  private static String cold(Filled.Cold c, Units units) {
    String where =
        units.lengths("At (%s, %s, %s)", 0, c.place().x(), c.place().y(), c.place().z()) + " ";
    return c.reached()
        ? where + "it comes only " + units.difference(c.margin()) + " above no-flow."
        : where + Quantities.ml(c.volume()) + " may stay empty.";
  }

  private static Component row(Filled.TrappedAir a, Consumer<Filled.TrappedAir> chosen) {
    JPanel row = new JPanel(new BorderLayout(8, 0));
    row.setAlignmentX(Component.LEFT_ALIGNMENT);
    Ui.padded(row, 6, 0, 2, 0);
    String letter = a.letter();
    JPanel west = new JPanel(new BorderLayout());
    Runnable go = () -> chosen.accept(a);
    west.add(Ui.button("air " + letter, letter, "Goes there", go), BorderLayout.NORTH);
    row.add(west, BorderLayout.WEST);
    row.add(Ui.text(a.proposal() + " " + facts(a)), BorderLayout.CENTER);
    return row;
  }

  private static String facts(Filled.TrappedAir a) {
    return Quantities.say(
        "Cut off after %.1f s, %s then, pressed to %s.",
        a.since(), Quantities.ml(a.began()), Quantities.ml(a.volume()));
  }
}
