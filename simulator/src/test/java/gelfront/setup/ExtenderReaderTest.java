// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

final class ExtenderReaderTest {
  private static final String TUBE =
      """
      [extender]
      bore = "9 mm"
      height = "2 cm"
      wall = "2 mm"
      material = "silicone"
      """;

  @Test
  void whatIsLeftOutIsTheBlocksAndTheAirsAndTold() {
    LoadedCase c = Cases.load(Cases.SOUND + TUBE);

    FeedSystem.Extender e =
        ((FeedSystem.Declared) c.setup().feed()).sprue().extender().orElseThrow();

    assertEquals(9e-3, e.bore(), 1e-12);
    assertEquals(20e-3, e.height(), 1e-12);
    assertEquals("silicone", e.material().name());
    assertEquals(c.setup().block().airTemperature(), e.startTemperature());
    assertEquals(c.setup().block().airFilm(), e.airFilm());
    List<Statement> told =
        List.of(
            new Statement("extender: start", "23 °C", "the air's"),
            new Statement("extender: air film", "9 W/m2 K", "the block's"));
    assertTrue(c.assumed().containsAll(told), () -> "" + c.assumed());
  }

  @Test
  void whatIsStatedOfItIsNotTheBlocks() {
    LoadedCase c =
        Cases.load(Cases.SOUND + TUBE + "start = \"90 degC\"\nair_film = \"12 W/m2K\"\n");

    FeedSystem.Extender e =
        ((FeedSystem.Declared) c.setup().feed()).sprue().extender().orElseThrow();

    assertEquals(90, e.startTemperature());
    assertEquals(12, e.airFilm());
    assertTrue(c.assumed().stream().noneMatch(s -> s.name().startsWith("extender")));
  }

  @Test
  void itIsRefusedWithAFeedInTheMeshAndWithoutItsSizes() {
    String half = Cases.words(Cases.mistakes(Cases.SOUND + "[extender]\nbore = \"9 mm\"\n"));
    String drawn =
        Cases.words(
            Cases.mistakes(
                Cases.SOUND.replaceAll(
                        "(?s)\\[gate\\].*?\\[block\\]", "[feed]\nin_mesh = true\n[block]")
                    + TUBE));

    assertTrue(half.contains("[extender] needs height"), half);
    assertTrue(drawn.contains("[extender] (declared): keep one"), drawn);
  }
}
