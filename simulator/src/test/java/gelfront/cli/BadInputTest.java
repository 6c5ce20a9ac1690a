// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shapes and recipes that can't be: told with file, line and place. */
final class BadInputTest {
  private static final String CASE = CommandLineTest.CASE;

  @TempDir private Path folder;

  private Program.Answer check(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("pea.toml"), text);
    return Program.run("check", file);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        // a gate beside the part
        "at = [\"0 mm\", | at = [\"4 mm\", \"30 mm\", \"0 mm\"] # | at |"
            + " does not meet the part | (4.00, 30.00, 0.00) mm",
        // the sprue is pointed back over the part and ends there
        "length = \"8 mm\" | length = \"8 mm\"\\ndirection = [0, 0, 1]\\n[runner]\\nlength = \"1 mm\"\\n"
            + "size = \"3 mm\"\\n[part]\\n[[part.copy]]\\nshift = [\"0 mm\", \"0 mm\", \"20 mm\"] |"
            + " length | not at an outer face of the block | mm farther on the side +z",
        // a stated block whose face lies beyond the sprue's end
        "wall = \"6 mm\" | box_min = [\"-16 mm\", \"-9 mm\", \"-9 mm\"]\\n"
            + "box_max = [\"20 mm\", \"9 mm\", \"9 mm\"] | length |"
            + " ends inside the metal by 6.00 mm | block's face -x",
        "wall = \"6 mm\" | box_min = [\"-7 mm\", \"-9 mm\", \"-9 mm\"]\\n"
            + "box_max = [\"20 mm\", \"9 mm\", \"9 mm\"] | length |"
            + " stands out of it by 3.00 mm | (-10.00, 0.00, 0.00) mm",
        // hardly any metal on one side
        "wall = \"6 mm\" | box_min = [\"-10 mm\", \"-9 mm\", \"-9 mm\"]\\n"
            + "box_max = [\"14.1 mm\", \"9 mm\", \"9 mm\"] | box_max |"
            + " only 0.10 mm of mould | face +x",
      })
  void isRefusedAtItsLine(String from, String to, String key, String why, String place)
      throws IOException {
    String line = CASE.lines().filter(l -> l.startsWith(from)).findFirst().orElseThrow();
    String text = CASE.replace(line, to.replace("\\n", "\n"));

    Program.Answer a = check(text);

    assertEquals(3, a.code(), a.err());
    assertEquals(1, a.err().lines().count(), a.err());
    List<String> lines = text.lines().toList();
    int told = Integer.parseInt(a.err().split(":", -1)[1]);
    assertTrue(a.err().startsWith("pea.toml:"), a.err());
    assertTrue(lines.get(told - 1).startsWith(key + " = "), a.err() + lines.get(told - 1));
    assertTrue(a.err().contains(why) && a.err().contains(place), a.err());
  }

  @Test
  void aPlungerThatOpensTheMouldIsWarnedOfAtItsLine() throws IOException {
    String text = CASE.replace("165 degC\"", "165 degC\"\nhold_pressure = \"400 kPa\"");

    Program.Answer held = check(text);
    Program.Answer opens = check("clamping_force = \"20 N\"\n" + text);

    assertEquals(0, opens.code(), opens.err());
    assertTrue(opens.out().contains("pushes the halves apart with"), opens.out());
    assertTrue(opens.out().contains("the 20 N that hold it"), opens.out());
    String line = opens.out().split("pea.toml:", -1)[1].split(":", -1)[0];
    assertTrue(
        ("clamping_force\n" + text)
            .lines()
            .toList()
            .get(Integer.parseInt(line) - 1)
            .startsWith("hold_pressure"));
    assertTrue(!held.out().contains("pushes the halves apart"), held.out());
  }

  /** Held with 20 kPa the halves stay shut. */
  @Test
  void aShotThatOpensTheMouldAsItFillsIsWarnedOfAtItsLine() throws IOException {
    String held = "clamping_force = \"20 N\"\n" + CASE;
    String filled = held + "[fill]\npressure = \"1.5 MPa\"\n";

    Program.Answer opens = check(filled);

    assertTrue(!check(held).out().contains("pushes the halves apart"));
    assertTrue(opens.out().contains("As it fills, the liquid pushes the halves"), opens.out());
    assertTrue(opens.out().contains("the 20 N that hold it"), opens.out());
    int line = filled.lines().toList().indexOf("pressure = \"1.5 MPa\"") + 1;
    assertTrue(opens.out().contains("pea.toml:" + line + ":"), opens.out());
  }

  /** 4 MPa is out of range; 2 MPa on 1.2 cm2 stays under what clamps bear, on 8 cm2 it doesn't. */
  @Test
  void withoutAStatedForceClampsByHandAreThoughtOf() throws IOException {
    String pressed = CASE.replace("165 degC\"", "165 degC\"\nhold_pressure = \"2 MPa\"");
    String large =
        pressed
            .replace("\"14 mm\"", "\"80 mm\"")
            .replace("\"8 mm\"\nwidth = \"6 mm\"", "\"8 mm\"\nwidth = \"12 mm\"");

    assertTrue(!check(pressed).out().contains("tightened by hand"));
    assertTrue(check(large).out().contains("tightened by hand"));
  }
}
