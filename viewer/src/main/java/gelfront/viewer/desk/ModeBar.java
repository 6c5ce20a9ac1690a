// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.base.Entries;
import gelfront.viewer.model.Look;
import gelfront.viewer.model.Mode;
import gelfront.viewer.model.Plane;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Insets;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JToggleButton;

/** Above the picture: what it is about, and where it is cut open. */
final class ModeBar extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int STEPS = 200;

  private final transient Gaze gaze;
  private final Map<Mode, JToggleButton> modes = new EnumMap<>(Mode.class);
  private final JCheckBox open = new JCheckBox("Cut");
  private final JComboBox<String> axis =
      new JComboBox<>(new String[] {"across x", "across y", "across z", "any way"});
  private final JSlider place = new JSlider(0, STEPS, STEPS / 2);
  private boolean following;

  ModeBar(Gaze gaze) {
    super(new FlowLayout(FlowLayout.LEFT, 4, 5));
    this.gaze = gaze;
    ButtonGroup group = new ButtonGroup();
    for (Mode m : Mode.values()) {
      JToggleButton b = new JToggleButton(m.label());
      b.setName("mode " + m.name());
      b.setToolTipText(m.meaning() + " (" + (m.ordinal() + 1) + ")");
      b.addActionListener(e -> gaze.choose(m));
      b.setMargin(new Insets(2, 9, 2, 9));
      group.add(b);
      modes.put(m, b);
      add(b);
    }
    open.setName("open");
    open.setToolTipText(
        "Cut the part open (X); shift-drag in the picture moves the cut, alt-drag tilts it");
    axis.setName("axis");
    axis.setToolTipText("Which way the cut lies");
    place.setName("place");
    place.setToolTipText("Where the part is cut");
    place.setPreferredSize(new Dimension(80, place.getPreferredSize().height));
    open.addActionListener(e -> cut());
    axis.addActionListener(e -> turned());
    place.addChangeListener(e -> moved());
    add(open);
    add(axis);
    add(place);
    gaze.watch(this::follow);
  }

  /**
   * Which views there are to choose from.
   *
   * @param filled whether the shot itself was calculated
   */
  void allow(boolean setup, boolean result, boolean filled) {
    modes.forEach((m, b) -> b.setEnabled(m.ofAResult() ? result : setup));
    JToggleButton filling = Entries.of(modes, Mode.FILL);
    filling.setVisible(filled);
    filling.setEnabled(filled);
  }

  void choose(Mode m) {
    if (Entries.of(modes, m).isEnabled()) {
      gaze.choose(m);
    }
  }

  void toggleCut() {
    if (open.isEnabled()) {
      open.setSelected(!open.isSelected());
      cut();
    }
  }

  private void cut() {
    gaze.change(
        l ->
            l.cut(
                open.isSelected()
                    ? Optional.of(Plane.lengthwise(l.orbit().extent()))
                    : Optional.empty()));
  }

  private void turned() {
    if (!following && axis.getSelectedIndex() < 3) {
      int a = axis.getSelectedIndex();
      gaze.change(l -> l.cut(Optional.of(Plane.across(a, l.orbit().extent()))));
    }
  }

  private void moved() {
    if (!following) {
      double share = (double) place.getValue() / STEPS;
      gaze.change(l -> l.cut(l.plane().map(p -> p.at(share, l.orbit().extent()))));
    }
  }

  private void follow(Look l) {
    following = true;
    Entries.of(modes, l.mode()).setSelected(true);
    boolean can = l.mode().ofAResult();
    open.setEnabled(can);
    open.setSelected(can && l.plane().isPresent());
    axis.setEnabled(open.isSelected());
    place.setEnabled(open.isSelected());
    l.plane()
        .ifPresent(
            p -> {
              axis.setSelectedIndex(axis(p));
              place.setValue((int) Math.round(STEPS * p.share(l.orbit().extent())));
            });
    following = false;
  }

  private static int axis(Plane p) {
    double[] n = {p.normal().x(), p.normal().y(), p.normal().z()};
    for (int a = 0; a < 3; a++) {
      if (Math.abs(n[a]) > 0.9999) {
        return a;
      }
    }
    return 3;
  }
}
