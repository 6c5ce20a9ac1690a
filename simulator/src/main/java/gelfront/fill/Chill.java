// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import gelfront.state.ThermalState;

/** What the mould takes from the liquid meanwhile. */
@FunctionalInterface
public interface Chill {
  /** Nothing: the liquid stays as hot as it came. */
  Chill NONE = (state, full, dt) -> {};

  /**
   * @param state modified, all but its time
   * @param full per cell: only these hold liquid
   * @param dt s
   */
  void step(ThermalState state, boolean[] full, double dt);
}
