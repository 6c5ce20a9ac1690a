// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.feed.CutOff;
import gelfront.feed.HalfFed;
import gelfront.grid.Basins;
import gelfront.grid.Cavity;
import gelfront.grid.MouthSteps;
import gelfront.mesh.Vec3;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.GatePlace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * When each place closes to the flow, and the pockets behind it.
 *
 * <p>Where conduction alone was calculated, a place closes when it sets. With the flow, the way to
 * a cavity closes when half of what the cavity needs no longer comes, though its middle may still
 * be liquid: at the region that suction was spent on, or, where several cavities share that, at the
 * cavity's gate. A neck inside a part closes when half of the liquid behind it is starved, if that
 * is well before the rest is; what lies before it is then judged without what lies behind, and
 * stays open as long as it feeds that.
 */
final class Closings {
  /** Share of the rest's time below which a place counts as cut off by its neck: own judgement. */
  private static final double EARLIER = 0.8;

  /** Of a gate's width below which a place beside it is a neck of its own: own judgement. */
  private static final double NARROWER = 0.75;

  private final CaseVoxels voxels;
  private final Cavity cavity;
  private final ShotRecord shot;
  private final IntToDoubleFunction halfWidth;
  private final short[] owner;
  private final double[] volumes;
  private final double[] half;
  private final List<Neck> necks = new ArrayList<>();
  private final Basins pockets;

  /** A place that closes inside a part. */
  private record Neck(int cell, double time) {}

  /**
   * @param halfWidth metres from a cell to the wall
   */
  Closings(CaseVoxels voxels, ShotRecord shot, IntToDoubleFunction halfWidth) {
    this.voxels = voxels;
    this.shot = shot;
    this.halfWidth = halfWidth;
    cavity = voxels.model().cavity();
    owner = Owners.of(voxels);
    volumes = cavity.volumes();
    half = new double[voxels.cavities().count() + 1];
    Arrays.fill(half, Double.POSITIVE_INFINITY);
    pockets = CavityPockets.split(find(), owner, voxels.cavities().count(), shot.set());
  }

  private Basins find() {
    if (shot.flow().isEmpty()) {
      return CutOff.of(cavity, shot.set());
    }
    for (int k = 1; k < half.length; k++) {
      half[k] = closing(k).half();
    }
    narrowest();
    Basins first = CutOff.of(cavity, closed(half));
    hidden(first);
    if (necks.isEmpty()) {
      return first;
    }
    withoutWhatLiesBehind();
    return CutOff.of(cavity, closed(half));
  }

  private FlowRecord.Closing closing(int k) {
    return shot.flow().orElseThrow().closings().get(k - 1);
  }

  /**
   * Necks that starve more than half of their cavity: what suction was spent on lies in the part.
   */
  private void narrowest() {
    for (int k = 1; k < half.length; k++) {
      FlowRecord.Closing c = closing(k);
      if (Double.isFinite(c.half()) && c.spentOn() == Cavity.Region.PART && c.narrowest() >= 0) {
        int one = k;
        int at = new WayWidths(cavity, i -> owner[i] == one, halfWidth).narrowest(c.narrowest());
        addIfInside(new Neck(at, c.half()));
      }
    }
    necks.forEach(n -> half[owner[n.cell]] = Double.POSITIVE_INFINITY);
  }

  private void addIfInside(Neck neck) {
    if (isPart(neck.cell) && !ofGate(neck.cell)) {
      necks.add(neck);
    }
  }

  /** Necks behind which it starves before they set. */
  private void hidden(Basins first) {
    for (Basins.Basin b : first.basins()) {
      double all = starves(b.cells());
      if (all < EARLIER * b.level()) {
        addIfInside(new Neck(b.saddle(), all));
      }
      if (b.peaks().size() > 1) {
        within(b, MouthSteps.of(cavity));
      }
    }
  }

  /**
   * Necks inside a pocket. Where it starves before a neck first, the neck is open still.
   *
   * @param steps cells to the mouth
   */
  private void within(Basins.Basin b, int[] steps) {
    for (int i = 1; i < b.peaks().size(); i++) {
      Basins.Peak p = b.peaks().get(i);
      boolean farther = steps[p.cell()] > steps[b.peaks().get(0).cell()];
      double behind = starves(cells(b, farther ? i : 0));
      double before = starves(cells(b, farther ? 0 : i));
      if (behind < EARLIER * Math.min(p.separated(), before)) {
        addIfInside(new Neck(p.saddle(), behind));
      }
    }
  }

  /** Whether what closes at a place is its gate: beside that, and not much narrower. */
  boolean ofGate(int cell) {
    GatePlace gate = voxels.gateNear(cavity.centre(cell));
    return gate.beside(cavity.centre(cell))
        && 2 * halfWidth.applyAsDouble(cell) >= NARROWER * gate.width();
  }

  private boolean isPart(int c) {
    return cavity.region()[c] == Cavity.Region.PART.ordinal();
  }

  private static int[] cells(Basins.Basin b, int group) {
    return IntStream.range(0, b.cells().length)
        .filter(i -> b.peak()[i] == group)
        .map(i -> b.cells()[i])
        .toArray();
  }

  /** s from which on half of what is liquid in cells of the part is starved; +infinity: never. */
  private double starves(int[] cells) {
    float[] starved = shot.flow().orElseThrow().starved();
    double[] times = shot.flow().get().trace().time();
    double[] setBefore = new double[times.length + 1];
    double[] lackFrom = new double[times.length + 1];
    double liquid = 0;
    for (int c : cells) {
      if (isPart(c)) {
        int set = firstAtOrAfter(times, shot.set()[c]);
        int lacks = Math.min(set, firstAtOrAfter(times, starved[c]));
        liquid += volumes[c];
        setBefore[set] += volumes[c];
        lackFrom[lacks] += volumes[c];
        lackFrom[set] -= volumes[c];
      }
    }
    HalfFed half = new HalfFed();
    double least = 1e-9 * liquid;
    double lack = 0;
    for (int i = 0; i < times.length; i++) {
      liquid -= setBefore[i];
      lack += lackFrom[i];
      if (liquid > least) {
        half.after(1 - lack / liquid, i > 0 ? times[i - 1] : 0, times[i]);
      }
    }
    return half.at();
  }

  /** Index of the first time that is not before {@code when}; their number: there is none. */
  private static int firstAtOrAfter(double[] times, double when) {
    int at = Arrays.binarySearch(times, when);
    return at >= 0 ? at : -at - 1;
  }

  /** A cavity's way in is judged by what it still feeds, and by what it fed last. */
  private void withoutWhatLiesBehind() {
    double[] never = new double[half.length];
    Arrays.fill(never, Double.POSITIVE_INFINITY);
    Basins behind = CutOff.of(cavity, closed(never));
    boolean[] cut = new boolean[cavity.count()];
    for (Basins.Basin b : behind.basins()) {
      if (necks.stream().anyMatch(n -> (float) n.time == b.level())) {
        Arrays.stream(b.cells()).forEach(c -> cut[c] = true);
      }
    }
    for (int k = 1; k < half.length; k++) {
      int one = k;
      IntPredicate here = c -> owner[c] == one && isPart(c);
      if (IntStream.range(0, cut.length).anyMatch(c -> cut[c] && here.test(c))) {
        int[] before =
            IntStream.range(0, cut.length).filter(c -> !cut[c] && here.test(c)).toArray();
        half[k] = Math.max(starves(before), justAfterNecks(one));
      }
    }
  }

  /** s: what flows through a neck has come through the cavity's way in. */
  private double justAfterNecks(int k) {
    double last =
        necks.stream().filter(n -> owner[n.cell] == k).mapToDouble(Neck::time).max().orElse(0);
    return Math.nextUp((float) last);
  }

  private float[] closed(double[] halves) {
    float[] closing = shot.set().clone();
    for (int k = 1; k < halves.length; k++) {
      if (Double.isFinite(halves[k])) {
        lower(closing, way(k), halves[k]);
      }
    }
    for (Neck n : necks) {
      Vec3 at = cavity.centre(n.cell);
      double reach = 2 * Math.max(cavity.grid().spacing(), halfWidth.applyAsDouble(n.cell));
      lower(closing, c -> isPart(c) && cavity.centre(c).distance(at) <= reach, n.time);
    }
    return closing;
  }

  private static void lower(float[] closing, IntPredicate where, double time) {
    for (int c = 0; c < closing.length; c++) {
      closing[c] = where.test(c) ? Math.min(closing[c], (float) time) : closing[c];
    }
  }

  /** Cells that close the way to a cavity. */
  private IntPredicate way(int k) {
    Cavity.Region spent = closing(k).spentOn();
    boolean own = spent == Cavity.Region.GATE || spent == Cavity.Region.PART || half.length > 2;
    return own
        ? c -> owner[c] == k && cavity.region()[c] == Cavity.Region.GATE.ordinal()
        : c -> cavity.region()[c] == spent.ordinal();
  }

  /** When each place is cut off, and pockets, none of which lies in two cavities. */
  Basins pockets() {
    return pockets;
  }

  /**
   * Where a way closed: the middle of a neck that the flow closed all through, else the saddle.
   *
   * @param closed s
   */
  int place(int saddle, double closed) {
    return necks.stream()
        .filter(n -> (float) n.time == (float) closed && isPart(saddle))
        .mapToInt(Neck::cell)
        .findFirst()
        .orElse(saddle);
  }

  /**
   * Region that the flow closed on the way to a place, where it was the flow.
   *
   * @param saddle where it closed
   * @param closed s
   */
  Cavity.Region closedBy(int saddle, double closed) {
    Cavity.Region region = Cavity.Region.of(cavity.region()[saddle]);
    int k = owner[saddle] > 0 ? owner[saddle] : 1;
    boolean shared = region == Cavity.Region.GATE || region == Cavity.Region.SPRUE;
    boolean byFlow = shot.flow().isPresent() && shared && closed >= (float) half[k];
    return byFlow && closing(k).spentOn() != Cavity.Region.PART ? closing(k).spentOn() : region;
  }

  /** Whether the flow, not a cell that has set, closed the way to a saddle. */
  boolean byFlow(int saddle, double closed) {
    int k = owner[saddle] > 0 ? owner[saddle] : 1;
    return shot.flow().isPresent() && closed >= (float) half[k];
  }
}
