// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.base.Quantities;
import gelfront.viewer.model.LateSlider;
import gelfront.viewer.model.Look;
import gelfront.viewer.model.Mode;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.Locale;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.Timer;

/**
 * The slider below the picture: plays the freezing on a cut, hides what has set before among late
 * cells, exaggerates dents. Where there is nothing to slide, it says what the picture shows.
 */
final class TimePane extends JPanel {
  private static final long serialVersionUID = 1;

  /** A whole run is played in so many seconds. */
  private static final double PLAYED = 8;

  private static final int TICK_MS = 40;

  /** Of the words beside the slider, so that it stays where it is. */
  private static final Dimension BESIDE = new Dimension(230, 20);

  private static final double MOST_TIMES = 20;

  private final transient Gaze gaze;
  private final JSlider slider = new JSlider(0, LateSlider.STEPS, 0);
  private final JLabel words = new JLabel();
  private final JButton play;
  private final Timer timer;
  private boolean following;

  TimePane(Gaze gaze) {
    super(new BorderLayout(10, 0));
    this.gaze = gaze;
    play = Ui.button("play", "Play", "Plays it from the start (space)", this::play);
    timer = new Timer(TICK_MS, e -> tick());
    Ui.padded(this, 6, 10, 6, 10);
    slider.setName("late");
    words.setName("slider words");
    play.setPreferredSize(new Dimension(74, play.getPreferredSize().height));
    slider.addChangeListener(
        e -> {
          if (!following) {
            moved();
          }
        });
    setPreferredSize(new Dimension(400, play.getPreferredSize().height + 12));
    add(words, BorderLayout.WEST);
    add(slider, BorderLayout.CENTER);
    add(play, BorderLayout.EAST);
    gaze.watch(this::follow);
  }

  private LateSlider steps() {
    return new LateSlider(gaze.end());
  }

  private void moved() {
    int at = slider.getValue();
    gaze.change(
        l ->
            switch (l.mode()) {
              case CELLS -> l.hidingBefore(steps().from(at));
              case FILL -> l.shotAt(at == LateSlider.STEPS ? Double.NaN : steps().from(at));
              case DENTS -> l.exaggerated(MOST_TIMES * at / LateSlider.STEPS);
              default -> l.atTime(at == LateSlider.STEPS ? Double.NaN : steps().from(at));
            });
  }

  private void follow(Look l) {
    boolean plays = l.mode().inside();
    boolean used = plays || l.mode() == Mode.DENTS;
    following = true;
    slider.setEnabled(used);
    slider.setVisible(used);
    play.setEnabled(plays);
    play.setVisible(plays);
    words.setPreferredSize(used ? BESIDE : null);
    slider.setValue(
        switch (l.mode()) {
          case CELLS -> steps().stepAt(l.from());
          case FILL -> Double.isNaN(l.shot()) ? LateSlider.STEPS : steps().stepAt(l.shot());
          case DENTS -> (int) Math.round(LateSlider.STEPS * l.exaggeration() / MOST_TIMES);
          default -> Double.isNaN(l.time()) ? LateSlider.STEPS : steps().stepAt(l.time());
        });
    following = false;
    words.setText(says(l));
    slider.setToolTipText(l.mode().meaning());
    slider.getAccessibleContext().setAccessibleName(says(l));
  }

  private static String says(Look l) {
    return switch (l.mode()) {
      case CELLS ->
          l.from() > 0
              ? Quantities.say("Shown: still soft after %.1f s", l.from())
              : "All cells are shown";
      case DENTS -> Quantities.say("Dents %.1f times as deep", l.exaggeration());
      case FILL ->
          Double.isNaN(l.shot())
              ? "End of the shot: slide back"
              : Quantities.say("%.2f s into the shot", l.shot());
      case OPEN ->
          Double.isNaN(l.time())
              ? "All set: slide back to see it freeze"
              : Quantities.say("%.1f s after the shot", l.time());
      default ->
          l.mode().meaning().substring(0, 1).toUpperCase(Locale.ROOT)
              + l.mode().meaning().substring(1)
              + ".";
    };
  }

  void move(int by) {
    if (slider.isEnabled()) {
      slider.setValue(slider.getValue() + by);
    }
  }

  void play() {
    if (timer.isRunning()) {
      halt();
      return;
    }
    if (play.isEnabled()) {
      if (slider.getValue() >= LateSlider.STEPS) {
        slider.setValue(0);
      }
      play.setText("Halt");
      timer.start();
    }
  }

  private void halt() {
    timer.stop();
    play.setText("Play");
  }

  private void tick() {
    int by = (int) Math.max(1, Math.round(LateSlider.STEPS * TICK_MS * 1e-3 / PLAYED));
    slider.setValue(slider.getValue() + by);
    if (slider.getValue() >= LateSlider.STEPS || !play.isEnabled()) {
      halt();
    }
  }
}
