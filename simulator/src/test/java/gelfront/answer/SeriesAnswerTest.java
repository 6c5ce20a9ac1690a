// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a row of shots says of its first ones. */
final class SeriesAnswerTest {
  private static ShotRow shot(int number, double mould, Severity severity) {
    return new ShotRow(number, mould, mould + 2, severity, 0.1e-3, 0.4e-3, 4, 100, 100, 160);
  }

  private static SeriesAnswer row(Severity end, Severity... first) {
    List<ShotRow> shots = new ArrayList<>();
    for (int i = 0; i < first.length; i++) {
      shots.add(shot(i + 1, 40 - 16 / Math.pow(2, i), first[i]));
    }
    return new SeriesAnswer(
        "bait",
        "quick",
        0.2e-3,
        60,
        60,
        OptionalDouble.empty(),
        shots,
        Optional.of(shot(0, 40, end)),
        Optional.empty(),
        0);
  }

  @Test
  void theShotsBeforeTheFirstGoodOneAreThrownAway() {
    SeriesAnswer a =
        row(Severity.CLEAN, Severity.WILL_DENT, Severity.MAY_DENT, Severity.CLEAN, Severity.CLEAN);
    assertEquals(2, a.throwAway());
    assertEquals(0, a.better());
  }

  @Test
  void aRowThatGetsWorseHasNothingToThrowAway() {
    SeriesAnswer a = row(Severity.MAY_DENT, Severity.CLEAN, Severity.MAY_DENT);
    assertEquals(0, a.throwAway());
    assertEquals(1, a.better());
  }

  @Test
  void itRepeatsFromTheFirstShotWithinAKelvin() {
    Severity c = Severity.CLEAN;
    assertEquals(5, row(c, c, c, c, c, c).repeatsFrom()); // 24, 32, 36, 38, 39 °C
    assertEquals(0, row(c, c, c, c).repeatsFrom());
  }

  @Test
  void aPartOpenedTooSoonIsNotFirm() {
    ShotRow soft = new ShotRow(1, 30, 32, Severity.CLEAN, 0, 0, 4, 100, 80, 140);
    assertFalse(soft.firm());
    assertTrue(shot(1, 30, Severity.CLEAN).firm());
    assertThrows(IllegalArgumentException.class, () -> row(Severity.CLEAN));
  }
}
