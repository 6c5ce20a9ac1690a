// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** [fill] and its vents. */
final class FillReaderTest {
  private static final String VENT =
      """
      [[fill.vent]]
      at = ["20 mm", "0 mm", "1 mm"]
      width = "5 mm"
      depth = "0.03 mm"
      length = "8 mm"
      """;

  private static Fill read(String added) {
    return Cases.read(Cases.SOUND + added).fill();
  }

  private static void told(String added, String words) {
    String found = Cases.words(Cases.mistakes(Cases.SOUND + added));
    assertTrue(found.contains(words), () -> words + "\nis not in\n" + found);
  }

  @Test
  void theTableItselfTurnsItOn() {
    assertFalse(read("").on());
    assertTrue(read("[fill]\n").on());
    assertFalse(read("[fill]\non = false\n").on());
  }

  @Test
  void aVentIsReadAsStated() {
    assertEquals(
        List.of(new Fill.Vent(new Vec3(20e-3, 0, 1e-3), 5e-3, 0.03e-3, 8e-3)),
        read("[fill]\n" + VENT).vents());
  }

  @ParameterizedTest
  @ValueSource(strings = {"at", "width", "depth", "length"})
  void aVentNeedsAllFour(String key) {
    told("[fill]\n" + VENT.replaceFirst(key + " = .*\n", ""), "needs " + key);
  }

  @Test
  void whatIsLeftOutIsToldAsAssumed() {
    List<Statement> assumed = Cases.load(Cases.SOUND + "[fill]\n").assumed();

    String source = "own estimate, no source";
    assertTrue(assumed.contains(new Statement("fill: most pressure", "200 kPa", source)));
    assertTrue(assumed.contains(new Statement("fill: parting gap", "0.025 mm", source)));
    assertEquals(200e3, read("[fill]\n").mostPressure());
    assertEquals(0.025e-3, read("[fill]\n").partingGap());
  }

  @Test
  void aPressureThatIsKeptUpExcludesTheMost() {
    assertEquals(60e3, read("[fill]\npressure = \"60 kPa\"\n").pressure().orElseThrow(), 1e-9);
    told("[fill]\npressure = \"60 kPa\"\nmost_pressure = \"90 kPa\"\n", "state one of both");
    told("[fill]\nparting_gap = \"1 mm\"\n", "parting_gap = 1 mm is out of range: 0 mm to 0.5 mm");
  }

  @Test
  void aShotInNoTimeCantBeCalculated() {
    String text = Cases.with("shot", "fill_time = \"0 s\"") + "[fill]\n";

    assertTrue(
        Cases.words(Cases.mistakes(text)).contains("a fill time of zero can't be calculated"));
    assertTrue(Cases.read(text + "pressure = \"60 kPa\"\n").fill().on());
  }
}
