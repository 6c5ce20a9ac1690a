package gelfront.run;

import gelfront.feed.Feeding;
import gelfront.grid.Cavity;
import gelfront.state.ThermalState;
import gelfront.verdict.FlowRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Watches the flow: its curves, when the part no longer gets half of what it needs, and why. */
final class FlowRecorder implements StepObserver {
  private static final double HALF = 0.5;

  private final Feeding feeding;
  private final int gateCell;
  private final List<Moment> moments = new ArrayList<>();
  private Cavity.Region spentOn = Cavity.Region.GATE;
  private int narrowest = -1;
  private double half = Double.POSITIVE_INFINITY;
  private double dryAt = Double.POSITIVE_INFINITY;
  private double lastShare = 1;

  private record Moment(
      double time, double drawn, double unfed, double share, double level, double suction) {}

  /**
   * @param gateCell in the middle of the gate
   */
  FlowRecorder(Feeding feeding, int gateCell) {
    this.feeding = feeding;
    this.gateCell = gateCell;
  }

  @Override
  public void after(ThermalState state, double from) {
    double share = feeding.sums().fedShare();
    if (share >= HALF) {
      half = Double.POSITIVE_INFINITY;
      spentOn = worst(feeding.spent());
      narrowest = feeding.narrowest();
    } else if (lastShare >= HALF) {
      half = from + (state.time - from) * (lastShare - HALF) / (lastShare - share);
    }
    lastShare = share;
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

  private static Cavity.Region worst(double[] spent) {
    int most = Cavity.Region.GATE.ordinal();
    for (int r = 0; r < spent.length; r++) {
      most = spent[r] > spent[most] ? r : most;
    }
    return Cavity.Region.of((byte) most);
  }

  FlowRecord record() {
    double[] unfed = feeding.unfed();
    float[] perCell = new float[unfed.length];
    for (int c = 0; c < unfed.length; c++) {
      perCell[c] = (float) unfed[c];
    }
    return new FlowRecord(
        perCell,
        feeding.sums().partDemand(),
        feeding.sums().partUnfed(),
        feeding.sums().entered(),
        half,
        spentOn,
        narrowest,
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
