// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.finding.Amounts;
import gelfront.finding.Fed;
import gelfront.finding.Findings;
import gelfront.finding.Severity;
import gelfront.mesh.TriangleMesh;
import gelfront.result.Fields;
import gelfront.result.Health;
import gelfront.result.Inputs;
import gelfront.result.Provenance;
import gelfront.result.Series;
import gelfront.result.StoredRun;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A check that is still going on, shown as a result would be.
 *
 * @param run set times so far, nothing found yet
 * @param time s after the shot
 * @param scale s at the end of the time scale: what the quick verdict expects
 */
public record LiveFreezing(StoredRun run, double time, double scale) {
  /** s that a part takes about, where no quick verdict says. */
  private static final double ABOUT = 60;

  static LiveFreezing of(Freezing.Moment m, Quick.Verdict expected) {
    double sets = expected.findings().map(Findings::partSets).orElse(ABOUT);
    StoredRun run = stored(m.fields(), m.surface());
    return new LiveFreezing(run, m.time(), Math.max(m.time() * 1.02, 1.1 * sets));
  }

  /** Fields alone, as if they were a result; nothing found. */
  public static StoredRun stored(Fields fields, TriangleMesh surface) {
    return new StoredRun(
        "",
        "",
        new Inputs(List.of(), List.of()),
        nothing(),
        new Series(new double[0], List.of()),
        new Health(List.of()),
        List.of(),
        new Provenance("", "", "", 0),
        fields,
        surface);
  }

  private static Findings nothing() {
    double never = Double.POSITIVE_INFINITY;
    return new Findings(
        Severity.CLEAN,
        "",
        "",
        List.of(),
        List.of(),
        never,
        never,
        never,
        never,
        0,
        2e-4,
        new Amounts(0, 0, 0, 0, 0, 0, 1, OptionalDouble.empty()),
        new Fed(true, 0, 0, 0, 0, never, 0, never));
  }
}
