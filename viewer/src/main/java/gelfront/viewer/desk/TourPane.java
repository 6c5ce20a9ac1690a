// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.viewer.model.Tour;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.Insets;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.border.AbstractBorder;
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
    if (find(root, step.points()) instanceof JComponent c) {
      framed = c;
      before = c.getBorder();
      c.setBorder(new Brass(before));
    }
    revalidate();
  }

  /** Over a component's own border, as wide as that: nothing moves. */
  private static final class Brass extends AbstractBorder {
    private static final long serialVersionUID = 1;
    private final transient @Nullable Border own;

    Brass(@Nullable Border own) {
      this.own = own;
    }

    @Override
    public Insets getBorderInsets(Component c) {
      return own == null ? new Insets(0, 0, 0, 0) : own.getBorderInsets(c);
    }

    @Override
    public Insets getBorderInsets(Component c, Insets into) {
      Insets i = getBorderInsets(c);
      into.set(i.top, i.left, i.bottom, i.right);
      return into;
    }

    @Override
    public void paintBorder(Component c, Graphics g, int x, int y, int width, int height) {
      if (own != null) {
        own.paintBorder(c, g, x, y, width, height);
      }
      g.setColor(BRASS);
      for (int i = 0; i < 3; i++) {
        g.drawRect(x + i, y + i, width - 1 - 2 * i, height - 1 - 2 * i);
      }
    }
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
