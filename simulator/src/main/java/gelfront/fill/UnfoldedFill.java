// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import gelfront.grid.Cavity;
import gelfront.grid.Fold;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What a shot into a folded cavity left, in all of it. */
public final class UnfoldedFill {
  private final Cavity whole;
  private final Fold fold;

  private UnfoldedFill(Cavity whole, Fold fold) {
    this.whole = whole;
    this.fold = fold;
  }

  /**
   * @param left of what is left of the folded model
   */
  public static FillRecord of(FillRecord left, Cavity whole, Fold fold) {
    int times = fold.times();
    if (times == 1) {
      return left;
    }
    UnfoldedFill u = new UnfoldedFill(whole, fold);
    FillRecord.Trace t = left.trace();
    return new FillRecord(
        left.end(),
        left.time(),
        fold.unfold(left.reached()),
        fold.unfold(left.arrival()),
        left.bodies().stream().flatMap(b -> u.bodies(b).stream()).toList(),
        left.welds().stream().flatMap(w -> u.welds(w).stream()).toList(),
        times * left.held(),
        times * left.room(),
        left.worstImbalance(),
        left.heatOff(),
        new FillRecord.Trace(
            t.time(), times(times, t.held()), t.pressure(), t.gate(), times(times, t.push())));
  }

  private static double[] times(int times, double[] values) {
    return Arrays.stream(values).map(v -> times * v).toArray();
  }

  private List<FillRecord.AirBody> bodies(FillRecord.AirBody b) {
    List<int[]> all = apart(b.cells());
    return all.stream().map(cells -> body(b, cells, share(cells, all))).toList();
  }

  private static FillRecord.AirBody body(FillRecord.AirBody b, int[] cells, double share) {
    return new FillRecord.AirBody(
        cells, share * b.volume(), share * b.began(), b.since(), b.pressure(), share * b.vents());
  }

  private List<FillRecord.Weld> welds(FillRecord.Weld w) {
    List<int[]> all = apart(w.cells());
    return all.stream()
        .map(
            cells ->
                new FillRecord.Weld(cells, share(cells, all) * w.area(), w.coldest(), w.time()))
        .toList();
  }

  /** What falls to one of the images, by cells, in what is left. */
  private double share(int[] cells, List<int[]> all) {
    return (double) fold.times() * cells.length / all.stream().mapToInt(c -> c.length).sum();
  }

  /** A body's images, those that touch as one. */
  private List<int[]> apart(int[] cells) {
    boolean[] in = new boolean[fold.kept().length];
    for (int c : cells) {
      in[c] = true;
    }
    int[] mark = new int[whole.count()];
    int[] queue = new int[mark.length];
    List<int[]> all = new ArrayList<>();
    for (int c = 0; c < mark.length; c++) {
      if (mark[c] == 0 && in[fold.cell()[c]]) {
        all.add(joined(c, in, mark, queue));
      }
    }
    return all;
  }

  private int[] joined(int from, boolean[] in, int[] mark, int[] queue) {
    int tail = 0;
    queue[tail++] = from;
    mark[from] = 1;
    for (int head = 0; head < tail; head++) {
      for (int f = 0; f < whole.faces(queue[head]); f++) {
        int to = whole.across(queue[head], f);
        if (mark[to] == 0 && in[fold.cell()[to]]) {
          mark[to] = 1;
          queue[tail++] = to;
        }
      }
    }
    return Arrays.copyOf(queue, tail);
  }
}
