// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import java.util.ArrayList;
import java.util.List;

/**
 * What was done, to be undone and done again. Values are compared by {@code equals}: the same again
 * is no step.
 */
public final class History<T> {
  /** Steps kept; nobody goes back further. */
  private static final int MOST = 500;

  private final List<T> steps = new ArrayList<>();
  private int at;

  public History(T start) {
    steps.add(start);
  }

  public T now() {
    return steps.get(at);
  }

  /** A new step; what was undone before is forgotten. */
  public void add(T next) {
    if (next.equals(now())) {
      return;
    }
    steps.subList(at + 1, steps.size()).clear();
    steps.add(next);
    if (steps.size() > MOST) {
      steps.remove(0);
    }
    at = steps.size() - 1;
  }

  /** Puts another value in the place of the newest step, as a drag does while it goes on. */
  public void replace(T next) {
    steps.subList(at + 1, steps.size()).clear();
    steps.set(at, next);
  }

  public boolean canUndo() {
    return at > 0;
  }

  public boolean canRedo() {
    return at + 1 < steps.size();
  }

  public T undo() {
    at = Math.max(0, at - 1);
    return now();
  }

  public T redo() {
    at = Math.min(steps.size() - 1, at + 1);
    return now();
  }
}
