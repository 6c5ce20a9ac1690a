// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.viewer.work.Project;
import gelfront.viewer.work.Session;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Font;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;

/** What can be done, at the head of the window. */
final class ActionBar extends JPanel {
  private static final long serialVersionUID = 1;
  private final transient Session session;
  private final JButton save;
  private final JButton undo;
  private final JButton redo;
  private final JButton check;
  private final JButton share;
  private final JButton compare;
  private final JProgressBar bar = new JProgressBar(0, 1000);
  private final JLabel stage = new JLabel(" ");

  /** What its buttons do that is not the session's. */
  interface Doing {
    void open();

    void save();

    void share(JButton from);

    void compare(JButton from);

    void settings(JButton from);
  }

  ActionBar(Session session, Doing doing) {
    super(new BorderLayout(12, 0));
    this.session = session;
    Ui.padded(this, 6, 8, 6, 8);
    JPanel left = new JPanel(new FlowLayout(FlowLayout.LEFT, 6, 0));
    left.add(Ui.button("do open", "Open", "An STL, a case or a result (Ctrl O)", doing::open));
    save = Ui.button("do save", "Save", "Saves the case file (Ctrl S)", doing::save);
    undo = Ui.button("do undo", "Undo", "Takes the last change back (Ctrl Z)", session::undo);
    redo = Ui.button("do redo", "Redo", "Does it again (Ctrl Y)", session::redo);
    check = new JButton("Check");
    check.setName("do check");
    check.setFont(check.getFont().deriveFont(Font.BOLD, check.getFont().getSize2D() + 3));
    check.putClientProperty("JButton.buttonType", "default");
    check.addActionListener(e -> checkOrStop());
    left.add(save);
    left.add(undo);
    left.add(redo);
    left.add(check);
    add(left, BorderLayout.WEST);
    JPanel middle = new JPanel(new BorderLayout(0, 2));
    stage.setName("stage");
    bar.setName("progress");
    bar.setPreferredSize(new Dimension(100, 6));
    middle.add(stage, BorderLayout.CENTER);
    middle.add(bar, BorderLayout.SOUTH);
    add(middle, BorderLayout.CENTER);
    JPanel right = new JPanel(new FlowLayout(FlowLayout.RIGHT, 6, 0));
    compare = new JButton("Compare");
    compare.setName("do compare");
    compare.setToolTipText("Two designs side by side");
    compare.addActionListener(e -> doing.compare(compare));
    share = new JButton("Share");
    share.setName("do share");
    share.setToolTipText("Picture, pictures all round, report");
    share.addActionListener(e -> doing.share(share));
    JButton settings = new JButton("Settings");
    settings.setName("do settings");
    settings.setToolTipText("Units, light or dark, the tour");
    settings.addActionListener(e -> doing.settings(settings));
    right.add(compare);
    right.add(share);
    right.add(settings);
    add(right, BorderLayout.EAST);
    follow();
  }

  void checkOrStop() {
    if (session.checking().isPresent()) {
      session.stopCheck();
    } else {
      session.check();
    }
  }

  void follow() {
    boolean project = session.project().isPresent();
    boolean running = session.checking().isPresent();
    save.setEnabled(session.project().map(Project::unsaved).orElse(false));
    undo.setEnabled(session.project().map(Project::canUndo).orElse(false));
    redo.setEnabled(session.project().map(Project::canRedo).orElse(false));
    check.setEnabled(project);
    check.setText(running ? "Stop" : "Check");
    check.setToolTipText(
        running ? "Stops at once" : "Calculates this design for good (Ctrl Enter)");
    compare.setEnabled(session.result().isPresent());
    share.setEnabled(project || session.result().isPresent());
    bar.setVisible(running);
    session
        .checking()
        .ifPresent(
            p -> {
              bar.setValue((int) Math.round(1000 * p.share()));
              stage.setText(p.words());
            });
    if (!running) {
      stage.setText(" ");
    }
  }
}
