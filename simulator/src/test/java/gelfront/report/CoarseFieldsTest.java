// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.Vec3;
import gelfront.result.Fields;
import gelfront.result.SyntheticRun;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CoarseFieldsTest {
  private static final Fields FINE = SyntheticRun.make(1, 0.6e-3, 12).fields();

  @Test
  void aBoxWithinTheLimitHoldsEveryCellOfTheRun() {
    CoarseFields c = CoarseFields.of(FINE, 10_000);
    int[] n = c.size();
    int cells = 0;
    List<Integer> runs = c.runs();
    for (int i = 1; i < runs.size(); i += 2) {
      cells += runs.get(i);
    }

    assertTrue(n[0] * n[1] * n[2] <= 10_000);
    assertTrue(c.spacing() > 1.5 * FINE.spacing(), "coarser");
    assertEquals(c.count(), cells);
    for (int cell : FINE.cells()) {
      Vec3 at = FINE.centre(cell).minus(c.origin()).times(1 / c.spacing());
      int number = (int) at.x() + n[0] * ((int) at.y() + n[1] * (int) at.z());
      assertTrue(holds(runs, number), "cell " + cell);
      assertTrue(at.x() > 2 && at.y() > 2 && at.z() > 2, "two empty cells before it");
      assertTrue(at.x() < n[0] - 2 && at.y() < n[1] - 2 && at.z() < n[2] - 2, "and behind it");
    }
  }

  private static boolean holds(List<Integer> runs, int cell) {
    for (int i = 0; i < runs.size(); i += 2) {
      if (cell >= runs.get(i) && cell < runs.get(i) + runs.get(i + 1)) {
        return true;
      }
    }
    return false;
  }

  @Test
  void aMeanIsThatOfTheCellsInIt() {
    float[] x = new float[FINE.cells().length];
    for (int c = 0; c < x.length; c++) {
      x[c] = (float) FINE.centre(FINE.cells()[c]).y();
    }
    CoarseFields same = CoarseFields.of(FINE, Integer.MAX_VALUE);
    CoarseFields coarse = CoarseFields.of(FINE, 10_000);

    assertEquals(FINE.cells().length, same.count());
    assertArrayEquals(x, same.means(x));
    float[] means = coarse.means(x);
    int i = 0;
    for (int r = 0; r < coarse.runs().size(); r += 2) {
      for (int k = 0; k < coarse.runs().get(r + 1); k++) {
        int j = (coarse.runs().get(r) + k) / coarse.size()[0] % coarse.size()[1];
        double centre = coarse.origin().y() + (j + 0.5) * coarse.spacing();
        assertEquals(centre, means[i++], 0.5 * coarse.spacing());
      }
    }
  }

  /** IEEE 754: what the page's script does, the other way round. */
  private static double value(short half) {
    int e = (half >> 10) & 31;
    double m = (half & 1023) / 1024.0;
    return (half < 0 ? -1 : 1) * (e == 0 ? Math.scalb(m, -14) : Math.scalb(1 + m, e - 15));
  }

  @Test
  void halfFloatsAreTheNearest() {
    Random random = new Random(5);
    for (int i = 0; i < 20_000; i++) {
      float v = (float) ((random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(11) - 5));
      double error = Math.abs(value(HalfFloats.of(v)) - v);

      assertTrue(error <= Math.max(Math.abs(v) / 2048, Math.scalb(1, -25)), v + " " + error);
    }
    assertEquals(0x3C00, HalfFloats.of(1));
    assertEquals((short) 0xC000, HalfFloats.of(-2));
    assertEquals(0x7BFF, HalfFloats.of(Float.POSITIVE_INFINITY));
    assertEquals(0, HalfFloats.of(0));
    assertEquals(0x4000, HalfFloats.of(1.99999f), "carries into the exponent");
    assertThrows(IllegalArgumentException.class, () -> HalfFloats.of(Float.NaN));
  }
}
