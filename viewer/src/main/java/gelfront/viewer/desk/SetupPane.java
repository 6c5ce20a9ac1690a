// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.base.Entries;
import gelfront.base.Units;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.viewer.model.Form;
import gelfront.viewer.model.FormField;
import gelfront.viewer.model.Gates;
import gelfront.viewer.work.Session;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;

/** The form: every line says what it means and what is usual. */
final class SetupPane extends JPanel {
  private static final long serialVersionUID = 1;

  private final transient Session session;
  private final transient Map<String, List<FieldRow>> rows = new LinkedHashMap<>();
  private final Map<String, JLabel> heads = new LinkedHashMap<>();
  private final JTextArea help = Ui.text("");
  private final JPanel unitQuestion = new JPanel(new BorderLayout());
  private transient Units units = Units.METRIC;

  /** Buttons that go with a heading. */
  private final Map<String, JButton> buttons = new LinkedHashMap<>();

  /**
   * @param addsGate waits for a click on the part, where another gate goes
   */
  SetupPane(Session session, Runnable addsGate) {
    super(new BorderLayout());
    this.session = session;
    buttons(addsGate);
    JPanel lines = new JPanel(new GridBagLayout());
    Ui.padded(lines, 4, 10, 8, 10);
    int y = 0;
    for (Map.Entry<String, List<FormField>> section : Form.sections().entrySet()) {
      JLabel head = Ui.head(section.getKey());
      heads.put(section.getKey(), head);
      lines.add(head, at(0, y++, 3, 10));
      List<FieldRow> list = new ArrayList<>();
      for (FormField f : section.getValue()) {
        FieldRow row = new FieldRow(f, this::typed, () -> explain(f));
        list.add(row);
        lines.add(row.label(), at(0, y, 1, 2));
        lines.add(row.input(), at(1, y, f.isChoice() ? 2 : 1, 2));
        lines.add(row.unit(), at(2, y++, 1, 2));
      }
      rows.put(section.getKey(), list);
      if (buttons.containsKey(section.getKey())) {
        lines.add(buttons.get(section.getKey()), at(1, y++, 2, 4));
      }
    }
    JPanel top = new Column(new BorderLayout());
    top.add(lines, BorderLayout.NORTH);
    add(unitQuestion, BorderLayout.NORTH);
    add(Ui.scrolling(top), BorderLayout.CENTER);
    help.setName("field help");
    help.setRows(3);
    JPanel foot = new JPanel(new BorderLayout());
    Ui.padded(foot, 6, 10, 8, 10);
    foot.add(help);
    foot.setPreferredSize(new Dimension(280, 66));
    add(foot, BorderLayout.SOUTH);
    help.setText(
        "Click on the part to put the gate there. Drag a gate to move it, its rim to size it.");
  }

  private void buttons(Runnable addsGate) {
    String where = "Then click on the part; or click there with the right button";
    buttons.put("Gate", Ui.button("add gate", "Add a gate", where, addsGate));
    for (int n = 1; n <= Form.FURTHER.size(); n++) {
      int number = n;
      String heading = Form.FURTHER.get(n - 1);
      String tip = "Takes the " + heading.toLowerCase(Locale.ROOT) + " and its runner away";
      Runnable removes = () -> session.change(Gates.removed(number)).ifPresent(session::complain);
      buttons.put(heading, Ui.button("remove gate " + (n + 1), "Remove it", tip, removes));
    }
  }

  private static GridBagConstraints at(int x, int y, int width, int above) {
    return new GridBagConstraints(
        x,
        y,
        width,
        1,
        x == 1 ? 1 : 0,
        0,
        GridBagConstraints.LINE_START,
        GridBagConstraints.HORIZONTAL,
        new Insets(above, x == 0 ? 0 : 6, 0, 0),
        0,
        0);
  }

  private Optional<String> typed(FormField field, String text) {
    LoadedCase loaded = session.project().orElseThrow().now();
    try {
      List<Change> changes = field.changed(text, loaded, units);
      Optional<String> wrong = session.change(changes);
      wrong.ifPresent(session::complain);
      return wrong;
    } catch (IllegalArgumentException e) {
      session.complain(String.valueOf(e.getMessage()));
      return Optional.of(String.valueOf(e.getMessage()));
    }
  }

  private void explain(FormField f) {
    String usual = f.usual(units);
    help.setText(f.label() + ": " + f.meaning() + (usual.isEmpty() ? "." : "; " + usual + "."));
  }

  void show(Units shown) {
    units = shown;
    follow();
  }

  /** Asks about a mesh's unit; null: nothing to ask. */
  void ask(@Nullable JPanel question) {
    unitQuestion.removeAll();
    if (question != null) {
      unitQuestion.add(question);
    }
    unitQuestion.revalidate();
  }

  /** As the case stands now. */
  void follow() {
    if (session.project().isEmpty()) {
      return;
    }
    LoadedCase loaded = session.project().get().now();
    rows.forEach(
        (heading, list) -> {
          boolean fits = Form.fits(heading, loaded);
          Entries.of(heads, heading).setVisible(fits);
          Optional.ofNullable(buttons.get(heading)).ifPresent(b -> b.setVisible(fits));
          for (FieldRow r : list) {
            String key = r.field().key();
            boolean lone = key.endsWith(".height") || key.equals("block.wall");
            boolean shown = fits && !(lone && r.field().shown(loaded, units).isEmpty());
            r.label().setVisible(shown);
            r.input().setVisible(shown);
            r.unit().setVisible(shown);
            if (fits) {
              r.follow(loaded, units);
            }
          }
        });
  }
}
