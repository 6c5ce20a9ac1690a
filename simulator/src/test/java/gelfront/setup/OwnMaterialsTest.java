// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnMaterialsTest {
  @TempDir private Path folder;

  private LoadedCase read(String own, String grade) throws IOException {
    Files.writeString(folder.resolve("own.toml"), own);
    return CaseFile.parse("bait.toml", text("own.toml", grade), folder);
  }

  private static String text(String file, String grade) {
    return """
        materials = "%s"
        [[part.caliper]]
        distance = "0 mm"
        width = "5 mm"
        height = "5 mm"
        [[part.caliper]]
        distance = "20 mm"
        width = "9 mm"
        height = "9 mm"
        [gate]
        at = ["0 mm", "0 mm", "0 mm"]
        direction = [-1, 0, 0]
        size = "3 mm"
        land = "2 mm"
        [sprue]
        diameter = "7 mm"
        length = "14 mm"
        [plastisol]
        grade = "%s"
        [shot]
        temperature = "165 degC"
        """
        .formatted(file, grade);
  }

  private static String mistake(CaseException e) {
    assertEquals(1, e.mistakes().size(), e.mistakes().toString());
    return e.mistakes().get(0).message();
  }

  @Test
  void tableThatCantBeParsedIsAMistakeOfTheCase() {
    for (String broken : new String[] {"\"\\ud800\" = 1", "a = " + "[".repeat(100_000)}) {
      CaseException e = assertThrows(CaseException.class, () -> read(broken, "soft"));

      assertTrue(mistake(e).startsWith("own.toml:"), e.getMessage());
    }
  }

  @Test
  void ownPlastisolsGoByTheirName() throws IOException {
    LoadedCase c = read(OwnMaterials.of(0.155), "mine");

    assertEquals(118, c.setup().plastisol().noFlow());
    assertEquals(0.155, c.setup().plastisol().conductivity());
    assertEquals(114, c.materials().entry("plastisol", "mine").get("no_flow").low());
  }

  @Test
  void builtInOnesStayWhatTheyAre() throws IOException {
    assertEquals(125, read(OwnMaterials.of(0.155), "soft").setup().plastisol().noFlow());
  }

  @Test
  void aBuiltInNameCantBeTaken() {
    String own = OwnMaterials.of(0.15).replace("plastisol.mine", "plastisol.soft");
    String said = mistake(assertThrows(CaseException.class, () -> read(own, "soft")));
    assertEquals("own.toml: plastisol.soft is built in; choose another name", said);
  }

  @Test
  void mistakesInTheOwnTableAreToldWithItsLine() {
    String own = OwnMaterials.of(0.15).replace("[114, 118, 122", "[124, 118, 122");
    String said = mistake(assertThrows(CaseException.class, () -> read(own, "soft")));
    assertTrue(said.startsWith("own.toml:10:1: no_flow: low, typical, high must"), said);
  }

  @Test
  void aFileThatIsNotThereIsToldWithItsPlace() {
    CaseException e =
        assertThrows(
            CaseException.class,
            () -> CaseFile.parse("bait.toml", text("nowhere.toml", "soft"), folder));
    assertTrue(mistake(e).startsWith("there is no file \"nowhere.toml\""), e.getMessage());
    assertEquals(1, e.mistakes().get(0).line());
  }

  @Test
  void filesThatAreNoTableAreTold() throws IOException {
    Files.writeString(folder.resolve("long.toml"), "#".repeat((1 << 20) + 1));

    for (String[] one :
        new String[][] {
          {"long.toml", "\"long.toml\" is larger than 1 MiB: is it a table?"},
          {"a\\u0000b.toml", "can't be read: "},
        }) {
      CaseException e =
          assertThrows(
              CaseException.class, () -> CaseFile.parse("bait.toml", text(one[0], "soft"), folder));
      assertTrue(mistake(e).contains(one[1]), e.getMessage());
    }
  }
}
