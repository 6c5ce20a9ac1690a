// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Evidence;
import gelfront.mesh.MeshException;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.check.PreparedMesh;
import gelfront.mesh.io.DamagedFiles.Damaged;
import gelfront.mesh.io.DamagedFiles.Expected;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Damaged files give the right volume, or are refused: never a wrong volume without a word. */
class DamagedFilesTest {
  @TempDir private Path folder;

  private record Outcome(double volume, String words) {}

  @Test
  void eachIsTakenOrRefusedAsItMustBe() throws IOException {
    List<Damaged> all = DamagedFiles.all();
    List<String> wrong = new ArrayList<>();
    int refused = 0;
    for (Damaged d : all) {
      Outcome o = outcome(d.content());
      refused += Double.isNaN(o.volume()) ? 1 : 0;
      if (!right(d.expected(), o)) {
        wrong.add(d.name() + ": expected " + d.expected() + ", got " + o);
      }
    }

    assertEquals(List.of(), wrong);
    assertTrue(all.size() > 2000, "files: " + all.size());
    Evidence.write(
        "damaged-files", "damaged mesh files, each with the outcome expected", all.size());
    Evidence.write("damaged-files-refused", "of these refused", refused);
  }

  private static boolean right(Expected e, Outcome o) {
    if (Double.isNaN(o.volume())) {
      boolean oneLine = !o.words().isBlank() && o.words().lines().count() == 1;
      return oneLine && (e.mustBeRefused() ? o.words().contains(e.words()) : e.orRefused());
    }
    return Math.abs(o.volume() - e.volume()) <= e.within() * e.volume()
        && (e.words().isEmpty()
            ? o.words().isEmpty() || e.orRefused()
            : o.words().contains(e.words()));
  }

  private Outcome outcome(byte[] content) throws IOException {
    Path file = Files.write(folder.resolve("part.any"), content);
    try {
      RawMesh raw = MeshFiles.load(file, Optional.empty());
      PreparedMesh p = MeshRepair.prepare(raw.mesh(), MeshRepair.WELD);
      List<String> told = new ArrayList<>(raw.notes());
      told.addAll(p.report().reasons());
      told.addAll(p.repairs());
      return new Outcome(p.mesh().volume(), String.join("; ", told));
    } catch (MeshException e) {
      return new Outcome(Double.NaN, e.getMessage());
    }
  }
}
