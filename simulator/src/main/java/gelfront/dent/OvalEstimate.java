// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import gelfront.grid.Cavity;
import gelfront.material.Plastisol;
import gelfront.mesh.Vec3;

/**
 * Opened with a core that is still liquid, a part has no wall round it that could hold its skin.
 *
 * <pre>
 *   V    = sum over joined liquid of v (1 - exp(-beta (T - T_noflow))): nothing comes for it
 *   e_s  = V w_s / (A_s ds),  w_s ~ R_s^4 / t_s^3;  least: e_s of the slice's own liquid
 *   oval = R_s sqrt((e_s - (t_s / R_s)^2 / 2) / 1.5)</pre>
 *
 * <p>with the skin t of the moment, on its thinnest side: in air it gets next to no thicker before
 * the core has given its heat to it. No even shrinkage is taken off: what a ring bears all round is
 * in the law. Gel counts as skin, so its contraction pulls nothing in.
 */
final class OvalEstimate {
  /** s to which the time is found that the mould has to stay shut. */
  private static final double NEAR = 0.1;

  private final Cavity cavity;
  private final Sections sections;
  private final FrontPassage front;
  private final TemperatureHistory history;
  private final Plastisol plastisol;
  private final double[] volumes;
  private final SkinLaw law;

  OvalEstimate(
      Cavity cavity,
      Sections sections,
      FrontPassage front,
      TemperatureHistory history,
      Plastisol plastisol,
      double[] volumes) {
    this.cavity = cavity;
    this.sections = sections;
    this.front = front;
    this.history = history;
    this.plastisol = plastisol;
    this.volumes = volumes;
    law = new SkinLaw(plastisol.densityHot());
  }

  /**
   * @param time s at which the mould is opened
   * @param visible metres from which an oval is seen
   */
  Oval opened(double time, double visible) {
    Oval oval = at(time);
    if (oval.depth() < visible) {
      return oval;
    }
    double seen = time;
    double not = Math.max(time, history.time(history.size() - 1));
    while (not - seen > NEAR) {
      double middle = 0.5 * (seen + not);
      if (at(middle).depth() >= visible) {
        seen = middle;
      } else {
        not = middle;
      }
    }
    return oval.until(not);
  }

  private Oval at(double time) {
    boolean[] done = new boolean[volumes.length];
    int[] body = new int[volumes.length];
    Oval worst = new Oval(0, 0, 0, Vec3.ZERO, time);
    double liquid = 0;
    for (int c = 0; c < done.length; c++) {
      if (!done[c] && flows(c, time)) {
        Oval one = of(body, joined(c, time, done, body), time);
        liquid += one.liquid();
        worst = one.depth() > worst.depth() ? one : worst;
      }
    }
    return new Oval(liquid, worst.depth(), worst.least(), worst.place(), time);
  }

  private boolean flows(int c, double time) {
    return sections.slice(c) >= 0 && front.liquid(c, time) > 0;
  }

  /** Fills {@code body} with the liquid that a cell is joined to; returns how many cells. */
  private int joined(int first, double time, boolean[] done, int[] body) {
    int n = 0;
    body[n++] = first;
    done[first] = true;
    for (int i = 0; i < n; i++) {
      for (int f = 0; f < cavity.faces(body[i]); f++) {
        int next = cavity.across(body[i], f);
        if (!done[next] && flows(next, time)) {
          done[next] = true;
          body[n++] = next;
        }
      }
    }
    return n;
  }

  private Oval of(int[] body, int n, double time) {
    Skin skin = new Skin(sections);
    double[] own = new double[sections.count()];
    double liquid = 0;
    double lost = 0;
    for (int i = 0; i < n; i++) {
      double v = volumes[body[i]] * front.liquid(body[i], time);
      double hot = Math.max(0, history.at(body[i], time) - plastisol.noFlow());
      double less = v * -Math.expm1(-plastisol.expansionHot() * hot);
      skin.add(body[i], v);
      sections.spread(body[i], less, own);
      liquid += v;
      lost += less;
    }
    return worst(skin, own, lost, new Oval(liquid, 0, 0, Vec3.ZERO, time));
  }

  private Oval worst(Skin skin, double[] own, double lost, Oval none) {
    double all = 0;
    for (int s = 0; s < own.length; s++) {
      all += skin.softness(s);
    }
    int worst = -1;
    double depth = 0;
    double least = 0;
    for (int s = 0; s < own.length; s++) {
      if (skin.isRound(s)) {
        double d = oval(skin, s, lost * skin.softness(s) / all);
        least = Math.max(least, oval(skin, s, own[s]));
        worst = d > depth ? s : worst;
        depth = Math.max(depth, d);
      }
    }
    return worst < 0
        ? none
        : new Oval(
            none.liquid(), depth, Math.min(least, depth), sections.centre(worst), none.shutUntil());
  }

  private double oval(Skin skin, int s, double lost) {
    return law.oval(sections.radius(s), skin.thinnest(s), lost / sections.volume(s));
  }
}
