// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Sprue, runner and reservoir as they are stated, and what is told where something is missing. */
final class FeedReaderTest {
  private static FeedSystem.Declared feed(String text) {
    return (FeedSystem.Declared) Cases.read(text).feed();
  }

  private static void told(String text, String words) {
    String found = Cases.words(Cases.mistakes(text));
    assertTrue(found.contains(words), () -> words + "\nis not in\n" + found);
  }

  /** A cone's diameter grows by 2 l tan(taper / 2). */
  @Test
  void aTaperOpensTheMouth() {
    double opened = 8e-3 + 2 * 28e-3 * Math.tan(Math.toRadians(2));

    assertEquals(
        opened, feed(Cases.with("sprue", "taper = \"4 deg\"")).sprue().mouthDiameter(), 1e-9);
    assertEquals(8e-3, feed(Cases.SOUND).sprue().mouthDiameter());
    assertEquals(
        9e-3,
        feed(Cases.with("sprue", "mouth_diameter = \"9 mm\"")).sprue().mouthDiameter(),
        1e-12);
  }

  @Test
  void runnerAndReservoirAreThoseStated() {
    FeedSystem.Declared all =
        feed(
            Cases.SOUND
                + "[runner]\nlength = \"12 mm\"\nsize = \"5 mm\"\n"
                + "[reservoir]\ndiameter = \"14 mm\"\nlength = \"10 mm\"\n");

    assertEquals(new FeedSystem.Runner(Section.round(5e-3), 12e-3), all.runner().orElseThrow());
    assertEquals(new FeedSystem.Reservoir(14e-3, 10e-3), all.reservoir().orElseThrow());
    assertTrue(feed(Cases.SOUND).runner().isEmpty() && feed(Cases.SOUND).reservoir().isEmpty());
  }

  @Test
  void whatIsMissingOrTwiceIsTold() {
    String noSprue = Cases.SOUND.replaceAll("(?s)\\[sprue\\].*?(?=\\[block)", "");
    told(noSprue, "the case needs a [sprue] with diameter and length");
    String at = "at = [\"0 mm\", \"0 mm\", \"0 mm\"]\n";
    told(Cases.SOUND.replace(at, ""), "[gate] needs at, for example");
    told(Cases.SOUND.replace("direction = [-1, 0, 0]\n", ""), "[gate] needs direction, for");
    told(Cases.SOUND + "[runner]\nsize = \"5 mm\"\n", "[runner] needs length");
    told(Cases.SOUND + "[reservoir]\nlength = \"5 mm\"\n", "[reservoir] needs diameter");
    told(Cases.SOUND + "[feed]\nin_mesh = true\n", "both [feed] (gate in the mesh) and [gate]");
    told(Cases.SOUND + "[feed]\nin_mesh = true\n", "and [sprue] (declared): keep one");
  }

  /** All that the mixture changes is listed, not some of it. */
  @Test
  void whatAMixtureComesToIsListedWhole() {
    String text = Cases.with("plastisol", "filler = \"salt\"", "filler_share = \"10 %\"");

    assertEquals(
        7,
        Cases.load(text).assumed().stream().filter(s -> s.name().startsWith("mixture: ")).count());
  }
}
