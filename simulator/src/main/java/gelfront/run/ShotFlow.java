// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.feed.Feeding;
import gelfront.state.ThermalState;
import java.util.List;

/**
 * The feeding flow of a shot: the injector holds, then the sprue sinks, and is topped up.
 *
 * @param holdTime s until which the injector is kept on
 * @param holdPressure Pa over the air's at the mouth meanwhile
 * @param topUps s at which the sprue is filled up again; steps end there
 */
public record ShotFlow(Feeding feeding, double holdTime, double holdPressure, List<Double> topUps)
    implements Flow {
  private static final double ROUNDING = 1e-9;

  public ShotFlow {
    topUps = List.copyOf(topUps);
  }

  @Override
  public void after(ThermalState state, double from, Runnable ask) {
    if (from < holdTime - ROUNDING) {
      feeding.step(state, from, Feeding.Supply.FROM_OUTSIDE, holdPressure, ask);
    } else {
      feeding.step(state, from, Feeding.Supply.SPRUE, 0, ask);
    }
    if (topUps.stream().anyMatch(t -> Math.abs(t - state.time) < ROUNDING)) {
      feeding.topUp(state);
    }
  }
}
