// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A case's verdict over all that isn't known for sure.
 *
 * @param name of the case
 * @param level that plausible cases were calculated at, in a word
 * @param visible metres from which a dent is seen
 * @param unknowns what was varied
 * @param known what the case states, and was therefore not varied, in words
 * @param cases calculated
 * @param typical the case as it is, at that level
 * @param finer the case as it is, at the level the others are anchored to
 * @param conduction the case as it is without any flow, at that level
 * @param forks the case as it is with the model itself otherwise, each for itself, at that level
 * @param influences one for each unknown, the greatest first
 * @param method how they were found, in words
 */
public record Doubt(
    String name,
    String level,
    double visible,
    List<Unknown> unknowns,
    List<String> known,
    List<PlausibleCase> cases,
    Ran typical,
    Ran finer,
    Ran conduction,
    List<Fork> forks,
    List<Influence> influences,
    String method) {
  public Doubt {
    unknowns = List.copyOf(unknowns);
    known = List.copyOf(known);
    cases = List.copyOf(cases);
    forks = List.copyOf(forks);
    influences = List.copyOf(influences);
    for (PlausibleCase c : cases) {
      if (c.values().size() != unknowns.size()) {
        throw new IllegalArgumentException("a plausible case has one value for each unknown");
      }
    }
  }

  /**
   * Something that isn't known for sure.
   *
   * @param name in words
   * @param unit of its values
   * @param low that it hardly is below
   * @param likely most likely value
   * @param high that it hardly is above
   * @param source where the range comes from
   * @param advice how to find out, in words
   */
  public record Unknown(
      String name,
      String unit,
      double low,
      double likely,
      double high,
      String source,
      String advice) {}

  /**
   * Something that the model could as well do otherwise: no unknown of the plastisol's.
   *
   * @param name in words
   * @param ran what became of the case as it is
   */
  public record Fork(String name, Ran ran) {}

  /**
   * @param values one for each unknown, in its unit
   * @param ran what became of it
   */
  public record PlausibleCase(List<Double> values, Ran ran) {
    public PlausibleCase {
      values = List.copyOf(values);
    }
  }

  /**
   * How much an unknown decides.
   *
   * @param unknown number in the list of unknowns
   * @param value rank correlation with the depth, -1 to 1, or share of its variance, by the method
   * @param low of the interval that holds it with 90 %
   * @param high of that interval
   */
  public record Influence(int unknown, double value, double low, double high) {
    /** Whether it is told from chance. */
    public boolean told() {
      return low > 0 || high < 0;
    }
  }

  /** Plausible cases that could be calculated. */
  public List<RunOutcome> outcomes() {
    return cases.stream().map(PlausibleCase::ran).flatMap(r -> r.outcome().stream()).toList();
  }

  /** Plausible cases that gave no result. */
  public int failed() {
    return cases.size() - outcomes().size();
  }

  /**
   * Metres that the finer level finds a dent deeper than the level of the plausible cases; what is
   * said of these has it added.
   */
  public double anchor() {
    Optional<Double> fine = finer.outcome().map(RunOutcome::dentHigh);
    Optional<Double> rough = typical.outcome().map(RunOutcome::dentHigh);
    return fine.isPresent() && rough.isPresent() ? fine.get() - rough.get() : 0;
  }

  /** Metres, high bound of a case's deepest dent as the finer level would have it. */
  public double high(RunOutcome o) {
    return Math.max(0, o.dentHigh() + anchor());
  }

  /** Metres, its low bound; the anchor moves it in proportion. */
  public double low(RunOutcome o) {
    return o.dentHigh() > 0 ? o.dentLow() * high(o) / o.dentHigh() : 0;
  }

  /** Cases whose dent may be seen: the worse reading of how the skin gives way. */
  public long mayDent() {
    return outcomes().stream().filter(o -> high(o) >= visible).count();
  }

  /** Cases whose dent is seen even by the milder reading. */
  public long dentsAnyway() {
    return outcomes().stream().filter(o -> low(o) >= visible).count();
  }

  /** High bounds of all cases, metres, rising. */
  public double[] depths() {
    return outcomes().stream().mapToDouble(this::high).sorted().toArray();
  }

  /**
   * A depth that a share of the cases stays under, metres; between two cases in proportion.
   *
   * @param share 0 to 1
   */
  public double depthAt(double share) {
    double[] d = depths();
    return d.length == 0 ? Double.NaN : Band.share(d, share);
  }

  /** Low and high bound of every case, metres; by the high one, rising. */
  public double[][] bounds() {
    return outcomes().stream()
        .map(o -> new double[] {low(o), high(o)})
        .sorted(Comparator.comparingDouble(b -> b[1]))
        .toArray(double[][]::new);
  }

  /** The unknown to find out first; absent where none is told from chance. */
  public Optional<Unknown> first() {
    return influences.stream()
        .filter(Influence::told)
        .findFirst()
        .map(i -> unknowns.get(i.unknown()));
  }
}
