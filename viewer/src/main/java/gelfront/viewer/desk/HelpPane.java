// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.answer.Ran;
import gelfront.answer.Remedies;
import gelfront.answer.Sizing;
import gelfront.base.Units;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import gelfront.report.RemediesFiles;
import gelfront.setup.LoadedCase;
import gelfront.viewer.model.Colours;
import gelfront.viewer.model.RemedySaid;
import gelfront.viewer.work.Asking;
import gelfront.viewer.work.Help;
import gelfront.viewer.work.Session;
import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;

/** "What helps?": remedies, sizes and shots in a row; one press makes a proposed design. */
final class HelpPane extends JPanel {
  private static final long serialVersionUID = 1;
  private final transient Session session;
  private final transient Supplier<Units> units;
  private final JPanel column = new Column(null);
  private final List<JButton> asks = new ArrayList<>();

  /**
   * @param units that answers are told in
   */
  HelpPane(Session session, Supplier<Units> units) {
    super(new BorderLayout());
    this.session = session;
    this.units = units;
    add(Ui.scrolling(column));
    ask(
        "help remedies",
        "What can I do about it?",
        "Tries recipe, file work and redesign; minutes",
        Help::remedies);
    ask(
        "help sizes",
        "How wide must the gate be?",
        "Finds the smallest gate without a dent; minutes",
        Help::sizes);
    ask(
        "help shots",
        "Shots in a row",
        "How the warming mould changes the part; minutes",
        Help::shots);
    follow();
  }

  private void ask(String name, String label, String tip, Asking asking) {
    JButton b = Ui.button(name, label, tip, () -> session.ask(asking));
    b.setAlignmentX(LEFT_ALIGNMENT);
    asks.add(b);
  }

  void follow() {
    column.removeAll();
    Ui.padded(column, 10, 10, 10, 10);
    for (JButton b : asks) {
      b.setEnabled(session.project().isPresent() && session.checking().isEmpty());
      column.add(b);
      column.add(Ui.gap(6));
    }
    session.help().ifPresent(this::answer);
    SwingUtilities.invokeLater(() -> column.scrollRectToVisible(new Rectangle(1, 1)));
    column.revalidate();
    column.repaint();
  }

  private void answer(Help h) {
    if (h instanceof Help.OfRemedies r) {
      verdict(r.answer().told().in(units.get()));
      remedies(r);
    } else if (h instanceof Help.OfSizes s) {
      verdict(s.answer().told().in(units.get()));
      sizes(s);
    } else if (h instanceof Help.OfShots s) {
      column.add(Ui.gap(6));
      ShotsPane strip = new ShotsPane(s.answer(), units.get());
      column.add(strip.words());
      column.add(strip);
    }
  }

  private void verdict(String words) {
    column.add(Ui.gap(6));
    column.add(Ui.bold(words, 0));
  }

  private void remedies(Help.OfRemedies r) {
    List<Remedies.Line> lines = new ArrayList<>(r.answer().lines());
    lines.addAll(r.answer().pairs());
    for (boolean cures : new boolean[] {true, false}) { // what cures it stands at the top
      for (int i = 0; i < lines.size(); i++) {
        Remedies.Line l = lines.get(i);
        if (cures == cures(r.answer(), l)) {
          String facts = RemedySaid.facts(r.answer(), l, units.get());
          proposal(RemedySaid.head(l, units.get()), facts, cures, r.designs().get(i));
        }
      }
    }
    r.answer()
        .notRun()
        .forEach(
            n -> column.add(Ui.text("Not tried: " + n.what().in(units.get()) + ": " + n.why())));
  }

  private static boolean cures(Remedies r, Remedies.Line l) {
    return Remedies.Line.cures(l.best(), r.visible()) && l.doubt().isEmpty();
  }

  private void sizes(Help.OfSizes s) {
    List<Sizing.Choice> choices = s.answer().best().map(Sizing.Place::choices).orElse(List.of());
    if (choices.isEmpty()) {
      s.answer().places().forEach(p -> tried(p, s.answer().told().in(units.get())));
    }
    s.answer()
        .best()
        .filter(Sizing.Place::elsewhere)
        .ifPresent(p -> place("Gate moved: " + p.label()));
    for (int i = 0; i < choices.size(); i++) {
      Sizing.Choice c = choices.get(i);
      boolean holds = c.holds(s.answer().visible());
      String facts =
          (holds ? "Cures it: dent " : "Does not hold at level normal: dent ")
              + dent(c.normal())
              + ", sprue "
              + units.get().size(c.sprue())
              + ".";
      Optional<LoadedCase> design =
          i < s.designs().size() ? Optional.of(s.designs().get(i)) : Optional.empty();
      proposal("Gate " + c.size().in(units.get()) + " (" + c.label() + ")", facts, holds, design);
    }
  }

  private void place(String words) {
    column.add(Ui.gap(8));
    column.add(Ui.bold(words, 1));
  }

  private String where(Sizing.Place p) {
    Vec3 at = p.at();
    return p.elsewhere()
        ? p.label()
            + ", "
            + units.get().lengths("x = %s, y = %s, z = %s", 0, at.x(), at.y(), at.z())
        : p.label();
  }

  /** How near gates come where none will do. */
  private void tried(Sizing.Place p, String said) {
    place(RemedySaid.capital(where(p)));
    String words = p.told().in(units.get());
    if (!said.contains(words)) {
      column.add(Ui.text(words));
    }
    for (Sizing.Point at : p.curve()) {
      String gate = units.get().size(at.gate());
      column.add(Ui.text("Gate " + gate + ": dent " + dent(at.ran()) + ", level " + at.level()));
    }
  }

  private String dent(Ran ran) {
    return RemediesFiles.left(ran, units.get());
  }

  private void proposal(String label, String facts, boolean good, Optional<LoadedCase> design) {
    int edge = good ? Colours.of(Severity.CLEAN) : Colours.UNJUDGED;
    JPanel row = new JPanel(new BorderLayout(6, 0));
    row.setAlignmentX(LEFT_ALIGNMENT);
    row.setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createEmptyBorder(6, 0, 0, 0),
            BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(0, 5, 0, 0, Ui.colour(edge)),
                BorderFactory.createEmptyBorder(2, 8, 2, 0))));
    JPanel words = new Column(null);
    words.add(Ui.bold(label, 0));
    words.add(Ui.text(facts));
    row.add(words, BorderLayout.CENTER);
    JPanel east = new JPanel(new BorderLayout());
    JButton use =
        Ui.button(
            "use",
            "Use",
            "Makes this design; Undo takes it back",
            () -> session.become(design.get()));
    use.setEnabled(design.isPresent());
    east.add(use, BorderLayout.NORTH);
    row.add(east, BorderLayout.EAST);
    column.add(row);
  }
}
