// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Remedies.Effort;
import gelfront.setup.Change;
import java.util.ArrayList;
import java.util.List;

/**
 * Something that may help.
 *
 * @param effort that it takes
 * @param knob that it turns: two remedies of one knob can't be done together
 * @param label what is done
 * @param changes of the case file
 * @param caution that goes with it; may be empty
 * @param fillsWorse whether thin places fill worse with it
 */
record Remedy(
    Effort effort,
    String knob,
    String label,
    List<Change> changes,
    String caution,
    boolean fillsWorse) {
  Remedy {
    changes = List.copyOf(changes);
  }

  /** Both at once. */
  Remedy and(Remedy other) {
    List<Change> both = new ArrayList<>(changes);
    both.addAll(other.changes);
    String cautions = (caution + " " + other.caution).strip();
    return new Remedy(
        effort.compareTo(other.effort) > 0 ? effort : other.effort,
        knob + "+" + other.knob,
        label + " + " + other.label,
        both,
        cautions,
        fillsWorse || other.fillsWorse);
  }

  boolean fitsWith(Remedy other) {
    return !knob.equals(other.knob);
  }
}
