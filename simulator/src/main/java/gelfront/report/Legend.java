// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

/** A colour scale as a drawing of its own, so that its words stay legible on a phone. */
final class Legend {
  private static final int WIDTH = 420;
  private static final int HEIGHT = 62;
  private static final int LEFT = 14;
  private static final int BAR = WIDTH - 2 * LEFT;
  private static final int STEPS = 64;

  private Legend() {}

  /**
   * @param words what the values are, with their unit
   */
  static void draw(Html h, Scale s, String words, String... attributes) {
    h.open("div", attributes);
    h.open(
        "svg",
        "class",
        "legend",
        "viewBox",
        "0 0 " + WIDTH + " " + HEIGHT,
        "role",
        "img",
        "aria-label",
        "colours: " + words + ", " + Say.tick(s.low(), 1) + " dark to " + Say.tick(s.high(), 1));
    Svg.text(h, LEFT, 14, "start", words, "#1d2327");
    for (int i = 0; i < STEPS; i++) {
      String ink = Say.hex(ColourRamp.STANDARD.at((i + 0.5) / STEPS));
      double x = LEFT + (double) BAR * i / STEPS;
      Svg.rect(h, x, 22, (double) BAR / STEPS + 0.6, 16, ink);
    }
    for (double t : s.lines()) {
      double x = LEFT + BAR * s.share(t);
      Svg.text(h, x, 55, "middle", Say.tick(t, s.step()), "#1d2327");
    }
    h.close().close();
  }
}
