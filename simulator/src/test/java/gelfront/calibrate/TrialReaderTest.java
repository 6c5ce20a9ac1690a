// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.setup.Change;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class TrialReaderTest {
  @Test
  void aShotIsItsRecipeAndWhatCameOfIt() {
    List<TrialShot> shots =
        TrialReader.read(
            "t.csv",
            """
            # monday
            case;gate (mm);hold;dented;depth (mm);gate froze;note
            a.toml;2,5;8 s;yes;0.4;before;first
            a.toml;3;8 s;No;;after;
            """);
    assertEquals(2, shots.size());
    TrialShot first = shots.get(0);
    assertEquals(3, first.line());
    assertEquals(
        List.of(
            new Change.Set("gate.size", "\"2.5 mm\""), new Change.Set("shot.hold_time", "\"8 s\"")),
        first.recipe());
    assertEquals(0.4e-3, first.depth().getAsDouble(), 1e-12);
    assertEquals(Optional.of(true), first.froze());
    assertEquals(Optional.of(false), shots.get(1).dented());
    assertTrue(shots.get(1).depth().isEmpty());
  }

  @Test
  void aDepthOfNothingIsNoDent() {
    List<TrialShot> shots = TrialReader.read("t.csv", "gate (mm),depth (mm)\n2,0\n3,0.3\n");
    assertEquals(Optional.of(false), shots.get(0).dented());
    assertEquals(Optional.empty(), shots.get(1).dented());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "gate (mm),hold (s)#2,3 | t.csv:1: no column says what came of it",
        "gate (mm),dented,depth (mm)#2,yes,0 | t.csv:2: contradicts itself: dented, and yet 0 mm",
        "gat (mm),dented#2,yes | t.csv:1: no input \"gat\"; did you mean \"gate",
        "gate,dented#2,yes | t.csv:2: \"gate\" has no unit",
        "gate (mm),dented#2,maybe | t.csv:2: dented \"maybe\": yes or no",
        "gate (mm),dented#2 | t.csv:2: 1 cells where the heading has 2",
        "gate (mm),dented#2, | t.csv:2: says nothing of what came of it",
        "gate (mm),dented,depth (mm)#2,no,1.4 | t.csv:2: contradicts itself",
        "gate (mm),depth#2,0.2 | t.csv:1: \"depth\" has no unit",
        "gate (mm),depth (mm)#2,90 | t.csv:2: depth \"90\" is no depth of a dent",
        "gate (mm),gate froze#2,yes | t.csv:2: gate froze \"yes\": before or after",
        "cavity,dented#0,yes | t.csv:2: cavity \"0\" is no number",
        "gate (mm),dented#2,yes#3,no#2,no | t.csv:4: contradicts line 2",
        "gate (mm),dented | t.csv: holds no shot"
      })
  void whatCantBeUsedIsSaidWithItsLine(String log, String words) {
    LogException e =
        assertThrows(LogException.class, () -> TrialReader.read("t.csv", log.replace('#', '\n')));
    assertTrue(e.getMessage().startsWith(words), e.getMessage());
  }

  @Test
  void aThirdShotDecidesBetweenTwo() {
    assertEquals(3, TrialReader.read("t.csv", "gate (mm),dented\n2,yes\n2,no\n2,yes\n").size());
  }
}
