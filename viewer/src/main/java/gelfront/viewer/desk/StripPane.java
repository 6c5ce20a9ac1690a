// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.UIManager;

/** The strip at the foot of the window: what there is to say, and what is read at a place. */
final class StripPane extends JPanel {
  private static final long serialVersionUID = 1;
  private final JLabel said = new JLabel(" ");
  private final JLabel read = new JLabel(" ");

  StripPane() {
    super(new BorderLayout(16, 0));
    setBorder(BorderFactory.createEmptyBorder(3, 10, 4, 10));
    said.setName("said");
    said.setMinimumSize(new Dimension(1, 1));
    read.setName("read");
    add(said, BorderLayout.CENTER);
    add(read, BorderLayout.EAST);
  }

  void say(String words, boolean bad) {
    String line = words.lines().findFirst().orElse(" ");
    said.setText((bad ? "Mind: " : "") + (line.isEmpty() ? " " : line));
    said.setToolTipText(words.isEmpty() ? null : words);
    said.setForeground(bad ? Color.WHITE : UIManager.getColor("Label.foreground"));
    setBackground(bad ? new Color(0x9C2F22) : UIManager.getColor("Panel.background"));
    setOpaque(true);
  }

  /** Of a place that was clicked. */
  void read(String words) {
    read.setText(words);
  }
}
