// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.feed.Feeding;
import gelfront.feed.HalfFed;
import gelfront.grid.Cavity;
import gelfront.grid.Fold;
import gelfront.verdict.FlowRecord;

/** Watches one cavity: when it no longer gets half of what it needs, and why. */
final class CavityFeed {
  private final Feeding feeding;
  private final short[] owner;
  private final int number;
  private Cavity.Region spentOn = Cavity.Region.GATE;
  private int narrowest = -1;
  private final HalfFed half = new HalfFed();
  private double demand;
  private double unfed;

  CavityFeed(Feeding feeding, short[] owner, int number) {
    this.feeding = feeding;
    this.owner = owner;
    this.number = number;
  }

  /**
   * @param sums as of {@link Feeding#byCavity}
   */
  void after(double time, double from, double[][] sums) {
    double needs = sums[0][number] - demand;
    double lacks = sums[1][number] - unfed;
    demand = sums[0][number];
    unfed = sums[1][number];
    double share = needs > 0 ? Math.max(0, 1 - lacks / needs) : 0;
    if (half.after(share, from, time)) {
      spentOn = worst(feeding.spent(owner, number));
      narrowest = feeding.narrowest(owner, number);
    }
  }

  private static Cavity.Region worst(double[] spent) {
    int most = Cavity.Region.GATE.ordinal();
    for (int r = 0; r < spent.length; r++) {
      most = spent[r] > spent[most] ? r : most;
    }
    return Cavity.Region.of((byte) most);
  }

  /** Of the whole model. */
  FlowRecord.Closing closing(Fold fold) {
    return new FlowRecord.Closing(
        demand > 0 ? half.at() : Double.POSITIVE_INFINITY,
        spentOn,
        narrowest < 0 ? narrowest : fold.kept()[narrowest]);
  }
}
