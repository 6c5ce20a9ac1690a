// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;

/** Words painted as pictures: the engine's own fonts know neither degrees nor large screens. */
final class Plates {
  static final int GROUND = 0x15202B;
  private static final int PAD = 7;
  private static final Font FONT = new Font(Font.SANS_SERIF, Font.BOLD, 14);

  private Plates() {}

  /**
   * Light words on a dark plate.
   *
   * @param lines the first one larger where there are several
   * @param edge 0xRRGGBB of the bar at its left
   * @param scale pixels for one of the window's
   */
  static BufferedImage plate(List<String> lines, int edge, float scale) {
    FontMetrics m = metrics();
    int width = 0;
    for (String line : lines) {
      width = Math.max(width, m.stringWidth(line));
    }
    int height = lines.size() * m.getHeight() + PAD;
    BufferedImage image = image(width + 2 * PAD + 5, height, scale);
    Graphics2D g = graphics(image, scale);
    g.setColor(new Color(GROUND));
    g.fillRect(0, 0, width + 2 * PAD + 5, height);
    g.setColor(new Color(edge));
    g.fillRect(0, 0, 5, height);
    g.setColor(Color.WHITE);
    for (int i = 0; i < lines.size(); i++) {
      g.setFont(i == 0 ? FONT : FONT.deriveFont(Font.PLAIN));
      g.drawString(lines.get(i), PAD + 5, PAD / 2 + i * m.getHeight() + m.getAscent());
    }
    g.dispose();
    return image;
  }

  /** White words on nothing. */
  static BufferedImage plain(String words, float scale) {
    FontMetrics m = metrics();
    BufferedImage image = image(m.stringWidth(words) + 2, m.getHeight(), scale);
    Graphics2D g = graphics(image, scale);
    g.setColor(Color.WHITE);
    g.setFont(FONT);
    g.drawString(words, 1, m.getAscent());
    g.dispose();
    return image;
  }

  private static FontMetrics metrics() {
    return graphics(new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB), 1).getFontMetrics(FONT);
  }

  private static BufferedImage image(int width, int height, float scale) {
    return new BufferedImage(
        (int) Math.ceil(width * scale),
        (int) Math.ceil(height * scale),
        BufferedImage.TYPE_INT_ARGB);
  }

  private static Graphics2D graphics(BufferedImage image, float scale) {
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.scale(scale, scale);
    return g;
  }
}
