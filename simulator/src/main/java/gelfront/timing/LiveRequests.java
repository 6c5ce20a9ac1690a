// SPDX-License-Identifier: Apache-2.0
package gelfront.timing;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.live.LiveModel;
import gelfront.setup.Case;
import gelfront.setup.FeedSystem;
import gelfront.setup.LoadedCase;
import gelfront.setup.Numerics;
import gelfront.setup.Section;
import gelfront.setup.Shot;
import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

/** Requests to a live model at quick level, one after the other. */
final class LiveRequests {
  private final Case start;
  private final LiveModel live;
  private int asked;
  private double gap;

  LiveRequests(LoadedCase loaded, Workers workers, Executor loop) {
    Case c = loaded.setup();
    Numerics quick = new Numerics(Numerics.Level.QUICK, OptionalDouble.empty());
    this.start = with(c, c.feed(), c.shot(), quick);
    this.live = LiveModel.open(loaded, workers, loop);
  }

  /** s until the first verdict. */
  double first() {
    return seconds(start);
  }

  /** s, over {@code runs} requests; none like one before. */
  double median(int runs, Supplier<Case> other) {
    double[] s = new double[runs];
    Arrays.setAll(s, i -> seconds(other.get()));
    Arrays.sort(s);
    return s[runs / 2];
  }

  /** s, longest between two questions whether to go on, since {@link #forgetGap}. */
  double gap() {
    return gap;
  }

  void forgetGap() {
    gap = 0;
  }

  /** Another size, by hundredths of a millimetre. */
  Case otherGate() {
    FeedSystem.Declared f = (FeedSystem.Declared) start.feed();
    FeedSystem.Gate g = f.gate();
    Section s = g.section();
    double more = 1e-5 * ++asked;
    Section other = new Section(s.kind(), s.width() + more, s.height() + more);
    FeedSystem.Gate gate = new FeedSystem.Gate(g.at(), g.direction(), other, g.land());
    return fedBy(new FeedSystem.Declared(gate, f.runner(), f.reservoir(), f.sprue()));
  }

  /** Another length. */
  Case otherSprue() {
    FeedSystem.Declared f = (FeedSystem.Declared) start.feed();
    FeedSystem.Sprue s = f.sprue();
    double length = s.length() + 1e-4 * ++asked;
    FeedSystem.Sprue sprue =
        new FeedSystem.Sprue(s.innerDiameter(), s.mouthDiameter(), length, s.direction(), s.at());
    return fedBy(new FeedSystem.Declared(f.gate(), f.runner(), f.reservoir(), sprue));
  }

  /** Another temperature of the plastisol and another hold time. */
  Case otherRecipe() {
    Shot s = start.shot();
    double more = 0.05 * ++asked;
    Shot shot =
        new Shot(
            s.temperature() + more,
            s.fillTime(),
            s.holdTime() + more,
            s.holdPressure(),
            s.topUps(),
            s.injectorCapacity(),
            s.openAt());
    return with(start, start.feed(), shot, start.numerics());
  }

  private Case fedBy(FeedSystem feed) {
    return with(start, feed, start.shot(), start.numerics());
  }

  static Case with(Case c, FeedSystem feed, Shot shot, Numerics numerics) {
    return new Case(
        c.name(),
        c.part(),
        c.copies(),
        feed,
        c.growths(),
        c.block(),
        c.plastisol(),
        shot,
        c.fill(),
        c.up(),
        c.clampingForce(),
        c.cavities(),
        numerics,
        c.rhythm(),
        c.visibleDent(),
        c.limits(),
        c.warnings());
  }

  private double seconds(Case c) {
    long from = System.nanoTime();
    live.request(c, new Gaps(from)).join();
    return (System.nanoTime() - from) * 1e-9;
  }

  /** Watches how long nobody asks. */
  private final class Gaps implements Progress {
    private long last;

    Gaps(long from) {
      last = from;
    }

    @Override
    public boolean at(String stage, double fraction) {
      long now = System.nanoTime();
      gap = Math.max(gap, (now - last) * 1e-9);
      last = now;
      return true;
    }
  }
}
