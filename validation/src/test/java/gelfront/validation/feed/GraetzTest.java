// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.feed;

import gelfront.evidence.Check;
import org.junit.jupiter.api.Test;

/**
 * Liquid that cools along a tube with a wall of one temperature: Graetz's series (eigenvalues and
 * coefficients computed for the project; they agree with the published ones as remembered).
 *
 * <pre>  theta = sum C_n R_n(r) exp(-2 lambda_n^2 x*),  x* = (x / D) / Pe = pi alpha x / (4 Q)
 * </pre>
 *
 * <p>20 cells across, 500 cells to x* = 0.1; mobility, conduction and carried heat as in a run. A
 * cell's speed and temperature are means, and their product misses dx^2 / 12 grad u grad T of what
 * is carried: 0.8 % of the bulk's fall at 16 across, 0.5 % at 20.
 */
final class GraetzTest {
  private static final double D = 8e-3;

  /** Metres to x* = 0.1. */
  private static final double LENGTH = 500 * D / 20;

  private static final double RATE = Math.PI * CooledTube.ALPHA * LENGTH / (4 * 0.1);

  @Test
  void bulkAndCentreWithinAPerCent() {
    CooledTube tube = new CooledTube(D, D / 20, 510);
    CooledTube.Stream stream = tube.passive(RATE);
    tube.march(stream, 60, 0.003 * tube.unit());
    tube.march(stream, 30, 0.001 * tube.unit());
    tube.march(stream, 60, 0.0004 * tube.unit());
    double[][] table = {
      {0.02, 0.628028, 0.97270},
      {0.03, 0.534868, 0.89718},
      {0.05, 0.395299, 0.70124},
      {0.1, 0.189710, 0.34184}
    };
    double[] speeds = tube.speeds(RATE);
    String source = "Graetz's series, eigenvalues computed for the project";
    Check bulk = Check.of("liquid cooling along a tube, bulk", source);
    Check centre = Check.of("liquid cooling along a tube, centre", source);
    for (double[] row : table) {
      double x = row[0] / 0.1 * LENGTH;
      bulk.at(row[0]).expected(row[1]).got(tube.mean(x, speeds));
      centre.at(row[0]).expected(row[2]).got(tube.centre(x));
    }
    bulk.plot("x*", "theta").within(0.01);
    centre.plot("x*", "theta").within(0.01);
  }
}
