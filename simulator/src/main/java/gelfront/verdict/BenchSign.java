// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.finding.Constriction;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import gelfront.finding.Sunk;

/**
 * What a maker sees at the bench when a pocket's fault is the one that was found, so that a look
 * and a ruler tell one fault from another. The sprue's surface is what can be seen: it sinks by
 * what is fed, and stays level once something behind it has closed.
 */
final class BenchSign {
  /** Metres of sinking that an eye tells from none. */
  private static final double SEEN = 0.3e-3;

  private final Units units;

  BenchSign(Units units) {
    this.units = units;
  }

  /** In words; empty where there is no dent to tell from. */
  String of(Pocket p) {
    if (p.severity() == Severity.CLEAN) {
      return "";
    }
    String sign =
        switch (p.constriction().kind()) {
          case GATE ->
              "The sprue stays level while the part still dents: the gate closed first. Cut off at"
                  + " the gate, the land is firm all through while the sprue above it can still be"
                  + " dented with a nail.";
          case RUNNER ->
              "The sprue stays level while the part still dents, as with a gate that is too small;"
                  + " but cut across, the runner is the first to be firm all through.";
          case SPRUE ->
              "A hollow forms in the sprue and then stops growing: a hot top-up only lies on it, a wire"
                  + " meets firm plastic, and the part still dents. The sprue set first.";
          case DRY_SPRUE ->
              "The sprue keeps sinking while the part still dents, down to a hole that ends at the"
                  + " gate: the sprue is too small, or was topped up too late.";
          case NECK ->
              "The part is full up to the neck and dents behind it only. A wider gate changes nothing"
                  + (goesOn(p.sunk())
                      ? ": what the sprue sinks once the neck has closed feeds other places."
                      : ", and the sprue stays level as soon as the neck has closed.");
          case TOO_THICK ->
              "Gate and sprue stay soft and take top-ups for long, and still the thickest place dents:"
                  + " a wider gate or a taller sprue changes little.";
        };
    return sign + ruler(p.sunk(), p.constriction().kind());
  }

  /** Nothing where conduction alone was calculated. */
  private String ruler(Sunk s, Constriction.Kind kind) {
    if (!s.known()) {
      return "";
    }
    if (Math.max(s.then(), s.end()) < SEEN) {
      return (kind == Constriction.Kind.SPRUE
              ? " Here the hollow stays shallower than "
              : " Here the sprue stays level to within ")
          + units.length(SEEN, 1)
          + ".";
    }
    String then =
        Quantities.say(" Here it has sunk %s by %.0f s", units.length(s.then(), 1), s.at());
    return goesOn(s)
        ? then + ", and " + units.length(s.end(), 1) + " in the end."
        : then + " and stays there.";
  }

  private static boolean goesOn(Sunk s) {
    return s.known() && s.end() - s.then() >= SEEN;
  }
}
