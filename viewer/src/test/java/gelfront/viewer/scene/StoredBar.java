// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import gelfront.finding.Amounts;
import gelfront.finding.Constriction;
import gelfront.finding.Fed;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.result.Fields;
import gelfront.result.StoredRun;
import gelfront.viewer.work.LiveFreezing;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A made-up run: a bar of 24 x 12 x 12 mm that sets from its low end on, 2 s later with every mm of
 * x. What sets after {@link #CUT_OFF} is cut off then and is pocket 1: from 15 mm on.
 */
final class StoredBar {
  static final int LONG = 24;
  static final int WIDE = 12;
  static final double CUT_OFF = 40;
  static final Vec3 MIDDLE = new Vec3(0.5 * LONG, 0.5 * WIDE, 0.5 * WIDE);

  private StoredBar() {}

  /**
   * s at which it sets.
   *
   * @param x mm
   */
  static double sets(double x) {
    return 10 + 2 * x;
  }

  /** Nothing found, so no number stands before it. */
  static StoredRun plain() {
    Vec3 size = new Vec3(LONG, WIDE, WIDE).times(1e-3);
    return LiveFreezing.stored(fields(), Solids.box(Vec3.ZERO, size));
  }

  /** The front comes 0.1 s later with every mm of x; what lies beyond 21 mm stays air. */
  static StoredRun filled() {
    Fields f = fields();
    float[] reached = new float[f.cells().length];
    float[] arrival = new float[reached.length];
    for (int c = 0; c < reached.length; c++) {
      int i = f.cells()[c] % f.nx() - 1;
      reached[c] = i < 21 ? 0.1f * (i + 0.5f) : Float.POSITIVE_INFINITY;
      arrival[c] = i < 21 ? 150 : Float.NaN;
    }
    Fields shot =
        new Fields(
            f.origin(),
            f.spacing(),
            f.nx(),
            f.ny(),
            f.nz(),
            f.cells(),
            f.region(),
            f.setTime(),
            f.cutOff(),
            f.pocket(),
            List.of(),
            reached,
            arrival);
    return LiveFreezing.stored(shot, plain().surface());
  }

  static StoredRun run() {
    StoredRun bare = plain();
    return new StoredRun(
        "bar",
        "",
        bare.inputs(),
        findings(),
        bare.series(),
        bare.health(),
        bare.cautions(),
        bare.provenance(),
        bare.fields(),
        bare.surface());
  }

  /** With a layer of mould round it. */
  private static Fields fields() {
    int n = LONG * WIDE * WIDE;
    int nx = LONG + 2;
    int ny = WIDE + 2;
    int[] cells = new int[n];
    float[] set = new float[n];
    float[] cut = new float[n];
    short[] pocket = new short[n];
    for (int c = 0; c < n; c++) {
      int i = c % LONG;
      cells[c] = i + 1 + nx * (c / LONG % WIDE + 1 + ny * (c / LONG / WIDE + 1));
      set[c] = (float) sets(i + 0.5);
      cut[c] = (float) Math.min(set[c], CUT_OFF);
      pocket[c] = (short) (set[c] > CUT_OFF ? 1 : 0);
    }
    Vec3 origin = new Vec3(-1e-3, -1e-3, -1e-3);
    return new Fields(
        origin, 1e-3, nx, ny, WIDE + 2, cells, new byte[n], set, cut, pocket, List.of());
  }

  private static Findings findings() {
    Vec3 centre = new Vec3(19.5e-3, 6e-3, 6e-3);
    Pocket pocket =
        new Pocket(
            1,
            Severity.MAY_DENT,
            centre,
            1e-6,
            CUT_OFF,
            57,
            150,
            new Constriction(Constriction.Kind.GATE, Vec3.ZERO, 1e-3, CUT_OFF),
            1e-9,
            2e-9,
            List.of(),
            List.of(),
            "The far end is cut off after 40 s.");
    double never = Double.POSITIVE_INFINITY;
    return new Findings(
        Severity.MAY_DENT,
        "",
        "",
        List.of(),
        List.of(pocket),
        0,
        2,
        57,
        60,
        0.02,
        2e-4,
        new Amounts(1e-6, 1e-6, 0, 1e-3, 1e-3, 0, 1, OptionalDouble.empty()),
        new Fed(true, 0, 0, 0, 0, never, 0, never));
  }

  /** All of the bar but a margin at its walls, where the picture's edge is. */
  static boolean wellInside(Vec3 p, double margin) {
    double[] at = {p.x(), p.y(), p.z()};
    double[] size = {LONG, WIDE, WIDE};
    return Arrays.stream(new int[] {0, 1, 2})
        .allMatch(a -> at[a] > margin && at[a] < size[a] - margin);
  }
}
