// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import gelfront.base.Caution;
import gelfront.base.Changed;
import gelfront.finding.Findings;
import gelfront.finding.Opening;
import gelfront.finding.Pocket;
import java.util.List;

/**
 * A run that no solver made: a round body with a tail bulb, a neck, a large bulb, a gate and a
 * sprue along one axis. At distance r from the axis it sets at {@code C (R^2 - r^2)}, R the radius
 * there; a place is cut off when the thinnest section between it and the sprue has set. Every
 * figure is made up to look like a run and follows from these two lines where it can.
 */
public final class SyntheticRun {
  private SyntheticRun() {}

  /** About 3,000 cells and 2,000 triangles. */
  public static StoredRun small() {
    return make(0, 1.5e-3, 16);
  }

  /**
   * @param axis 0 x, 1 y, 2 z: along which the part lies
   * @param voxel edge of a cell, metres
   * @param round triangles' corners round the axis
   */
  public static StoredRun make(int axis, double voxel, int round) {
    SyntheticShape shape = new SyntheticShape(axis);
    return new StoredRun(
        "two bulbs on a thin gate",
        "units = \"mm\"\n[part]\nmesh = \"two-bulbs.stl\" # é\n",
        SyntheticTexts.inputs(),
        new SyntheticFindings(shape).findings(),
        SyntheticTimes.series(),
        SyntheticTexts.health(),
        List.of(
            Caution.of("The contact between plastisol and mould was assumed, not measured."),
            Caution.of("The shot is hotter than {}.", Caution.Figure.temperature(190))),
        new Provenance("0.1.0-test", "2026-11-25T08:41:00Z", "Testland, Java 17", 12.5),
        new SyntheticFields(shape, voxel).fields(),
        shape.surface(round));
  }

  /** The same run with findings changed by name, as {@link Changed} does. */
  public static StoredRun found(StoredRun run, Object... namesAndValues) {
    Findings findings = Changed.of(run.findings(), namesAndValues);
    return Changed.of(run, "findings", findings);
  }

  /** The same run with other pockets, whose feed never sets. */
  public static StoredRun withPockets(StoredRun run, List<Pocket> pockets) {
    double never = Double.POSITIVE_INFINITY;
    return found(run, "pockets", pockets, "gateSets", never, "sprueSets", never);
  }

  /** The same run, opened by the clock. */
  public static StoredRun opened(StoredRun run, Opening opening) {
    return found(run, "opening", opening);
  }

  /** The same pocket, which never sets and has no dents. */
  public static Pocket withoutDents(Pocket p) {
    return Changed.of(p, "lastSet", Double.POSITIVE_INFINITY, "dents", List.of());
  }
}
