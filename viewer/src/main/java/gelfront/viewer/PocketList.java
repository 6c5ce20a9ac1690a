package gelfront.viewer;

import gelfront.finding.Pocket;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import javax.swing.UIManager;

/** Every pocket with its number and its sentence; choosing one shows it alone. */
final class PocketList {
  private static final int WIDTH = 292;
  private static final int TEXT = 232;

  private PocketList() {}

  /**
   * @param chosen is told the pocket that the user picks
   */
  static JComponent of(List<Pocket> pockets, Consumer<Pocket> chosen) {
    JPanel pane = new JPanel(new BorderLayout(0, 6));
    pane.setBorder(BorderFactory.createEmptyBorder(10, 12, 10, 6));
    pane.setPreferredSize(new Dimension(WIDTH, 300));
    JLabel head = new JLabel("Pockets cut off from the sprue");
    head.setFont(head.getFont().deriveFont(Font.BOLD));
    pane.add(head, BorderLayout.NORTH);
    if (pockets.isEmpty()) {
      pane.add(text("None: every place was fed until it had set."), BorderLayout.CENTER);
      return pane;
    }
    JScrollPane scroll = new JScrollPane(list(pockets, chosen));
    scroll.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.getViewport().setOpaque(false);
    scroll.setOpaque(false);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    pane.add(scroll, BorderLayout.CENTER);
    pane.add(text("Choose one: what was still soft when it was cut off."), BorderLayout.SOUTH);
    return pane;
  }

  private static JList<Pocket> list(List<Pocket> pockets, Consumer<Pocket> chosen) {
    JList<Pocket> list = new JList<>(pockets.toArray(Pocket[]::new));
    list.setName("pockets");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setOpaque(false);
    list.setCellRenderer(new Row());
    list.addListSelectionListener(
        e -> {
          if (!e.getValueIsAdjusting() && list.getSelectedValue() != null) {
            chosen.accept(list.getSelectedValue());
          }
        });
    return list;
  }

  /** Words that wrap and can't be typed into. */
  static JTextArea text(String words) {
    JTextArea area = new JTextArea(words);
    area.setEditable(false);
    area.setFocusable(false);
    area.setOpaque(false);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setFont(UIManager.getFont("Label.font"));
    return area;
  }

  private static final class Row extends JPanel implements ListCellRenderer<Pocket> {
    private static final long serialVersionUID = 1;
    private final JLabel number = new JLabel();
    private final JTextArea sentence = text("");

    Row() {
      super(new BorderLayout(8, 0));
      setBorder(BorderFactory.createEmptyBorder(6, 4, 6, 4));
      number.setFont(number.getFont().deriveFont(Font.BOLD, number.getFont().getSize2D() + 4));
      number.setVerticalAlignment(JLabel.TOP);
      number.setPreferredSize(new Dimension(22, 20));
      add(number, BorderLayout.WEST);
      add(sentence, BorderLayout.CENTER);
    }

    @Override
    public Component getListCellRendererComponent(
        JList<? extends Pocket> list, Pocket p, int index, boolean selected, boolean focused) {
      number.setText(Integer.toString(p.number()));
      sentence.setText(p.sentence());
      // A text area knows its height only once it knows its width.
      sentence.setSize(TEXT, Short.MAX_VALUE);
      setOpaque(selected);
      setBackground(selected ? list.getSelectionBackground() : list.getBackground());
      number.setForeground(selected ? list.getSelectionForeground() : list.getForeground());
      sentence.setForeground(number.getForeground());
      return this;
    }
  }
}
