// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.state.ThermalState;

/** What liquid does after each step of conduction. */
public interface Flow {
  /** Conduction alone. */
  Flow NONE = (state, from, ask) -> {};

  /**
   * @param state after a step of conduction; modified
   * @param from s at which that step began
   * @param ask run between parts of the work; throws where nobody waits for it any more
   */
  void after(ThermalState state, double from, Runnable ask);
}
