// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.study;

import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.answer.RunStore;
import gelfront.base.Progress;
import gelfront.evidence.Check;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.CaseFile;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.study.Job;
import gelfront.study.Study;
import gelfront.validation.exact.EqualSetting;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * The gate that stays open as long as the part by itself is soft, conduction alone, no latent heat,
 * half way between shot and mould: 1.374 times a plate's thickness, a bar's own diameter, 0.832
 * times a ball's ({@link EqualSetting}). The part by itself: one with a gate too thin to matter.
 * The gate's land is long enough for its middle to know neither end.
 *
 * <p>What a study sizes by is a dent that is seen, not equal times: a gate that closes a little
 * early leaves less than that, so that its answer is smaller.
 */
final class SizingTest {
  private static final String SOURCE = "equal setting, series of Carslaw and Jaeger";
  private static final double THETA = 0.5;
  private static final double THIN = 2.2e-3;

  private final ExecutorService pool = Executors.newFixedThreadPool(4);

  @AfterEach
  void end() {
    pool.shutdownNow();
  }

  private static LoadedCase load(String at, String direction) {
    String text =
        """
        [[part.caliper]]
        distance = "0 mm"
        width = "9 mm"
        height = "9 mm"
        [[part.caliper]]
        distance = "9 mm"
        width = "9 mm"
        height = "9 mm"
        [gate]
        at = AT
        direction = WAY
        size = "8 mm"
        land = "34 mm"
        [sprue]
        diameter = "20 mm"
        length = "15 mm"
        [block]
        material = "aluminium-6061"
        wall = "20 mm"
        start = "45 degC"
        contact = "20000 W/m2K"
        [plastisol]
        grade = "soft"
        latent_heat = "0 J/kg"
        no_flow = "105 degC"
        [shot]
        temperature = "165 degC"
        fill_time = "0 s"
        hold_time = "0 s"
        [numerics]
        level = "quick"
        """;
    LoadedCase read =
        CaseFile.parse(
            "gate.toml",
            text.replace("AT", at).replace("WAY", direction),
            Path.of("").toAbsolutePath());
    return read.with(read.setup().numerics().withoutFlow());
  }

  /** The gate's size that sets with the part, from one run near it: times go with squares. */
  private double sized(LoadedCase base, TriangleMesh part, double near) {
    Study study = Study.of(base, part, "validation", RunStore.inMemory(), pool, 2);
    List<Job> jobs =
        List.of(
            Job.of("thin", base, List.of(Change.mm("gate.size", THIN))),
            Job.of("near", base, List.of(Change.mm("gate.size", near))));
    List<Ran> ran = study.run("closed forms", jobs, Progress.NONE);
    RunOutcome alone = ran.get(0).outcome().orElseThrow();
    RunOutcome gate = ran.get(1).outcome().orElseThrow();
    return near * Math.sqrt(alone.partSets() / gate.gateSets());
  }

  @Test
  void aBarTakesAGateAsWideAsItself() {
    double d = 10e-3;
    TriangleMesh bar = Solids.cylinder(new Vec3(0, 0, 0), new Vec3(60e-3, 0, 0), d / 2, d / 2, 96);

    double gate = sized(load("[\"0 mm\", \"0 mm\", \"0 mm\"]", "[-1, 0, 0]"), bar, d);

    Check.of("gate that sets with a bar, over its diameter", SOURCE)
        .expected(1)
        .got(gate / d)
        .within(0.01);
  }

  @Test
  void aBallTakesAGateOfFiveSixthsOfItsDiameter() {
    double d = 16e-3;
    TriangleMesh ball = Solids.sphere(new Vec3(0, 0, 0), d / 2, 96);
    double wanted = EqualSetting.ball(THETA);

    double gate = sized(load("[\"0 mm\", \"0 mm\", \"8 mm\"]", "[0, 0, 1]"), ball, wanted * d);

    Check.of("gate that sets with a ball, over its diameter", SOURCE)
        .expected(wanted)
        .got(gate / d)
        .within(0.01);
  }

  @Test
  void aPlateTakesAGateWiderThanItIsThick() {
    double t = 8e-3;
    TriangleMesh plate = Solids.box(new Vec3(-24e-3, -24e-3, 0), new Vec3(24e-3, 24e-3, t));
    double wanted = EqualSetting.plate(THETA);

    double gate = sized(load("[\"0 mm\", \"0 mm\", \"8 mm\"]", "[0, 0, 1]"), plate, wanted * t);

    Check.of("gate that sets with a plate, over its thickness", SOURCE)
        .expected(wanted)
        .got(gate / t)
        .within(0.015);
  }
}
