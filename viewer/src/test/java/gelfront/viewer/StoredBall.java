// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import gelfront.finding.Amounts;
import gelfront.finding.Constriction;
import gelfront.finding.Fed;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.result.Fields;
import gelfront.result.Health;
import gelfront.result.Inputs;
import gelfront.result.Provenance;
import gelfront.result.Series;
import gelfront.result.StoredRun;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** A made-up run: a ball of 20 mm that sets from its skin, after 5 s, to its middle, after 92 s. */
public final class StoredBall {
  private static final int N = 24;
  private static final double RADIUS = 10;
  static final double CUT_OFF = 70;

  private StoredBall() {}

  public static StoredRun run() {
    Vec3 middle = new Vec3(1, 1, 1).times(0.5e-3 * N);
    return new StoredRun(
        "ball",
        "",
        new Inputs(List.of(), List.of()),
        findings(middle),
        new Series(new double[] {0}, List.of()),
        new Health(List.of()),
        List.of(),
        new Provenance("test", "", "", 0),
        fields(),
        Solids.sphere(middle, RADIUS * 1e-3, 48));
  }

  private static Fields fields() {
    int[] cells = new int[N * N * N];
    float[] set = new float[cells.length];
    int n = 0;
    double centre = 0.5 * (N - 1);
    for (int c = 0; c < cells.length; c++) {
      double x = c % N - centre;
      double y = c / N % N - centre;
      int layer = c / (N * N);
      double z = layer - centre;
      double r = Math.sqrt(x * x + y * y + z * z);
      if (r < RADIUS) {
        cells[n] = c;
        set[n++] = (float) (100 - 9.5 * r);
      }
    }
    float[] times = Arrays.copyOf(set, n);
    return new Fields(
        Vec3.ZERO,
        1e-3,
        N,
        N,
        N,
        Arrays.copyOf(cells, n),
        new byte[n],
        times,
        times.clone(),
        new short[n],
        List.of());
  }

  private static Findings findings(Vec3 middle) {
    Pocket pocket =
        new Pocket(
            1,
            Severity.MAY_DENT,
            middle,
            1e-7,
            CUT_OFF,
            100,
            150,
            new Constriction(Constriction.Kind.GATE, Vec3.ZERO, 1e-3, CUT_OFF),
            1e-9,
            2e-9,
            List.of(),
            List.of(),
            "The middle is cut off after 70 s.");
    return new Findings(
        Severity.MAY_DENT,
        "This ball may dent.",
        "",
        List.of(),
        List.of(pocket),
        0,
        2,
        100,
        120,
        0.02,
        2e-4,
        new Amounts(1e-6, 1e-6, 0, 1e-3, 1e-3, 0, 1, OptionalDouble.empty()),
        new Fed(true, 2e-8, 1e-8, 1e-8, 3e-8, CUT_OFF, 0, Double.POSITIVE_INFINITY));
  }
}
