package gelfront.viewer;

import gelfront.report.ColourRamp;
import gelfront.viewer.model.LegendTicks;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.JPanel;
import javax.swing.UIManager;

/** The ramp with its times; what the slider hides is struck out. */
final class LegendPane extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int TOP = 58;
  private static final int BOTTOM = 20;
  private static final int LEFT = 14;
  private static final int BAR = 22;

  private final double latest;
  private double from;

  /**
   * @param latest s at which the last cell sets
   */
  LegendPane(double latest) {
    this.latest = latest;
    setPreferredSize(new Dimension(150, 300));
    getAccessibleContext().setAccessibleName("colours of set times, seconds");
  }

  /** Cells that set before are hidden, s. */
  void showFrom(double seconds) {
    from = seconds;
    repaint();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    Font font = UIManager.getFont("Label.font");
    g.setColor(UIManager.getColor("Label.foreground"));
    g.setFont(font.deriveFont(Font.BOLD));
    g.drawString("Sets after", LEFT, 22);
    g.setFont(font);
    g.drawString("seconds", LEFT, 40);
    ramp(g);
    ticks(g);
    g.dispose();
  }

  private int height() {
    return Math.max(1, getHeight() - TOP - BOTTOM);
  }

  private int row(double share) {
    return TOP + (int) Math.round((1 - share) * height());
  }

  private void ramp(Graphics2D g) {
    for (int y = 0; y < height(); y++) {
      double share = 1 - (y + 0.5) / height();
      boolean hidden = share * latest < from;
      g.setColor(new Color(ColourRamp.STANDARD.at(share)));
      g.fillRect(hidden ? LEFT + BAR - 5 : LEFT, TOP + y, hidden ? 5 : BAR, 1);
    }
  }

  private void ticks(Graphics2D g) {
    g.setColor(UIManager.getColor("Label.foreground"));
    for (LegendTicks.Tick t : LegendTicks.of(latest, 8)) {
      int y = row(t.share());
      g.drawLine(LEFT + BAR, y, LEFT + BAR + 5, y);
      g.drawString(t.label(), LEFT + BAR + 9, y + 5);
    }
    if (from > 0) {
      int y = row(from / latest);
      g.drawLine(LEFT - 8, y, LEFT + BAR, y);
      g.drawString("hidden", LEFT + BAR + 40, Math.min(y + 14, getHeight() - 6));
      g.drawString("shown", LEFT + BAR + 40, Math.max(TOP + 4, y - 5));
    }
  }
}
