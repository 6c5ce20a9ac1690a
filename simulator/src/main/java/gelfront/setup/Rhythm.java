// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import java.util.OptionalDouble;

/**
 * How shots follow each other in one mould, and which of them is looked at. A shot begins full; its
 * part is taken out, the mould lies open, is closed again and refilled.
 *
 * @param shots the shot of a row that is looked at, from 1; the mould's start temperature is that
 *     before the first
 * @param idle s from opening the mould to the next shot
 * @param cycle s from shot to shot; absent: the mould is opened as soon as all of the shot is firm
 * @param open s of the idle time that the halves lie apart; the rest they are closed and empty
 */
public record Rhythm(int shots, double idle, OptionalDouble cycle, double open) {
  /** s to open, pull, close and clamp a small mould: own guess, no source. */
  public static final double HANDLING = 60;

  /** One shot into a mould of the stated temperature. */
  public static final Rhythm SINGLE = new Rhythm(1, HANDLING, OptionalDouble.empty(), HANDLING);

  public Rhythm {
    if (shots < 1) {
      throw new IllegalArgumentException("shots are counted from 1: " + shots);
    }
    if (!(idle >= 0 && open >= 0 && open <= idle)) {
      throw new IllegalArgumentException("open for " + open + " s of " + idle + " s idle");
    }
    if (cycle.isPresent() && !(cycle.getAsDouble() > idle)) {
      throw new IllegalArgumentException("a cycle is longer than its idle time");
    }
  }

  /** s after a shot's start at which the clock opens the mould; absent: when the shot is firm. */
  public OptionalDouble opensAt() {
    return cycle.isPresent() ? OptionalDouble.of(cycle.getAsDouble() - idle) : cycle;
  }

  /** The same, another shot looked at. */
  public Rhythm withShots(int count) {
    return new Rhythm(count, idle, cycle, open);
  }

  /** The same, opened as soon as the shot is firm. */
  public Rhythm asSoonAsFirm() {
    return new Rhythm(shots, idle, OptionalDouble.empty(), open);
  }
}
