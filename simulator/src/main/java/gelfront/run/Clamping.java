// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.answer.RunOutcome.Pressing;
import gelfront.base.Caution;
import gelfront.base.Quantities;
import gelfront.setup.Case;
import gelfront.voxelize.PartingPlane;
import java.util.Optional;

/**
 * Whether pressure opens the mould: the plunger's while it holds, or, where the shot was
 * calculated, that of liquid and air while it fills.
 *
 * <pre>
 *   F = p A;  F = largest over time of the integral of p dA,  A: the cavity's shadow on the parting
 *  plane</pre>
 *
 * <p>Which plane that is {@link PartingPlane} tells.
 */
public final class Clamping {
  /** N that a pair of small screw clamps or a bench vice surely bears: estimate, from memory. */
  private static final double BY_HAND = 1000;

  private Clamping() {}

  /**
   * @param key of the case that it is about
   */
  record Warning(Caution words, String key) {}

  /** What pushes the halves apart, and what holds them. */
  public static Pressing pressing(Case c, CaseRunner.Outcome o) {
    double pressure = c.shot().holdPressure();
    double filling = o.shot().fill().map(f -> f.trace().most(f.trace().push())).orElse(0.0);
    double holding = pressure * PartingPlane.of(o.voxels()).shadow();
    return new Pressing(pressure, holding, filling, c.clampingForce());
  }

  /** In words; empty where the halves stay shut. */
  static Optional<Warning> warning(Case c, CaseRunner.Outcome o) {
    Pressing p = pressing(c, o);
    double held = p.held().orElse(BY_HAND);
    if (p.force() <= held) {
      return Optional.empty();
    }
    String bears =
        p.held().isPresent()
            ? Quantities.say("the %.0f N that hold it", held)
            : Quantities.say("the %.0f N or so that clamps tightened by hand bear", held);
    return Optional.of(p.mostWhileFilling() ? asItFills(c, p, bears) : asItIsHeld(p, held, bears));
  }

  private static Warning asItFills(Case c, Pressing p, String bears) {
    boolean pressed = c.fill().pressure().isPresent();
    return new Warning(
        Caution.of(
            Quantities.say(
                "As it fills, the liquid pushes the halves apart with %.0f N, more than %s: hot"
                    + " plastisol sprays out of the parting line. %s, or clamp harder.",
                p.filling(), bears, pressed ? "Press less" : "Fill more slowly")),
        pressed ? "fill.pressure" : "shot.fill_time");
  }

  private static Warning asItIsHeld(Pressing p, double held, String bears) {
    double area = p.holding() / p.pressure();
    return new Warning(
        Caution.of(
            Quantities.say(
                "A plunger pressure of %.0f kPa on %.0f cm2 of cavity pushes the halves apart with %.0f N,"
                    + " more than %s: hot plastisol sprays out of the parting line. Press less, at most"
                    + " %.0f kPa, or clamp harder.",
                p.pressure() * 1e-3, area * 1e4, p.holding(), bears, held / area * 1e-3)),
        "shot.hold_pressure");
  }
}
