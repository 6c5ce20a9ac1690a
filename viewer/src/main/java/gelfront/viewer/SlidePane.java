package gelfront.viewer;

import gelfront.viewer.model.LateSlider;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.Hashtable;
import java.util.Locale;
import java.util.function.DoubleConsumer;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;

/** The slider that hides what has set before, with the moment it starts at marked. */
final class SlidePane extends JPanel {
  private static final long serialVersionUID = 1;

  /** Steps within which two labels would lie over each other. */
  private static final int NEAR = LateSlider.STEPS / 10;

  private final transient LateSlider steps;
  private final JSlider slider = new JSlider(0, LateSlider.STEPS, 0);
  private final JLabel words = new JLabel();

  /**
   * @param start s, where the slider stands at first
   * @param startName what happens then
   * @param moved is told s from which cells are to be shown
   */
  SlidePane(LateSlider steps, double start, String startName, DoubleConsumer moved) {
    super(new BorderLayout(12, 2));
    this.steps = steps;
    setBorder(BorderFactory.createEmptyBorder(8, 14, 8, 14));
    slider.setName("late");
    slider.getAccessibleContext().setAccessibleName("hide what has set before, seconds");
    marks(start, startName);
    words.setPreferredSize(new Dimension(300, 20));
    slider.addChangeListener(
        e -> {
          say();
          moved.accept(from());
        });
    slider.setValue(steps.stepAt(start));
    say();
    add(words, BorderLayout.WEST);
    add(slider, BorderLayout.CENTER);
    JLabel help = new JLabel(ViewControls.HELP);
    help.setEnabled(false);
    add(help, BorderLayout.SOUTH);
  }

  private void marks(double start, String startName) {
    // JSlider asks for this old kind of table.
    @SuppressWarnings("JdkObsolete")
    Hashtable<Integer, JLabel> labels = new Hashtable<>();
    int at = steps.stepAt(start);
    if (at > NEAR) {
      labels.put(0, new JLabel("all"));
    }
    labels.put(LateSlider.STEPS, new JLabel("last"));
    if (at > 0 && at < LateSlider.STEPS - NEAR) {
      labels.put(at, new JLabel(startName));
    }
    slider.setLabelTable(labels);
    slider.setPaintLabels(true);
  }

  private void say() {
    words.setText(
        slider.getValue() == 0
            ? "All cells are shown"
            : String.format(Locale.ROOT, "Shown: still soft after %.1f s", from()));
  }

  /** s from which cells are shown. */
  double from() {
    return steps.from(slider.getValue());
  }

  void move(int by) {
    slider.setValue(slider.getValue() + by);
  }

  void moveTo(double seconds) {
    slider.setValue(steps.stepAt(seconds));
  }
}
