// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.viewer.model.Colours;
import gelfront.viewer.model.LegendTicks;
import gelfront.viewer.model.Look;
import gelfront.viewer.model.Mode;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.List;
import java.util.Objects;
import javax.swing.JPanel;
import javax.swing.UIManager;
import org.jspecify.annotations.Nullable;

/** What the colours of the picture mean, with units; what a slider hides is struck out. */
final class LegendPane extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int TOP = 58;
  private static final int LEFT = 14;
  private static final int BAR = 22;
  private static final int KEYS = 84;

  private transient @Nullable Look look;
  private double end = 1;
  private double visible = 0.2e-3;
  private boolean inch;

  LegendPane() {
    setPreferredSize(new java.awt.Dimension(132, 300));
    setName("legend");
    getAccessibleContext().setAccessibleName("what the colours mean");
  }

  /**
   * @param scale s at the end of the time scale
   * @param visibleDepth m from which a dent is seen
   * @param inInch whether depths are told in inches
   */
  void show(Look now, double scale, double visibleDepth, boolean inInch) {
    inch = inInch;
    look = now;
    end = scale;
    visible = visibleDepth;
    repaint();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    if (look == null || look.mode() == Mode.SETUP || look.mode() == Mode.POCKETS) {
      return;
    }
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    boolean times = look.mode().showsTimes();
    String first = look.mode() == Mode.FILL ? "Comes after" : times ? "Sets after" : "Dent";
    heads(g, first, times ? "seconds" : inch ? "inch deep" : "mm deep");
    ramp(g, times ? Colours.times() : Colours.dents());
    double max = times ? end : Colours.DEEPEST * visible / (inch ? 25.4e-3 : 1e-3);
    ticks(g, max);
    if (look.mode() == Mode.FILL) {
      keys(g, Colours.AIR, List.of("still empty", "air that", "stays"));
    } else if (hasKeys()) {
      keys(g, Colours.LIQUID, List.of("still liquid", "liquid, but", "cut off"));
    }
    g.dispose();
  }

  private void heads(Graphics2D g, String first, String second) {
    Font font = UIManager.getFont("Label.font");
    g.setColor(UIManager.getColor("Label.foreground"));
    g.setFont(font.deriveFont(Font.BOLD));
    g.drawString(first, LEFT, 22);
    g.setFont(font);
    g.drawString(second, LEFT, 40);
  }

  /** When there is something to be painted. */
  private Look shown() {
    return Objects.requireNonNull(look);
  }

  private int height() {
    return Math.max(1, getHeight() - TOP - 20 - (hasKeys() ? KEYS : 0));
  }

  private boolean hasKeys() {
    boolean played = shown().mode() == Mode.OPEN && !Double.isNaN(shown().time());
    return played || shown().mode() == Mode.FILL;
  }

  private int row(double share) {
    return TOP + (int) Math.round((1 - share) * height());
  }

  private void ramp(Graphics2D g, int[] colours) {
    for (int y = 0; y < height(); y++) {
      double share = 1 - (y + 0.5) / height();
      boolean hidden = shown().mode() == Mode.CELLS && share * end < shown().from();
      g.setColor(new Color(colours[(int) Math.round(255 * share)]));
      g.fillRect(hidden ? LEFT + BAR - 5 : LEFT, TOP + y, hidden ? 5 : BAR, 1);
    }
  }

  private void ticks(Graphics2D g, double max) {
    g.setColor(UIManager.getColor("Label.foreground"));
    for (LegendTicks.Tick t : LegendTicks.of(max, 8)) {
      int y = row(t.share());
      g.drawLine(LEFT + BAR, y, LEFT + BAR + 5, y);
      g.drawString(t.label(), LEFT + BAR + 9, y + 5);
    }
    if (shown().mode() == Mode.CELLS && shown().from() > 0) {
      int y = row(shown().from() / end);
      g.drawLine(LEFT - 8, y, LEFT + BAR, y);
      g.drawString("hidden", LEFT + BAR + 36, Math.min(y + 14, getHeight() - 6));
    }
    if (shown().mode() == Mode.DENTS) {
      int y = row(1 / Colours.DEEPEST);
      g.drawLine(LEFT - 8, y, LEFT + BAR + 5, y);
      g.drawString("seen from", LEFT + BAR + 9, y - 10);
    }
  }

  /**
   * @param words of the plain colour, one line, and of the hatched one, two
   */
  private void keys(Graphics2D g, int plain, List<String> words) {
    int y = getHeight() - KEYS + 10;
    g.setColor(new Color(plain));
    g.fillRect(LEFT, y, BAR, 16);
    g.fillRect(LEFT, y + 34, BAR, 16);
    g.setColor(new Color(Colours.SHUT));
    for (int x = 2; x < BAR; x += 8) {
      g.fillRect(LEFT + x, y + 34, 4, 16);
    }
    g.setColor(UIManager.getColor("Label.foreground"));
    g.drawString(words.get(0), LEFT + BAR + 8, y + 13);
    g.drawString(words.get(1), LEFT + BAR + 8, y + 40);
    g.drawString(words.get(2), LEFT + BAR + 8, y + 55);
  }
}
