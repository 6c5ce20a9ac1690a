// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.setup.Shot;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.DoubleStream;

/**
 * Times that steps must end at. After a change the past tells nothing of what comes, so steps begin
 * small again; a look only wants the state at that very time.
 *
 * @param changes s, sorted
 * @param looks s, sorted
 */
public record Events(List<Double> changes, List<Double> looks) {
  /** Nothing happens. */
  public static final Events NONE = new Events(List.of(), List.of());

  /** Times this close are one, s: far above rounding, far below any step. */
  private static final double SAME = 1e-9;

  public Events {
    changes = sorted(changes);
    looks = sorted(looks);
  }

  private static List<Double> sorted(Collection<Double> times) {
    SortedSet<Double> set = new TreeSet<>();
    for (double t : times) {
      if (!(t >= 0 && Double.isFinite(t))) {
        throw new IllegalArgumentException("an event needs a time after the start: " + t);
      }
      set.add(t);
    }
    return List.copyOf(set);
  }

  /** Top-ups and the opening of the mould. The end of hold is the mouth's own. */
  static Events of(Shot shot) {
    Events topUps = new Events(shot.topUps(), List.of());
    return shot.openAt().isPresent() ? topUps.withChange(shot.openAt().getAsDouble()) : topUps;
  }

  /** These and one more change. */
  Events withChange(double time) {
    TreeSet<Double> more = new TreeSet<>(changes);
    more.add(time);
    return new Events(List.copyOf(more), looks);
  }

  /** s of the first event after a time; +infinity if there is none. */
  double next(double after) {
    return DoubleStream.concat(stream(changes), stream(looks))
        .filter(t -> t > after + SAME)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Whether something changes at a time. */
  boolean changeAt(double time) {
    return stream(changes).anyMatch(t -> Math.abs(t - time) <= SAME);
  }

  private static DoubleStream stream(List<Double> times) {
    return times.stream().mapToDouble(Double::doubleValue);
  }
}
