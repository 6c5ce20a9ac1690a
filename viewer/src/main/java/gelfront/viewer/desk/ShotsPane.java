// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.answer.SeriesAnswer;
import gelfront.answer.ShotRow;
import gelfront.base.Units;
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

  /** Pixels that a row's name takes. */
  private static final int LEFT = 62;

  private final transient SeriesAnswer answer;
  private final transient Units units;
  private final transient List<ShotRow> rows;

  /**
   * @param units of dents and of the mould's temperature
   */
  ShotsPane(SeriesAnswer answer, Units units) {
    this.answer = answer;
    this.units = units;
    rows = new ArrayList<>(answer.shots());
    answer.settled().ifPresent(rows::add);
    setName("shots");
    setAlignmentX(LEFT_ALIGNMENT);
    int high = ROW * rows.size() + 28;
    setPreferredSize(new Dimension(240, high));
    setMaximumSize(new Dimension(Integer.MAX_VALUE, high));
  }

  JTextArea words() {
    return Ui.text(SeriesPage.verdict(answer, units) + " " + SeriesPage.pace(answer, units));
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
    int wide = Math.max(1, getWidth() - LEFT - 8);
    int seen = LEFT + (int) (wide * answer.visible() / deepest);
    for (int i = 0; i < rows.size(); i++) {
      row(g, rows.get(i), 8 + i * ROW, wide / deepest, seen);
    }
    String words = "seen from " + units.size(answer.visible());
    int left = Math.min(seen, getWidth() - g.getFontMetrics().stringWidth(words) - 8);
    g.drawString(words, left, 8 + rows.size() * ROW + 12);
    g.dispose();
  }

  /**
   * @param top of the row
   * @param scale pixels a metre of dent
   * @param seen where a dent begins to be seen
   */
  private void row(Graphics2D g, ShotRow r, int top, double scale, int seen) {
    g.setColor(UIManager.getColor("Label.foreground"));
    g.drawString(r.number() == 0 ? "settled" : "shot " + r.number(), 0, top + 14);
    g.drawString(says(r), LEFT, top + 14);
    g.setColor(new Color(Colours.of(r.severity())));
    int low = (int) (scale * r.dentLow());
    int high = (int) (scale * r.dentHigh());
    g.fillRect(LEFT, top + 20, Math.max(2, low), 10);
    g.fillRect(LEFT + low, top + 23, Math.max(0, high - low), 4);
    g.setColor(UIManager.getColor("Label.foreground"));
    g.drawLine(seen, top + 18, seen, top + 32);
  }

  String says(ShotRow r) {
    String mould = units.temperature(r.mouldBefore());
    return "mould " + mould + ", dent up to " + units.length(r.dentHigh(), 2);
  }
}
