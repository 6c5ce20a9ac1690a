// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static gelfront.base.Quantities.say;

import gelfront.dent.TemperatureHistory;
import gelfront.fill.FillRecord;
import gelfront.finding.Findings;
import gelfront.finding.HotSpot;
import gelfront.finding.Pocket;
import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import gelfront.result.Fields;
import gelfront.result.Health;
import gelfront.result.Series;
import gelfront.result.VoxelFields;
import gelfront.state.HeatLedger;
import gelfront.verdict.FlowRecord;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.GatePlace;
import gelfront.voxelize.VoxelReport;
import java.util.ArrayList;
import java.util.List;

/** An outcome as fields, curves and health, ready to be stored. */
public final class Storing {
  /** Temperatures stored at most, all cells and times together. */
  private static final double MOST_VALUES = 12e6;

  private Storing() {}

  public static Fields fields(CaseRunner.Outcome o) {
    Cavity cavity = o.voxels().model().cavity();
    return VoxelFields.of(
        cavity,
        o.shot().set(),
        o.judgement().cutOff(),
        o.judgement().pocket(),
        snapshots(o.shot().history(), cavity.count()),
        o.shot().fill().map(FillRecord::reached).orElse(new float[0]),
        o.shot().fill().map(FillRecord::arrival).orElse(new float[0]));
  }

  /** Evenly thinned so that a large run stays a small file; first and last are kept. */
  private static List<Fields.Snapshot> snapshots(TemperatureHistory h, int cells) {
    int most = (int) Math.max(4, Math.min(24, MOST_VALUES / cells));
    List<Fields.Snapshot> list = new ArrayList<>();
    int n = Math.min(most, h.size());
    for (int i = 0; i < n; i++) {
      int at = n == 1 ? 0 : (int) Math.round((double) i * (h.size() - 1) / (n - 1));
      list.add(new Fields.Snapshot(h.time(at), h.temperature(at)));
    }
    return list;
  }

  public static Series series(CaseRunner.Outcome o) {
    TemperatureHistory h = o.shot().history();
    double[] time = new double[h.size()];
    for (int i = 0; i < time.length; i++) {
      time[i] = h.time(i);
    }
    Cavity cavity = o.voxels().model().cavity();
    List<Series.Curve> curves = new ArrayList<>();
    gates(h, o.voxels(), curves);
    Findings f = o.judgement().findings();
    for (Pocket p : f.pockets().subList(0, Math.min(4, f.pockets().size()))) {
      List<HotSpot> spots = p.spots();
      curves.add(
          curve(
              h,
              cavity,
              "pocket" + p.number(),
              "pocket " + p.number() + ", where it sets last",
              spots.get(0).place()));
    }
    curves.add(new Series.Curve("mould", "mould at the wall, mean", "°C", o.shot().mouldAtWall()));
    o.shot().flow().ifPresent(r -> flow(curves, time, r.trace()));
    return new Series(time, curves);
  }

  private static void gates(TemperatureHistory h, CaseVoxels voxels, List<Series.Curve> curves) {
    Cavity cavity = voxels.model().cavity();
    List<GatePlace> gates = voxels.gates();
    for (int i = 0; i < gates.size(); i++) {
      String key = i == 0 ? "gate" : "gate" + (i + 1);
      String label = gates.size() == 1 ? "middle of the gate" : label(gates.get(i), i, voxels);
      curves.add(curve(h, cavity, key, label, gates.get(i).middle()));
    }
  }

  private static String label(GatePlace gate, int i, CaseVoxels voxels) {
    int cavities = voxels.cavities().count();
    return voxels.gates().size() == cavities
        ? "middle of the gate of cavity " + (i + 1)
        : "middle of gate "
            + (i / cavities + 1)
            + (cavities > 1 ? " of cavity " + gate.cavity() : "");
  }

  private static void flow(List<Series.Curve> curves, double[] time, FlowRecord.Trace t) {
    curves.add(new Series.Curve("drawn", "drawn in", "ml", at(time, t.time(), t.drawn(), 1e6)));
    curves.add(
        new Series.Curve("unfed", "the part lacks", "ml", at(time, t.time(), t.unfed(), 1e6)));
    curves.add(
        new Series.Curve(
            "fed_share", "fed of what it needs", "", at(time, t.time(), t.share(), 1)));
    curves.add(
        new Series.Curve(
            "sprue_sunk", "sprue's surface sunk", "mm", at(time, t.time(), t.level(), 1e3)));
    curves.add(
        new Series.Curve(
            "gate_suction", "suction in the gate", "Pa", at(time, t.time(), t.gateSuction(), 1)));
  }

  /** Values at other times: that of the last step before. */
  private static double[] at(double[] wanted, double[] time, double[] values, double factor) {
    double[] out = new double[wanted.length];
    int k = -1;
    for (int i = 0; i < out.length; i++) {
      while (k + 1 < time.length && time[k + 1] <= wanted[i] + 1e-9) {
        k++;
      }
      double v = k < 0 ? values[0] : Double.isFinite(values[k]) ? values[k] : 0;
      out[i] = factor * v;
    }
    return out;
  }

  private static Series.Curve curve(
      TemperatureHistory h, Cavity cavity, String key, String label, Vec3 at) {
    int nearest = cavity.nearest(at);
    double[] values = new double[h.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = h.temperature(i)[nearest];
    }
    return new Series.Curve(key, label, "°C", values);
  }

  /** What the run found out about itself. */
  public static Health health(CaseRunner.Outcome o) {
    VoxelReport v = o.voxels().report();
    HeatLedger heat = o.end().ledger;
    List<Health.Line> lines = new ArrayList<>();
    lines.add(
        line(
            "Heat balance: what the plastisol gave against what mould and air took",
            say("%.1e of the heat moved", heat.imbalance()),
            heat.imbalance() < 1e-6,
            heat.imbalance() < 1e-3));
    o.shot().flow().ifPresent(f -> lines.add(volumes(f)));
    o.shot().fill().ifPresent(f -> lines.add(filling(f)));
    lines.add(
        line(
            "Cells across the narrowest feed section",
            say(
                "%.1f (%.2f mm in %.2f mm cells; elsewhere %.2f mm)",
                v.cellsAcross(), v.narrowestFeed() * 1e3, v.smallest() * 1e3, v.spacing() * 1e3),
            v.cellsAcross() >= 7.5,
            v.cellsAcross() >= 4));
    lines.add(
        line(
            "Volume of the part in voxels against its mesh",
            say("%+.2f %%", v.volumeError() * 100),
            Math.abs(v.volumeError()) < 0.01,
            Math.abs(v.volumeError()) < 0.05));
    lines.add(
        line(
            "Wall area as heat sees it against the mesh",
            say("%+.1f %%", v.areaError() * 100),
            Math.abs(v.areaError()) < 0.03,
            Math.abs(v.areaError()) < 0.15));
    lines.add(
        new Health.Line(
            "Size of the calculation",
            say(
                "%,d plastisol cells, %,d mould cells, %d steps%s",
                v.plastisolCells(), v.mouldCells(), o.steps(), mirrored(o.times())),
            Health.Mark.GOOD));
    lines.add(
        line(
            "All plastisol firm at the end",
            o.finished()
                ? say("after %.0f s", o.end().time)
                : say("not within %.0f s", o.end().time),
            o.finished(),
            false));
    v.notes().forEach(n -> lines.add(new Health.Line("Feed system", n, Health.Mark.LOOK_AT_IT)));
    return new Health(lines);
  }

  private static String mirrored(int times) {
    String part = times == 2 ? "one half" : times == 4 ? "a quarter" : "an eighth";
    return times == 1 ? "" : "; " + part + " calculated, the rest is its mirror image";
  }

  private static Health.Line filling(FillRecord f) {
    return line(
        "Heat balance of the shot: what the liquid brought against what the cells got",
        say("%.1e of the heat brought", f.heatOff()),
        f.heatOff() <= 1e-4,
        f.heatOff() <= 1e-3);
  }

  private static Health.Line volumes(FlowRecord f) {
    return line(
        "Volume balance: what the liquid drew against what came and what the skin gave",
        say("%.1e of the contraction in the worst step", f.worstImbalance()),
        f.worstImbalance() <= 1e-4,
        f.worstImbalance() <= 1e-3);
  }

  private static Health.Line line(String check, String result, boolean good, boolean fair) {
    return new Health.Line(
        check, result, good ? Health.Mark.GOOD : fair ? Health.Mark.LOOK_AT_IT : Health.Mark.BAD);
  }
}
