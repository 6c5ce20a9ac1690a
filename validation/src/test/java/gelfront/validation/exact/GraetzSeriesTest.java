// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Check;
import org.junit.jupiter.api.Test;

/**
 * The series against the tables of Shah and London (1978), as remembered, and their fit for short
 * tubes: mean Nu = 1.615 x*^(-1/3) - 0.7 up to x* = 0.005, 1.615 x*^(-1/3) alone being Leveque's.
 * The fit is 2 % off where it ends (8.74, their table 8.94), so it is held to up to 0.001.
 */
final class GraetzSeriesTest {
  private static final String TABLES = "Shah and London 1978, from memory";

  @Test
  void bulkAndCentre() {
    double[][] table = {
      {0.005, 0.836219, 1},
      {0.01, 0.751106, 0.99947},
      {0.02, 0.628028, 0.97270},
      {0.05, 0.395299, 0.70124},
      {0.2, 0.043935, 0.07920}
    };
    Check bulk = Check.of("Graetz: bulk", TABLES);
    Check centre = Check.of("Graetz: centre", TABLES);
    for (double[] row : table) {
      bulk.expected(row[1]).got(Graetz.bulk(row[0]));
      centre.expected(row[2]).got(Graetz.centre(row[0]));
    }
    bulk.within(1e-3);
    centre.within(1e-3, 1);
  }

  @Test
  void shortTubes() {
    Check check = Check.of("Graetz: mean Nusselt number of short tubes", TABLES);
    for (double x : new double[] {2e-4, 5e-4, 1e-3}) {
      double nu = -Math.log(Graetz.bulk(x)) / (4 * x);
      check.expected(1.615 * Math.cbrt(1 / x) - 0.7).got(nu);
    }
    check.within(0.01);
  }

  @Test
  void lossIsWhatBulkFallsBy() {
    for (double x : new double[] {1e-3, 0.02, 0.1}) {
      double step = 1e-4 * x;
      double fall = (Graetz.bulk(x - step) - Graetz.bulk(x + step)) / (2 * step);
      assertEquals(fall, Graetz.loss(x), 1e-5 * fall);
    }
  }

  @Test
  void centreFreezes() {
    Check.of("Graetz: where the centre is at 0.7 and 0.4", "same series by another program")
        .expected(0.050129)
        .got(Graetz.freezing(0.7))
        .expected(0.089232)
        .got(Graetz.freezing(0.4))
        .within(1e-5, 1);
  }

  /** With no shell to speak of suction is Poiseuille's; a thick one has a rate of least suction. */
  @Test
  void aShellOfNoThicknessIsATube() {
    ShellInTube thin = new ShellInTube(1e-6);
    assertEquals(1, thin.open(0.05), 1e-4);
    Check.of("suction in a tube with no shell", "Poiseuille")
        .expected(1 / 0.05)
        .got(thin.suction(0.05))
        .within(5e-4);
    ShellInTube thick = new ShellInTube(0.4);
    assertTrue(thick.leastSuction() < thick.suction(0.01));
    assertTrue(thick.leastSuction() < thick.suction(0.2));
  }
}
