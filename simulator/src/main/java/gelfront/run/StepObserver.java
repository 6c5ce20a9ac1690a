// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.state.ThermalState;

/** Watches a run. Extension point. */
@FunctionalInterface
public interface StepObserver {
  /**
   * Called after each step.
   *
   * @param state after the step; {@code state.previous} holds the temperatures before it
   * @param from s at which the step began
   */
  void after(ThermalState state, double from);
}
