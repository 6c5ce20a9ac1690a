// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.answer.VoxelDoubt;
import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.finding.Amounts;
import gelfront.finding.Filled;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.report.VoxelWords;
import gelfront.result.StoredRun;
import gelfront.setup.Numerics.Level;
import gelfront.verdict.Telling;
import gelfront.viewer.model.Colours;
import gelfront.viewer.model.MeshFaults;
import gelfront.viewer.work.Opened;
import gelfront.viewer.work.Quick;
import gelfront.viewer.work.Session;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Rectangle;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** The verdict, what to change, and every pocket with its facts. */
final class FindingsPane extends JPanel {
  private static final long serialVersionUID = 1;
  private final transient Session session;
  private final transient Supplier<Units> units;
  private final transient Consumer<Pocket> chosen;
  private final transient Consumer<Filled.TrappedAir> air;
  private final JPanel column = new Column(null);

  /** How the shot fills; null where that wasn't calculated. */
  private @Nullable JPanel shot;

  /**
   * @param units that all is told in
   * @param chosen is told the pocket that the user picks
   * @param air is told the trapped air that the user picks
   */
  FindingsPane(
      Session session,
      Supplier<Units> units,
      Consumer<Pocket> chosen,
      Consumer<Filled.TrappedAir> air) {
    super(new BorderLayout());
    this.session = session;
    this.units = units;
    this.chosen = chosen;
    this.air = air;
    add(Ui.scrolling(column));
  }

  void follow() {
    column.removeAll();
    shot = null;
    if (session.opened().orElse(null) instanceof Opened.ABrokenMesh b) {
      broken(b);
    }
    if (session.result().isEmpty() || session.stale()) {
      quick(session.verdict());
    }
    session.result().ifPresent(this::checked);
    column.revalidate();
    column.repaint();
    SwingUtilities.invokeLater(() -> column.scrollRectToVisible(new Rectangle(1, 1)));
  }

  private void broken(Opened.ABrokenMesh b) {
    JPanel card = card(Colours.OPEN_EDGE);
    card.setName("mesh card");
    card.add(Ui.bold("This mesh can't be used yet", 2));
    b.why().forEach(w -> card.add(Ui.text(w)));
    card.add(Ui.text(MeshFaults.of(b.mesh()).words()));
    card.add(Ui.text("Close it in CAD, export it again, and open it here."));
    column.add(card);
  }

  private void quick(Quick.Verdict v) {
    if (session.project().isEmpty()) {
      return;
    }
    int edge = v.findings().map(f -> Colours.of(f.severity())).orElse(Colours.UNJUDGED);
    JPanel card = card(edge);
    card.setName("quick card");
    List<String> lines = v.lines(units.get());
    card.add(Ui.bold(lines.get(0), 2));
    if (v.error().isEmpty()) {
      lines.subList(1, lines.size()).forEach(l -> card.add(Ui.text(l)));
    } else {
      card.add(Ui.text(v.error()));
    }
    card.add(Ui.text("Quick: coarse voxels. Press Check before you cut metal."));
    column.add(card);
  }

  private void checked(StoredRun run) {
    Findings f = told(run.findings());
    JPanel card = card(Colours.of(f.severity()));
    card.setName("verdict card");
    if (session.stale()) {
      card.add(Ui.text("Checked before your last change:"));
    }
    card.add(Ui.bold(f.verdict(), 2));
    card.add(Ui.text(times(f)));
    if (!f.opening().sentence().isEmpty()) {
      card.add(Ui.text(f.opening().sentence()));
    }
    session.voxels().ifPresent(v -> voxels(card, v));
    if (run.fields().spacing() > 0.99 * Level.QUICK.voxel()) {
      card.add(
          Ui.text(
              "In coarse voxels (level quick): check it at level normal before you cut metal."));
    }
    if (session.comparing()) {
      card.add(
          Ui.text("Calculating it in coarser voxels, too: does the verdict hang on their size?"));
    }
    column.add(card);
    boolean wanting = f.filled().mayNotFill() || !f.filled().air().isEmpty();
    if (wanting) {
      shot(f);
    }
    if (!f.advice().isEmpty()) {
      column.add(section("What to change, best first", f.advice()));
    }
    JPanel pockets = card(Colours.UNJUDGED);
    pockets.add(Ui.head("Pockets cut off from the sprue"));
    if (f.pockets().isEmpty()) {
      pockets.add(Ui.text("None: every place was fed until it had set."));
    }
    f.pockets().forEach(p -> pockets.add(pocket(p)));
    column.add(pockets);
    if (f.filled().calculated() && !wanting) {
      shot(f);
    }
    column.add(section("How it went", List.of(f.explanation())));
    column.add(section("What to melt", List.of(melt(f.amounts()))));
    if (!run.cautions().isEmpty()) {
      column.add(section("Mind", run.cautions().stream().map(c -> c.in(units.get())).toList()));
    }
  }

  /** A result's own words are in millimetres and °C; the same are made anew for others. */
  private Findings told(Findings f) {
    return units.get().equals(Units.METRIC) ? f : new Telling(units.get()).of(f);
  }

  private void shot(Findings f) {
    JPanel card = card(f.filled().mayNotFill() ? Colours.OPEN_EDGE : Colours.UNJUDGED);
    ShotCard.fill(card, f.filled(), units.get(), air);
    column.add(card);
    shot = card;
  }

  /** Scrolls to how the shot fills. */
  void showShot() {
    SwingUtilities.invokeLater(
        () -> {
          if (shot != null) {
            shot.scrollRectToVisible(new Rectangle(0, 0, 1, shot.getHeight()));
          }
        });
  }

  private static String melt(Amounts a) {
    String words =
        Quantities.say(
            "At least %s a shot: %s%s in the part, %s in gate and sprue, %s drawn in as it cools.",
            Quantities.ml(a.shotVolume()),
            a.cavities() > 1 ? a.cavities() + " x " : "",
            Quantities.ml(a.partVolume()),
            Quantities.ml(a.feedVolume()),
            Quantities.ml(a.topUpVolume()));
    if (a.injectorCapacity().isEmpty()) {
      return words;
    }
    return words
        + (a.injectorHoldsIt() ? " The injector holds it." : " The injector is too small.");
  }

  /** What follows first, then what both sizes say. */
  private void voxels(JPanel card, VoxelDoubt v) {
    List<String> said = VoxelWords.of(v, units.get());
    boolean sure = v.hold() == VoxelDoubt.Hold.HOLDS;
    String last = said.get(said.size() - 1);
    card.add(Ui.gap(4));
    card.add(sure ? Ui.text(last) : Ui.bold(last, 0));
    said.subList(0, said.size() - 1).forEach(w -> card.add(Ui.text(w)));
  }

  private Component pocket(Pocket p) {
    JPanel row = new JPanel(new BorderLayout(8, 0));
    row.setAlignmentX(LEFT_ALIGNMENT);
    Ui.padded(row, 6, 0, 2, 0);
    var number =
        Ui.button(
            "pocket " + p.number(),
            Integer.toString(p.number()),
            "Goes there and shows it alone",
            () -> chosen.accept(p));
    number.setBackground(Ui.colour(Colours.pocket(p.number())));
    number.setForeground(java.awt.Color.BLACK);
    JPanel west = new JPanel(new BorderLayout());
    west.add(number, BorderLayout.NORTH);
    row.add(west, BorderLayout.WEST);
    JPanel words = new Column(null);
    words.add(Ui.text(p.sentence() + " " + facts(p)));
    if (!p.sign().isEmpty()) {
      words.add(Ui.text("At the bench: " + p.sign()));
    }
    row.add(words, BorderLayout.CENTER);
    return row;
  }

  private String facts(Pocket p) {
    return Quantities.say(
        "%s, %s in the mean at cut-off, set after %.0f s.",
        Quantities.ml(p.volume()),
        units.get().temperature(p.meanTemperatureAtCutOff()),
        p.lastSet());
  }

  private static JPanel section(String head, List<String> lines) {
    JPanel card = card(Colours.UNJUDGED);
    card.add(Ui.head(head));
    lines.forEach(l -> card.add(Ui.text(l)));
    return card;
  }

  private static JPanel card(int edge) {
    JPanel card = new JPanel();
    card.setLayout(new BoxLayout(card, BoxLayout.Y_AXIS));
    card.setAlignmentX(LEFT_ALIGNMENT);
    card.setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createEmptyBorder(8, 8, 0, 8),
            BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(0, 6, 0, 0, Ui.colour(edge)),
                BorderFactory.createEmptyBorder(4, 10, 6, 4))));
    return card;
  }

  static String times(Findings f) {
    return "All of the part has set "
        + after(f.partSets())
        + "; firm enough to open "
        + after(f.firmAt())
        + ".";
  }

  private static String after(double seconds) {
    return Double.isFinite(seconds)
        ? Quantities.say(seconds < 10 ? "after %.1f s" : "after %.0f s", seconds)
        : "not within this run";
  }
}
