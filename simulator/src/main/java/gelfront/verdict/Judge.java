// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.base.Progress;
import gelfront.base.Units;
import gelfront.dent.DentLobes;
import gelfront.dent.Sink;
import gelfront.dent.SinkEstimate;
import gelfront.fill.FillRecord;
import gelfront.finding.Constriction;
import gelfront.finding.Dent;
import gelfront.finding.Filled;
import gelfront.finding.Findings;
import gelfront.finding.HotSpot;
import gelfront.finding.Opening;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import gelfront.finding.Sunk;
import gelfront.grid.Basins;
import gelfront.grid.Cavity;
import gelfront.grid.Chords;
import gelfront.grid.MergeTree;
import gelfront.grid.WallDistance;
import gelfront.mesh.Vec3;
import gelfront.setup.Case;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.Cavities;
import gelfront.voxelize.GatePlace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** From a shot's record to findings. */
public final class Judge {
  /**
   * Share of the gate's own closing time below which a place beside it closed for itself: a thin
   * end that starves the part while the gate is still open is a neck, however near it lies.
   */
  private static final double WITH_GATE = 0.9;

  /** Gate widths: what suction a wider sprue takes it takes where it narrows to the gate. */
  private static final double WIDE_SPRUE = 2;

  /** Share of a pocket's own width from which what closed before it is no constriction. */
  private static final double AS_WIDE = 0.9;

  /**
   * Share of the largest pocket below which one that leaves no dent isn't told of: own judgement.
   */
  private static final double SPECK = 0.01;

  /** s between the sprue running dry and the part being cut off for the one to be to blame. */
  private static final double DRY = 0.5;

  private final Case setup;
  private final CaseVoxels voxels;
  private final Cavity cavity;
  private final ShotRecord shot;
  private final Closings closings;
  private final Basins cutOff;
  private final WallDistance walls;
  private final boolean[] mouth;
  private final double gateSets;
  private final double[] gateOf;

  private Judge(Case setup, CaseVoxels voxels, ShotRecord shot, Progress progress) {
    this.setup = setup;
    this.voxels = voxels;
    this.cavity = voxels.model().cavity();
    this.shot = shot;
    progress.check("judging", 0);
    this.walls = WallDistance.of(cavity, (stage, f) -> progress.at("judging", 0));
    progress.check("judging", 0);
    this.closings = new Closings(voxels, shot, this::halfWidth);
    this.cutOff = closings.pockets();
    progress.check("judging", 0);
    this.mouth = MergeTree.mouthCells(cavity);
    this.gateSets = latest(cutOff.level(), this::isPart);
    Cavities cavities = voxels.cavities();
    this.gateOf = new double[cavities.count() + 1];
    for (int k = 1; k < gateOf.length; k++) {
      int one = k;
      gateOf[k] = latest(cutOff.level(), c -> cavities.of()[c] == one);
    }
  }

  /**
   * @param findings what came out
   * @param cutOff s per plastisol cell
   * @param pocket number of its pocket per plastisol cell, 0 for none
   * @param lobes of each pocket, in the findings' order
   */
  public record Judgement(
      Findings findings, float[] cutOff, short[] pocket, List<DentLobes> lobes) {
    public Judgement {
      lobes = List.copyOf(lobes);
    }
  }

  /**
   * @throws gelfront.base.CancelledException if the watcher wants to stop
   */
  public static Judgement judge(Case setup, CaseVoxels voxels, ShotRecord shot, Progress progress) {
    return new Judge(setup, voxels, shot, progress).judge(progress);
  }

  /** What a shot's filling alone comes to. */
  public static Filled filled(Case setup, CaseVoxels voxels, FillRecord fill) {
    return new Telling(Units.METRIC).of(FillJudge.judge(setup, voxels, fill));
  }

  private Judgement judge(Progress progress) {
    SinkEstimate[] sinks = new SinkEstimate[gateOf.length];
    List<Draft> drafts = new ArrayList<>();
    int pocketsInAll = cutOff.basins().size();
    for (Basins.Basin b : cutOff.basins()) {
      double done = (double) drafts.size() / pocketsInAll;
      Progress one = (stage, f) -> progress.at(stage, done + f / pocketsInAll);
      int k = cavityOf(b);
      drafts.add(draft(b, sinks(sinks, k).of(b, setup.visibleDent(), one)));
    }
    drafts.sort(
        Comparator.comparingDouble((Draft d) -> -d.deepest().depthHigh())
            .thenComparingDouble(d -> -d.sink.unfedHigh()));
    List<Draft> told = worthTelling(drafts);
    List<Pocket> pockets = new ArrayList<>();
    short[] pocketOf = new short[cavity.count()];
    for (Draft d : told) {
      int number = pockets.size() + 1;
      pockets.add(pocket(number, d));
      for (int c : d.basin.cells()) {
        if (isPart(c)) {
          pocketOf[c] = (short) number;
        }
      }
    }
    List<DentLobes> lobes = told.stream().map(d -> d.sink.lobes()).toList();
    return new Judgement(findings(pockets, opening(sinks)), cutOff.level(), pocketOf, lobes);
  }

  /**
   * @param drafts deepest dent first
   */
  private List<Draft> worthTelling(List<Draft> drafts) {
    double speck = SPECK * drafts.stream().mapToDouble(d -> partOf(d.basin)).max().orElse(0);
    return IntStream.range(0, drafts.size())
        .filter(i -> i == 0 || !clean(drafts.get(i)) || partOf(drafts.get(i).basin) >= speck)
        .mapToObj(drafts::get)
        .toList();
  }

  private boolean clean(Draft d) {
    return severity(d.deepest()) == Severity.CLEAN;
  }

  /** Number of the cavity that a pocket lies in. */
  private int cavityOf(Basins.Basin b) {
    short[] of = voxels.cavities().of();
    return java.util.Arrays.stream(b.cells())
        .map(c -> of[c])
        .filter(k -> k > 0)
        .findFirst()
        .orElse(1);
  }

  private SinkEstimate sinks(SinkEstimate[] made, int number) {
    if (made[number] == null) {
      made[number] = sinks(number);
    }
    return made[number];
  }

  /** The worst of all cavities, opened by the clock. */
  private Opening opening(SinkEstimate[] sinks) {
    if (setup.opensAt().isEmpty()) {
      return Opening.WHEN_FIRM;
    }
    double at = setup.opensAt().getAsDouble();
    OpeningJudge judge = new OpeningJudge(setup.visibleDent());
    return IntStream.range(1, sinks.length)
        .mapToObj(k -> judge.of(at, sinks(sinks, k).opened(at, setup.visibleDent())))
        .max(Comparator.comparingDouble(Opening::oval).thenComparingDouble(Opening::liquid))
        .orElse(Opening.WHEN_FIRM);
  }

  private SinkEstimate sinks(int number) {
    short[] of = voxels.cavities().of();
    double[] mould = shot.mouldAtWall();
    return new SinkEstimate(
        cavity,
        c -> of[c] == number,
        walls,
        shot.set(),
        shot.history(),
        setup.plastisol(),
        mould[mould.length - 1],
        shot.flow().map(FlowRecord::unfed),
        setup.up(voxels.mouth().direction()));
  }

  private record Draft(Basins.Basin basin, Sink sink, Constriction constriction) {
    Dent deepest() {
      return sink.dents().stream().max(Comparator.comparingDouble(Dent::depthHigh)).get();
    }
  }

  private Draft draft(Basins.Basin b, Sink sink) {
    Constriction closed = constriction(b.saddle(), b.level());
    return new Draft(b, sink, thickest(closed, b.peaks().get(0).cell()));
  }

  /**
   * The part itself is to blame where what closed is as wide as what it cut off: a wider gate or
   * neck can't be had there.
   */
  private Constriction thickest(Constriction c, int peak) {
    boolean way = c.kind() == Constriction.Kind.GATE || c.kind() == Constriction.Kind.NECK;
    return way && c.width() >= AS_WIDE * width(peak)
        ? new Constriction(Constriction.Kind.TOO_THICK, c.place(), c.width(), c.closedAt())
        : c;
  }

  private boolean isPart(int c) {
    return cavity.region()[c] == Cavity.Region.PART.ordinal();
  }

  private Vec3 place(int c) {
    return cavity.centre(c);
  }

  /** Metres to the wall from the cell or its neighbours, whichever lies deepest. */
  private double halfWidth(int cell) {
    double half = walls.distance(cell);
    for (int f = 0; f < cavity.faces(cell); f++) {
      half = Math.max(half, walls.distance(cavity.across(cell, f)));
    }
    return half;
  }

  /** Metres across: the least way from wall to wall, or what no cell's middle can hide. */
  private double width(int cell) {
    double hidden = Math.sqrt(3) * cavity.edge(cell);
    return Math.min(Chords.least(cavity, cell), 2 * halfWidth(cell) + hidden);
  }

  private Constriction constriction(int closes, double closed) {
    int saddle = closings.place(closes, closed);
    Vec3 at = place(saddle);
    GatePlace gate = voxels.gateNear(at);
    Cavity.Region region = closings.closedBy(saddle, closed);
    boolean byFlow = closings.byFlow(saddle, closed);
    if (byFlow && region == Cavity.Region.SPRUE && shot.flow().get().dryAt() > closed + DRY) {
      int narrow = SprueWidth.narrowest(cavity, walls, voxels.mouth().direction());
      double width = 2 * walls.distance(narrow);
      if (width < WIDE_SPRUE * gate.width()) {
        return new Constriction(Constriction.Kind.SPRUE, place(narrow), width, closed);
      }
    }
    double gateCloses = gateOf[gate.cavity()];
    boolean atGate = closings.ofGate(saddle) && closed >= WITH_GATE * gateCloses;
    Constriction.Kind kind =
        switch (region) {
          case PART -> atGate ? Constriction.Kind.GATE : Constriction.Kind.NECK;
          case GATE -> Constriction.Kind.GATE;
          case RUNNER -> Constriction.Kind.RUNNER;
          case SPRUE -> atGate ? Constriction.Kind.GATE : Constriction.Kind.SPRUE;
        };
    if (shot.flow().filter(f -> f.dryAt() <= closed + DRY).isPresent()
        && kind != Constriction.Kind.NECK) {
      kind = Constriction.Kind.DRY_SPRUE;
    }
    if (kind == Constriction.Kind.RUNNER) {
      int runner = runnerNear(saddle);
      return new Constriction(kind, place(runner), width(runner), closed);
    }
    double width = kind == Constriction.Kind.GATE ? gate.width() : width(saddle);
    return new Constriction(kind, at, width, closed);
  }

  /** A cell of the runner: what closed, or what leads to the gate that was shut for it. */
  private int runnerNear(int saddle) {
    int best = saddle;
    double least = Double.POSITIVE_INFINITY;
    for (int c = 0; c < cavity.count() && least > 0; c++) {
      double d = place(c).distance(place(saddle));
      if (cavity.region()[c] == Cavity.Region.RUNNER.ordinal() && d < least) {
        least = d;
        best = c;
      }
    }
    return best;
  }

  private Pocket pocket(int number, Draft d) {
    List<HotSpot> spots = new ArrayList<>();
    for (int i = 0; i < d.basin.peaks().size(); i++) {
      Basins.Peak p = d.basin.peaks().get(i);
      Constriction neck = i == 0 ? d.constriction : constriction(p.saddle(), p.separated());
      spots.add(new HotSpot(place(p.cell()), p.height(), p.separated(), neck));
    }
    List<Dent> dents =
        d.sink.dents().stream()
            .sorted(Comparator.comparingDouble((Dent x) -> -x.depthHigh()))
            .toList();
    Severity severity = severity(dents.get(0));
    return new Pocket(
        number,
        cavities(d.basin),
        severity,
        spots.get(0).place(),
        partOf(d.basin),
        d.basin.level(),
        d.basin.peaks().get(0).height(),
        d.sink.temperature(),
        d.constriction,
        d.sink.unfedLow(),
        d.sink.unfedHigh(),
        dents,
        spots,
        d.sink.openUntil(),
        d.sink.lobes().volume(),
        shot.flow().map(r -> r.trace().sunk(d.basin.level())).orElse(Sunk.UNKNOWN),
        "",
        "");
  }

  /** m3 of the cubes that lie in the part. */
  private double partOf(Basins.Basin b) {
    double large = 0;
    double small = 0;
    for (int c : b.cells()) {
      large += isPart(c) && c < cavity.voxels() ? 1 : 0;
      small += isPart(c) && c >= cavity.voxels() ? 1 : 0;
    }
    double least = cavity.smallEdge();
    return large * cavity.cubeVolume(0) + small * least * least * least;
  }

  /** Numbers of the cavities that a pocket lies in; none where there is but one. */
  private List<Integer> cavities(Basins.Basin b) {
    Cavities all = voxels.cavities();
    return java.util.Arrays.stream(b.cells())
        .map(c -> all.of()[c])
        .filter(k -> k > 0 && all.count() > 1)
        .distinct()
        .sorted()
        .boxed()
        .toList();
  }

  private Severity severity(Dent d) {
    if (d.depthLow() >= setup.visibleDent()) {
      return Severity.WILL_DENT;
    }
    return d.depthHigh() >= setup.visibleDent() ? Severity.MAY_DENT : Severity.CLEAN;
  }

  private Findings findings(List<Pocket> pockets, Opening opening) {
    Severity worst =
        pockets.stream()
            .map(Pocket::severity)
            .max(Comparator.naturalOrder())
            .orElse(Severity.CLEAN);
    Budget budget = new Budget(setup, cavity, shot, cutOff.level(), gateSets);
    Findings bare =
        new Findings(
            opening.severity().compareTo(worst) > 0 ? opening.severity() : worst,
            "",
            "",
            List.of(),
            pockets,
            gateSets,
            latest(shot.set(), c -> mouth[c]),
            latest(shot.set(), this::isPart),
            latest(shot.firm(), this::isPart),
            budget.linearShrinkage(),
            setup.visibleDent(),
            budget.amounts(),
            budget.fed(),
            shot.fill().map(f -> FillJudge.judge(setup, voxels, f)).orElse(Filled.NOT_CALCULATED),
            opening);
    return new Telling(Units.METRIC).of(bare);
  }

  private double latest(float[] field, java.util.function.IntPredicate where) {
    double most = 0;
    for (int c = 0; c < field.length; c++) {
      if (where.test(c)) {
        most = Math.max(most, field[c]);
      }
    }
    return most;
  }
}
