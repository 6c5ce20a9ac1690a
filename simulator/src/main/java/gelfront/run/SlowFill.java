// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.base.Caution;
import gelfront.base.Quantities;
import gelfront.fill.FillRecord;
import gelfront.mesh.Vec3;
import gelfront.setup.Case;
import java.util.Optional;

/**
 * Whether filling takes longer than the way in stays open. Where the shot itself is calculated, it
 * has shown; otherwise the gate's set time in a full cavity tells, which is early, since liquid
 * that passes keeps the gate warm.
 */
final class SlowFill {
  private SlowFill() {}

  /**
   * In words; empty where it fills in time.
   *
   * @param stated whether the case states a fill time; an assumed one is held against what has been
   *     calculated alone
   */
  static Optional<Caution> warning(Case c, boolean stated, CaseRunner.Outcome o) {
    if (o.shot().fill().isPresent()) {
      return calculated(c, o.shot().fill().get());
    }
    return stated ? guessed(c, o) : Optional.empty();
  }

  private static Optional<Caution> calculated(Case c, FillRecord f) {
    boolean byTime = c.fill().pressure().isEmpty();
    if (f.end() != FillRecord.End.FROZEN || !byTime) {
      return Optional.empty();
    }
    String what =
        c.shot().fillTime() > f.time()
            ? "is longer than the way in stays open: it"
            : "can't be kept with all that the plunger presses: the way in";
    String cure = c.shot().fillTime() > f.time() ? "Fill faster" : "Press harder";
    return Optional.of(
        Caution.of(
            Quantities.say(
                "A fill time of %.1f s %s sets after %.1f s, when %.0f %% of the shot is in. %s, shoot"
                    + " hotter, warm the mould or open the gate.",
                c.shot().fillTime(), what, f.time(), 100 * f.held() / f.room(), cure)));
  }

  private static Optional<Caution> guessed(Case c, CaseRunner.Outcome o) {
    double sets = o.judgement().findings().gateSets();
    if (!(c.shot().fillTime() > sets)) {
      return Optional.empty();
    }
    Vec3 gate = o.voxels().gates().get(0).middle();
    return Optional.of(
        Caution.of(
            Quantities.say(
                "A fill time of %.1f s may be longer than the gate at {} stays open: with nothing"
                    + " passing it sets after %.1f s. Fill faster, or calculate the shot itself"
                    + " with [fill] to see how far it comes.",
                c.shot().fillTime(), sets),
            Caution.Figure.point(gate.x(), gate.y(), gate.z())));
  }
}
