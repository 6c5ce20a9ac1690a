// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.viewer.model.Tour;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.FlowLayout;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.border.Border;
import org.jspecify.annotations.Nullable;

/** The tour, a step at a time, above the picture; what a step is about is framed. */
final class TourPane extends JPanel {
  private static final long serialVersionUID = 1;
  private static final Color BRASS = new Color(0xC9933A);

  private final transient Container root;
  private final transient Runnable over;
  private final JTextArea words = Ui.text("");
  private final JButton next = Ui.button("tour next", "Next", "The next step", () -> go(1));
  private int at;
  private transient @Nullable JComponent framed;
  private transient @Nullable Border before;

  /**
   * @param root in which components are looked for by their names
   * @param over is told when the tour has ended
   */
  TourPane(Container root, Runnable over) {
    super(new BorderLayout(10, 0));
    this.root = root;
    this.over = over;
    setName("tour");
    setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createMatteBorder(2, 6, 2, 2, BRASS),
            BorderFactory.createEmptyBorder(6, 10, 6, 6)));
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.RIGHT, 6, 0));
    buttons.add(
        Ui.button("tour end", "End tour", "Ends the tour; it is under Settings", this::end));
    buttons.add(next);
    add(words, BorderLayout.CENTER);
    add(buttons, BorderLayout.EAST);
    setVisible(false);
  }

  void begin() {
    at = 0;
    setVisible(true);
    go(0);
  }

  private void go(int by) {
    at += by;
    unframe();
    if (at >= Tour.STEPS.size()) {
      end();
      return;
    }
    Tour.Step step = Tour.STEPS.get(at);
    words.setText((at + 1) + " of " + Tour.STEPS.size() + ". " + step.words());
    next.setText(at + 1 == Tour.STEPS.size() ? "Done" : "Next");
    if (find(root, step.points()) instanceof JComponent c
        && !(c instanceof javax.swing.JTabbedPane)) {
      framed = c;
      before = c.getBorder();
      c.setBorder(BorderFactory.createLineBorder(BRASS, 3));
    }
    revalidate();
  }

  private void unframe() {
    if (framed != null) {
      framed.setBorder(before);
      framed = null;
    }
  }

  void end() {
    unframe();
    setVisible(false);
    over.run();
  }

  private static @Nullable Component find(Container in, String name) {
    for (Component c : in.getComponents()) {
      Component found =
          name.equals(c.getName()) ? c : c instanceof Container inner ? find(inner, name) : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }
}
