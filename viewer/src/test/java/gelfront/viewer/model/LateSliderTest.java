// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class LateSliderTest {
  @Test
  void itsEndsAreAllCellsAndTheLastOne() {
    LateSlider s = LateSlider.of(Blocks.block());

    assertEquals(0, s.from(0));
    assertEquals(6, CellFacesTest.seen(Blocks.block(), s.from(LateSlider.STEPS)));
    assertEquals(s.from(LateSlider.STEPS), s.from(LateSlider.STEPS + 7));
    assertEquals(0, s.from(-3));
  }

  @Test
  void aTimeIsReachedAndNotOvershotByMoreThanAStep() {
    LateSlider s = new LateSlider(88.9);
    for (double t = 0.1; t < 88.9; t += 0.37) {
      double reached = s.from(s.stepAt(t));
      assertTrue(reached >= t - 1e-9 && reached < t + 88.9 / LateSlider.STEPS, t + " " + reached);
    }
  }

  @Test
  void timesOutsideTheRunGiveItsEnds() {
    LateSlider s = new LateSlider(10);

    assertEquals(0, s.stepAt(-1));
    assertEquals(0, s.stepAt(Double.NaN));
    assertEquals(LateSlider.STEPS, s.stepAt(11));
    assertEquals(LateSlider.STEPS, s.stepAt(Double.POSITIVE_INFINITY));
  }

  @Test
  void aRunInWhichNothingSetsHidesNothing() {
    LateSlider s = LateSlider.of(Blocks.with(new float[] {Float.POSITIVE_INFINITY}));

    assertEquals(0, s.latest());
    assertEquals(0, s.from(s.stepAt(5)));
  }

  @Test
  void aLatestTimeThatIsNoneIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new LateSlider(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new LateSlider(-1));
  }
}
