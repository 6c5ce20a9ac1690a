// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.Ran;
import gelfront.answer.RunStore;
import gelfront.answer.Sizing;
import gelfront.answer.SomeRun;
import gelfront.base.Progress;
import gelfront.finding.Constriction;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** How wide a neck of 3 mm must be, up to 6 mm, where dents and ovals are seen; all made up. */
final class NeckSearchTest {
  private static final ExecutorService POOL = Executors.newFixedThreadPool(1);
  private static final LoadedCase BEAN =
      CaseFile.parse("bean.toml", StudyCases.BEAN, Path.of("").toAbsolutePath());
  private static final TriangleMesh PART = PartLoader.load(BEAN.setup().part()).mesh();
  private static final Constriction NECK =
      new Constriction(Constriction.Kind.NECK, new Vec3(8e-3, 0, 0), 3e-3, 3);

  @AfterAll
  static void close() {
    POOL.shutdownNow();
  }

  private record Found(Sizing.Cure cure, List<Sizing.Point> points) {
    /** Metres; NaN: none does. */
    double wanted() {
      return cure.wanted().orElse(Double.NaN);
    }
  }

  /** Dent and oval, mm, over the neck, mm; shut until 14 s no oval is seen. */
  private static Found searched(DoubleUnaryOperator dent, DoubleUnaryOperator oval, int runs) {
    Map<String, Ran> told = new HashMap<>();
    RunStore store = new ToldRuns(told::get);
    Study study = Study.of(BEAN, PART, "1", store, POOL, 1);
    NeckSearch search = new NeckSearch(study, BEAN, 2e-3, NECK, came(dent, oval, 3), 6e-3);
    for (int tenths = 31; tenths <= 60; tenths++) {
      told.put(study.hash(search.job(tenths * 1e-4)), came(dent, oval, 0.1 * tenths));
    }
    Sizing.Cure cure = search.search(runs, Progress.NONE);
    return new Found(cure, search.points());
  }

  private static Ran came(DoubleUnaryOperator dent, DoubleUnaryOperator oval, double mm) {
    return Ran.well(
        SomeRun.opened(
            SomeRun.dent(dent.applyAsDouble(mm), Constriction.Kind.NECK),
            oval.applyAsDouble(mm),
            14));
  }

  /** A dent is seen below 4.5 mm, an oval above 5.2 mm. */
  @Test
  void betweenADentAndAnOvalAWidthIsFoundThatLeavesNeither() {
    Found f = searched(w -> 0.2 + 0.05 * (4.5 - w), w -> 0.2 + 0.05 * (w - 5.2), 10);

    assertTrue(f.wanted() > 4.5e-3 && f.wanted() < 5.0e-3 + 1e-9, f.wanted() + " m");
  }

  /** A dent is seen below 5 mm, an oval above 4 mm: none does, and the search ends. */
  @Test
  void whereTheyOverlapNoneDoes() {
    Found f = searched(w -> 0.2 + 0.05 * (5 - w), w -> 0.2 + 0.05 * (w - 4), 10);

    assertTrue(f.cure().wanted().isEmpty());
    assertTrue(f.points().size() < 6, f.points().size() + " widths");
    assertTrue(f.cure().ran().outcome().orElseThrow().goesOval(0.2e-3));
  }

  @Test
  void noMoreIsRunThanAllowed() {
    Found f = searched(w -> 0.2 + 0.05 * (4.5 - w), w -> 0.2 + 0.05 * (w - 5.2), 2);

    assertEquals(3, f.points().size(), "as it was, and two");
    assertTrue(f.cure().wanted().isEmpty());
  }

  @Test
  void anOvalThatIsNotSeenChangesNothing() {
    Found with = searched(w -> 0.2 + 0.05 * (4.5 - w), w -> 0.1, 10);
    Found without = searched(w -> 0.2 + 0.05 * (4.5 - w), w -> 0, 10);

    assertEquals(4.5e-3, with.wanted(), 0.5e-3, "to the tolerance of a file");
    assertEquals(without.wanted(), with.wanted());
    assertEquals(without.points().size(), with.points().size());
  }
}
