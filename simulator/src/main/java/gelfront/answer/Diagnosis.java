// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import gelfront.base.Entries;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What symptoms mean by {@link SymptomTable}.
 *
 * @param seen what was seen
 * @param scores what speaks for each fault, less what speaks against it
 * @param fault that most speaks for
 * @param certainty how far it stands out
 * @param pro what speaks for it
 * @param contra what speaks against it
 * @param clashes symptoms that don't fit together, in words
 * @param steps what to try, in order
 */
public record Diagnosis(
    Set<Symptom> seen,
    Map<Fault, Integer> scores,
    Fault fault,
    Certainty certainty,
    List<SymptomTable.Rule> pro,
    List<SymptomTable.Rule> contra,
    List<String> clashes,
    List<String> steps) {
  /** From this score and this lead on it is clear. */
  private static final int CLEAR = 3;

  /** How sure. */
  public enum Certainty {
    CLEAR,
    LIKELY,
    /** Too little was seen, or what was seen speaks for several, or doesn't fit together. */
    OPEN
  }

  public Diagnosis {
    seen = Set.copyOf(seen);
    scores = Map.copyOf(scores);
    pro = List.copyOf(pro);
    contra = List.copyOf(contra);
    clashes = List.copyOf(clashes);
    steps = List.copyOf(steps);
  }

  /**
   * @throws IllegalArgumentException if nothing was seen, or two symptoms of one aspect
   */
  public static Diagnosis of(Set<Symptom> seen) {
    return of(seen, SymptomTable.RULES);
  }

  static Diagnosis of(Set<Symptom> seen, List<SymptomTable.Rule> rules) {
    check(seen);
    Map<Fault, Integer> scores = new EnumMap<>(Fault.class);
    for (Fault f : Fault.values()) {
      scores.put(f, 0);
    }
    List<SymptomTable.Rule> fitting = rules.stream().filter(r -> seen.contains(r.seen())).toList();
    fitting.forEach(r -> scores.merge(r.fault(), r.weight(), Integer::sum));
    List<Fault> order = new ArrayList<>(List.of(Fault.values()));
    order.sort(Comparator.comparing((Fault f) -> -Entries.of(scores, f)));
    Fault best = order.get(0);
    List<String> clashes =
        SymptomTable.CLASHES.stream()
            .filter(c -> seen.containsAll(c.seen()))
            .map(SymptomTable.Clash::words)
            .toList();
    int lead = Entries.of(scores, best) - Entries.of(scores, order.get(1));
    return new Diagnosis(
        seen,
        scores,
        best,
        certainty(Entries.of(scores, best), lead, clashes.isEmpty()),
        of(fitting, best, 1),
        of(fitting, best, -1),
        clashes,
        steps(best, seen));
  }

  private static void check(Set<Symptom> seen) {
    if (seen.isEmpty()) {
      throw new IllegalArgumentException("nothing was seen");
    }
    Set<Symptom.Aspect> aspects = EnumSet.noneOf(Symptom.Aspect.class);
    for (Symptom s : seen) {
      if (!aspects.add(s.aspect())) {
        throw new IllegalArgumentException("two of one aspect: " + s.aspect().word());
      }
    }
  }

  private static Certainty certainty(int score, int lead, boolean fits) {
    if (!fits || score <= 0 || lead <= 0) {
      return Certainty.OPEN;
    }
    return score >= CLEAR && lead >= CLEAR ? Certainty.CLEAR : Certainty.LIKELY;
  }

  private static List<SymptomTable.Rule> of(List<SymptomTable.Rule> rules, Fault fault, int sign) {
    return rules.stream().filter(r -> r.fault() == fault && r.weight() * sign > 0).toList();
  }

  private static List<String> steps(Fault fault, Set<Symptom> seen) {
    return SymptomTable.STEPS.stream()
        .filter(s -> s.fits(fault, seen))
        .map(SymptomTable.Step::words)
        .toList();
  }

  /** In one sentence. */
  public String verdict() {
    return switch (certainty) {
      case CLEAR -> "This is " + fault.words() + ".";
      case LIKELY -> "This is most likely " + fault.words() + ".";
      case OPEN -> "What was seen does not tell yet what this is.";
    };
  }
}
