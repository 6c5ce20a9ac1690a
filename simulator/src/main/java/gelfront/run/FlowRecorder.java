// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.feed.Feeding;
import gelfront.state.ThermalState;
import gelfront.verdict.FlowRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Watches the flow: its curves, when the part no longer gets half of what it needs, and why. */
final class FlowRecorder implements StepObserver {
  private final Feeding feeding;
  private final int gateCell;
  private final List<Moment> moments = new ArrayList<>();
  private final short[] owner;
  private final List<CavityFeed> cavities = new ArrayList<>();
  private final HalfFed half = new HalfFed();
  private double dryAt = Double.POSITIVE_INFINITY;

  private record Moment(
      double time, double drawn, double unfed, double share, double level, double suction) {}

  /**
   * @param owner number of its cavity per cell of part and gates, 0 for what cavities share
   * @param count cavities
   * @param gateCell in the middle of the gate
   */
  FlowRecorder(Feeding feeding, short[] owner, int count, int gateCell) {
    this.feeding = feeding;
    this.owner = owner;
    for (int k = 1; k <= count; k++) {
      cavities.add(new CavityFeed(feeding, owner, k));
    }
    this.gateCell = gateCell;
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
            feeding.sums().entered(),
            feeding.sums().partUnfed(),
            share,
            feeding.reservoir().level(),
            feeding.suctionAt(gateCell)));
  }

  FlowRecord record() {
    double[] unfed = feeding.unfed();
    float[] perCell = new float[unfed.length];
    for (int c = 0; c < unfed.length; c++) {
      perCell[c] = (float) unfed[c];
    }
    return new FlowRecord(
        perCell,
        feeding.starved(),
        feeding.sums().partDemand(),
        feeding.sums().partUnfed(),
        feeding.sums().entered(),
        half.at(),
        cavities.stream().map(CavityFeed::closing).toList(),
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

  private double[] all(ToDoubleFunction<Moment> of) {
    return moments.stream().mapToDouble(of).toArray();
  }
}
