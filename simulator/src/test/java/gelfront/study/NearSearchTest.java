// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.Ran;
import gelfront.answer.Sizing;
import gelfront.answer.SomeRun;
import gelfront.base.Progress;
import gelfront.base.Units;
import gelfront.finding.Constriction;
import gelfront.mesh.TriangleMesh;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** What is cut where level quick finds no gate that does and level normal finds some; made up. */
final class NearSearchTest {
  private static final ExecutorService POOL = Executors.newFixedThreadPool(1);
  private static final LoadedCase BEAN =
      CaseFile.parse("bean.toml", StudyCases.BEAN, Path.of("").toAbsolutePath());
  private static final TriangleMesh PART = PartLoader.load(BEAN.setup().part()).mesh();

  private final Map<String, Ran> told = new HashMap<>();
  private final Study study = Study.of(BEAN, PART, "1", new ToldRuns(told::get), POOL, 1);

  @AfterAll
  static void close() {
    POOL.shutdownNow();
  }

  private record Found(PlaceSearch search, SizeChoices run) {
    Sizing.Choice choice(int i) {
      return run.choices().get(i);
    }

    String words() {
      return new SizeWords(Units.METRIC).place(BEAN, search, run, Optional.empty());
    }
  }

  /** Dents at both levels, mm, over the gate, mm. */
  private Found searched(DoubleUnaryOperator quick, DoubleUnaryOperator normal, int runs) {
    PlaceSearch search =
        new PlaceSearch(BEAN, false, new PlaceSearch.Sizes(1e-3, 3e-3, 8e-3), 10e-3, runs);
    for (List<Double> n = search.next(2); !n.isEmpty(); n = search.next(2)) {
      n.forEach(gate -> search.know(gate, came(quick, gate)));
    }
    for (int tenths = 10; tenths <= 80; tenths++) {
      tell(search, normal, tenths * 1e-4, search.sprue());
      Cutters.Size mm = Cutters.MM.up(tenths * 1e-4);
      tell(search, normal, mm.size(), Cutters.MM.up(search.sprueFor(mm.size())).size());
      Cutters.Size inch = Cutters.INCH.up(tenths * 1e-4);
      tell(search, normal, inch.size(), Cutters.INCH.up(search.sprueFor(inch.size())).size());
    }
    SizeChoices run = new SizeChoices(study, search, Progress.NONE);
    run.run();
    return new Found(search, run);
  }

  private void tell(PlaceSearch search, DoubleUnaryOperator dent, double gate, double sprue) {
    told.put(study.hash(search.job(gate, sprue).normal()), came(dent, gate));
  }

  private static Ran came(DoubleUnaryOperator dent, double gate) {
    return Ran.well(SomeRun.dent(dent.applyAsDouble(gate * 1e3), Constriction.Kind.GATE));
  }

  /** Of 2, 5 and 8 mm the last two come close at level quick; at normal all above 4.6 mm do. */
  @Test
  void theThinnestIsFoundAndRoundedToCutters() {
    Found f = searched(g -> 0.21 + 0.02 * Math.max(0, 5 - g), g -> 0.2 + 0.02 * (4.6 - g), 12);

    assertEquals(4.75, f.choice(0).gate() * 1e3, 0.151, f.words());
    assertEquals("5 mm", f.choice(1).gateWords());
    assertTrue(f.choice(2).gateWords().endsWith(" in"), f.choice(2).gateWords());
    assertEquals(3, f.run().choices().size());
    assertEquals(4, f.run().near().size(), "both close ones, the thinner one, one between");
    assertTrue(f.words().contains("; 2 mm does not"), f.words());
  }

  /** Of 2, 5 and 8 mm only the last comes close at level quick. */
  @Test
  void whatIsThinnerThanTheOnlyCloseOneIsTriedToo() {
    Found f = searched(g -> 0.21 + 0.02 * Math.max(0, 7 - g), g -> 0.2 + 0.02 * (6.1 - g), 12);

    double gate = f.choice(0).gate() * 1e3;
    assertTrue(gate > 6.1 && gate < 6.7, f.words());
    assertEquals("7 mm", f.choice(1).gateWords());
    assertFalse(f.words().contains("quick only"), f.words());
  }

  @Test
  void whereThatIsAllThatMayBeRunThinnerOnesAreSaidToBeUntried() {
    Found f = searched(g -> 0.21 + 0.02 * Math.max(0, 7 - g), g -> 0.2 + 0.02 * (6.1 - g), 3);

    assertEquals(8e-3, f.choice(0).gate(), 1e-9);
    assertTrue(f.words().contains("; thinner ones were run at level quick only"), f.words());
  }

  @Test
  void whereNoneDoesAtLevelNormalEitherTheClosestIsTold() {
    Found f = searched(g -> 0.21 + 0.02 * Math.max(0, 5 - g), g -> 0.22, 12);

    assertEquals(1, f.run().choices().size());
    assertFalse(f.run().hold());
    assertTrue(f.words().startsWith("None of 3 gates up to 8 mm does it here"), f.words());
    assertTrue(f.words().contains("at level normal 0.22 mm deep, a close call"), f.words());
  }
}
