// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.evidence.Check;
import gelfront.validation.exact.Graetz;
import gelfront.validation.exact.ShellInTube;
import org.junit.jupiter.api.Test;

/** How far hot liquid comes in a cooled tube before it freezes, and when the tube freezes shut. */
final class FreezeOffTest {
  private static final String ZERKLE = "Zerkle and Sunderland's steady shell";
  private static final double D = 8e-3;
  private static final double DX = 0.5e-3;

  /** Metres to x* = 0.1, whatever the diameter. */
  private static final double LENGTH = 0.1;

  private static final double RATE = Math.PI * CooledTube.ALPHA * LENGTH / (4 * 0.1);
  private static final double NO_FLOW = 70;
  private static final ShellInTube SHELL =
      new ShellInTube((NO_FLOW - CooledTube.WALL) / (CooledTube.HOT - NO_FLOW));

  /**
   * Carried passively, the centre falls below theta beyond L = 4 Q x* / (pi alpha), one rate
   * through tubes of 5, 6 and 8 mm: x* of theta by Graetz's series.
   */
  @Test
  void theCentreFreezesAtOneLengthWhateverTheDiameter() {
    for (double diameter : new double[] {5e-3, 6e-3, 8e-3}) {
      CooledTube tube = new CooledTube(diameter, DX, 206);
      CooledTube.Stream stream = tube.passive(RATE);
      tube.march(stream, 40, 0.003 * tube.unit());
      tube.march(stream, 60, 0.001 * tube.unit());
      Check check =
          Check.of("tube of " + 1e3 * diameter + " mm: length to theta, m", "Graetz's series");
      for (double theta : new double[] {0.7, 0.56, 0.4}) {
        double want = 4 * RATE * Graetz.freezing(theta) / (Math.PI * CooledTube.ALPHA);
        check.at(theta).expected(want).got(lengthTo(tube, theta));
      }
      check.plot("theta of the centre", "m").within(0.02);
    }
  }

  /** Metres at which the centre falls through theta, straight between sections. */
  private static double lengthTo(CooledTube tube, double theta) {
    double x = DX;
    while (tube.centre(x + DX) > theta) {
      x += DX;
    }
    double before = tube.centre(x);
    return x + DX * (before - theta) / (before - tube.centre(x + DX));
  }

  /**
   * What falls below no-flow stands still, and the rate is kept: a steady shell remains, as thick
   * as Zerkle and Sunderland's; the suction, with the fourth power of its width, follows.
   */
  @Test
  void atAFixedRateASteadyShellRemains() {
    DrawnTube drawn = drawn();
    drawn.march(60, 0.004 * drawn.tube.unit(), 1e9);
    drawn.march(40, 0.001 * drawn.tube.unit(), 1e9);
    Check open = Check.of("steady shell in a tube, open radius over its own", ZERKLE);
    for (int slice : new int[] {10, 30, 50, 70, 85}) {
      double x = (slice + 0.5) * drawn.tube.dx;
      open.at(1e3 * x).expected(SHELL.open(star(x))).got(drawn.openRadius(slice) / (D / 2));
    }
    open.plot("mm", "r / R").within(0.04);
    double suction = drawn.suction();
    double want = unit(drawn.tube) * SHELL.suction(star(drawn.tube.length()));
    Check.of("steady shell in a tube, suction, Pa", ZERKLE).expected(want).got(suction).within(0.1);
    drawn.march(20, 0.004 * drawn.tube.unit(), 1e9);
    drawn.march(20, 0.001 * drawn.tube.unit(), 1e9);
    assertEquals(suction, drawn.suction(), 0.01 * suction, "steady");
    assertEquals(RATE, drawn.through(), 1e-3 * RATE);
  }

  /** The skin gives from 0.9 times what it bears on: 1.3 times the least that keeps a tube open. */
  @Test
  void withEnoughSuctionItStaysOpen() {
    DrawnTube drawn = drawn();
    drawn.march(100, 0.005 * drawn.tube.unit(), 1.3 * unit(drawn.tube) * SHELL.leastSuction());
    assertEquals(RATE, drawn.through(), 1e-3 * RATE);
  }

  /** It gives all from 1.1 times that on: under the least. */
  @Test
  void withTooLittleSuctionItFreezesShut() {
    DrawnTube drawn = drawn();
    drawn.march(60, 0.005 * drawn.tube.unit(), 0.85 * unit(drawn.tube) * SHELL.leastSuction());
    assertEquals(0, drawn.through());
  }

  private static DrawnTube drawn() {
    return new DrawnTube(new CooledTube(D, D / 12, 90), NO_FLOW, RATE);
  }

  private static double star(double x) {
    return Math.PI * CooledTube.ALPHA * x / (4 * RATE);
  }

  /** Pa that {@link ShellInTube#suction} counts in; viscosity 1 Pa s. */
  private static double unit(CooledTube tube) {
    return 2 * CooledTube.ALPHA * Math.pow(tube.length(), 2) / Math.pow(D / 2, 4);
  }
}
