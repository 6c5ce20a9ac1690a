// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The halves of {@link TestMeshes#writeHalves}. */
final class CavityCommandTest {
  private static final double ROOM = 12 * 12 * 12 + 5 * 5 * 14;

  @TempDir private Path folder;
  private Path stl;
  private String out = "";
  private String err = "";

  @BeforeEach
  void writeMould() throws IOException {
    TestMeshes.writeHalves(folder.resolve("low.stl"), folder.resolve("high.stl"));
    stl = folder.resolve("cavity.stl");
  }

  private int run(String... args) {
    Program.Answer a = Program.run((Object[]) args);
    out = a.out();
    err = a.err();
    return a.code();
  }

  private int cavity(String... more) {
    String[] args = {"cavity", at("low.stl"), at("high.stl"), "-o", stl.toString()};
    String[] all = java.util.Arrays.copyOf(args, args.length + more.length);
    System.arraycopy(more, 0, all, args.length, more.length);
    return run(all);
  }

  private String at(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void halvesBecomeACavityWithACaseThatIsCalculated() throws IOException {
    assertEquals(0, cavity(), () -> err);
    assertTrue(out.contains("Pour opening: on side +x at (20.0, "), out);
    assertTrue(out.contains("23.0 mm2") && out.contains("40.0 x 40.0 x 40.0 mm"), out);

    Path toml = folder.resolve("cavity.toml");
    String gate = "gate = [\"7 mm\", \"0 mm\", \"0 mm\"]"; // a shaft has no neck to propose
    Files.writeString(
        toml,
        Files.readString(toml)
            .replace("\"normal\"", "\"quick\"")
            .replace("# gate = [\"0 mm\", \"0 mm\", \"0 mm\"]", gate));
    assertEquals(0, run("check", toml.toString(), "--no-flow"), () -> err);
    assertTrue(out.contains("Cavity of the mould: "), out);

    String text = Files.readString(toml);
    assertTrue(text.contains("mesh = [\"low.stl\", \"high.stl\"]"), text);
    double halves = gateSets(toml);
    Files.writeString(toml, text.replace("mesh = [\"low.stl\", \"high.stl\"]\n", ""));
    double box = gateSets(toml);
    assertEquals(box, halves, 1e-3 * box, "these halves fill their box");
  }

  private double gateSets(Path toml) throws IOException {
    assertEquals(0, run("check", toml.toString(), "--no-flow", "--json"), () -> err);
    return new ObjectMapper().readTree(out).get("gate_sets_s").asDouble();
  }

  @Test
  void itsVolumeIsThatOfTheRoom() throws IOException {
    assertEquals(0, cavity("--json"), () -> err);

    double mm3 = new ObjectMapper().readTree(out).get("cavity_mm3").asDouble();
    assertEquals(ROOM, mm3, 0.005 * ROOM);
  }

  @Test
  void wrongInputIsToldInOneLine() {
    assertEquals(3, cavity("--voxel-mm", "1e-9"));
    assertTrue(err.contains("too many for the mould"), err);
    assertEquals(3, run("cavity", at("low.stl"), "-o", stl.toString()));
    assertTrue(err.contains("is a part of the mould missing?"), err);
    assertEquals(0, cavity(), () -> err);
    assertEquals(4, cavity());
    assertTrue(err.contains("is there already"), err);
  }
}
