// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.feed.Feeding.Supply;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** When a flow may go on without being solved for. */
final class CoastingTest {
  private final Coasting coasting = new Coasting();

  @BeforeEach
  void solve() {
    coasting.solved(1e-8, 0.05, Supply.SPRUE, 0, 3);
  }

  @Test
  void goesOnWhileLittleHasChanged() {
    assertTrue(coasting.goesOn(0.9e-8, Supply.SPRUE, 0, 3));
    assertFalse(coasting.goesOn(0.8e-8, Supply.SPRUE, 0, 3));
    assertFalse(coasting.goesOn(1.2e-8, Supply.SPRUE, 0, 3));
  }

  @Test
  void endsWhereThePlungerOrTheSurfaceHasMoved() {
    assertFalse(coasting.goesOn(1e-8, Supply.FROM_OUTSIDE, 0, 3));
    assertFalse(coasting.goesOn(1e-8, Supply.SPRUE, 2e4, 3));
    assertFalse(coasting.goesOn(1e-8, Supply.SPRUE, 0, 4));
    coasting.stop();
    assertFalse(coasting.goesOn(1e-8, Supply.SPRUE, 0, 3));
  }

  @Test
  void endsWhereSkinIsNearGivingWay() {
    coasting.solved(1e-8, 0.2, Supply.SPRUE, 0, 3);
    assertFalse(coasting.goesOn(1e-8, Supply.SPRUE, 0, 3));
  }

  @Test
  void aFlowOfNothingIsNotScaled() {
    coasting.solved(0, 0, Supply.SPRUE, 0, 3);
    assertFalse(coasting.goesOn(0, Supply.SPRUE, 0, 3));
  }
}
