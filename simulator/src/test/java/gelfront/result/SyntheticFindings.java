// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import gelfront.finding.Amounts;
import gelfront.finding.Constriction;
import gelfront.finding.Constriction.Kind;
import gelfront.finding.Dent;
import gelfront.finding.Fed;
import gelfront.finding.Findings;
import gelfront.finding.HotSpot;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.OptionalDouble;

/** What {@link SyntheticRun} found out, in figures and in words. */
record SyntheticFindings(SyntheticShape shape) {
  Findings findings() {
    Constriction gate =
        new Constriction(
            Kind.GATE,
            shape.place(63 * SyntheticShape.MM, 0, 0),
            2 * SyntheticShape.GATE,
            SyntheticTimes.closes(0.045));
    Constriction neck =
        new Constriction(
            Kind.NECK,
            shape.place(29 * SyntheticShape.MM, 0, 0),
            2 * SyntheticShape.NECK,
            SyntheticTimes.closes(0.014));
    return new Findings(
        Severity.WILL_DENT,
        "The large bulb will dent by 0.3 to 0.6 mm, because the gate (5.0 mm) sets first: "
            + "widen the gate.",
        "The gate sets after 6.9 s, but the middle of the large bulb stays soft until 99 s. From "
            + "then on nothing can flow in, and the skin is pulled in as it shrinks. The tail bulb "
            + "has the same trouble behind its neck.",
        List.of(
            "Widen the gate: it must stay open until the large bulb has set.",
            "Feed the large bulb at its thickest place.",
            "Thicken the neck (4.4 mm); this helps pocket 2 only and changes the part."),
        List.of(
            pocket(1, Severity.WILL_DENT, 45, 9.5, 3.1e-4, 6e-4, gate),
            pocket(2, Severity.MAY_DENT, 14, 5.5, 0.8e-4, 2.1e-4, neck)),
        SyntheticTimes.closes(0.045),
        60,
        SyntheticTimes.C * 9.5 * 9.5 * SyntheticShape.MM * SyntheticShape.MM,
        190,
        0.031,
        1.5e-4,
        new Amounts(7.1e-6, 1.4e-6, 0.3e-6, 6.6e-3, 1.3e-3, 0.28e-3, 1, OptionalDouble.of(30e-6)),
        new Fed(true, 0.3e-6, 0.12e-6, 0.18e-6, 0.4e-6, 6.1, 4e-3, Double.POSITIVE_INFINITY));
  }

  private Pocket pocket(
      int number, Severity severity, double at, double r, double low, double high, Constriction c) {
    Vec3 centre = shape.place(at * SyntheticShape.MM, 0, 0);
    double set = SyntheticTimes.C * r * r * SyntheticShape.MM * SyntheticShape.MM;
    double unfed = r * r * r * 0.05e-9;
    return new Pocket(
        number,
        severity,
        centre,
        r * r * r * 4e-9,
        c.closedAt(),
        set,
        150,
        c,
        unfed,
        2 * unfed,
        List.of(
            new Dent(
                shape.place(at * SyntheticShape.MM, r * SyntheticShape.MM, 0),
                low,
                high,
                r * SyntheticShape.MM,
                r * SyntheticShape.MM)),
        List.of(new HotSpot(centre, set, c.closedAt(), c)),
        "Cut off by the " + (c.kind() == Kind.GATE ? "gate" : "neck") + ", stays soft long after.");
  }
}
