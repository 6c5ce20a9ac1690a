// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Three-region freezing: Carslaw and Jaeger ch. XI; Tien and Geiger; Cho and Sunderland (from
 * memory); digits computed by another program.
 */
class FreezingRangeTest {
  private static final FreezingRange MILD = new FreezingRange(0.15, 1.9e6, 5e6, 40, 80, 120, 165);
  private static final FreezingRange MORE = new FreezingRange(0.15, 1.9e6, 2e7, 40, 80, 120, 165);
  private static final FreezingRange STRONG = new FreezingRange(1, 1e6, 2e8, 0, 50, 70, 100);

  private static FreezingRange named(String name) {
    return switch (name) {
      case "mild" -> MILD;
      case "more" -> MORE;
      default -> STRONG;
    };
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          mild, 0.288384956578, 0.641924246245, 60, 1.25529862e-3, 2.79420477e-3
          more, 0.279230522756, 0.626886136372, 60, 1.21545068e-3, 2.72874602e-3
          strong, 0.249508423331, 0.42630541217, 1000, 15.7802983e-3, 26.9619216e-3
          """)
  void bordersOfTheThreeRegions(String name, double a, double b, double t, double x1, double x2) {
    FreezingRange f = named(name);

    assertEquals(a, f.a(), 6e-12);
    assertEquals(b, f.b(), 6e-11);
    assertEquals(x1, f.setFront(t), 6e-10 * Math.sqrt(t));
    assertEquals(x2, f.liquidFront(t), 6e-10 * Math.sqrt(t));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          mild, 60, 1e-3, 72.18346944
          mild, 60, 2e-3, 101.0895553
          mild, 60, 3e-3, 124.235132
          mild, 60, 4e-3, 141.0460141
          mild, 60, 6e-3, 158.6633834
          more, 60, 1e-3, 73.18229209
          more, 60, 2e-3, 102.7098669
          more, 60, 3e-3, 125.467498
          more, 60, 6e-3, 158.8549462
          strong, 1000, 10e-3, 32.0763886
          strong, 1000, 20e-3, 60.58107745
          strong, 1000, 30e-3, 72.42866523
          strong, 1000, 50e-3, 85.5345651
          """)
  void temperatures(String name, double t, double x, double expected) {
    assertEquals(expected, named(name).temperature(x, t), 6e-8);
  }
}
