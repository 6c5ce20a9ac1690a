// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.base.Units;
import gelfront.setup.LoadedCase;
import gelfront.viewer.model.FormField;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextField;

/** One line of the form: label, what is typed or chosen, unit. */
final class FieldRow {
  /** Takes what was typed; what is wrong with it in words, empty: nothing. */
  interface Typed {
    Optional<String> take(FormField field, String text);
  }

  private final FormField field;
  private final JLabel label;
  private final JLabel unit = new JLabel();
  private final JComponent input;
  private final JTextField text = new JTextField(7);
  private final JComboBox<String> choice = new JComboBox<>();
  private boolean following;
  private String shown = "";

  FieldRow(FormField field, Typed typed, Runnable focused) {
    this.field = field;
    this.label = new JLabel(field.label());
    this.input = field.isChoice() ? choice : text;
    choice.setPrototypeDisplayValue("aluminium");
    text.setMinimumSize(text.getPreferredSize());
    input.setName(field.key());
    label.setLabelFor(input);
    input.getAccessibleContext().setAccessibleDescription(field.meaning());
    text.addActionListener(e -> take(typed, text.getText()));
    choice.addActionListener(
        e -> {
          if (!following && choice.getSelectedItem() != null) {
            take(typed, (String) choice.getSelectedItem());
          }
        });
    input.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            focused.run();
          }

          @Override
          public void focusLost(FocusEvent e) {
            if (!field.isChoice()) {
              take(typed, text.getText());
            }
          }
        });
  }

  private void take(Typed typed, String what) {
    if (what.equals(shown)) {
      return;
    }
    Optional<String> wrong = typed.take(field, what);
    input.putClientProperty("JComponent.outline", wrong.isPresent() ? "error" : null);
    wrong.ifPresent(input::setToolTipText);
  }

  JLabel label() {
    return label;
  }

  JComponent input() {
    return input;
  }

  JLabel unit() {
    return unit;
  }

  FormField field() {
    return field;
  }

  /** As the case stands now. */
  void follow(LoadedCase loaded, Units units) {
    following = true;
    shown = field.shown(loaded, units);
    if (field.isChoice()) {
      List<String> choices = field.choices().apply(loaded);
      choice.removeAllItems();
      choices.forEach(choice::addItem);
      choice.setSelectedItem(shown);
    } else {
      text.setText(shown);
      text.setCaretPosition(0);
      unit.setText(units.shown(field.measured()));
    }
    boolean odd = field.odd(loaded);
    input.putClientProperty("JComponent.outline", odd ? "warning" : null);
    String usual = field.usual(units);
    String tip = field.meaning() + (usual.isEmpty() ? "" : "; " + usual);
    input.setToolTipText(odd ? tip + ": this is not" : tip);
    label.setToolTipText(input.getToolTipText());
    following = false;
  }
}
