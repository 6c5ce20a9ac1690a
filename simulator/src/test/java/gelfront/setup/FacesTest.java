// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Outer faces of the block that are cooled on their own: [[block.face]]. */
final class FacesTest {
  private static String faces(String... lines) {
    return Cases.SOUND + String.join("\n", lines) + "\n";
  }

  @Test
  void severalFacesEachWithItsFilmAndTemperature() {
    LoadedCase loaded =
        Cases.load(
            "up = [0, 0, 1]\n"
                + faces(
                    "[[block.face]]",
                    "side = \"-x\"",
                    "film = \"500 W/m2K\"",
                    "temperature = \"12 degC\"",
                    "[[block.face]]",
                    "side = \"top\"",
                    "cooled_by = \"fan\"",
                    "[[block.face]]",
                    "side = \"bottom\"",
                    "cooled_by = \"water\""));

    Block b = loaded.setup().block();

    assertEquals(
        List.of(
            new Block.Face(new Side(0, false), 500, 12),
            new Block.Face(new Side(2, true), 30, 23),
            new Block.Face(new Side(2, false), 500, 15)),
        b.faces());
    assertEquals(new Block.Face(new Side(1, true), b.airFilm(), 23), b.face(new Side(1, true)));
    assertEquals(new Block.Face(new Side(2, true), 30, 23), b.face(new Side(2, true)));
    String air = "block.face 2: temperature";
    assertTrue(loaded.assumed().contains(new Statement(air, "23 °C", "the air's")));
    String assumed = loaded.assumed().toString();
    assertTrue(assumed.contains("30 W/m2 K (20 to 60)") && assumed.contains("tap water"), assumed);
  }

  /** A face's temperature is assumed only where it isn't stated. */
  @Test
  void aStatedTemperatureIsNotAssumed() {
    String text = faces("[[block.face]]", "side = \"top\"", "film = \"500 W/m2K\"");

    assertTrue(assumesATemperature(text));
    assertFalse(assumesATemperature(text + "temperature = \"12 degC\"\n"));
  }

  private static boolean assumesATemperature(String text) {
    return Cases.load(text).assumed().stream()
        .anyMatch(s -> s.name().equals("block.face 1: temperature"));
  }

  @ParameterizedTest
  @CsvSource({
    "'[0, 0, 1]', +z, -z",
    "'[0, -1, 0]', -y, +y",
    "'[1, 0.2, 0]', +x, -x",
  })
  void topAndBottomGoByUp(String up, String top, String bottom) {
    String text =
        "up = " + up + "\n" + faces("[[block.face]]", "side = \"top\"", "cooled_by = \"fan\"");

    Block b = Cases.read(text).block();
    Block c = Cases.read(text.replace("\"top\"", "\"bottom\"")).block();

    assertEquals(top, b.faces().get(0).side().toString());
    assertEquals(bottom, c.faces().get(0).side().toString());
  }

  @Test
  void allMistakesAtTheirPlace() {
    String text =
        "up = [1, 1, 0]\n"
            + faces(
                "[[block.face]]",
                "side = \"-x\"",
                "film = \"500 W/m2K\"",
                "cooled_by = \"fan\"",
                "[[block.face]]",
                "side = \"-x\"",
                "cooled_by = \"watr\"",
                "[[block.face]]",
                "side = \"left\"",
                "cooled_by = \"fan\"",
                "[[block.face]]",
                "side = \"+z\"",
                "temperature = \"15 degC\"",
                "[[block.face]]",
                "side = \"top\"",
                "film = \"1e9 W/m2K\"",
                "[[block.face]]",
                "cooled_by = \"bench\"",
                "speed = 3");
    int at = (int) Cases.SOUND.lines().count() + 1;

    String told = Cases.words(Cases.mistakes(text));

    for (String one :
        List.of(
            ":" + (at + 3) + ":1: [[block.face]] has both film and cooled_by: keep one",
            ":" + (at + 6) + ":1: the face \"-x\" is stated twice: keep one",
            ":"
                + (at + 7)
                + ":1: cooled_by = \"watr\" is none of still-air, fan, water, bench;"
                + " did you mean \"water\"?",
            ":" + (at + 9) + ":1: side = \"left\" is none of -x, +x",
            ":" + (at + 11) + ":1: [[block.face]] needs cooled_by, one of",
            ":" + (at + 15) + ":1: up is between two faces, so no one is the top",
            ":" + (at + 16) + ":1: film = 1e9 W/m2K is out of range",
            ":" + (at + 17) + ":1: [[block.face]] needs side, one of -x",
            ":" + (at + 19) + ":1: unknown key \"speed\" in [block.face]")) {
      assertTrue(told.contains("bait.toml" + one), () -> one + "\nnot in\n" + told);
    }
  }

  @Test
  void whereTheMouthLooksIsUp() {
    String text = faces("[[block.face]]", "side = \"bottom\"", "cooled_by = \"bench\"");

    assertEquals("+x", Cases.read(text).block().faces().get(0).side().toString());
  }

  @Test
  void noTopWhereTheMouthIsInTheMesh() {
    String feed = "[part]\nmesh = \"a.stl\"\nunit = \"mm\"\n[feed]\nin_mesh = true\n";
    String rest = "[block]\nmaterial = \"aluminium-6061\"\n[[block.face]]\nside = \"top\"\n";

    String told = Cases.words(Cases.mistakes(feed + rest + "cooled_by = \"fan\"\n"));

    assertTrue(told.contains("up is not stated, so no one is the top"), told);
  }

  @Test
  void theSameFaceByTwoNames() {
    String text =
        faces(
            "[[block.face]]",
            "side = \"-x\"",
            "cooled_by = \"fan\"",
            "[[block.face]]",
            "side = \"top\"",
            "cooled_by = \"water\"");

    String told = Cases.words(Cases.mistakes(text));

    assertTrue(told.contains("\"top\", which is \"-x\" here, is stated twice"), told);
  }

  @Test
  void coolingThatIsHotterThanFirmIsRefused() {
    String text =
        faces(
            "[[block.face]]", "side = \"+z\"", "cooled_by = \"fan\"", "temperature = \"60 degC\"");

    String told = Cases.words(Cases.mistakes(text));

    assertTrue(told.contains("what cools a face (60 °C) must be colder than 60 °C"), told);
  }
}
