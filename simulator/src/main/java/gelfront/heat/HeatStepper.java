// SPDX-License-Identifier: Apache-2.0
package gelfront.heat;

import gelfront.state.ThermalState;

/** Moves a state forward in time. Extension point. */
public interface HeatStepper {
  /**
   * @param state modified: one step later
   * @param dt s, positive
   * @param mouth what lies beyond the sprue's open end during this step
   */
  void step(ThermalState state, double dt, MouthFilm mouth);
}
