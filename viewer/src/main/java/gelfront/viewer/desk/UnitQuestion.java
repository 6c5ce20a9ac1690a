package gelfront.viewer.desk;

import gelfront.mesh.io.LengthUnit;
import gelfront.setup.StarterGuess;
import gelfront.viewer.work.Opener;
import java.awt.Color;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JPanel;

/** "How large is this part really?" for meshes, which know no unit. */
final class UnitQuestion {
  private UnitQuestion() {}

  /**
   * @param guess what was taken
   * @param other is told another unit
   * @param right the guess is right
   */
  static JPanel of(StarterGuess.Unit guess, Consumer<LengthUnit> other, Runnable right) {
    JPanel pane = new JPanel();
    pane.setLayout(new BoxLayout(pane, BoxLayout.Y_AXIS));
    pane.setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createMatteBorder(0, 6, 0, 0, new Color(0xE0A100)),
            BorderFactory.createEmptyBorder(8, 10, 8, 10)));
    pane.setName("unit question");
    pane.add(Ui.head("How large is this part really?"));
    pane.add(Ui.text("An STL file holds numbers without a unit."));
    for (LengthUnit u : LengthUnit.values()) {
      String size = Opener.size(guess.mesh(), guess.unit(), u);
      boolean taken = u == guess.unit();
      JButton b =
          Ui.button(
              "unit " + u,
              size + (taken ? "  (taken)" : ""),
              "the file counts in " + u.name().toLowerCase(java.util.Locale.ROOT),
              taken ? right : () -> other.accept(u));
      b.setAlignmentX(0);
      pane.add(Ui.gap(4));
      pane.add(b);
    }
    return pane;
  }
}
