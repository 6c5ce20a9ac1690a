// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.answer.Trials;
import gelfront.base.Entries;
import gelfront.base.Progress;
import gelfront.base.Quantities;
import gelfront.material.Ranged;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.study.Job;
import gelfront.study.Study;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.math3.distribution.TriangularDistribution;

/**
 * Calibrates by trial shots: each different shot is calculated at level quick for no-flow
 * temperatures over the material table's range, and {@link TrialFit} weighs them.
 */
public final class TrialCalibration {
  private static final int KNOTS = 6;

  /** Chance below which a shot stands against the model whatever no-flow is. */
  private static final double AGAINST = 0.06;

  private final List<TrialShot> shots;
  private final Map<String, Study> studies;
  private final Progress progress;
  private final String file;

  /**
   * @param file name of the log
   * @param studies of each case that the log names
   */
  public TrialCalibration(
      String file, List<TrialShot> shots, Map<String, Study> studies, Progress progress) {
    this.file = file;
    this.shots = List.copyOf(shots);
    this.studies = Map.copyOf(studies);
    this.progress = progress;
  }

  /**
   * @param hash of the log
   * @throws LogException with lines, if a shot can't be or the shots contradict each other
   * @throws IllegalArgumentException in words, if no-flow is stated or the table has no range
   */
  public Trials run(String hash) {
    LoadedCase base = Entries.of(studies, shots.get(0).caseName()).base();
    Ranged range = Entries.of(base.materials().entry("plastisol", grade(base)), "no_flow");
    double[] knots = new double[KNOTS];
    Arrays.setAll(knots, i -> range.low() + (range.high() - range.low()) * i / (KNOTS - 1));
    Map<TrialShot.Setting, List<Ran>> ran = calculated(knots);
    List<TrialFit.Predicted> predicted =
        shots.stream().map(s -> predicted(s, Entries.of(ran, s.setting()))).toList();
    double visible = base.setup().visibleDent();
    TriangularDistribution before =
        new TriangularDistribution(range.low(), range.typical(), range.high());
    TrialFit fit = new TrialFit(knots, t -> before.density(t) + 1e-4, visible);
    TrialFit.Result r = fit.of(shots, predicted);
    List<String> notes = against(r);
    List<Trials.Shot> rows = new ArrayList<>();
    for (int i = 0; i < shots.size(); i++) {
      rows.add(row(fit, r, i, predicted.get(i)));
    }
    return new Trials(
        base.setup().name(),
        file,
        hash,
        known(r.noFlow()),
        new double[] {range.low(), range.typical(), range.high()},
        known(r.skin()),
        r.correlation(),
        r.inseparable(),
        rows,
        visible,
        notes);
  }

  private static Trials.Known known(TrialFit.Known k) {
    return new Trials.Known(k.value(), k.low(), k.high(), k.told());
  }

  private static String grade(LoadedCase base) {
    return base.word("plastisol.grade").orElse("soft");
  }

  private Map<TrialShot.Setting, List<Ran>> calculated(double[] knots) {
    Map<TrialShot.Setting, List<Ran>> all = new LinkedHashMap<>();
    Map<String, List<Job>> jobs = new LinkedHashMap<>();
    Map<String, List<TrialShot.Setting>> of = new HashMap<>();
    for (TrialShot s : shots) {
      if (all.putIfAbsent(s.setting(), new ArrayList<>()) == null) {
        for (double t : knots) {
          jobs.computeIfAbsent(s.caseName(), k -> new ArrayList<>()).add(job(s, t));
          of.computeIfAbsent(s.caseName(), k -> new ArrayList<>()).add(s.setting());
        }
      }
    }
    jobs.forEach(
        (name, list) -> {
          List<Ran> ran = Entries.of(studies, name).run("trial shots", list, progress);
          for (int i = 0; i < ran.size(); i++) {
            Entries.of(all, Entries.of(of, name).get(i)).add(ran.get(i));
          }
        });
    return all;
  }

  private Job job(TrialShot s, double noFlow) {
    List<Change> changes = new ArrayList<>(s.recipe());
    changes.add(Change.degC("plastisol.no_flow", noFlow));
    String label = Quantities.say("line %d, no-flow %.0f °C", s.line(), noFlow);
    try {
      return Job.of(label, Entries.of(studies, s.caseName()).base(), changes).quick();
    } catch (IllegalArgumentException e) {
      throw new LogException(file, s.line(), String.valueOf(e.getMessage()));
    }
  }

  private TrialFit.Predicted predicted(TrialShot s, List<Ran> ran) {
    double[] low = new double[ran.size()];
    double[] high = new double[ran.size()];
    double[] closes = new double[ran.size()];
    for (int i = 0; i < low.length; i++) {
      RunOutcome o = ran.get(i).outcome().orElse(null);
      low[i] = o == null ? Double.NaN : o.dentLow();
      high[i] = o == null ? Double.NaN : o.dentHigh();
      closes[i] = o == null ? Double.NaN : Math.min(o.halfAt(), o.gateSets());
      if (o != null && s.cavity() > 0) {
        RunOutcome.OfCavity c = cavity(s, o);
        low[i] = c.dentLow();
        high[i] = c.dentHigh();
        closes[i] = Math.min(c.closed(), o.gateSets());
      }
    }
    LoadedCase base = Entries.of(studies, s.caseName()).base();
    double released = base.with(s.recipe()).setup().shot().holdTime();
    return new TrialFit.Predicted(low, high, closes, released);
  }

  private RunOutcome.OfCavity cavity(TrialShot s, RunOutcome o) {
    return o.cavities().stream()
        .filter(c -> c.number() == s.cavity())
        .findFirst()
        .orElseThrow(
            () ->
                new LogException(
                    file,
                    s.line(),
                    "cavity "
                        + s.cavity()
                        + ": the case has "
                        + (o.cavities().isEmpty() ? "one" : o.cavities().size())));
  }

  /** Lines that no no-flow temperature explains; refused where they are many. */
  private List<String> against(TrialFit.Result r) {
    List<Integer> lines = new ArrayList<>();
    for (int i = 0; i < shots.size(); i++) {
      if (r.likely()[i] < AGAINST) {
        lines.add(shots.get(i).line());
      }
    }
    if (lines.isEmpty()) {
      return List.of();
    }
    String which = lines.stream().map(String::valueOf).collect(Collectors.joining(", "));
    if (3 * lines.size() > shots.size()) {
      throw new LogException(
          file,
          lines.get(0),
          "the shots contradict each other or the case: whatever no-flow is, lines "
              + which
              + " can't have come out so beside the others");
    }
    return List.of(
        "Against all others, and left to chance: line" + (lines.size() > 1 ? "s " : " ") + which);
  }

  private Trials.Shot row(TrialFit fit, TrialFit.Result r, int i, TrialFit.Predicted p) {
    TrialShot s = shots.get(i);
    double t = r.noFlow().value();
    return new Trials.Shot(
        s.line(),
        what(s),
        seen(s),
        fit.depth(p, t, 0),
        fit.depth(p, t, 1),
        fit.closes(p, t),
        r.likely()[i]);
  }

  private static String what(TrialShot s) {
    List<String> words = new ArrayList<>();
    if (!s.caseName().isEmpty()) {
      words.add(s.caseName());
    }
    for (Change c : s.recipe()) {
      Change.Set set = (Change.Set) c;
      words.add(set.key() + " " + set.value().replace("\"", ""));
    }
    if (s.cavity() > 0) {
      words.add("cavity " + s.cavity());
    }
    return words.isEmpty() ? "as the case has it" : String.join(", ", words);
  }

  private static String seen(TrialShot s) {
    List<String> words = new ArrayList<>();
    s.dented().ifPresent(d -> words.add(d ? "dented" : "not dented"));
    s.depth().ifPresent(d -> words.add(Quantities.say("%.2f mm deep", d * 1e3)));
    s.froze().ifPresent(f -> words.add("gate froze " + (f ? "before" : "after") + " the release"));
    return String.join(", ", words);
  }
}
