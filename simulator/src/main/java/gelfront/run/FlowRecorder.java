// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.feed.Feeding;
import gelfront.feed.HalfFed;
import gelfront.grid.Fold;
import gelfront.state.ThermalState;
import gelfront.verdict.FlowRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Watches the flow: its curves, when the part no longer gets half of what it needs, and why. */
final class FlowRecorder implements StepObserver {
  private final Feeding feeding;
  private final Fold fold;
  private final int gateCell;
  private final List<Moment> moments = new ArrayList<>();
  private final short[] owner;
  private final List<CavityFeed> cavities = new ArrayList<>();
  private final HalfFed half = new HalfFed();
  private double dryAt = Double.POSITIVE_INFINITY;

  private record Moment(
      double time, double drawn, double unfed, double share, double level, double suction) {}

  /**
   * @param feeding of what is left of the folded model
   * @param owner of the whole: number of its cavity per cell of part and gates, 0 for what cavities
   *     share
   * @param count cavities
   * @param gateCell of the whole, in the middle of the gate
   */
  FlowRecorder(Feeding feeding, Fold fold, short[] owner, int count, int gateCell) {
    this.feeding = feeding;
    this.fold = fold;
    this.owner = fold.fold(owner);
    for (int k = 1; k <= count; k++) {
      cavities.add(new CavityFeed(feeding, this.owner, k));
    }
    this.gateCell = fold.cell()[gateCell];
  }

  @Override
  public void after(ThermalState state, double from) {
    double share = feeding.sums().fedShare();
    half.after(share, from, state.time);
    double[][] sums = feeding.byCavity(owner, cavities.size());
    cavities.forEach(k -> k.after(state.time, from, sums));
    if (feeding.reservoir().dry()) {
      dryAt = Math.min(dryAt, state.time);
    }
    moments.add(
        new Moment(
            state.time,
            fold.times() * feeding.sums().entered(),
            fold.times() * feeding.sums().partUnfed(),
            share,
            feeding.reservoir().level(),
            feeding.suctionAt(gateCell)));
  }

  FlowRecord record() {
    return new FlowRecord(
        fold.unfold(floats(feeding.unfed())),
        fold.unfold(feeding.starved()),
        fold.times() * feeding.sums().partDemand(),
        fold.times() * feeding.sums().partUnfed(),
        fold.times() * feeding.sums().entered(),
        half.at(),
        cavities.stream().map(k -> k.closing(fold)).toList(),
        dryAt,
        feeding.sums().worstImbalance(),
        new FlowRecord.Trace(
            all(Moment::time),
            all(Moment::drawn),
            all(Moment::unfed),
            all(Moment::share),
            all(Moment::level),
            all(Moment::suction)));
  }

  private static float[] floats(double[] values) {
    float[] less = new float[values.length];
    for (int c = 0; c < values.length; c++) {
      less[c] = (float) values[c];
    }
    return less;
  }

  private double[] all(ToDoubleFunction<Moment> of) {
    return moments.stream().mapToDouble(of).toArray();
  }
}
