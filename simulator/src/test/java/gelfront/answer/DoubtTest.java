// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Changed;
import java.util.List;
import org.junit.jupiter.api.Test;

class DoubtTest {
  private static Ran dent(double lowMm, double highMm) {
    return dent(lowMm, highMm, Curves.NONE);
  }

  static Ran dent(double lowMm, double highMm, Curves curves) {
    return Ran.well(Changed.of(SomeRun.dent(lowMm, highMm), "unfed", 4e-8, "curves", curves));
  }

  static Doubt doubt(Ran typical, Ran finer, Ran... cases) {
    Doubt.Unknown u = new Doubt.Unknown("no-flow temperature", "degC", 100, 125, 150, "E", "Look.");
    return new Doubt(
        "bait",
        "quick",
        0.2e-3,
        List.of(u),
        List.of(),
        java.util.Arrays.stream(cases)
            .map(r -> new Doubt.PlausibleCase(List.of(120.0), r))
            .toList(),
        typical,
        finer,
        Ran.failed("not wanted"),
        List.of(),
        List.of(new Doubt.Influence(0, -0.8, -0.95, -0.4)),
        "rank correlation");
  }

  @Test
  void casesAreCountedByBothReadings() {
    Doubt d =
        doubt(
            dent(0, 0.3),
            dent(0, 0.3),
            dent(0, 0.1),
            dent(0.1, 0.3),
            dent(0.25, 0.4),
            Ran.failed("too cold"));

    assertEquals(2, d.mayDent());
    assertEquals(1, d.dentsAnyway());
    assertEquals(1, d.failed());
    assertEquals(0.3e-3, d.depthAt(0.5), 1e-12);
    assertEquals(0.2e-3, d.depthAt(0.25), 1e-12);
    assertEquals(0.4e-3, d.depthAt(1), 1e-12);
    assertEquals("no-flow temperature", d.first().orElseThrow().name());
  }

  /** Half a tenth of a millimetre deeper at the finer level: so are all. */
  @Test
  void depthsAreAnchoredToTheFinerLevel() {
    Doubt d = doubt(dent(0.05, 0.3), dent(0.05, 0.35), dent(0.06, 0.16), dent(0, 0.1));

    assertEquals(0.05e-3, d.anchor(), 1e-12);
    assertEquals(1, d.mayDent());
    assertEquals(0.21e-3, d.high(d.outcomes().get(0)), 1e-12);
    assertEquals(0.06e-3 * 21 / 16, d.low(d.outcomes().get(0)), 1e-12);
    assertEquals(0.15e-3, d.depths()[0], 1e-12);
  }

  @Test
  void anAnchorNeverMakesADentNegative() {
    Doubt d = doubt(dent(0.1, 0.4), dent(0, 0.1), dent(0.05, 0.2));
    assertEquals(0, d.depths()[0], 1e-12);
    assertEquals(0, d.mayDent());
  }

  @Test
  void withoutAnyResultNothingIsClaimed() {
    Doubt d = doubt(Ran.failed("a"), Ran.failed("a"), Ran.failed("a"));
    assertTrue(Double.isNaN(d.depthAt(0.5)));
    assertEquals(0, d.mayDent());
    assertEquals(0, d.bounds().length);
  }

  @Test
  void valuesAndUnknownsMustMatch() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new Doubt(
                "bait",
                "quick",
                1,
                List.of(),
                List.of(),
                List.of(new Doubt.PlausibleCase(List.of(1.0), dent(0, 0))),
                dent(0, 0),
                dent(0, 0),
                dent(0, 0),
                List.of(),
                List.of(),
                ""));
  }
}
