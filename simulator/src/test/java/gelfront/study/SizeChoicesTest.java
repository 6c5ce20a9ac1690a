// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.Ran;
import gelfront.answer.RunStore;
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
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** What a gate that does is rounded to; all runs come out well, none is calculated. */
final class SizeChoicesTest {
  private static final ExecutorService POOL = Executors.newFixedThreadPool(1);
  private static final TriangleMesh PART = PartLoader.load(bean("").setup().part()).mesh();

  @AfterAll
  static void close() {
    POOL.shutdownNow();
  }

  /** The bean with a sprue of 8 mm. */
  private static LoadedCase bean(String more) {
    return CaseFile.parse("bean.toml", StudyCases.BEAN + more, Path.of("").toAbsolutePath());
  }

  private record Rounded(LoadedCase base, PlaceSearch search, SizeChoices run) {
    List<String> gates() {
      return run.choices().stream().map(Sizing.Choice::gateWords).toList();
    }

    String words() {
      return new SizeWords(Units.METRIC).place(base, search, run, Optional.empty());
    }
  }

  /** Where one gate, metres, does, and none other was run. */
  private static Rounded rounded(LoadedCase base, double gate) {
    double most = base.setup().limits().sprueWidest().orElse(14e-3);
    PlaceSearch search =
        new PlaceSearch(base, false, new PlaceSearch.Sizes(1e-3, 3e-3, 9e-3), most, 9);
    Ran well = Ran.well(SomeRun.dent(0.1, Constriction.Kind.GATE));
    search.know(gate, well);
    RunStore store = new ToldRuns(hash -> well);
    SizeChoices run =
        new SizeChoices(Study.of(base, PART, "1", store, POOL, 1), search, Progress.NONE);
    run.run();
    return new Rounded(base, search, run);
  }

  private static LoadedCase limited(String gate, String sprue) {
    return bean("[limits]\ngate_widest = \"" + gate + "\"\nsprue_widest = \"" + sprue + "\"\n");
  }

  @Test
  void withoutLimitsItIsTheNextCutterUp() {
    assertEquals(List.of("6.3 mm", "7 mm", "1/4 in"), rounded(bean(""), 6.3e-3).gates());
  }

  @Test
  void noCutterIsWiderThanIsAccepted() {
    Rounded r = rounded(limited("6.5 mm", "8 mm"), 6.3e-3);

    assertEquals(List.of("6.3 mm", "6 mm", "1/4 in"), r.gates(), "7 mm would be next");
    for (Sizing.Choice c : r.run().choices()) {
      assertTrue(c.sprue() <= 8e-3 + 1e-9, c.label() + ": sprue " + c.sprue());
    }
    assertEquals(5 * 0.0254 / 16, r.run().choices().get(2).sprue(), 1e-9, "3/8 in is too wide");
    assertFalse(r.words().contains("No cutter"), r.words());
  }

  @Test
  void whereNoneFitsThatIsSaid() {
    Rounded r = rounded(limited("6.9 mm", "9 mm"), 6.6e-3);

    assertEquals(List.of("6.6 mm", "1/4 in"), r.gates(), "6 mm is too thin, 7 mm too wide");
    String words = "No cutter in mm is wide enough and still within the case's limits.";
    assertTrue(r.words().endsWith(words), r.words());
  }
}
