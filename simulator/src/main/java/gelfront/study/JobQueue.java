// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.setup.Case;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Hands out jobs so that one thread gets those of one shape, and different threads begin with
 * different shapes. For any thread.
 */
final class JobQueue {
  private final List<Taken> waiting = new ArrayList<>();
  private final List<Taken> working = new ArrayList<>();
  private final Map<String, Ran> done = new HashMap<>();

  record Taken(String hash, Job job) {}

  /**
   * @param jobs by hash
   */
  JobQueue(Map<String, Job> jobs) {
    jobs.forEach((hash, job) -> waiting.add(new Taken(hash, job)));
  }

  /**
   * @param last of the same thread
   */
  synchronized Optional<Taken> take(Optional<Job> last) {
    Optional<Taken> next = first(t -> last.isPresent() && sameVoxels(t.job(), last.get()));
    next = next.isPresent() ? next : first(this::nobodys);
    next = next.isPresent() ? next : waiting.stream().findFirst();
    next.ifPresent(
        t -> {
          waiting.remove(t);
          working.add(t);
        });
    return next;
  }

  private Optional<Taken> first(Predicate<Taken> wanted) {
    return waiting.stream().filter(wanted).findFirst();
  }

  private boolean nobodys(Taken t) {
    return working.stream().noneMatch(w -> sameVoxels(w.job(), t.job()));
  }

  synchronized void done(Taken t, Ran ran) {
    working.remove(t);
    done.put(t.hash(), ran);
  }

  synchronized Map<String, Ran> done() {
    return Map.copyOf(done);
  }

  private static boolean sameVoxels(Job one, Job other) {
    Case a = one.setup();
    Case b = other.setup();
    return a.feed().equals(b.feed())
        && a.block().equals(b.block())
        && a.copies().equals(b.copies())
        && a.growths().equals(b.growths())
        && a.numerics().equals(b.numerics());
  }
}
