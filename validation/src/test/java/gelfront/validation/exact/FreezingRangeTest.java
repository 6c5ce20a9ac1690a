// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import gelfront.evidence.Check;
import org.junit.jupiter.api.Test;

/**
 * Three-region freezing: Carslaw and Jaeger ch. XI; Tien and Geiger; Cho and Sunderland (from
 * memory); digits computed by another program.
 */
class FreezingRangeTest {
  private static final FreezingRange MILD = new FreezingRange(0.15, 1.9e6, 5e6, 40, 80, 120, 165);
  private static final FreezingRange MORE = new FreezingRange(0.15, 1.9e6, 2e7, 40, 80, 120, 165);
  private static final FreezingRange STRONG = new FreezingRange(1, 1e6, 2e8, 0, 50, 70, 100);

  private static final FreezingRange[] ALL = {MILD, MORE, STRONG};

  private static Check check(String what) {
    return Check.of(what, "Carslaw and Jaeger ch. XI, digits by another program");
  }

  @Test
  void bordersOfTheThreeRegions() {
    double[][] rows =
        Rows.of(
            """
            0.288384956578, 0.641924246245, 60, 1.25529862e-3, 2.79420477e-3
            0.279230522756, 0.626886136372, 60, 1.21545068e-3, 2.72874602e-3
            0.249508423331, 0.42630541217, 1000, 15.7802983e-3, 26.9619216e-3
            """);
    Check a = check("three regions: border of the set, dimensionless");
    Check b = check("three regions: border of the liquid, dimensionless");
    Check fronts = check("three regions: both borders, m");
    for (int i = 0; i < rows.length; i++) {
      double[] r = rows[i];
      a.expected(r[0]).got(ALL[i].a());
      b.expected(r[1]).got(ALL[i].b());
      fronts.expected(r[3]).got(ALL[i].setFront(r[2])).expected(r[4]).got(ALL[i].liquidFront(r[2]));
    }
    a.within(6e-12, 1);
    b.within(6e-11, 1);
    fronts.within(5e-9);
  }

  @Test
  void temperatures() {
    Check check = check("three regions: temperatures, °C");
    for (double[] r :
        Rows.of(
            """
            0, 60, 1e-3, 72.18346944
            0, 60, 2e-3, 101.0895553
            0, 60, 3e-3, 124.235132
            0, 60, 4e-3, 141.0460141
            0, 60, 6e-3, 158.6633834
            1, 60, 1e-3, 73.18229209
            1, 60, 2e-3, 102.7098669
            1, 60, 3e-3, 125.467498
            1, 60, 6e-3, 158.8549462
            2, 1000, 10e-3, 32.0763886
            2, 1000, 20e-3, 60.58107745
            2, 1000, 30e-3, 72.42866523
            2, 1000, 50e-3, 85.5345651
            """)) {
      check.expected(r[3]).got(ALL[(int) r[0]].temperature(r[2], r[1]));
    }
    check.within(6e-8, 1);
  }
}
