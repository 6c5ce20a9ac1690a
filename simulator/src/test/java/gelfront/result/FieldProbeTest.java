// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.Vec3;
import gelfront.result.Fields.Region;
import gelfront.result.Fields.Snapshot;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class FieldProbeTest {
  private static final int N = 6;
  private static final double DX = 0.5e-3;
  private static final Vec3 ORIGIN = new Vec3(-0.01, 0.02, 0.003);

  /** A full cube of cells without the corner column i = j = 0; values linear in place. */
  private static Fields fields(boolean oneNeverSets) {
    int[] cells = IntStream.range(0, N * N * N).filter(c -> c % (N * N) != 0).toArray();
    Fields grid =
        new Fields(
            ORIGIN,
            DX,
            N,
            N,
            N,
            new int[0],
            new byte[0],
            new float[0],
            new float[0],
            new short[0],
            List.of());
    float[] set = new float[cells.length];
    float[] cut = new float[cells.length];
    float[] t = new float[cells.length];
    byte[] region = new byte[cells.length];
    short[] pocket = new short[cells.length];
    for (int i = 0; i < cells.length; i++) {
      Vec3 p = grid.centre(cells[i]);
      set[i] = (float) linear(p);
      cut[i] = set[i] / 2;
      t[i] = 100 + set[i];
      region[i] = (cells[i] % N < 3 ? Region.PART : Region.SPRUE).code();
      pocket[i] = (short) (cells[i] % N < 3 ? 2 : 0);
    }
    if (oneNeverSets) {
      set[cells.length / 2] = Float.POSITIVE_INFINITY;
    }
    return new Fields(
        ORIGIN, DX, N, N, N, cells, region, set, cut, pocket, List.of(new Snapshot(1.5, t)));
  }

  private static double linear(Vec3 p) {
    Vec3 q = p.minus(ORIGIN).times(1 / DX);
    return 3 + 2 * q.x() - 0.7 * q.y() + 1.3 * q.z();
  }

  private static Vec3 at(double i, double j, double k) {
    return ORIGIN.plus(new Vec3(i, j, k).times(DX));
  }

  @Test
  void linearFieldsComeBackExactlyBetweenCells() {
    FieldProbe probe = new FieldProbe(fields(false));
    Random random = new Random(5);
    for (int n = 0; n < 200; n++) {
      Vec3 p =
          at(
              1.5 + 4 * random.nextDouble(),
              1.5 + 4 * random.nextDouble(),
              0.5 + 5 * random.nextDouble());

      FieldProbe.Reading r = probe.at(p).orElseThrow();

      assertEquals(linear(p), r.setTime(), 1e-5);
      assertEquals(linear(p) / 2, r.cutOff(), 1e-5);
      assertEquals(100 + linear(p), r.temperatures()[0], 1e-4);
      assertEquals(1.5, r.times()[0]);
    }
  }

  @Test
  void cellsWithoutPlastisolDontCount() {
    FieldProbe probe = new FieldProbe(fields(false));

    // halfway between cell (1, 1) and the missing (0, 0): only (1, 0), (0, 1), (1, 1) count
    double found = probe.at(at(1, 1, 2.5)).orElseThrow().setTime();

    double expected =
        (linear(at(1.5, 0.5, 2.5)) + linear(at(0.5, 1.5, 2.5)) + linear(at(1.5, 1.5, 2.5))) / 3;
    assertEquals(expected, found, 1e-5);
  }

  @Test
  void regionAndPocketAreThoseOfTheNearestCell() {
    FieldProbe probe = new FieldProbe(fields(false));

    FieldProbe.Reading part = probe.at(at(2.9, 2.5, 2.5)).orElseThrow();
    FieldProbe.Reading sprue = probe.at(at(3.1, 2.5, 2.5)).orElseThrow();

    assertEquals(Region.PART, part.region());
    assertEquals(2, part.pocket());
    assertEquals(Region.SPRUE, sprue.region());
    assertEquals(0, sprue.pocket());
  }

  @Test
  void outsideThereIsNothing() {
    FieldProbe probe = new FieldProbe(fields(false));

    assertTrue(probe.at(at(-1, 3, 3)).isEmpty());
    assertTrue(probe.at(at(3, 3, N + 0.4)).isEmpty());
    assertTrue(probe.at(at(0.5, 0.5, 3)).isEmpty());
    assertTrue(probe.at(new Vec3(5, 5, 5)).isEmpty());
  }

  @Test
  void whatNeverSetsIsInfinite() {
    Fields f = fields(true);
    Vec3 p = f.centre(f.cells()[f.cells().length / 2]);

    assertEquals(Double.POSITIVE_INFINITY, new FieldProbe(f).at(p).orElseThrow().setTime());
  }
}
