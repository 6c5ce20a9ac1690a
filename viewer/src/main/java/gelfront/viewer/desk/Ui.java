// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ScrollPaneConstants;
import javax.swing.UIManager;
import javax.swing.text.JTextComponent;

/** Small pieces that all panes use. */
final class Ui {
  private Ui() {}

  static JButton button(String name, String label, String tip, Runnable pressed) {
    JButton b = new JButton(label);
    b.setName(name);
    b.setToolTipText(tip);
    b.addActionListener(e -> pressed.run());
    return b;
  }

  /** A number stays with its unit, and with the axis that it is along. */
  static String held(String words) {
    return words
        .replaceAll("(\\d) (mm|in|ml|s|K|kPa|°C|°F|%)(?!\\w)", "$1\u00a0$2")
        .replaceAll("\\b([xyz]) (= )?(-?\\d)", "$1\u00a0$2$3")
        .replace("= ", "=\u00a0");
  }

  /** Words that wrap, but never between a number and its unit, and can't be typed into. */
  static JTextArea text(String words) {
    JTextArea area = new JTextArea(held(words));
    area.setEditable(false);
    area.setFocusable(false);
    area.setOpaque(false);
    area.setMargin(new Insets(2, 0, 2, 0)); // flush with heads
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setFont(UIManager.getFont("Label.font"));
    area.setAlignmentX(Component.LEFT_ALIGNMENT);
    return area;
  }

  /**
   * @param larger points than other words
   */
  static JTextArea bold(String words, int larger) {
    JTextArea t = text(words);
    t.setFont(t.getFont().deriveFont(Font.BOLD, t.getFont().getSize2D() + larger));
    return t;
  }

  /** Up and down only. */
  static JScrollPane scrolling(JComponent column) {
    JScrollPane scroll = new JScrollPane(column);
    scroll.setBorder(null);
    scroll.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    return scroll;
  }

  static JLabel head(String words) {
    JLabel head = new JLabel(words);
    head.setFont(head.getFont().deriveFont(Font.BOLD, head.getFont().getSize2D() + 1));
    head.setAlignmentX(Component.LEFT_ALIGNMENT);
    return head;
  }

  static <T extends JComponent> T padded(T c, int top, int left, int bottom, int right) {
    c.setBorder(BorderFactory.createEmptyBorder(top, left, bottom, right));
    return c;
  }

  static Component gap(int height) {
    return javax.swing.Box.createRigidArea(new Dimension(1, height));
  }

  static Color colour(int rgb) {
    return new Color(rgb);
  }

  /** A key that works wherever the focus is in the window; plain ones not where one types. */
  static void key(JComponent root, String stroke, Runnable pressed) {
    root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(KeyStroke.getKeyStroke(stroke), stroke);
    root.getActionMap()
        .put(
            stroke,
            new AbstractAction() {
              private static final long serialVersionUID = 1;

              @Override
              public void actionPerformed(ActionEvent e) {
                boolean types =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner()
                        instanceof JTextComponent;
                if (!types || stroke.startsWith("control")) {
                  pressed.run();
                }
              }
            });
  }
}
