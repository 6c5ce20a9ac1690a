// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.Doubt;
import gelfront.answer.RunStore;
import gelfront.base.Progress;
import gelfront.mesh.TriangleMesh;
import gelfront.setup.CaseFile;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import gelfront.study.Study;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

class DoubtStudyTest {
  private static final String BEAN =
      """
      name = "Bean"
      [[part.caliper]]
      distance = "0 mm"
      width = "5 mm"
      height = "5 mm"
      [[part.caliper]]
      distance = "8 mm"
      width = "9 mm"
      height = "9 mm"
      [[part.caliper]]
      distance = "16 mm"
      width = "5 mm"
      height = "5 mm"
      [gate]
      at = ["0 mm", "0 mm", "0 mm"]
      direction = [-1, 0, 0]
      size = "3 mm"
      land = "2 mm"
      [sprue]
      diameter = "7 mm"
      length = "14 mm"
      [block]
      wall = "8 mm"
      contact = "2500 W/m2K"
      [shot]
      temperature = "165 degC"
      """;

  private static LoadedCase bean() {
    return CaseFile.parse("bean.toml", BEAN, Path.of("."));
  }

  @Test
  void plausibleCasesStayInTheirRangesAndTheOutcomesVary() {
    LoadedCase base = bean();
    ExecutorService pool = Executors.newFixedThreadPool(4);
    try {
      TriangleMesh part = PartLoader.load(base.setup().part()).mesh();
      Study study = Study.of(base, part, "1", RunStore.inMemory(), pool, 2);

      Doubt d = DoubtStudy.few(base, Tolerances.USUAL, 4).run(study, Progress.NONE);

      assertEquals(4, d.outcomes().size());
      assertEquals(List.of("contact with the mould"), d.known());
      for (Doubt.PlausibleCase c : d.cases()) {
        for (int u = 0; u < d.unknowns().size(); u++) {
          Doubt.Unknown unknown = d.unknowns().get(u);
          assertTrue(unknown.low() < c.values().get(u) && c.values().get(u) < unknown.high());
        }
      }
      double[] sets = d.outcomes().stream().mapToDouble(o -> o.gateSets()).distinct().toArray();
      assertEquals(4, sets.length);
      assertTrue(d.finer().outcome().orElseThrow().cells() > 1.5 * cells(d));
      assertEquals(d.unknowns().size(), d.influences().size());
    } finally {
      pool.shutdownNow();
    }
  }

  private static double cells(Doubt d) {
    return d.typical().outcome().orElseThrow().cells();
  }

  @Test
  void whatTheCaseStatesIsKnown() {
    LoadedCase base =
        bean()
            .with(
                List.of(
                    Change.degC("plastisol.no_flow", 118),
                    new Change.Set("plastisol.viscosity_165", "\"2 Pas\"")));

    Variables v = Variables.of(base, new Tolerances(0, 0, 0));

    assertTrue(v.known().containsAll(List.of("no-flow temperature", "viscosity at 165 °C")));
    assertTrue(v.all().stream().noneMatch(x -> v.known().contains(x.shown().name())));
    assertTrue(v.all().stream().noneMatch(x -> x.shown().source().contains("tolerance")));
  }

  /** Otherwise plastisol would gel where it flows, or flow where it has gelled. */
  @Test
  void gellingMovesWithTheNoFlowTemperature() {
    LoadedCase base = bean();
    Variable noFlow =
        Variables.of(base, Tolerances.USUAL).all().stream()
            .filter(x -> x.shown().name().equals("no-flow temperature"))
            .findFirst()
            .orElseThrow();

    var moved = base.with(noFlow.changes().apply(107)).setup().plastisol();

    assertEquals(107, moved.noFlow(), 1e-9);
    assertEquals(
        base.setup().plastisol().gelStart() - base.setup().plastisol().noFlow(),
        moved.gelStart() - 107,
        1e-9);
    assertEquals(97, moved.gelEnd(), 1e-9);
  }

  @Test
  void tooFewCasesAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> DoubtStudy.few(bean(), Tolerances.USUAL, 2));
  }

  @Test
  void aThoroughStudyCalculatesEachUnknownInItsTurn() {
    int unknowns = Variables.of(bean(), Tolerances.USUAL).all().size();
    assertEquals(8 * (unknowns + 2), DoubtStudy.thorough(bean(), Tolerances.USUAL, 8).cases());
  }
}
