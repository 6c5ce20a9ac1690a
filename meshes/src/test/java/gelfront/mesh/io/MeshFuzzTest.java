// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Evidence;
import gelfront.mesh.MeshException;
import gelfront.mesh.check.MeshRepair;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files changed by chance end in a mesh or in one line of refusal: no crash, no hang, no hunger for
 * memory. With {@code -Dslow=true} many more of them.
 */
class MeshFuzzTest {
  private static final boolean SLOW = Boolean.getBoolean("slow");
  private static final int FILES = SLOW ? 100_000 : 2_500;
  private static final long SECONDS = 20;
  private static final long BYTES = 64L << 20;

  @TempDir private Path folder;

  @Test
  void changedFilesEndInAMeshOrARefusal() throws IOException, InterruptedException {
    List<byte[]> good = new ArrayList<>();
    DamagedFiles.good().values().forEach(m -> good.addAll(MeshTexts.all(m).values()));
    List<String> models = new ArrayList<>();
    DamagedFiles.good().values().forEach(m -> models.add(model(MeshTexts.mesh(m))));
    List<String> wrong = new ArrayList<>();
    Random chance = new Random(20261126);
    try (Bounds bounds = new Bounds(SECONDS, BYTES)) {
      for (int i = 0; i < FILES && wrong.size() < 20; i++) {
        Mutations change = new Mutations(i);
        byte[] content =
            i % 6 == 0
                ? repacked(change, models.get(chance.nextInt(models.size())))
                : change.of(
                    good.get(chance.nextInt(good.size())), good.get(chance.nextInt(good.size())));
        String bad = bounds.run(() -> read(content));
        if (!bad.isEmpty()) {
          wrong.add("file " + i + ": " + bad);
        }
      }
    }

    assertEquals(List.of(), wrong);
    Evidence.write("mesh-fuzz", "mesh files changed by chance, no crash, no hang", FILES);
  }

  private static String model(String mesh) {
    return MeshTexts.model(
        "unit=\"millimeter\"",
        "<object id=\"1\">"
            + mesh
            + "</object><object id=\"2\"><components><component"
            + " objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 1 0 0 50\"/></components></object>",
        "<item objectid=\"1\"/><item objectid=\"2\"/>");
  }

  /** A changed model in a sound archive, else its checksum ends it all. */
  private static byte[] repacked(Mutations change, String model) {
    byte[] bytes = change.of(MeshTexts.bytes(model), MeshTexts.bytes(MeshTexts.RELATIONS));
    return MeshTexts.zip(
        "_rels/.rels",
        MeshTexts.RELATIONS,
        "3D/3dmodel.model",
        new String(bytes, StandardCharsets.UTF_8));
  }

  private Object read(byte[] content) throws IOException {
    Path file = Files.write(folder.resolve("part.any"), content);
    try {
      RawMesh raw = MeshFiles.load(file, Optional.empty());
      return MeshRepair.prepare(raw.mesh(), MeshRepair.WELD);
    } catch (MeshException e) {
      String words = e.getMessage();
      assertTrue(words.length() < 1000 && words.lines().count() == 1, words);
      assertTrue(words.chars().noneMatch(Character::isISOControl), words);
      return words;
    }
  }
}
