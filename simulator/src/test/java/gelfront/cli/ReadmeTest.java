// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.material.MaterialTable;
import gelfront.material.MouldMaterial;
import gelfront.setup.Case;
import gelfront.setup.CaseFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README says is true. */
final class ReadmeTest {
  private String readme;

  @BeforeEach
  void read() throws IOException {
    readme = Files.readString(Path.of("../README.md"));
  }

  @Test
  void itsCaseCanBeCalculated(@TempDir Path folder) throws IOException {
    int from = readme.indexOf("```toml\n") + 8;
    String text = readme.substring(from, readme.indexOf("```", from));
    TestMeshes.write(folder.resolve("grub.stl"));

    Case c = CaseFile.parse("readme.toml", text, folder).setup();

    assertEquals(165, c.shot().temperature(), 1e-9);
    assertEquals(List.of(), c.warnings());
  }

  @Test
  void itNamesEveryCommandAndExample() throws IOException {
    for (String command :
        List.of(
            "check", "inspect", "start", "keys", "probe", "demo", "timing", "size", "map",
            "study")) {
      assertTrue(readme.contains("| `" + command), command);
    }
    for (Path example : ExampleCasesTest.cases().toList()) {
      String name = example.getFileName().toString().replace(".toml", "");
      assertTrue(readme.contains("`" + name + "`"), name);
    }
  }

  @Test
  void itsMouldTableIsTheBuiltInOne() {
    MaterialTable table = MaterialTable.builtIn();
    for (String name : table.names("mould")) {
      String row =
          readme.lines().filter(l -> l.startsWith("| `" + name + "`")).findFirst().orElseThrow();
      String[] cell = row.split("\\|", -1);
      MouldMaterial m = table.mould(name);

      assertEquals(m.conductivity(), Double.parseDouble(cell[2].trim()), 1e-12, name);
      assertEquals(m.density(), Double.parseDouble(cell[3].trim()), 1e-12, name);
      assertEquals(m.specificHeat(), Double.parseDouble(cell[4].trim()), 1e-12, name);
    }
  }
}
