// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import gelfront.answer.Doubt;
import gelfront.answer.Doubt.Influence;
import gelfront.answer.Doubt.PlausibleCase;
import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.base.Progress;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.study.Job;
import gelfront.study.Study;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Plausible cases of one case, by a fixed plan: as many as asked at quick level, the case as it is
 * at quick and normal level, and without flow.
 */
public final class DoubtStudy {
  private final Variables variables;
  private final double[][] points;
  private final Optional<VarianceShares> shares;

  private DoubtStudy(Variables variables, double[][] points, Optional<VarianceShares> shares) {
    this.variables = variables;
    this.points = points;
    this.shares = shares;
  }

  /**
   * A few cases, and which unknown goes with the depth.
   *
   * @param cases three at least
   * @throws IllegalArgumentException in words, if nothing is unknown or too few are asked for
   */
  public static DoubtStudy few(LoadedCase base, Tolerances tolerances, int cases) {
    if (cases < 3) {
      throw new IllegalArgumentException("fewer than 3 plausible cases tell nothing: " + cases);
    }
    Variables v = unknown(base, tolerances);
    return new DoubtStudy(v, LatinHypercube.points(cases, v.all().size()), Optional.empty());
  }

  /**
   * So many that each unknown's share of the variance comes out.
   *
   * @param cases of each sample; {@code cases} times the unknowns and two are calculated
   * @throws IllegalArgumentException in words, if nothing is unknown or too few are asked for
   */
  public static DoubtStudy thorough(LoadedCase base, Tolerances tolerances, int cases) {
    Variables v = unknown(base, tolerances);
    VarianceShares shares = new VarianceShares(cases, v.all().size());
    return new DoubtStudy(v, shares.points(), Optional.of(shares));
  }

  private static Variables unknown(LoadedCase base, Tolerances tolerances) {
    Variables v = Variables.of(base, tolerances);
    if (v.all().isEmpty()) {
      throw new IllegalArgumentException(
          "nothing is unknown: all is stated, and no tolerance left");
    }
    return v;
  }

  /** Plausible cases. */
  int cases() {
    return points.length;
  }

  /** Whether all of it is kept from earlier, so that it costs nothing. */
  public boolean stored(Study study) {
    return plan(study.base()).jobs().stream().allMatch(study::has);
  }

  /**
   * @param jobs three as it is, then forks, then plausible cases
   * @param forks how many
   * @param refused plausible cases that can't be, by number
   */
  private record Plan(List<Job> jobs, int forks, Map<Integer, Ran> refused) {}

  private Plan plan(LoadedCase base) {
    List<Job> jobs = new ArrayList<>();
    jobs.add(Job.of("as it is", base, List.of()).quick());
    jobs.add(Job.of("as it is, normal level", base, List.of()).normal());
    jobs.add(
        new Job("as it is, no flow", base.with(base.setup().numerics().withoutFlow())).quick());
    List<Job> forks = Forks.of(base);
    jobs.addAll(forks);
    Map<Integer, Ran> refused = new HashMap<>();
    for (int i = 0; i < points.length; i++) {
      try {
        jobs.add(Job.of("plausible case " + (i + 1), base, changes(values(points[i]))).quick());
      } catch (IllegalArgumentException e) { // such a shot can't be: that is an outcome, too
        refused.put(i, Ran.failed(String.valueOf(e.getMessage())));
      }
    }
    return new Plan(jobs, forks.size(), refused);
  }

  /**
   * @throws gelfront.base.CancelledException if the watcher wants to stop
   */
  public Doubt run(Study study, Progress progress) {
    LoadedCase base = study.base();
    Plan plan = plan(base);
    Map<Integer, Ran> refused = plan.refused();
    Iterator<Ran> ran = study.run("doubt", plan.jobs(), progress).iterator();
    Ran typical = ran.next();
    Ran finer = ran.next();
    Ran conduction = ran.next();
    List<Doubt.Fork> forks = new ArrayList<>();
    for (Job fork : plan.jobs().subList(3, 3 + plan.forks())) {
      forks.add(new Doubt.Fork(fork.label(), ran.next()));
    }
    List<PlausibleCase> cases = new ArrayList<>();
    for (int i = 0; i < points.length; i++) {
      Ran r = refused.containsKey(i) ? refused.get(i) : ran.next();
      cases.add(new PlausibleCase(values(points[i]), r));
    }
    boolean whole = cases.stream().allMatch(c -> c.ran().outcome().isPresent());
    Optional<VarianceShares> complete = shares.filter(s -> whole);
    return new Doubt(
        base.setup().name(),
        "quick",
        base.setup().visibleDent(),
        variables.all().stream().map(Variable::shown).toList(),
        variables.known(),
        cases,
        typical,
        finer,
        conduction,
        forks,
        influences(cases, complete),
        complete.isPresent()
            ? "share of the depth's variance that it has a hand in"
            : "rank correlation with the depth");
  }

  private List<Double> values(double[] point) {
    return IntStream.range(0, point.length)
        .mapToObj(u -> variables.all().get(u).guess().at(point[u]))
        .toList();
  }

  private List<Change> changes(List<Double> values) {
    List<Change> all = new ArrayList<>();
    for (int u = 0; u < values.size(); u++) {
      all.addAll(variables.all().get(u).changes().apply(values.get(u)));
    }
    return all;
  }

  private static List<Influence> influences(
      List<PlausibleCase> cases, Optional<VarianceShares> shares) {
    List<Influence> found = shares.map(s -> variance(cases, s)).orElseGet(() -> screening(cases));
    return found.stream()
        .sorted(Comparator.comparingDouble((Influence i) -> -Math.abs(i.value())))
        .toList();
  }

  private static double depth(PlausibleCase c) {
    return c.ran().outcome().map(RunOutcome::dentHigh).orElseThrow();
  }

  private static List<Influence> variance(List<PlausibleCase> cases, VarianceShares shares) {
    VarianceShares.Share[] s = shares.of(cases.stream().mapToDouble(DoubtStudy::depth).toArray());
    return IntStream.range(0, s.length)
        .mapToObj(u -> new Influence(u, s[u].total(), s[u].low(), s[u].high()))
        .toList();
  }

  private static List<Influence> screening(List<PlausibleCase> cases) {
    List<PlausibleCase> well = cases.stream().filter(c -> c.ran().outcome().isPresent()).toList();
    double[][] inputs =
        well.stream()
            .map(c -> c.values().stream().mapToDouble(Double::doubleValue).toArray())
            .toArray(double[][]::new);
    Screening.Rank[] r =
        Screening.of(inputs, well.stream().mapToDouble(DoubtStudy::depth).toArray());
    return IntStream.range(0, r.length)
        .mapToObj(u -> new Influence(u, r[u].correlation(), r[u].low(), r[u].high()))
        .toList();
  }
}
