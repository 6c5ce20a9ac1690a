// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BandTest {
  private static final double END = 10;

  /** A gate that falls by {@code slope} K/s from 160 °C, and {@code ml} drawn in evenly. */
  private static Curves curves(double end, double slope, double ml) {
    return new Curves(
        List.of(0.0, end),
        List.of(
            new Curves.Curve("gate", "the gate", "°C", List.of(160.0, 160 - slope * end)),
            new Curves.Curve("drawn", "drawn in", "ml", List.of(0.0, ml))));
  }

  private static Ran run(double end, double slope, double ml) {
    return DoubtTest.dent(0, 0, curves(end, slope, ml));
  }

  /** 21 cases whose slopes are 1 to 3 K/s: 5, 50 and 95 % are the 2nd, 11th and 20th. */
  private static List<Band> bands(Ran typical, Ran finer) {
    Ran[] cases =
        IntStream.rangeClosed(0, 20)
            .mapToObj(i -> run(END + i, 1 + 0.1 * i, 0.2 + 0.01 * i))
            .toArray(Ran[]::new);
    return Band.of(DoubtTest.doubt(typical, finer, cases));
  }

  @Test
  void bandsHoldNineOfTenCasesAtEachTime() {
    List<Band> bands = bands(Ran.failed("a"), Ran.failed("a"));

    assertEquals(List.of("gate", "drawn"), bands.stream().map(Band::key).toList());
    Band gate = bands.get(0);
    assertEquals(21, gate.cases());
    for (int i = 0; i < gate.time().length; i++) {
      double t = gate.time()[i];
      assertEquals(160 - 2.9 * t, gate.low()[i], 1e-9);
      assertEquals(160 - 2 * t, gate.middle()[i], 1e-9);
      assertEquals(160 - 1.1 * t, gate.high()[i], 1e-9);
    }
  }

  @Test
  void temperaturesEndWithTheFirstCaseAndVolumesWithTheLast() {
    List<Band> bands = bands(Ran.failed("a"), Ran.failed("a"));
    double[] hot = bands.get(0).time();
    double[] fed = bands.get(1).time();

    assertEquals(END, hot[hot.length - 1]);
    assertEquals(END + 20, fed[fed.length - 1]);
    assertEquals(0.39, bands.get(1).high()[fed.length - 1], 1e-9);
    Band cut = bands.get(0).until(4.1);
    int last = cut.time().length - 1;
    assertEquals(4.1, cut.time()[last], 1e-12);
    assertEquals(160 - 2 * 4.1, cut.middle()[last], 1e-9);
    assertArrayEquals(hot, bands.get(0).until(1e3).time());
  }

  /** The finer level is 5 K hotter at every time and draws 0.5 ml less: none is drawn then. */
  @Test
  void bandsAreMovedToTheFinerLevelAndStayAboveNothing() {
    Ran rough = run(END, 2, 0.3);
    Curves c = curves(END, 2, -0.2);
    Curves.Curve gate = c.all().get(0);
    List<Double> hotter = gate.values().stream().map(v -> v + 5).toList();
    Curves fine =
        new Curves(
            c.time(),
            List.of(new Curves.Curve("gate", gate.label(), gate.unit(), hotter), c.all().get(1)));
    List<Band> bands = bands(rough, DoubtTest.dent(0, 0, fine));

    double[] t = bands.get(0).time();
    assertEquals(165 - 2 * t[5], bands.get(0).middle()[5], 1e-9);
    assertArrayEquals(new double[bands.get(1).time().length], bands.get(1).high());
  }

  @Test
  void whatFewHaveMakesNoBand() {
    Ran none = DoubtTest.dent(0, 0, Curves.NONE);

    assertTrue(Band.of(DoubtTest.doubt(none, none, none, run(END, 1, 1))).isEmpty());
    assertEquals(2, Band.of(DoubtTest.doubt(none, none, run(4, 1, 1), run(5, 1, 1))).size());
  }

  @Test
  void aCurveHasAValueForEachTime() {
    List<Curves.Curve> one = List.of(new Curves.Curve("gate", "", "°C", List.of(1.0)));

    assertThrows(IllegalArgumentException.class, () -> new Curves(List.of(0.0, 1.0), one));
    Curves c = curves(END, 2, 1);
    assertEquals(150, c.at(c.all().get(0), 5), 1e-12);
    assertEquals(160, c.at(c.all().get(0), -1), 1e-12);
    assertEquals(140, c.at(c.all().get(0), 50), 1e-12);
  }
}
