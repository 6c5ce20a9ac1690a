// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

/** The few shapes that charts and labels are drawn with. Coordinates in the drawing's units. */
final class Svg {
  private Svg() {}

  /**
   * Opens a drawing.
   *
   * @param label what it shows, for those who can't see it
   */
  static void open(Html h, int width, int height, String label) {
    String box = "0 0 " + width + " " + height;
    h.open("svg", "class", "chart", "viewBox", box, "role", "img", "aria-label", label);
  }

  static void line(Html h, double x1, double y1, double x2, double y2, String ink, String width) {
    h.empty(
        "line",
        "x1",
        Say.fixed(x1, 1),
        "y1",
        Say.fixed(y1, 1),
        "x2",
        Say.fixed(x2, 1),
        "y2",
        Say.fixed(y2, 1),
        "stroke",
        ink,
        "stroke-width",
        width);
  }

  static void circle(
      Html h, double x, double y, String radius, String fill, String ink, String width) {
    h.empty(
        "circle",
        "cx",
        Say.fixed(x, 1),
        "cy",
        Say.fixed(y, 1),
        "r",
        radius,
        "fill",
        fill,
        "stroke",
        ink,
        "stroke-width",
        width);
  }

  static void rect(Html h, double x, double y, double width, double height, String fill) {
    h.empty(
        "rect",
        "x",
        Say.fixed(x, 1),
        "y",
        Say.fixed(y, 1),
        "width",
        Say.fixed(width, 1),
        "height",
        Say.fixed(height, 1),
        "fill",
        fill);
  }

  /** Its size is the style's: a drawing that shrinks on a phone needs larger words there. */
  static void text(Html h, double x, double y, String anchor, String words, String ink) {
    h.element(
        "text",
        words,
        "x",
        Say.fixed(x, 1),
        "y",
        Say.fixed(y, 1),
        "text-anchor",
        anchor,
        "fill",
        ink);
  }
}
