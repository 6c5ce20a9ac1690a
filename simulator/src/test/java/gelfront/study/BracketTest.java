// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

final class BracketTest {
  private static final double TOLERANCE = 0.25;
  private static final double STEP = 0.1;

  /** Evaluations until the bracket is closed. */
  private static int closed(Bracket b, DoubleUnaryOperator f, int atOnce) {
    int n = 0;
    for (List<Double> next = b.next(atOnce); !next.isEmpty(); next = b.next(atOnce)) {
      for (double size : next) {
        assertTrue(size > b.tooSmall() && size < b.does(), "inside its bracket");
      }
      next.forEach(s -> b.know(s, f.applyAsDouble(s)));
      n += next.size();
      assertTrue(n < 40, "comes to an end");
    }
    return n;
  }

  private static Bracket between(double low, double high, DoubleUnaryOperator f) {
    Bracket b = new Bracket(TOLERANCE, STEP);
    b.know(low, f.applyAsDouble(low));
    b.know(high, f.applyAsDouble(high));
    return b;
  }

  @Test
  void straightBentSteppedAndFlatQuantitiesAreBracketed() {
    Random random = new Random(6);
    for (int i = 0; i < 200; i++) {
      double root = 2 + 9 * random.nextDouble();
      double power = 0.3 + 3 * random.nextDouble();
      List<DoubleUnaryOperator> all =
          List.of(
              x -> root - x,
              x -> Math.signum(root - x) * Math.pow(Math.abs(root - x), power),
              x -> x < root ? 0.4 : -0.2,
              x -> Math.max(-0.2, Math.exp(-3 * (x - root)) - 1));
      for (DoubleUnaryOperator f : all) {
        for (int atOnce = 1; atOnce <= 2; atOnce++) {
          Bracket b = between(1, 12, f);
          int n = closed(b, f, atOnce);
          assertTrue(b.tooSmall() < root + 1e-9 && root <= b.does() + 1e-9);
          assertTrue(b.does() - b.tooSmall() <= TOLERANCE * 1.001);
          assertTrue(n <= 14, n + " evaluations");
        }
      }
    }
  }

  @Test
  void aStepBackUpBeyondTheAnswerMovesNothing() {
    DoubleUnaryOperator f = x -> x < 4 ? 1 : x > 7 && x < 8 ? 0.1 : -0.1;
    Bracket b = between(1, 12, f);
    b.know(6, -0.1);
    b.know(7.5, 0.1);

    closed(b, f, 2);

    assertEquals(4, b.does(), TOLERANCE);
  }

  @Test
  void withoutBothEndsNothingIsAsked() {
    Bracket none = new Bracket(TOLERANCE, STEP);
    none.know(1, 1);
    none.know(9, Double.NaN);
    assertTrue(Double.isNaN(none.does()) && none.next(2).isEmpty());
    Bracket all = new Bracket(TOLERANCE, STEP);
    all.know(1, -1);
    assertEquals(1, all.does());
    assertTrue(Double.isNaN(all.tooSmall()) && all.next(1).isEmpty());
  }

  @Test
  void nearlyAtTheEndThatDoesTheBracketStillNarrows() {
    DoubleUnaryOperator f = x -> x < 11.3 ? 0.7 : -1e-6;
    Bracket b = between(8, 14, f);

    closed(b, f, 1);

    assertEquals(11.3, b.does(), TOLERANCE);
  }

  @Test
  void aFailedRunCountsAsTooSmall() {
    Bracket b = new Bracket(TOLERANCE, STEP);
    b.know(2, Double.NaN);
    b.know(6, -1);

    assertEquals(2, b.tooSmall());
    assertEquals(4, b.root(), 1e-12);
  }

  @Test
  void cuttersAreTheNextSizesUp() {
    assertEquals("4 mm", Cutters.MM.up(3.51e-3).words());
    assertEquals("4 mm", Cutters.MM.up(4e-3).words());
    assertEquals("5/32 in", Cutters.INCH.up(3.6e-3).words());
    assertEquals(0.0254 / 4, Cutters.INCH.up(6.2e-3).size(), 1e-12);
    assertEquals("1 in", Cutters.INCH.up(0.0254).words());
    assertEquals(0.04, Cutters.MM.up(0.04).size(), 0);
  }
}
