package gelfront.run;

import gelfront.state.ThermalState;

/** What liquid does after each step of conduction. */
public interface Flow {
  /** Conduction alone. */
  Flow NONE = (state, from) -> {};

  /**
   * @param state after a step of conduction; modified
   * @param from s at which that step began
   */
  void after(ThermalState state, double from);
}
