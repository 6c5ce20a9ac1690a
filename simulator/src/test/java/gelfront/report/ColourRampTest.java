// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ColourRampTest {
  private static final ColourRamp RAMP = ColourRamp.STANDARD;

  /**
   * Linear-light matrices for full protanopia, deuteranopia and tritanopia: Machado, Oliveira and
   * Fernandes, IEEE TVCG 15 (2009) 1291, severity 1.0; figures from memory.
   */
  private static final double[][] BLINDNESS = {
    {0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998},
    {0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881},
    {1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900}
  };

  @Test
  void whiteAndBlackAreWhereTheDefinitionPutsThem() {
    OkLab white = OkLab.of(0xFFFFFF);

    assertEquals(1, white.l(), 1e-4);
    assertEquals(0, Math.hypot(white.a(), white.b()), 1e-4);
    assertEquals(0, OkLab.of(0).l(), 1e-9);
  }

  @Test
  void everyScreenColourComesBack() {
    for (int rgb = 0; rgb < 0x1000000; rgb += 0x01F3D7) {
      assertEquals(rgb, OkLab.of(rgb).toRgb());
    }
  }

  @Test
  void neighboursAreEquallyFarApart() {
    double mean = 0;
    for (int i = 1; i < RAMP.size(); i++) {
      mean += RAMP.exact(i).distance(RAMP.exact(i - 1)) / (RAMP.size() - 1);
    }
    for (int i = 1; i < RAMP.size(); i++) {
      assertEquals(1, RAMP.exact(i).distance(RAMP.exact(i - 1)) / mean, 0.02, "step " + i);
    }
  }

  @Test
  void noColourIsClipped() {
    for (int i = 0; i < RAMP.size(); i++) {
      for (double c : RAMP.exact(i).toLinear()) {
        assertTrue(c >= 0 && c <= 1, "colour " + i + " channel " + c);
      }
    }
  }

  @Test
  void lightnessAlwaysRisesAlsoForTheColourBlind() {
    double span = RAMP.exact(255).l() - RAMP.exact(0).l();
    assertTrue(span > 0.6, "the ends must differ in grey print, by " + span);
    for (int i = 8; i < RAMP.size(); i += 8) {
      assertTrue(RAMP.exact(i).l() > RAMP.exact(i - 8).l(), "step " + i);
      for (double[] m : BLINDNESS) {
        assertTrue(seen(m, i).l() > seen(m, i - 8).l(), "step " + i);
      }
    }
  }

  private static OkLab seen(double[] m, int i) {
    double[] c = RAMP.exact(i).toLinear();
    return OkLab.ofLinear(
        m[0] * c[0] + m[1] * c[1] + m[2] * c[2],
        m[3] * c[0] + m[4] * c[1] + m[5] * c[2],
        m[6] * c[0] + m[7] * c[1] + m[8] * c[2]);
  }

  @Test
  void sharesOutsideAreClipped() {
    assertEquals(RAMP.rgb(0), RAMP.at(-1));
    assertEquals(RAMP.rgb(255), RAMP.at(7));
    assertEquals(RAMP.rgb(0), RAMP.at(Double.NaN));
  }
}
