// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Remedies.Effort;
import gelfront.base.Told;
import gelfront.setup.Change;
import java.util.ArrayList;
import java.util.List;

/**
 * Something that may help.
 *
 * @param effort that it takes
 * @param knob that it turns: two remedies of one knob can't be done together
 * @param what is done
 * @param changes of the case file
 * @param caution that goes with it; may be empty
 * @param fillsWorse whether thin places fill worse with it
 */
record Remedy(
    Effort effort,
    String knob,
    Told what,
    List<Change> changes,
    String caution,
    boolean fillsWorse) {
  Remedy {
    changes = List.copyOf(changes);
  }

  /** What is done, as files and command line have it. */
  String label() {
    return what.metric();
  }

  /** Both at once. */
  Remedy and(Remedy other) {
    List<Change> both = new ArrayList<>(changes);
    both.addAll(other.changes);
    String cautions = (caution + " " + other.caution).strip();
    return new Remedy(
        effort.compareTo(other.effort) > 0 ? effort : other.effort,
        knob + "+" + other.knob,
        u -> what.in(u) + " + " + other.what.in(u),
        both,
        cautions,
        fillsWorse || other.fillsWorse);
  }

  boolean fitsWith(Remedy other) {
    return !knob.equals(other.knob);
  }
}
