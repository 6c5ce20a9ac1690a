// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import java.util.Arrays;

/**
 * The air before the front, in bodies that have no way to each other.
 *
 * <pre>  d(p V)/dt = - C p (p - p0)</pre>
 *
 * <p>p is absolute, C what the body's vents let through, m3/(Pa s); without vents Boyle's law. The
 * mould's metal keeps air in thin gaps at its own temperature, so it is isothermal. Over a step p
 * is taken at its end.
 */
final class Air {
  /** Pa, absolute. */
  static final double OUTSIDE = 101_325;

  /** m3/(Pa s) that air leaves a film by: at once. */
  private static final double AT_ONCE = 1;

  /** Of a body's volume, what is left of its way to rest where that no longer counts. */
  private static final double NEAR = 0.01;

  private final FillNet net;

  private final double[] vents;

  /** Whether a block's air is let out because nobody follows it. */
  private final boolean[] film;

  /** Pa, absolute, in each block. */
  private final double[] pressure;

  /** Body per block, -1 where there is no air. */
  final int[] body;

  private final int[] queue;
  private int bodies;
  private double[] volume = {};
  private double[] product = {};
  private double[] conductance = {};
  private double[] start = {};
  private double[] softness = {};
  private boolean[] films = {};

  /** Pa, absolute, that films are let out to. */
  private double main = OUTSIDE;

  /**
   * @param vents m3/(Pa s) per block
   */
  Air(FillNet net, double[] vents) {
    this.net = net;
    this.vents = vents;
    int n = net.count();
    film = new boolean[n];
    pressure = new double[n];
    Arrays.fill(pressure, OUTSIDE);
    body = new int[n];
    queue = new int[n];
  }

  /** Finds the bodies. */
  void look(Front front) {
    Arrays.fill(body, -1);
    bodies = 0;
    int tail = 0;
    for (int b = 0; b < body.length; b++) {
      if (!front.full[b] && body[b] < 0) {
        tail = gather(b, front);
      }
    }
    volume = new double[bodies];
    product = new double[bodies];
    conductance = new double[bodies];
    start = new double[bodies];
    softness = new double[bodies];
    films = new boolean[bodies];
    for (int b = 0; tail >= 0 && b < body.length; b++) {
      if (body[b] >= 0) {
        double v = front.air(b);
        volume[body[b]] += v;
        product[body[b]] += pressure[b] * v;
        conductance[body[b]] += vents[b];
        films[body[b]] |= film[b];
      }
    }
    main = main();
  }

  /** Pa, absolute, in the largest body that isn't a film; where all are, outside. */
  private double main() {
    int largest = -1;
    for (int k = 0; k < bodies; k++) {
      largest = !films[k] && (largest < 0 || volume[k] > volume[largest]) ? k : largest;
    }
    return largest < 0 ? OUTSIDE : pressure(largest);
  }

  /** Pa, absolute, that a body's air leaves to: a film's slips into the air it was part of. */
  private double beyond(int k) {
    return films[k] ? main : OUTSIDE;
  }

  /** Whether a block's body is let out. */
  void letOut(int b, boolean isFilm) {
    film[b] = isFilm;
  }

  private double through(int k) {
    return films[k] ? AT_ONCE : conductance[k];
  }

  private int gather(int seed, Front front) {
    int tail = 0;
    queue[tail++] = seed;
    body[seed] = bodies;
    int[] first = net.graph.start();
    for (int head = 0; head < tail; head++) {
      int b = queue[head];
      for (int k = first[b]; k < first[b + 1]; k++) {
        int to = net.graph.other()[k];
        if (body[to] < 0 && !front.full[to]) {
          body[to] = bodies;
          queue[tail++] = to;
        }
      }
    }
    bodies++;
    return tail;
  }

  /**
   * What a step of some length does if nothing comes, and what coming liquid adds: p = start +
   * softness Q.
   */
  void foresee(double dt) {
    for (int k = 0; k < bodies; k++) {
      double p = product[k] / volume[k];
      double beta = dt * p / volume[k];
      double leaks = 1 + beta * through(k);
      start[k] = (p + beta * through(k) * beyond(k)) / leaks - OUTSIDE;
      softness[k] = beta / leaks;
    }
  }

  /**
   * s until the air's pressure has changed by so many Pa in the bodies that matter, or come half
   * way to what there is.
   *
   * @param over Pa that there are
   * @param least m3 of a body that does
   * @param last s of the step before
   * @param comes m3/s per block
   */
  double patient(double over, double change, double least, double last, double[] comes) {
    double[] into = new double[bodies];
    for (int b = 0; b < body.length; b++) {
      if (body[b] >= 0) {
        into[body[b]] += comes[b];
      }
    }
    double dt = Double.POSITIVE_INFINITY;
    for (int k = 0; k < bodies; k++) {
      double p = pressure(k);
      double rise = p / volume[k] * Math.abs(into[k] - through(k) * (p - beyond(k)));
      // Where air leaves faster than steps are long its pressure follows at once.
      boolean follows = through(k) * p * last > volume[k];
      if (volume[k] > least && rise > 0 && !follows) {
        double room = volume[k] - product[k] / (OUTSIDE + over);
        double half = room > NEAR * volume[k] ? 0.5 * room / into[k] : dt;
        dt = Math.min(dt, Math.min(change / rise, half));
      }
    }
    return dt;
  }

  /**
   * What comes to a body of air is never more than it can give way by.
   *
   * @param over Pa that there are
   * @param rate m3/s per block; modified
   * @param warm W per block; modified
   */
  void hold(double over, double dt, double[] rate, double[] warm) {
    double[] into = new double[bodies];
    for (int b = 0; b < body.length; b++) {
      if (body[b] >= 0) {
        into[body[b]] += rate[b];
      }
    }
    for (int k = 0; k < bodies; k++) {
      double gives = volume[k] - product[k] / (OUTSIDE + over) + through(k) * over * dt;
      into[k] = into[k] * dt > gives ? Math.max(0, gives / (into[k] * dt)) : 1;
    }
    for (int b = 0; b < body.length; b++) {
      if (body[b] >= 0) {
        rate[b] *= into[body[b]];
        warm[b] *= into[body[b]];
      }
    }
  }

  /**
   * s until leaks have let the fastest body's pressure fall by so many Pa; +infinity: none does.
   */
  double relief(double change) {
    double dt = Double.POSITIVE_INFINITY;
    for (int k = 0; k < bodies; k++) {
      double falls = pressure(k) / volume[k] * through(k) * (pressure(k) - beyond(k));
      dt = falls > 0 ? Math.min(dt, change / falls) : dt;
    }
    return dt;
  }

  /** Whether some air can leave within a time at a pressure over the outside's. */
  boolean leaves(double time, double over) {
    boolean any = false;
    for (int k = 0; k < bodies; k++) {
      any |= through(k) * over * time > volume[k];
    }
    return any;
  }

  int bodies() {
    return bodies;
  }

  /** Pa over the air's outside, before what comes. */
  double start(int k) {
    return start[k];
  }

  /** Pa s/m3. */
  double softness(int k) {
    return softness[k];
  }

  double volume(int k) {
    return volume[k];
  }

  /** Pa, absolute, as found. */
  double pressure(int k) {
    return product[k] / volume[k];
  }

  /** m3/(Pa s) of all its vents. */
  double conductance(int k) {
    return conductance[k];
  }

  /**
   * After a step: bodies are still those found before it.
   *
   * @param dt s
   */
  void after(Front front, double dt) {
    double[] left = new double[bodies];
    for (int b = 0; b < body.length; b++) {
      if (body[b] >= 0) {
        left[body[b]] += front.air(b);
      }
    }
    for (int k = 0; k < bodies; k++) {
      // p (V + dt C (p - p0)) = p_old V_old
      double c = dt * through(k);
      double v = left[k] - c * beyond(k);
      double root = Math.sqrt(v * v + 4 * c * product[k]);
      volume[k] = left[k];
      // Of both ways to write the root the one that loses no digits.
      double p = v > 0 ? 2 * product[k] / (v + root) : c > 0 ? (root - v) / (2 * c) : beyond(k);
      start[k] = p;
    }
    for (int b = 0; b < body.length; b++) {
      if (body[b] >= 0) {
        pressure[b] = start[body[b]];
      }
    }
  }
}
