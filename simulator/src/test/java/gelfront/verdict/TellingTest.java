// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Units;
import gelfront.base.Workers;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.mesh.example.Examples;
import gelfront.result.Provenance;
import gelfront.result.ResultFolder;
import gelfront.result.StoredRun;
import gelfront.run.StoredRuns;
import gelfront.run.Watch;
import gelfront.setup.CaseFile;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shipped example with its shot, stored and read back. */
final class TellingTest {
  @TempDir static Path folder;

  private static Findings stored;

  @BeforeAll
  static void calculate() throws IOException {
    for (String file : List.of("two-bulbs-neck.stl", "two-bulbs-neck.toml")) {
      try (InputStream in = Examples.class.getResourceAsStream("/gelfront/examples/" + file)) {
        Files.write(folder.resolve(file), in.readAllBytes());
      }
    }
    LoadedCase loaded =
        CaseFile.read(folder.resolve("two-bulbs-neck.toml"))
            .with(
                List.of(
                    Change.word("numerics.level", "quick"),
                    new Change.Set("fill.on", "true"),
                    Change.seconds("shot.open_at", 15)));
    StoredRun run =
        StoredRuns.run(
            loaded,
            Workers.SERIAL,
            Progress.NONE,
            new Provenance("test", "now", "here", 0),
            Watch.NOBODY);
    ResultFolder.write(folder.resolve("result"), run, List.of());
    stored = ResultFolder.read(folder.resolve("result")).findings();
  }

  /** All that a person reads of findings. */
  private static List<String> texts(Findings f) {
    List<String> all = new ArrayList<>(f.advice());
    all.addAll(List.of(f.verdict(), f.explanation(), f.opening().sentence(), f.opening().sign()));
    for (Pocket p : f.pockets()) {
      all.addAll(List.of(p.sentence(), p.sign()));
    }
    all.add(f.filled().sentence());
    f.filled().air().forEach(a -> all.add(a.proposal()));
    return all;
  }

  @Test
  void aStoredResultHoldsAllThatItsWordsAreMadeOf() {
    assertFalse(stored.pockets().isEmpty());
    assertFalse(stored.opening().sentence().isEmpty());
    assertFalse(stored.filled().sentence().isEmpty());
    assertEquals(stored, new Telling(Units.METRIC).of(stored));
  }

  @Test
  void inInchesAndFahrenheitNothingIsToldInMillimetresOrKelvins() {
    List<String> told = texts(new Telling(new Units(true, true)).of(stored));

    for (String t : told) {
      assertFalse(t.matches("(?s).*\\d (mm|K|°C)\\b.*"), t);
    }
    assertTrue(told.stream().filter(t -> t.matches("(?s).*\\d in\\b.*")).count() > 4, "" + told);
    assertTrue(told.stream().anyMatch(t -> t.contains(" °F above where nothing flows")));
  }
}
