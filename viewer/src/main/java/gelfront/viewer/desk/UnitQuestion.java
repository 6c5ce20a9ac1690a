// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.base.Units;
import gelfront.mesh.Vec3;
import gelfront.mesh.io.LengthUnit;
import gelfront.setup.StarterGuess;
import gelfront.viewer.work.Opener;
import java.awt.Color;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JPanel;

/** "How large is this part really?" for meshes, which know no unit. */
final class UnitQuestion {
  /** Sizes between which a part of this trade may be, metres. */
  private static final double LEAST = 5e-3;

  private static final double MOST = 1;

  private UnitQuestion() {}

  private static String word(LengthUnit u) {
    return u.name().toLowerCase(Locale.ROOT);
  }

  /** Whether anybody could mean it. */
  private static boolean likely(StarterGuess.Unit guess, LengthUnit u) {
    Vec3 s = guess.mesh().box().size().times(u.metres() / guess.unit().metres());
    double longest = Math.max(s.x(), Math.max(s.y(), s.z()));
    return longest >= LEAST && longest <= MOST;
  }

  /**
   * @param guess what was taken
   * @param units that sizes are told in
   * @param other is told another unit
   * @param right the guess is right
   */
  static JPanel of(
      StarterGuess.Unit guess, Units units, Consumer<LengthUnit> other, Runnable right) {
    JPanel pane = new JPanel();
    pane.setLayout(new BoxLayout(pane, BoxLayout.Y_AXIS));
    pane.setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createMatteBorder(0, 6, 0, 0, new Color(0xE0A100)),
            BorderFactory.createEmptyBorder(8, 10, 8, 10)));
    pane.setName("unit question");
    pane.add(Ui.head("How large is this part really?"));
    pane.add(Ui.text("Its file holds numbers without a unit. Press the right size."));
    for (LengthUnit u : LengthUnit.values()) {
      boolean taken = u == guess.unit();
      if (!taken && !likely(guess, u)) {
        continue;
      }
      String size = Opener.size(guess.mesh(), guess.unit(), u, units);
      JButton b =
          Ui.button(
              "unit " + u,
              size + (taken ? "  (taken)" : ""),
              taken ? "Yes, that is right" : "No: the file counts in " + word(u),
              taken ? right : () -> other.accept(u));
      b.setAlignmentX(0);
      pane.add(Ui.gap(4));
      pane.add(b);
    }
    return pane;
  }
}
