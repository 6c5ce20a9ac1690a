// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.base.Units;
import gelfront.result.StoredRun;
import gelfront.viewer.model.Curves;
import gelfront.viewer.model.Look;
import gelfront.viewer.model.Mode;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JPanel;
import javax.swing.UIManager;
import org.jspecify.annotations.Nullable;

/**
 * Flow, pressure, gate and sprue over time, or the shot itself where that is looked at; on the
 * slider's own time. A click goes there.
 */
final class CurvePane extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int HEAD = 36;
  private static final int GAP = 14;

  private final transient Gaze gaze;
  private final transient Supplier<Units> units;
  private transient List<Curves.Strip> freezing = List.of();
  private transient List<Curves.Strip> shot = List.of();

  /**
   * @param units that values are told in
   */
  CurvePane(Gaze gaze, Supplier<Units> units) {
    this.gaze = gaze;
    this.units = units;
    setName("curves");
    setPreferredSize(new Dimension(300, 104));
    setToolTipText("Click to go to that time");
    gaze.watch(l -> repaint());
    MouseAdapter mouse =
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent e) {
            goTo(e.getX());
          }

          @Override
          public void mouseDragged(MouseEvent e) {
            goTo(e.getX());
          }
        };
    addMouseListener(mouse);
    addMouseMotionListener(mouse);
  }

  void show(@Nullable StoredRun run) {
    freezing = run == null ? List.of() : Curves.of(run.series());
    shot = run == null ? List.of() : Curves.of(run.findings().filled());
    setVisible(!freezing.isEmpty() || !shot.isEmpty());
    repaint();
  }

  private boolean ofTheShot() {
    return gaze.now().mode() == Mode.FILL;
  }

  private List<Curves.Strip> strips() {
    return ofTheShot() ? shot : freezing;
  }

  private int width() {
    int n = strips().size();
    return Math.max(1, (getWidth() - GAP * (n + 1)) / Math.max(1, n));
  }

  private void goTo(int x) {
    int in = (x - GAP) % (width() + GAP);
    double share = Math.max(0, Math.min(1, (double) in / width()));
    if (ofTheShot()) {
      gaze.change(l -> l.shotAt(share * gaze.end()));
    } else {
      gaze.choose(Mode.OPEN);
      gaze.change(l -> l.atTime(share * gaze.scale()));
    }
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    List<Curves.Strip> strips = strips();
    for (int i = 0; i < strips.size(); i++) {
      paint(g, strips.get(i), GAP + i * (width() + GAP));
    }
    g.dispose();
  }

  private void paint(Graphics2D g, Curves.Strip s, int left) {
    Look l = gaze.now();
    double end = gaze.end();
    double asked = ofTheShot() ? l.shot() : l.time();
    double time = Double.isNaN(asked) ? end : asked;
    Font font = UIManager.getFont("Label.font");
    Color ink = UIManager.getColor("Label.foreground");
    g.setColor(ink);
    g.setFont(font);
    g.drawString(s.title(), left, 14);
    g.setFont(font.deriveFont(Font.BOLD));
    g.drawString(s.at(time, units.get()), left, 30);
    int height = getHeight() - HEAD - 8;
    g.setColor(new Color(ink.getRed(), ink.getGreen(), ink.getBlue(), 60));
    g.drawLine(left, HEAD + height, left + width(), HEAD + height);
    Path2D path = new Path2D.Double();
    for (int i = 0; i < s.time().length; i++) {
      double x = left + width() * Math.min(1, s.time()[i] / end);
      double y = HEAD + (1 - s.share(i)) * height;
      if (i == 0) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
    }
    g.setColor(UIManager.getColor("Component.accentColor"));
    g.setStroke(new BasicStroke(2));
    g.draw(path);
    int at = left + (int) (width() * Math.min(1, time / end));
    g.setColor(ink);
    g.setStroke(new BasicStroke(1));
    g.drawLine(at, HEAD - 2, at, HEAD + height);
  }
}
