// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import gelfront.finding.Amounts;
import gelfront.finding.Constriction;
import gelfront.finding.Constriction.Kind;
import gelfront.finding.Dent;
import gelfront.finding.Fed;
import gelfront.finding.Findings;
import gelfront.finding.HotSpot;
import gelfront.finding.Opening;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.result.Fields.Region;
import gelfront.result.Fields.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * A run that no solver made: a round body with a tail bulb, a neck, a large bulb, a gate and a
 * sprue along one axis. At distance r from the axis it sets at {@code C (R^2 - r^2)}, R the radius
 * there; a place is cut off when the thinnest section between it and the sprue has set. Every
 * figure is made up to look like a run and follows from these two lines where it can.
 */
public final class SyntheticRun {
  private static final double C = 1.1e6;
  private static final double MM = 1e-3;
  private static final double LENGTH = 88 * MM;
  private static final double NECK = 2.2 * MM;
  private static final double GATE = 2.5 * MM;
  private static final double SHOT = 168;
  private static final double MOULD = 42;
  private static final double NO_FLOW = 125;
  private static final Vec3 OFFSET = new Vec3(0.010, -0.005, 0.003);

  private final int axis;
  private final double voxel;
  private final int round;

  private SyntheticRun(int axis, double voxel, int round) {
    this.axis = axis;
    this.voxel = voxel;
    this.round = round;
  }

  /** About 3,000 cells and 2,000 triangles. */
  public static StoredRun small() {
    return make(0, 1.5 * MM, 16);
  }

  /**
   * @param axis 0 x, 1 y, 2 z: along which the part lies
   * @param voxel edge of a cell, metres
   * @param round triangles' corners round the axis
   */
  public static StoredRun make(int axis, double voxel, int round) {
    return new SyntheticRun(axis, voxel, round).run();
  }

  /** The same run under another name and with other cautions. */
  public static StoredRun renamed(StoredRun run, String name, List<String> cautions) {
    return new StoredRun(
        name,
        run.caseText(),
        run.inputs(),
        run.findings(),
        run.series(),
        run.health(),
        cautions,
        run.provenance(),
        run.fields(),
        run.surface());
  }

  /** The same run with other findings. */
  public static StoredRun withFindings(StoredRun run, Findings findings) {
    return new StoredRun(
        run.name(),
        run.caseText(),
        run.inputs(),
        findings,
        run.series(),
        run.health(),
        run.cautions(),
        run.provenance(),
        run.fields(),
        run.surface());
  }

  /** The same run, that kept no temperatures over time. */
  public static StoredRun withoutSnapshots(StoredRun run) {
    Fields f = run.fields();
    Fields bare =
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
            List.of());
    return new StoredRun(
        run.name(),
        run.caseText(),
        run.inputs(),
        run.findings(),
        run.series(),
        run.health(),
        run.cautions(),
        run.provenance(),
        bare,
        run.surface());
  }

  /** The same run, made elsewhere. */
  public static StoredRun madeAt(StoredRun run, Provenance provenance) {
    return new StoredRun(
        run.name(),
        run.caseText(),
        run.inputs(),
        run.findings(),
        run.series(),
        run.health(),
        run.cautions(),
        provenance,
        run.fields(),
        run.surface());
  }

  /** The same run with other pockets, whose feed never sets. */
  public static StoredRun withPockets(StoredRun run, List<Pocket> pockets) {
    Findings f = run.findings();
    return withFindings(
        run,
        new Findings(
            f.severity(),
            f.verdict(),
            f.explanation(),
            f.advice(),
            pockets,
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            f.partSets(),
            f.firmAt(),
            f.linearShrinkage(),
            f.visibleDepth(),
            f.amounts(),
            f.fed()));
  }

  /** The same run, opened by the clock. */
  public static StoredRun opened(StoredRun run, Opening opening) {
    Findings f = run.findings();
    return withFindings(
        run,
        new Findings(
            f.severity(),
            f.verdict(),
            f.explanation(),
            f.advice(),
            f.pockets(),
            f.gateSets(),
            f.sprueSets(),
            f.partSets(),
            f.firmAt(),
            f.linearShrinkage(),
            f.visibleDepth(),
            f.amounts(),
            f.fed(),
            f.filled(),
            opening));
  }

  /** The same pocket, which never sets and has no dents. */
  public static Pocket withoutDents(Pocket p) {
    return new Pocket(
        p.number(),
        p.severity(),
        p.centre(),
        p.volume(),
        p.cutOff(),
        Double.POSITIVE_INFINITY,
        p.meanTemperatureAtCutOff(),
        p.constriction(),
        p.unfedLow(),
        p.unfedHigh(),
        List.of(),
        p.spots(),
        p.sentence());
  }

  private StoredRun run() {
    return new StoredRun(
        "two bulbs on a thin gate",
        "units = \"mm\"\n[part]\nmesh = \"two-bulbs.stl\" # é\n",
        inputs(),
        findings(),
        series(),
        health(),
        List.of("The contact between plastisol and mould was assumed, not measured."),
        new Provenance("0.1.0-test", "2026-11-25T08:41:00Z", "Testland, Java 17", 12.5),
        fields(),
        surface());
  }

  /** Radius at distance u from the tip of the tail, metres. */
  private static double radius(double u) {
    double x = u / MM;
    double r = Math.max(bulb(x, 14, 14, 5.5), bulb(x, 45, 17, 9.5));
    if (x > 20 && x < 40) {
      r = Math.max(r, NECK / MM);
    }
    if (x > 50) {
      r = Math.max(r, Math.max(GATE / MM, Math.min(3.6 + (x - 66) * 0.06, 2.5 + (x - 64))));
    }
    return r * MM;
  }

  private static double bulb(double x, double centre, double half, double most) {
    double s = (x - centre) / half;
    return s * s < 1 ? most * Math.sqrt(1 - s * s) : 0;
  }

  private Vec3 place(double u, double a, double b) {
    return switch (axis) {
      case 0 -> new Vec3(u, a, b).plus(OFFSET);
      case 1 -> new Vec3(b, u, a).plus(OFFSET);
      default -> new Vec3(a, b, u).plus(OFFSET);
    };
  }

  private double along(Vec3 p) {
    Vec3 q = p.minus(OFFSET);
    return axis == 0 ? q.x() : axis == 1 ? q.y() : q.z();
  }

  private TriangleMesh surface() {
    int rings = Math.max(40, round * 3);
    double[] v = new double[3 * (rings * round + 2)];
    for (int i = 0; i < rings; i++) {
      double u = LENGTH * (i + 0.5) / rings;
      double shown = i == rings - 1 ? LENGTH : u;
      for (int j = 0; j < round; j++) {
        double angle = 2 * Math.PI * j / round;
        put(
            v,
            i * round + j,
            place(shown, radius(u) * Math.cos(angle), radius(u) * Math.sin(angle)));
      }
    }
    put(v, rings * round, place(0, 0, 0));
    put(v, rings * round + 1, place(LENGTH, 0, 0));
    return new TriangleMesh(v, corners(rings));
  }

  private int[] corners(int rings) {
    List<Integer> t = new ArrayList<>();
    for (int j = 0; j < round; j++) {
      int k = (j + 1) % round;
      t.addAll(List.of(rings * round, k, j));
      int last = (rings - 1) * round;
      t.addAll(List.of(rings * round + 1, last + j, last + k));
      for (int i = 0; i + 1 < rings; i++) {
        int a = i * round;
        t.addAll(List.of(a + j, a + k, a + round + j));
        t.addAll(List.of(a + k, a + round + k, a + round + j));
      }
    }
    return t.stream().mapToInt(Integer::intValue).toArray();
  }

  private static void put(double[] v, int at, Vec3 p) {
    v[3 * at] = p.x();
    v[3 * at + 1] = p.y();
    v[3 * at + 2] = p.z();
  }

  private Fields fields() {
    Vec3 corner = place(0, -10 * MM, -10 * MM).minus(new Vec3(voxel, voxel, voxel).times(1.25));
    int along = (int) Math.ceil(LENGTH / voxel) + 3;
    int across = (int) Math.ceil(20 * MM / voxel) + 3;
    int[] n = {across, across, across};
    n[axis] = along;
    Fields empty =
        new Fields(
            corner,
            voxel,
            n[0],
            n[1],
            n[2],
            new int[0],
            new byte[0],
            new float[0],
            new float[0],
            new short[0],
            List.of());
    int[] cells =
        IntStream.range(0, n[0] * n[1] * n[2]).filter(c -> inside(empty.centre(c))).toArray();
    return filled(empty, cells);
  }

  private boolean inside(Vec3 p) {
    double u = along(p);
    return u > 0 && u < LENGTH && fromAxis(p) < radius(u);
  }

  private double fromAxis(Vec3 p) {
    return p.minus(place(along(p), 0, 0)).length();
  }

  private Fields filled(Fields grid, int[] cells) {
    int n = cells.length;
    byte[] region = new byte[n];
    float[] set = new float[n];
    float[] cut = new float[n];
    short[] pocket = new short[n];
    for (int i = 0; i < n; i++) {
      Vec3 p = grid.centre(cells[i]);
      double u = along(p);
      double r = fromAxis(p);
      set[i] = (float) (C * (radius(u) * radius(u) - r * r));
      cut[i] = (float) Math.min(set[i], closes(u));
      region[i] = (u < 61 * MM ? Region.PART : u < 65 * MM ? Region.GATE : Region.SPRUE).code();
      boolean late = set[i] > cut[i] && region[i] == Region.PART.code();
      pocket[i] = (short) (late ? u > 29 * MM ? 1 : 2 : 0);
    }
    return new Fields(
        grid.origin(),
        grid.spacing(),
        grid.nx(),
        grid.ny(),
        grid.nz(),
        cells,
        region,
        set,
        cut,
        pocket,
        snapshots(set));
  }

  /** When the thinnest section between u and the sprue has set. */
  private static double closes(double u) {
    double least = radius(u);
    if (u < 29 * MM) {
      least = Math.min(least, NECK);
    }
    if (u < 63 * MM) {
      least = Math.min(least, GATE);
    }
    return C * least * least;
  }

  private static List<Snapshot> snapshots(float[] set) {
    List<Snapshot> list = new ArrayList<>();
    for (double time : new double[] {0, 2, 4, 8, 12, 18, 26, 36, 48, 64, 82, 100}) {
      float[] t = new float[set.length];
      for (int i = 0; i < t.length; i++) {
        t[i] = (float) temperature(time, set[i]);
      }
      list.add(new Snapshot(time, t));
    }
    return list;
  }

  private static double temperature(double time, double set) {
    double rate = Math.log((SHOT - MOULD) / (NO_FLOW - MOULD)) / Math.max(set, 0.05);
    return MOULD + (SHOT - MOULD) * Math.exp(-rate * time);
  }

  private Series series() {
    double[] time = IntStream.rangeClosed(0, 120).asDoubleStream().toArray();
    return new Series(
        time,
        List.of(
            curve("gate", "gate", time, C * GATE * GATE),
            curve("pocket1", "pocket 1, centre", time, C * 9.5 * 9.5 * MM * MM),
            curve("pocket2", "pocket 2, centre", time, C * 5.5 * 5.5 * MM * MM),
            new Series.Curve("mould", "mould at the wall", "°C", mould(time))));
  }

  private static double[] mould(double[] time) {
    double[] v = new double[time.length];
    for (int i = 0; i < v.length; i++) {
      v[i] = MOULD + 9 * (1 - Math.exp(-time[i] / 15)) - 0.02 * time[i];
    }
    return v;
  }

  private static Series.Curve curve(String key, String label, double[] time, double set) {
    double[] v = new double[time.length];
    for (int i = 0; i < v.length; i++) {
      v[i] = temperature(time[i], set);
    }
    return new Series.Curve(key, label, "°C", v);
  }

  private Findings findings() {
    Constriction gate = new Constriction(Kind.GATE, place(63 * MM, 0, 0), 2 * GATE, closes(0.045));
    Constriction neck = new Constriction(Kind.NECK, place(29 * MM, 0, 0), 2 * NECK, closes(0.014));
    return new Findings(
        Severity.WILL_DENT,
        "The large bulb will dent by 0.3 to 0.6 mm, because the gate (5.0 mm) sets first: "
            + "widen the gate.",
        "The gate sets after 6.9 s, but the middle of the large bulb stays soft until 99 s. From "
            + "then on nothing can flow in, and the skin is pulled in as it shrinks. The tail bulb "
            + "has the same trouble behind its neck.",
        List.of(
            "Widen the gate: it must stay open until the large bulb has set.",
            "Feed the large bulb at its thickest place.",
            "Thicken the neck (4.4 mm); this helps pocket 2 only and changes the part."),
        List.of(
            pocket(1, Severity.WILL_DENT, 45, 9.5, 3.1e-4, 6e-4, gate),
            pocket(2, Severity.MAY_DENT, 14, 5.5, 0.8e-4, 2.1e-4, neck)),
        closes(0.045),
        60,
        C * 9.5 * 9.5 * MM * MM,
        190,
        0.031,
        1.5e-4,
        new Amounts(7.1e-6, 1.4e-6, 0.3e-6, 6.6e-3, 1.3e-3, 0.28e-3, 1, OptionalDouble.of(30e-6)),
        new Fed(true, 0.3e-6, 0.12e-6, 0.18e-6, 0.4e-6, 6.1, 4e-3, Double.POSITIVE_INFINITY));
  }

  private Pocket pocket(
      int number, Severity severity, double at, double r, double low, double high, Constriction c) {
    Vec3 centre = place(at * MM, 0, 0);
    double set = C * r * r * MM * MM;
    double unfed = r * r * r * 0.05e-9;
    return new Pocket(
        number,
        severity,
        centre,
        r * r * r * 4e-9,
        c.closedAt(),
        set,
        150,
        c,
        unfed,
        2 * unfed,
        List.of(new Dent(place(at * MM, r * MM, 0), low, high, r * MM, r * MM)),
        List.of(new HotSpot(centre, set, c.closedAt(), c)),
        "Cut off by the " + (c.kind() == Kind.GATE ? "gate" : "neck") + ", stays soft long after.");
  }

  private static Inputs inputs() {
    return new Inputs(
        List.of(
            new Inputs.Line("Mesh", "two-bulbs.stl, closed, 2,160 triangles", ""),
            new Inputs.Line("Gate", "round, 5 mm, 4 mm land, at the nose", ""),
            new Inputs.Line("Sprue", "7 to 10 mm, 23 mm long", ""),
            new Inputs.Line("Shot temperature", "168 °C (334 °F)", ""),
            new Inputs.Line("Mould temperature", "42 °C (108 °F)", "")),
        List.of(
            new Inputs.Line("No-flow temperature", "125 °C", "estimate, 100 to 150"),
            new Inputs.Line("Conductivity", "0.145 W/m K", "S5, S7, S8"),
            new Inputs.Line("Contact to mould", "2500 W/m² K", "S28")));
  }

  private static Health health() {
    return new Health(
        List.of(
            new Health.Line(
                "Heat lost and found again", "3e-9 of the heat moved", Health.Mark.GOOD),
            new Health.Line("Cells across the narrowest gate", "6", Health.Mark.GOOD),
            new Health.Line("Volume of cells against the mesh", "-0.4 %", Health.Mark.LOOK_AT_IT)));
  }
}
