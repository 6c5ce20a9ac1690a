// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class StepControlTest {
  private static final double FAR = 1e9;

  /** A step whose error is c dt², taken until its length no longer moves. */
  private static double settled(StepControl control, double c) {
    for (int n = 0; n < 100; n++) {
      double dt = control.length(FAR);
      control.taken(dt, c * dt * dt);
    }
    return control.length(FAR);
  }

  @Test
  void stepsSettleBelowTheToleranceAndGoWithItsRoot() {
    double coarse = settled(new StepControl(0.4), 1);
    double fine = settled(new StepControl(0.1), 1);

    assertTrue(coarse * coarse <= 0.4 && coarse * coarse > 0.2, "" + coarse);
    assertEquals(2, coarse / fine, 1e-3);
  }

  @Test
  void growthIsBoundedAndTooGreatAnErrorShortensAtOnce() {
    StepControl control = new StepControl(0.2);
    double first = control.length(FAR);

    control.taken(first, 1e-12);
    double second = control.length(FAR);
    control.taken(second, 2);

    assertEquals(2, second / first, 1e-12);
    assertTrue(control.length(FAR) < 0.5 * second);
  }

  @Test
  void aStepCutByAnEventDoesNotShortenTheNext() {
    StepControl control = new StepControl(0.2);
    double usual = settled(control, 1);

    double cut = control.length(0.01 * usual);
    control.taken(cut, cut * cut);

    assertEquals(0.01 * usual, cut, 1e-15);
    assertTrue(control.length(FAR) >= usual);
  }

  @Test
  void noSliverIsLeftBeforeAnEvent() {
    StepControl control = new StepControl(0.2);
    double usual = settled(control, 1);

    assertEquals(0.55 * usual, control.length(1.1 * usual), 1e-12);
  }

  @Test
  void afterAChangeStepsAreSmallAgain() {
    StepControl control = new StepControl(0.2);
    double first = control.length(FAR);
    double usual = settled(control, 1);

    control.restart();

    assertEquals(Math.max(first, 0.1 * usual), control.length(FAR), 1e-12);
  }

  @Test
  void aToleranceOfNothingIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new StepControl(0));
  }
}
