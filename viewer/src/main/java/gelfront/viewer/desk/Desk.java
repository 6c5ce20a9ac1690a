// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.base.Units;
import gelfront.finding.Filled;
import gelfront.finding.Pocket;
import gelfront.setup.Case;
import gelfront.viewer.model.Look;
import gelfront.viewer.model.Mode;
import gelfront.viewer.scene.Stage;
import gelfront.viewer.store.Remembered;
import gelfront.viewer.work.Backgrounds;
import gelfront.viewer.work.Opened;
import gelfront.viewer.work.Session;
import gelfront.viewer.work.What;
import java.awt.BorderLayout;
import java.awt.Canvas;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import org.jspecify.annotations.Nullable;

/** The window: puts panes, session and stage together. The window's thread alone. */
public final class Desk {
  private final Session session;
  private final Stage stage;
  private final Remembered remembered;
  private final Gaze gaze;
  private final Scenes scenes;
  private final JFrame frame = new JFrame("gelfront");
  private final JTabbedPane tabs = new JTabbedPane();
  private final JPanel side = new JPanel(new CardLayout());
  private final SetupPane setup;
  private final FindingsPane findings;
  private final HelpPane help;
  private final CurvePane curves;
  private final TourPane tour;
  private final ActionBar actions;
  private final ModeBar modes;
  private final TimePane time;
  private final LegendPane legend = new LegendPane();
  private final StripPane strip = new StripPane();
  private final PartHand hand;
  private final Doings doings;
  private final Sharing sharing;
  private Mode shown = Mode.SETUP;
  private boolean asking;

  public Desk(Session session, Stage stage, Backgrounds threads, Remembered remembered) {
    this.session = session;
    this.stage = stage;
    this.remembered = remembered;
    gaze = new Gaze(this::aspect, Stage.FIELD_OF_VIEW);
    scenes = new Scenes(session, stage, gaze, threads.drawing(), SwingUtilities::invokeLater);
    sharing = new Sharing(session, stage, gaze, threads.reading(), frame);
    doings = new Doings(session, stage, remembered, this);
    hand = new PartHand(session, gaze, remembered::units, strip::read);
    setup = new SetupPane(session, hand::adds);
    findings = new FindingsPane(session, remembered::units, this::goTo, this::goTo);
    help = new HelpPane(session, remembered::units);
    curves = new CurvePane(gaze, remembered::units);
    curves.show(null);
    tour = new TourPane(frame.getContentPane(), remembered::toured);
    actions = new ActionBar(session, doings);
    modes = new ModeBar(gaze);
    time = new TimePane(gaze);
    layout();
    keys();
    gaze.watch(this::looked);
    session.watch(this::follow);
    new PictureControls(gaze, hand).listenTo(stage.canvas());
    units(remembered.units());
    modes.allow(false, false, false);
    gaze.change(l -> l);
  }

  private double aspect() {
    Canvas c = stage.canvas();
    double width = session.other().isPresent() ? c.getWidth() / 2.0 : c.getWidth();
    return Math.max(1, width) / Math.max(1, c.getHeight());
  }

  private void layout() {
    frame.setName("desk");
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    tabs.addTab("Set up", null, setup, "Gate, sprue, block, plastisol, shot");
    tabs.addTab("Findings", null, findings, "What came out");
    tabs.addTab("What helps", null, help, "Remedies, gate sizes, shots in a row");
    tabs.setName("tabs");
    side.add(
        new StartPane(
            remembered.recent(), doings::open, doings::example, doings::tour, session::open),
        "start");
    side.add(tabs, "work");
    side.setPreferredSize(new Dimension(320, 400));
    JPanel middle = new JPanel(new BorderLayout());
    JPanel head = new JPanel(new BorderLayout());
    head.add(tour, BorderLayout.NORTH);
    head.add(modes, BorderLayout.CENTER);
    JPanel foot = new JPanel(new BorderLayout());
    foot.add(time, BorderLayout.NORTH);
    foot.add(curves, BorderLayout.CENTER);
    middle.add(head, BorderLayout.NORTH);
    middle.add(picture(), BorderLayout.CENTER);
    middle.add(foot, BorderLayout.SOUTH);
    frame.add(actions, BorderLayout.NORTH);
    frame.add(side, BorderLayout.WEST);
    frame.add(middle, BorderLayout.CENTER);
    frame.add(legend, BorderLayout.EAST);
    frame.add(strip, BorderLayout.SOUTH);
    frame.setMinimumSize(new Dimension(900, 560));
    frame.setSize(1280, 840);
    remembered.bounds().ifPresent(frame::setBounds);
  }

  private JComponent picture() {
    JPanel holder = new JPanel(new BorderLayout());
    Canvas canvas = stage.canvas();
    canvas.setName("picture");
    // Without it a heavy canvas keeps the window from being made smaller.
    canvas.setMinimumSize(new Dimension(1, 1));
    holder.add(canvas);
    doings.takeDrops(frame);
    return holder;
  }

  private void keys() {
    JComponent root = frame.getRootPane();
    Ui.key(root, "control O", doings::open);
    Ui.key(root, "control S", doings::save);
    Ui.key(root, "control Z", session::undo);
    Ui.key(root, "control Y", session::redo);
    Ui.key(root, "control ENTER", actions::checkOrStop);
    Ui.key(root, "X", modes::toggleCut);
    Ui.key(root, "SPACE", time::play);
    Ui.key(root, "PAGE_UP", () -> time.move(8));
    Ui.key(root, "PAGE_DOWN", () -> time.move(-8));
    for (Mode m : Mode.values()) {
      Ui.key(root, Integer.toString(m.ordinal() + 1), () -> modes.choose(m));
    }
  }

  public JFrame frame() {
    return frame;
  }

  Sharing sharing() {
    return sharing;
  }

  /** Light or dark, for now. */
  public void dark(boolean dark) {
    Theme.set(dark);
  }

  /** Ends the tour. */
  public void endTour() {
    tour.end();
  }

  /** Shows the tour from its first step. */
  void tour() {
    tour.begin();
  }

  /** What is said and done beside the panes. */
  public Doings doings() {
    return doings;
  }

  void units(Units units) {
    setup.show(units);
    findings.follow();
    help.follow();
    curves.repaint();
    gaze.change(l -> l.in(units));
    scenes.retell();
  }

  /** What the picture is about. */
  public void choose(Mode m) {
    modes.choose(m);
  }

  /** How it is looked at. */
  public Look look() {
    return gaze.now();
  }

  /** Looks otherwise. */
  public void look(UnaryOperator<Look> how) {
    gaze.change(how);
  }

  private void looked(Look l) {
    double visible =
        session.project().map(p -> p.now().setup()).map(Case::visibleDent).orElse(0.2e-3);
    visible = session.result().map(r -> r.findings().visibleDepth()).orElse(visible);
    legend.show(l, gaze.end(), visible, remembered.units().inch());
    if (l.mode() != shown && session.opened().isPresent()) {
      boolean other = l.mode().ofAResult() != shown.ofAResult();
      shown = l.mode();
      if (shown == Mode.FILL) {
        findings.showShot();
      }
      if (other) {
        scenes.follow(shown);
        strip.read(" ");
      }
    }
  }

  private void follow(What what) {
    switch (what) {
      case OPENED -> opened();
      case CASE, QUICK -> {
        setup.follow();
        findings.follow();
        scenes.setup();
        doings.keepEdits();
      }
      case RESULT -> {
        shown = shown.ofAResult() ? shown : Mode.OPEN;
        modes.allow(session.project().isPresent(), true, filled());
        hand.follow();
        if (session.other().isPresent()) {
          scenes.compared();
        } else {
          scenes.result(false);
        }
        findings.follow();
        curves.show(session.result().orElse(null));
        tabs.setSelectedComponent(findings);
      }
      case OTHER -> scenes.compared();
      case FREEZING -> {
        shown = Mode.OPEN;
        scenes.freezing();
      }
      case HELP -> tabs.setSelectedComponent(help);
      case CHECK -> {
        if (session.checking().isEmpty()) {
          scenes.frozen();
        }
      }
      default -> {}
    }
    strip.say(session.message(), session.bad());
    actions.follow();
    if (what != What.FREEZING && (what != What.CHECK || asking != session.checking().isPresent())) {
      asking = session.checking().isPresent();
      help.follow();
    }
    title();
  }

  private void opened() {
    boolean result = session.result().isPresent();
    ((CardLayout) side.getLayout()).show(side, "work");
    shown = result ? Mode.OPEN : Mode.SETUP;
    modes.allow(session.project().isPresent() || !result, result, filled());
    hand.follow();
    setup.ask(question());
    setup.follow();
    findings.follow();
    tabs.setEnabledAt(0, session.project().isPresent());
    tabs.setSelectedIndex(result || session.project().isEmpty() ? 1 : 0);
    curves.show(session.result().orElse(null));
    scenes.opened();
    doings.remember();
  }

  private @Nullable JPanel question() {
    if (session.opened().orElse(null) instanceof Opened.ACase c && c.unit().isPresent()) {
      return UnitQuestion.of(
          c.unit().get(), remembered.units(), doings::openAs, () -> setup.ask(null));
    }
    return null;
  }

  private void title() {
    String name =
        session
            .project()
            .map(p -> p.now().setup().name())
            .or(() -> session.result().map(r -> r.name()))
            .orElse("");
    boolean unsaved = session.project().map(p -> p.unsaved()).orElse(false);
    frame.setTitle((unsaved ? "* " : "") + (name.isEmpty() ? "" : name + " - ") + "gelfront");
  }

  private void goTo(Pocket p) {
    var at = p.centre().times(1e3);
    gaze.choose(Mode.POCKETS);
    gaze.change(l -> l.choosing(p.number()).with(l.orbit().lookingAt(at).zoomed(0.7)));
  }

  private void goTo(Filled.TrappedAir a) {
    var at = a.place().times(1e3);
    gaze.choose(Mode.FILL);
    gaze.change(l -> l.choosing(-a.number()).with(l.orbit().lookingAt(at).zoomed(0.7)));
  }

  private boolean filled() {
    return session.result().map(r -> r.fields().filled()).orElse(false);
  }

  /** Opens a file, as if it had been dropped on the window. */
  public void open(Path path) {
    session.open(path);
  }

  /**
   * All of the window as a picture.
   *
   * @param picture of the canvas, which Swing can't paint itself
   */
  public BufferedImage painted(BufferedImage picture) {
    JComponent content = (JComponent) frame.getContentPane();
    BufferedImage all =
        new BufferedImage(content.getWidth(), content.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = all.createGraphics();
    content.printAll(g);
    Canvas c = stage.canvas();
    Point at = SwingUtilities.convertPoint(c.getParent(), c.getLocation(), content);
    g.drawImage(picture, at.x, at.y, c.getWidth(), c.getHeight(), null);
    g.dispose();
    return all;
  }
}
