package gelfront.viewer.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JPanel;

/** What one sees before anything is open. */
final class StartPane extends JPanel {
  private static final long serialVersionUID = 1;

  /**
   * @param recent files, newest first
   */
  StartPane(List<Path> recent, Runnable open, Runnable example, Consumer<Path> again) {
    setLayout(new BoxLayout(this, BoxLayout.Y_AXIS));
    Ui.padded(this, 14, 14, 14, 14);
    add(Ui.head("Will it dent?"));
    add(Ui.gap(6));
    add(
        Ui.text(
            "Drop the STL of your part on this window, or open it. Then click where the gate goes"
                + " and press Check."));
    add(Ui.gap(10));
    add(left(Ui.button("start open", "Open STL, case or result", "Ctrl O", open)));
    add(Ui.gap(6));
    add(
        left(
            Ui.button(
                "start example", "Try the example", "Two bulbs with a neck: it dents", example)));
    if (!recent.isEmpty()) {
      add(Ui.gap(16));
      add(Ui.head("Opened lately"));
      for (Path p : recent) {
        JButton b =
            Ui.button("recent", p.getFileName().toString(), p.toString(), () -> again.accept(p));
        b.setHorizontalAlignment(JButton.LEFT);
        add(Ui.gap(4));
        add(left(b));
      }
    }
  }

  private static JButton left(JButton b) {
    b.setAlignmentX(LEFT_ALIGNMENT);
    return b;
  }
}
