// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import gelfront.base.Changed;
import gelfront.finding.Constriction;
import gelfront.finding.Opening;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A run's outcome, made up, to be changed by what a test is about ({@link Changed}). */
public final class SomeRun {
  private static final Vec3 PLACE = new Vec3(0.001, 0, 0);

  /** Nothing is cut off. */
  public static final RunOutcome CLEAN =
      new RunOutcome(
          Severity.CLEAN,
          "",
          0,
          0,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          9,
          1e-7,
          5e-8,
          3,
          30,
          90,
          1e-6,
          0,
          40,
          new RunOutcome.Pressing(20e3, 50, 0, OptionalDouble.empty()),
          RunOutcome.Filling.UNKNOWN,
          1,
          Opening.WHEN_FIRM,
          List.of(),
          1000,
          1,
          Curves.NONE);

  private SomeRun() {}

  /** With a dent, mm, seen from 0.2 mm on; nobody says what closed. */
  public static RunOutcome dent(double low, double high) {
    Severity may = high < 0.2 ? Severity.CLEAN : Severity.MAY_DENT;
    return Changed.of(
        CLEAN,
        "severity",
        low < 0.2 ? may : Severity.WILL_DENT,
        "dentLow",
        low * 1e-3,
        "dentHigh",
        high * 1e-3);
  }

  /** With a dent, mm, that something left which closed. */
  public static RunOutcome dent(double depth, Constriction.Kind closed) {
    return Changed.of(
        dent(depth, depth),
        "dentPlace",
        Optional.of(PLACE),
        "blamed",
        Optional.of(new Constriction(closed, PLACE, 2e-3, 3)),
        "pocketCentre",
        Optional.of(PLACE));
  }

  /** The same, opened after 6 s and as oval as stated, mm; shut until then, s, none is seen. */
  public static RunOutcome opened(RunOutcome o, double oval, double shutUntil) {
    Severity severity = oval < 0.2 ? Severity.CLEAN : Severity.MAY_DENT;
    double least = 0.5e-3 * oval;
    Opening early = new Opening(6, severity, 1e-7, 1e-3 * oval, least, PLACE, shutUntil, "", "");
    return Changed.of(o, "opening", early);
  }
}
