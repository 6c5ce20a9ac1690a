// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** Which gate a neck is tried with where none will do; nothing is calculated. */
final class PlaceCureTest {
  private static final ExecutorService POOL = Executors.newFixedThreadPool(1);
  private static final LoadedCase BEAN =
      CaseFile.parse("bean.toml", StudyCases.BEAN, Path.of("").toAbsolutePath());
  private static final TriangleMesh PART = PartLoader.load(BEAN.setup().part()).mesh();

  @AfterAll
  static void close() {
    POOL.shutdownNow();
  }

  private final PlaceSearch search =
      new PlaceSearch(BEAN, false, new PlaceSearch.Sizes(1e-3, 3e-3, 8e-3), 10e-3, 9);

  /** After a gate of 2 mm that closes too early, and a neck that closes with 5 and 8 mm. */
  private Sizing.Cure cure(double dentAtFive, double dentAtEight) {
    Ran left = Ran.well(SomeRun.dent(dentAtEight, Constriction.Kind.NECK));
    search.know(2e-3, Ran.well(SomeRun.dent(0.6, Constriction.Kind.GATE)));
    search.know(5e-3, Ran.well(SomeRun.dent(dentAtFive, Constriction.Kind.NECK)));
    search.know(8e-3, left);
    Study study = Study.of(BEAN, PART, "1", new ToldRuns(hash -> left), POOL, 1);
    return new PlaceCure(study, new GatePlaces(PART), Progress.NONE).of(search).orElseThrow();
  }

  @Test
  void aNeckIsTriedWithTheSmallestGateThatAWiderOneDoesNoBetterThan() {
    assertEquals(5e-3, cure(0.305, 0.3).gate(), 1e-9);
  }

  @Test
  void aGateThatLeavesLessIsPreferred() {
    assertEquals(8e-3, cure(0.33, 0.3).gate(), 1e-9);
  }

  @Test
  void whatLiesBehindTheNeckIsToBeThinnerAndTheLevelIsSaid() {
    Sizing.Cure cure = cure(0.3, 0.3);
    Study study = Study.of(BEAN, PART, "1", new ToldRuns(hash -> cure.ran()), POOL, 1);
    SizeChoices none = new SizeChoices(study, search, Progress.NONE);

    String words = new SizeWords(Units.METRIC).place(BEAN, search, none, Optional.of(cure));

    assertTrue(words.endsWith("; or make the part thinner behind it."), words);
    assertTrue(words.contains(", nor does twice that width do at level quick"), words);
  }

  /** What does at level quick is run at level normal, and that is what is told. */
  @Test
  void aThickerNeckAndASecondGateAreConfirmed() {
    Ran neck = Ran.well(SomeRun.dent(0.3, Constriction.Kind.NECK));
    search.know(5e-3, neck);
    search.know(8e-3, neck);
    Ran does = Ran.well(SomeRun.dent(0.1, Constriction.Kind.GATE));
    Study study = Study.of(BEAN, PART, "1", new ToldRuns(hash -> does), POOL, 1);

    Sizing.Cure cure =
        new PlaceCure(study, new GatePlaces(PART), Progress.NONE).of(search).orElseThrow();
    SizeChoices none = new SizeChoices(study, search, Progress.NONE);
    String words = new SizeWords(Units.METRIC).place(BEAN, search, none, Optional.of(cure));

    assertTrue(cure.normal().isPresent() && cure.wanted().isPresent());
    assertTrue(cure.second().flatMap(Sizing.Second::normal).isEmpty(), "the neck will do");
    assertTrue(words.contains("leaves 0.10 mm at level normal, which isn't seen"), words);
  }
}
