package gelfront.viewer;

import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.result.StoredRun;
import gelfront.viewer.model.Cut;
import gelfront.viewer.model.Extent;
import gelfront.viewer.model.LateSlider;
import gelfront.viewer.model.Orbit;
import gelfront.viewer.scene.PartView;
import java.awt.BorderLayout;
import java.awt.Canvas;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.image.BufferedImage;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;

/** The window: verdict on top, pockets beside the picture, legend, slider. Swing's thread only. */
final class Desk {
  private final PartView view;
  private final Extent extent;
  private final JFrame frame;
  private final JCheckBox open = new JCheckBox("Cut open", true);
  private final LegendPane legend;
  private final SlidePane slide;
  private final ViewControls controls;

  Desk(StoredRun run, Extent extent, PartView view) {
    this.view = view;
    this.extent = extent;
    Findings findings = run.findings();
    LateSlider steps = LateSlider.of(run.fields());
    legend = new LegendPane(steps.latest());
    slide =
        findings.pockets().isEmpty()
            ? new SlidePane(steps, findings.gateSets(), "gate closes", this::showFrom)
            : startingAt(findings.pockets().get(0), steps);
    controls = new ViewControls(this::home, view::look, slide::move);
    controls.listenTo(view.canvas());
    frame = new JFrame("gelfront: " + run.name());
    frame.setName("desk");
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    frame.add(VerdictPane.of(findings), BorderLayout.NORTH);
    frame.add(PocketList.of(findings.pockets(), this::show), BorderLayout.WEST);
    frame.add(middle(view.canvas()), BorderLayout.CENTER);
    open.setName("open");
    open.addActionListener(e -> showFrom(slide.from()));
    slide.add(open, BorderLayout.EAST);
    frame.add(legend, BorderLayout.EAST);
    frame.add(slide, BorderLayout.SOUTH);
    frame.setSize(1240, 800);
    frame.setMinimumSize(new Dimension(820, 520));
  }

  private SlidePane startingAt(Pocket worst, LateSlider steps) {
    return new SlidePane(steps, worst.cutOff(), worst.number() + " cut off", this::showFrom);
  }

  private static JComponent middle(Canvas canvas) {
    JPanel middle = new JPanel(new BorderLayout());
    canvas.setName("picture");
    // Without it a heavy canvas keeps the window from being made smaller.
    canvas.setMinimumSize(new Dimension(1, 1));
    middle.add(canvas);
    return middle;
  }

  JFrame frame() {
    return frame;
  }

  /** After the window is visible and sizes are known. */
  void begin() {
    controls.goHome();
    showFrom(slide.from());
  }

  private Orbit home() {
    Canvas c = view.canvas();
    double aspect = (double) Math.max(1, c.getWidth()) / Math.max(1, c.getHeight());
    return Orbit.round(extent, PartView.FIELD_OF_VIEW, aspect);
  }

  private void showFrom(double seconds) {
    legend.showFrom(seconds);
    view.show(seconds, open.isSelected() ? Cut.lengthwise(extent) : Cut.NONE);
  }

  private void show(Pocket p) {
    slide.moveTo(p.cutOff());
  }

  /**
   * All of the window as a picture.
   *
   * @param picture of the canvas, which Swing can't paint itself
   */
  BufferedImage painted(BufferedImage picture) {
    JComponent content = (JComponent) frame.getContentPane();
    BufferedImage all =
        new BufferedImage(content.getWidth(), content.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = all.createGraphics();
    content.printAll(g);
    Canvas c = view.canvas();
    Point at = SwingUtilities.convertPoint(c.getParent(), c.getLocation(), content);
    g.drawImage(picture, at.x, at.y, c.getWidth(), c.getHeight(), null);
    g.dispose();
    return all;
  }
}
