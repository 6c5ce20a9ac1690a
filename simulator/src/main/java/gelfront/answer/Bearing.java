// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import gelfront.base.Quantities;
import gelfront.finding.Constriction;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which findings of a calculated result bear on what a maker sees, and which don't fit. */
public final class Bearing {
  private static final Set<Constriction.Kind> LEVEL_SPRUE =
      Set.of(Constriction.Kind.GATE, Constriction.Kind.RUNNER, Constriction.Kind.NECK);

  private final Diagnosis diagnosis;
  private final Findings findings;
  private final List<String> words = new ArrayList<>();

  private Bearing(Diagnosis diagnosis, Findings findings) {
    this.diagnosis = diagnosis;
    this.findings = findings;
  }

  /** In words, one or more; never empty. */
  public static List<String> of(Diagnosis diagnosis, Findings findings) {
    Bearing b = new Bearing(diagnosis, findings);
    if (diagnosis.certainty() == Diagnosis.Certainty.OPEN) {
      b.dent();
      b.shot();
    } else if (diagnosis.fault() == Fault.DENT) {
      b.dent();
    } else {
      b.notADent();
    }
    return List.copyOf(b.words);
  }

  private void notADent() {
    if (findings.filled().calculated()) {
      fits();
      shot();
    } else {
      words.add(
          "The result tells of dents alone: whether the cavity fills and where air is trapped is"
              + " not in it. With [fill] in the case file it is.");
    }
    worst()
        .ifPresent(
            p ->
                words.add(
                    "It does expect a dent, whatever else is wrong. Pocket "
                        + p.number()
                        + ": "
                        + p.sentence()));
  }

  /** Whether the calculated shot expects what was found. */
  private void fits() {
    boolean air = !findings.filled().air().isEmpty();
    boolean fills = !findings.filled().mayNotFill();
    switch (diagnosis.fault()) {
      case TRAPPED_AIR ->
          words.add(
              air
                  ? "That fits: the shot was calculated, and it traps air."
                  : "That does not fit: the shot was calculated, and it traps no air. Either air was"
                      + " stirred in, or it leaves less easily than was calculated: look at the vents"
                      + " and between the halves.");
      case SHORT_SHOT ->
          words.add(
              !fills
                  ? "That fits: the shot was calculated, and some of the part may not fill."
                  : air
                      ? "The shot was calculated: the part fills but for trapped air, which keeps"
                          + " plastisol out."
                      : "That does not fit: the shot was calculated, and all of the part fills. Either"
                          + " it was colder or slower than was calculated, or the injector ran empty.");
      default -> {} // nothing that is calculated
    }
  }

  private void shot() {
    if (findings.filled().calculated()) {
      words.add("What the shot came to: " + findings.filled().sentence());
      findings.filled().air().forEach(a -> words.add("Air " + a.letter() + ": " + a.proposal()));
    }
  }

  private Optional<Pocket> worst() {
    return findings.pockets().stream().filter(p -> p.severity() != Severity.CLEAN).findFirst();
  }

  private void dent() {
    Optional<Pocket> worst = worst();
    if (worst.isEmpty()) {
      words.add(
          "The result expects no dent that is seen. If there is one, the plastisol stops flowing at"
              + " another temperature than was calculated with: run it with no_flow at 100 and at"
              + " 150 degC.");
      return;
    }
    Pocket p = worst.get();
    words.add(
        Quantities.say(
            "Pocket %d bears on it, round x %.0f, y %.0f, z %.0f mm: %s",
            p.number(),
            p.centre().x() * 1e3,
            p.centre().y() * 1e3,
            p.centre().z() * 1e3,
            p.sentence()));
    if (!p.sign().isEmpty()) {
      words.add("How that shows at the bench: " + p.sign());
    }
    sprue(p);
    if (diagnosis.seen().contains(Symptom.FIRST)) {
      words.add("Whether later shots lose it, gelfront series calculates from the same case.");
    }
  }

  private void sprue(Pocket p) {
    boolean level = LEVEL_SPRUE.contains(p.constriction().kind());
    boolean dry = p.constriction().kind() == Constriction.Kind.DRY_SPRUE;
    if (level && diagnosis.seen().contains(Symptom.SINKING)) {
      words.add(
          "That does not fit a sprue that keeps sinking: the way in stays open longer than was"
              + " calculated, or another place draws on it. A lower no_flow would do that.");
    }
    if (dry && diagnosis.seen().contains(Symptom.LEVEL)) {
      words.add(
          "That does not fit a sprue that stays level: something closed sooner than was calculated. A"
              + " higher no_flow would do that.");
    }
  }
}
