// SPDX-License-Identifier: Apache-2.0
package gelfront.timing;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.feed.FeedClock;
import gelfront.run.CaseRunner;
import gelfront.run.ShotsInARow;
import gelfront.setup.Case;
import gelfront.voxelize.CaseVoxels;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * What one shot with the flow took, voxel model to verdict.
 *
 * @param seconds in all
 * @param cooling conduction and what watches it
 * @param flow stage by stage
 * @param filling the shot itself; 0: it wasn't calculated
 * @param judging from the shot's record to findings
 * @param steps taken
 */
record FeedTiming(
    double seconds, double cooling, FeedClock flow, double filling, double judging, int steps) {

  /** The median of runs, by seconds; one more run before them warms up. */
  static FeedTiming median(Case c, CaseVoxels voxels, int runs, Workers workers) {
    once(c, voxels, workers);
    return IntStream.range(0, runs)
        .mapToObj(i -> once(c, voxels, workers))
        .sorted(Comparator.comparingDouble(FeedTiming::seconds))
        .skip(runs / 2)
        .findFirst()
        .orElseThrow();
  }

  private static FeedTiming once(Case c, CaseVoxels voxels, Workers workers) {
    ShotsInARow row = new ShotsInARow(c, voxels, workers);
    double shot = Stopwatch.seconds(() -> row.shoot(Progress.NONE));
    Stopwatch<CaseRunner.Outcome> judged = Stopwatch.time(() -> row.judged(Progress.NONE));
    FeedClock flow = row.flowClock().orElseThrow();
    return new FeedTiming(
        shot + judged.seconds(),
        shot - flow.seconds() - row.fillSeconds(),
        flow,
        row.fillSeconds(),
        judged.seconds(),
        judged.value().steps());
  }

  /** Share of all seconds. */
  double share(double part) {
    return part / seconds;
  }
}
