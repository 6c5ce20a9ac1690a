// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ends of ranges, what is shown as given, and what a missing word is told as. */
final class CaseTableTest {
  private static void told(String text, String... words) {
    String found = Cases.words(Cases.mistakes(text));
    for (String w : words) {
      assertTrue(found.contains(w), () -> w + "\nis not in\n" + found);
    }
  }

  private static void given(String text, String name, String value) {
    LoadedCase c = Cases.load(text);
    assertTrue(c.given().contains(new Statement(name, value, "")), () -> "" + c.given());
  }

  @Test
  void aCountGoesFromOneToAThousand() {
    assertEquals(1, Cases.read(Cases.with("series", "shots = 1")).rhythm().shots());
    assertEquals(1000, Cases.read(Cases.with("series", "shots = 1000")).rhythm().shots());
    told(Cases.with("series", "shots = 0"), "shots must be a whole number from 1 to 1000");
    told(Cases.with("series", "shots = 1001"), "shots must be a whole number from 1 to 1000");
  }

  /** Ten metres is where a place is too far; it is then off the part, which is told later. */
  @Test
  void aPlaceMayBeTenMetresAwayAndNoMore() {
    Cases.read(Cases.with("block", insert("[\"10 m\", \"0 mm\", \"-10 m\"]", "brass")));
    told(
        Cases.with("block", insert("[\"10.001 m\", \"0 mm\", \"0 mm\"]", "brass")),
        "lies more than 10 m away");
  }

  private static String insert(String centre, String material) {
    return "insert = [{ centre = "
        + centre
        + ", radius = \"2 mm\", material = \""
        + material
        + "\" }]";
  }

  @Test
  void anInsertNeedsItsMaterial() {
    String text = Cases.with("block", insert("[\"0 mm\", \"0 mm\", \"0 mm\"]", "brass"));

    told(text.replace(", material = \"brass\"", ""), "[block.insert] needs material, for example");
    told(text.replace("brass", "bras"), "did you mean \"brass\"?");
  }

  /** Each has its number, so that a change of one can be told from a change of another. */
  @Test
  void repeatedTablesAreToldApart() {
    String filing = "[[filing]]\nat = [\"%s mm\", \"0 mm\", \"0 mm\"]\nreach = \"2 mm\"\n";
    String two = String.format(filing + "depth = \"0.2 mm\"\n", 1);
    String text = Cases.SOUND + two + String.format(filing + "depth = \"0.3 mm\"\n", 2);

    given(text, "filing 1: depth", "0.2 mm");
    given(text, "filing 2: depth", "0.3 mm");
    given(text, "filing 2: at", "(2 mm, 0 mm, 0 mm)");
  }

  @Test
  void aFlagIsTrueOrFalse() {
    String part = Cases.SOUND.substring(0, Cases.SOUND.indexOf("[gate]"));
    String rest = Cases.SOUND.substring(Cases.SOUND.indexOf("[block]"));
    String feed = "[feed]\nmouth = [\"0 mm\", \"0 mm\", \"0 mm\"]\n";

    told(part + feed + "in_mesh = 1\n" + rest, "in_mesh must be true or false");
    told(part + feed + rest, "[feed] needs in_mesh = true");
    told(part + feed + "in_mesh = false\n" + rest, "[feed] needs in_mesh = true");
    given(part + feed + "in_mesh = true\n" + rest, "feed: in mesh", "yes");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "series | shots = 7 | series: shots | 7",
        "fill | on = false | fill: on | no",
        "shot | top_up = [\"9 s\", \"20 s\"] | shot: top up | 9 s, 20 s",
        "gate | shape = \"round\" | gate: shape | round",
        "block | air = \"73 degF\" | block: air | 73 degF",
        "sprue | direction = [-2, 0, 0] | sprue: direction | [-2, 0, 0]",
      })
  void whatIsStatedIsShown(String table, String line, String name, String value) {
    given(Cases.with(table, line), name, value);
  }
}
