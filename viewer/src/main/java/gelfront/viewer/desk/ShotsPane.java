// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.answer.SeriesAnswer;
import gelfront.answer.ShotRow;
import gelfront.base.Quantities;
import gelfront.report.SeriesPage;
import gelfront.viewer.model.Colours;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.UIManager;

/** Shots in a row as a strip: a row a shot, mould temperature and deepest dent. */
final class ShotsPane extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int ROW = 44;

  private final transient SeriesAnswer answer;
  private final transient List<ShotRow> rows;

  ShotsPane(SeriesAnswer answer) {
    this.answer = answer;
    rows = new ArrayList<>(answer.shots());
    answer.settled().ifPresent(rows::add);
    setName("shots");
    setAlignmentX(LEFT_ALIGNMENT);
    setPreferredSize(new Dimension(240, ROW * rows.size() + 8));
    setMaximumSize(new Dimension(Integer.MAX_VALUE, ROW * rows.size() + 8));
  }

  JTextArea words() {
    return Ui.text(SeriesPage.verdict(answer) + " " + SeriesPage.pace(answer));
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    double deepest = answer.visible();
    for (ShotRow r : rows) {
      deepest = Math.max(deepest, r.dentHigh());
    }
    int wide = Math.max(1, getWidth() - 70);
    for (int i = 0; i < rows.size(); i++) {
      ShotRow r = rows.get(i);
      int y = 8 + i * ROW;
      g.setColor(UIManager.getColor("Label.foreground"));
      String name = r.number() == 0 ? "settled" : "shot " + r.number();
      g.drawString(name, 0, y + 14);
      g.drawString(
          Quantities.say("mould %.0f °C, dent %.2f mm", r.mouldBefore(), 1e3 * r.dentHigh()),
          62,
          y + 14);
      g.setColor(new Color(Colours.of(r.severity())));
      int low = (int) (wide * r.dentLow() / deepest);
      int high = (int) (wide * r.dentHigh() / deepest);
      g.fillRect(62, y + 20, Math.max(2, low), 10);
      g.fillRect(62 + low, y + 23, Math.max(0, high - low), 4);
    }
    int seen = 62 + (int) (wide * answer.visible() / deepest);
    g.setColor(UIManager.getColor("Label.foreground"));
    g.drawLine(seen, 4, seen, 8 + ROW * rows.size());
    g.dispose();
  }
}
