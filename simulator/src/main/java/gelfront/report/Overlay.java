// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.finding.Constriction;
import gelfront.finding.Filled;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.mesh.Vec3;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;

/** A picture with numbers and names drawn over it as SVG: searchable, sharp. */
final class Overlay {
  /** Height of the numbers' row, and the least distance between two of them, drawing units. */
  private static final double ROW = 44;

  private static final double APART = 92;

  private Overlay() {}

  /** The part cut open, pockets numbered as in the table. */
  static void cutOpen(Html h, Pictures.Picture p, Findings f) {
    View v = p.view();
    open(h, p, "wide", "the part cut open, coloured by how long each place stays soft");
    double free = ROW;
    List<Pocket> byPlace =
        f.pockets().stream()
            .sorted(Comparator.comparingDouble((Pocket q) -> v.x(q.centre())))
            .toList();
    for (Pocket pocket : byPlace) {
      double x = Math.max(free, v.x(pocket.centre()));
      badge(h, v, pocket.centre(), String.valueOf(pocket.number()), x);
      free = x + APART;
    }
    if (!f.pockets().isEmpty()) {
      culprit(h, v, f.pockets().get(0).constriction());
    }
    h.close();
  }

  private static void culprit(Html h, View v, Constriction c) {
    double x = Math.min(v.width() - ROW, Math.max(ROW, v.x(c.place())));
    pointer(h, v.x(c.place()), v.y(c.place()), x, v.height() - 52.0);
    Svg.text(h, x, v.height() - 14.0, "middle", Say.culprit(c.kind()), "#1d2327");
  }

  /** The part cut open, trapped air lettered as in the table. */
  static void filled(Html h, Pictures.Picture p, List<Filled.TrappedAir> air) {
    View v = p.view();
    open(h, p, "wide", "the part cut open, coloured by when the front comes");
    double free = ROW;
    List<Filled.TrappedAir> byPlace =
        air.stream()
            .sorted(Comparator.comparingDouble((Filled.TrappedAir a) -> v.x(a.place())))
            .toList();
    for (Filled.TrappedAir a : byPlace) {
      double x = Math.max(free, v.x(a.place()));
      badge(h, v, a.place(), a.letter(), x);
      free = x + APART;
    }
    h.close();
  }

  /** A picture with nothing over it. */
  static void plain(Html h, Pictures.Picture p, String words) {
    open(h, p, "plain", words);
    h.close();
  }

  private static void open(Html h, Pictures.Picture p, String kind, String words) {
    String width = String.valueOf(p.view().width());
    String height = String.valueOf(p.view().height());
    h.open(
        "svg",
        "class",
        kind,
        "viewBox",
        "0 0 " + width + " " + height,
        "role",
        "img",
        "aria-label",
        words);
    String data = "data:image/png;base64," + Base64.getEncoder().encodeToString(p.png());
    h.empty("image", "href", data, "width", width, "height", height);
  }

  private static void badge(Html h, View v, Vec3 at, String name, double x) {
    pointer(h, v.x(at), v.y(at), x, ROW);
    h.open("g", "class", "badge");
    Svg.circle(h, x, ROW, "22", "#ffffff", "#1d2327", "3");
    Svg.text(h, x, ROW, "middle", name, "#1d2327");
    h.close();
  }

  private static void pointer(Html h, double x1, double y1, double x2, double y2) {
    Svg.line(h, x1, y1, x2, y2, "#ffffff", "6"); // casing, so that it shows on dark and light
    Svg.line(h, x1, y1, x2, y2, "#1d2327", "2.5");
    Svg.circle(h, x1, y1, "5", "#1d2327", "#ffffff", "1.5");
  }
}
