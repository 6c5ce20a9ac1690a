package gelfront.report;

import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.mesh.Vec3;
import java.util.Base64;

/** A picture with numbers, names and a colour scale drawn over it as SVG: searchable, sharp. */
final class Overlay {
  private static final int SCALE = 64;

  private Overlay() {}

  /** The part cut open, pockets numbered as in the table. */
  static void cutOpen(Html h, Pictures.Picture p, Findings f, Scale times) {
    View v = p.view();
    open(h, p, SCALE, "the part cut open, coloured by how long each place stays soft");
    int n = 0;
    for (Pocket pocket : f.pockets()) {
      badge(h, v, pocket.centre(), pocket.number(), 26 + 34 * (n++ % 2));
    }
    if (!f.pockets().isEmpty()) {
      Vec3 c = f.pockets().get(0).constriction().place();
      double y = v.height() - 16;
      pointer(h, v.x(c), v.y(c), v.x(c), y - 18);
      Svg.text(
          h, v.x(c), y, "middle", Say.culprit(f.pockets().get(0).constriction().kind()), "#1d2327");
    }
    scale(h, v.height() + 8, v.width(), times, "stays soft for, s");
    h.close();
  }

  /** A picture with nothing over it. */
  static void plain(Html h, Pictures.Picture p, String words) {
    open(h, p, 0, words);
    h.close();
  }

  private static void open(Html h, Pictures.Picture p, int below, String words) {
    View v = p.view();
    h.open(
        "svg",
        "viewBox",
        "0 0 " + v.width() + " " + (v.height() + below),
        "role",
        "img",
        "aria-label",
        words);
    String data = "data:image/png;base64," + Base64.getEncoder().encodeToString(p.png());
    h.empty(
        "image",
        "href",
        data,
        "width",
        String.valueOf(v.width()),
        "height",
        String.valueOf(v.height()));
  }

  private static void badge(Html h, View v, Vec3 at, int number, double y) {
    double x = v.x(at);
    pointer(h, x, v.y(at), x, y + 15);
    Svg.circle(h, x, y, "16", "#ffffff", "#1d2327", "2.5");
    h.element(
        "text",
        String.valueOf(number),
        "x",
        Say.fixed(x, 1),
        "y",
        Say.fixed(y + 6, 1),
        "text-anchor",
        "middle",
        "font-size",
        "18",
        "font-weight",
        "bold");
  }

  private static void pointer(Html h, double x1, double y1, double x2, double y2) {
    Svg.line(h, x1, y1, x2, y2, "#ffffff", "5"); // casing, so that it shows on dark and light
    Svg.line(h, x1, y1, x2, y2, "#1d2327", "2");
    Svg.circle(h, x1, y1, "4", "#1d2327", "#ffffff", "1.5");
  }

  private static void scale(Html h, double y, int width, Scale s, String words) {
    double left = 0.12 * width;
    double w = 0.5 * width;
    int steps = 64;
    for (int i = 0; i < steps; i++) {
      String ink = Say.hex(ColourRamp.STANDARD.at((i + 0.5) / steps));
      h.empty(
          "rect",
          "x",
          Say.fixed(left + w * i / steps, 1),
          "y",
          Say.fixed(y, 1),
          "width",
          Say.fixed(w / steps + 0.6, 1),
          "height",
          "18",
          "fill",
          ink);
    }
    for (double t : s.lines()) {
      Svg.text(h, left + w * s.share(t), y + 38, "middle", Say.tick(t, s.step()), "#1d2327");
    }
    Svg.text(h, left + w + 14, y + 15, "start", words, "#1d2327");
  }
}
