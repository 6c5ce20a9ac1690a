// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gelfront.evidence.Check;
import gelfront.validation.exact.CoolingSeries.Shape;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Against the one-term table of Incropera and DeWitt, ch. 5 (from memory: Bi 1 slab .8603 and
 * 1.1191), recomputed to more digits by another program.
 */
class CoolingSeriesTest {
  private static final String TABLE = "Incropera and DeWitt ch. 5, digits by another program";

  /** Biot number; then first eigenvalue and coefficient of each shape. */
  private static final double[][] ONE_TERM =
      Rows.of(
          """
          0.01, 0.099833639, 1.0016608, 0.14124476, 1.0024958, 0.17303199, 1.0029981
          0.02, 0.14095168, 1.0033101, 0.19950104, 1.0049833, 0.24445971, 1.0059922
          0.05, 0.22176039, 1.0081889, 0.31426165, 1.0123953, 0.3853681, 1.0149506
          0.1, 0.31105285, 1.0160942, 0.44168178, 1.0245794, 0.54228089, 1.0297977
          0.2, 0.43284072, 1.0310876, 0.61697477, 1.0483044, 0.75930769, 1.0591548
          0.3, 0.52179118, 1.0450471, 0.74646121, 1.0711615, 0.92078683, 1.0880209
          0.5, 0.65327119, 1.0701281, 0.94077056, 1.1142546, 1.1655612, 1.1441063
          1, 0.86033359, 1.119132, 1.2557837, 1.2070921, 1.5707963, 1.2732395
          2, 1.076874, 1.1784558, 1.5994492, 1.3383771, 2.0287578, 1.479319
          5, 1.3138377, 1.2402493, 1.9898147, 1.5028691, 2.5704316, 1.7870009
          10, 1.42887, 1.2619626, 2.1794966, 1.5676918, 2.8363004, 1.9249086
          20, 1.496129, 1.269916, 2.2880485, 1.5919437, 2.985724, 1.9781376
          50, 1.5400059, 1.2726518, 2.3572421, 1.6002212, 3.0788416, 1.9962206
          100, 1.5552451, 1.2730876, 2.3809017, 1.6015239, 3.110187, 1.9990335
          Infinity, 1.5707963, 1.2732395, 2.4048256, 1.6019747, 3.1415927, 2.0
          """);

  /** Biot and Fourier number; then centre and mean of each shape. */
  private static final double[][] HISTORY =
      Rows.of(
          """
          1, 0.5, 0.7725264, 0.6811046, 0.5485862, 0.4473843, 0.3707774, 0.2870005
          10, 0.1, 0.9684242, 0.7261177, 0.9000804, 0.5099836, 0.7957591, 0.3460118
          10, 0.2, 0.8292547, 0.583262, 0.6002323, 0.3116759, 0.3826643, 0.1524389
          10, 0.5, 0.4546406, 0.3150163, 0.1458001, 0.07476546, 0.03447829, 0.01362576
          80, 0.1, 0.9527489, 0.6553977, 0.8571468, 0.4099867, 0.7212452, 0.2441109
          80, 0.2, 0.7810696, 0.5081442, 0.5154705, 0.2296712, 0.2906569, 0.09203077
          80, 0.3, 0.6177257, 0.3986445, 0.2946947, 0.130479, 0.1113435, 0.03512597
          Infinity, 0.1, 0.9493054, 0.6431766, 0.8483551, 0.3941758, 0.7071003, 0.2295213
          Infinity, 0.2, 0.7723116, 0.4959122, 0.5014869, 0.2178524, 0.2770776, 0.08450443
          Infinity, 0.3, 0.6068038, 0.3867639, 0.2824871, 0.1220285, 0.1035322, 0.03147546
          """);

  /** Share left, Biot number; then Fourier number of each shape's centre. */
  private static final double[][] TIMES =
      Rows.of(
          """
          0.5, Infinity, 0.378748, 0.200524, 0.138785
          0.5, 80, 0.388198, 0.205522, 0.142242
          0.5, 20, 0.416329, 0.220325, 0.152443
          0.5, 10, 0.453374, 0.239640, 0.165663
          0.3, Infinity, 0.585853, 0.289579, 0.191872
          """);

  private static Check check(Shape shape, String what) {
    return Check.of(shape.name().toLowerCase(Locale.ROOT) + ": " + what, TABLE);
  }

  @Test
  void oneTermTable() {
    for (Shape shape : Shape.values()) {
      Check check = check(shape, "first eigenvalue and coefficient, Bi 0.01 to infinite");
      int at = 1 + 2 * column(shape);
      for (double[] row : ONE_TERM) {
        CoolingSeries series = new CoolingSeries(shape, row[0]);
        check.expected(row[at]).got(series.eigenvalue(1));
        check.expected(row[at + 1]).got(series.coefficient(1));
      }
      check.within(6e-8, 1);
    }
  }

  private static int column(Shape shape) {
    return switch (shape) {
      case SLAB -> 0;
      case CYLINDER -> 1;
      case BALL -> 2;
    };
  }

  @Test
  void centreAndMean() {
    for (Shape shape : Shape.values()) {
      Check check = check(shape, "centre and mean, Fo 0.1 to 0.5");
      int at = 2 + 2 * column(shape);
      for (double[] row : HISTORY) {
        CoolingSeries series = new CoolingSeries(shape, row[0]);
        check.expected(row[at]).got(series.centre(row[1]));
        check.expected(row[at + 1]).got(series.mean(row[1]));
      }
      check.within(6e-8, 1);
    }
  }

  @Test
  void timeOfTheCentre() {
    for (Shape shape : Shape.values()) {
      Check check = check(shape, "Fourier number at which the centre is at 0.5 or 0.3");
      for (double[] row : TIMES) {
        CoolingSeries series = new CoolingSeries(shape, row[1]);
        check.expected(row[2 + column(shape)]).got(series.fourierAtCentre(row[0]));
      }
      check.within(6e-7, 1);
    }
  }

  /** Not from a table: every eigenvalue must solve its own condition, in rising order. */
  @ParameterizedTest
  @ValueSource(doubles = {0.05, 1, 10, 80})
  void higherEigenvaluesHoldTheSurfaceCondition(double biot) {
    CoolingSeries slab = new CoolingSeries(Shape.SLAB, biot);
    CoolingSeries ball = new CoolingSeries(Shape.BALL, biot);
    for (int n = 2; n <= 10; n++) {
      double z = slab.eigenvalue(n);
      assertEquals(biot, z * Math.tan(z), 1e-6 * (1 + biot * biot));
      z = ball.eigenvalue(n);
      assertEquals(biot, 1 - z / Math.tan(z), 1e-6 * (1 + biot * biot));
      assertEquals(n, Math.ceil(slab.eigenvalue(n) / Math.PI));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN})
  void refusesBiotNumbersThatCoolNothing(double biot) {
    assertThrows(IllegalArgumentException.class, () -> new CoolingSeries(Shape.SLAB, biot));
  }
}
