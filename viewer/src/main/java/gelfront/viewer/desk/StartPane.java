// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import java.awt.BorderLayout;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;

/** What one sees before anything is open. */
final class StartPane extends JPanel {
  private static final long serialVersionUID = 1;

  /**
   * @param recent files, newest first
   */
  StartPane(
      List<Path> recent, Runnable open, Runnable example, Runnable tour, Consumer<Path> again) {
    super(new BorderLayout());
    JPanel column = new Column(null);
    Ui.padded(column, 14, 14, 14, 14);
    fill(column, recent, open, example, tour, again);
    add(column, BorderLayout.NORTH);
  }

  private static void fill(
      JPanel to,
      List<Path> recent,
      Runnable open,
      Runnable example,
      Runnable tour,
      Consumer<Path> again) {
    to.add(Ui.head("Will it dent?"));
    to.add(Ui.gap(6));
    to.add(
        Ui.text(
            "Drop the STL of your part on this window, or open it. Then click where the gate goes"
                + " and press Check."));
    to.add(Ui.gap(10));
    to.add(left(Ui.button("start open", "Open STL, case or result", "Ctrl O", open)));
    to.add(Ui.gap(6));
    to.add(
        left(
            Ui.button(
                "start example", "Try the example", "Two bulbs with a neck: it dents", example)));
    to.add(Ui.gap(6));
    to.add(
        left(Ui.button("start tour", "Show me how it works", "Five steps on the example", tour)));
    if (!recent.isEmpty()) {
      to.add(Ui.gap(16));
      to.add(Ui.head("Opened lately"));
      for (Path p : recent) {
        JButton b =
            Ui.button("recent", p.getFileName().toString(), p.toString(), () -> again.accept(p));
        b.setHorizontalAlignment(JButton.LEFT);
        to.add(Ui.gap(4));
        to.add(left(b));
      }
    }
  }

  private static JButton left(JButton b) {
    b.setAlignmentX(LEFT_ALIGNMENT);
    return b;
  }
}
