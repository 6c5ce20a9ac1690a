// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Dimension;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class CaseTextTest {
  private static final String TEXT =
      """
      name = "Pea" # keep me
      [gate]  # a comment
      at = ["0 mm",
            "1 mm", # ]
            "0 mm"]
      size = "3 mm"   # quick to trim
      land.of = { a = "1 mm", b = "2 mm" }
      [shot]
      temperature = "165 degC"
      """;

  private static String set(String key, String value) {
    return CaseText.with(TEXT, new Change.Set(key, value));
  }

  @Test
  void aValueIsExchangedAndNothingElse() {
    assertEquals(TEXT.replace("\"3 mm\"", "\"4.2 mm\""), set("gate.size", "\"4.2 mm\""));
    assertEquals(TEXT.replace("\"2 mm\"", "\"9 mm\""), set("gate.land.of.b", "\"9 mm\""));
    assertEquals(TEXT.replace("\"Pea\"", "\"Bean\""), set("name", "\"Bean\""));
  }

  @Test
  void anArrayOverSeveralLinesIsOneValue() {
    String changed = set("gate.at", "[1, 2, 3]");

    assertTrue(changed.contains("at = [1, 2, 3]\nsize"), changed);
  }

  /** Each way to write a value ends where it ends, with or without a space behind it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "'3 mm'",
        "\"3 \\\" mm\"",
        "\"\"\"3 mm, \" # no remark\"\"\"",
        "'''3 mm'''",
        "3",
        "true",
        "[1, [2, 3], '] # }']",
        "[\n1, # ]\n2 #]\n]",
        "{ a = 1, b = '}' }",
      })
  void valuesOfAnyKindAreExchangedWhole(String value) {
    for (String behind : List.of("", " ", "# remark", "\t# remark")) {
      String text = "[gate]\nsize = " + value + behind + "\nland = 4\n";
      String changed = CaseText.with(text, new Change.Set("gate.size", "5"));
      assertEquals("[gate]\nsize = 5" + behind + "\nland = 4\n", changed);
    }
  }

  /** An editor need not end the last line. */
  @Test
  void aBareWordThatEndsTheFileIsExchangedOrLeftOut() {
    String text = "[series]\nshots = 3";

    assertEquals("[series]\nshots = 12", CaseText.with(text, new Change.Set("series.shots", "12")));
    assertEquals("[series]\n", CaseText.with(text, new Change.Remove("series.shots")));
  }

  @Test
  void aValueInAnInlineTableEndsAtTheComma() {
    String inline = "gate = { size = 3,land = [4],at = '}' }";

    assertEquals(
        "gate = { size = 5,land = [4],at = '}' }",
        CaseText.with(inline, new Change.Set("gate.size", "5")));
    assertEquals(
        "gate = { size = 3,land = 5,at = '}' }",
        CaseText.with(inline, new Change.Set("gate.land", "5")));
    assertEquals(
        "gate = { size = 3,land = [4],at = 5 }",
        CaseText.with(inline, new Change.Set("gate.at", "5")));
  }

  @Test
  void aKeyThatIsNotThereIsPutIntoItsTable() {
    assertTrue(set("gate.shape", "\"round\"").contains("[gate]  # a comment\nshape = \"round\"\n"));
    assertTrue(set("up", "[0, 1, 0]").startsWith("up = [0, 1, 0]\nname"));
    assertTrue(set("block.start", "\"40 degC\"").endsWith("[block]\nstart = \"40 degC\"\n"));
    assertTrue(
        CaseText.with("[shot]", new Change.Set("shot.hold_time", "\"9 s\""))
            .equals("[shot]\nhold_time = \"9 s\"\n"));
  }

  /** Whether they touch each other, or open a table, or not. */
  @Test
  void changesAtOnceAreWhatTheyAreOneByOne() {
    List<Change> all =
        List.of(
            new Change.Set("shot.temperature", "\"150 degC\""),
            new Change.Set("gate.size", "\"4 mm\""),
            new Change.Set("gate.shape", "\"round\""),
            new Change.Set("gate.land.of.a", "\"3 mm\""),
            new Change.Set("gate.land.of.b", "\"5 mm\""),
            new Change.Set("gate.size", "\"5 mm\""),
            new Change.Set("block.wall", "\"9 mm\""),
            new Change.Set("plastisol.grade", "\"soft\""),
            new Change.Set("block.start", "\"20 degC\""),
            new Change.Set("part", "1"),
            new Change.Add("another_gate", Map.of("size", "\"2 mm\"")),
            new Change.Set("another_gate.1.size", "\"3 mm\""),
            new Change.Set("gate.width", "\"1 mm\""),
            new Change.Remove("gate.width"),
            new Change.Set("gate.depth", "\"1 mm\""),
            new Change.Set("gate.reach", "\"2 mm\""));
    String oneByOne = TEXT;
    for (Change c : all) {
      oneByOne = CaseText.with(oneByOne, c);
    }

    assertEquals(oneByOne, CaseText.with(TEXT, all));
  }

  @Test
  void tablesAreAddedAndKeysLeftOut() {
    String added =
        CaseText.with(TEXT, new Change.Add("filing", Map.of("reach", Change.quantity(2, "mm"))));

    assertTrue(added.endsWith("[[filing]]\nreach = \"2 mm\"\n"), added);
    String without = CaseText.with(TEXT, new Change.Remove("gate.size"));
    assertEquals(TEXT.replace("size = \"3 mm\"   #", "   #"), without);
    assertEquals(TEXT, CaseText.with(TEXT, new Change.Remove("gate.height")));
  }

  @Test
  void whatCannotBeChangedIsSaid() {
    String inline = "gate = { size = \"3 mm\" }\n[[filing]]\nreach = \"1 mm\"\n";

    assertTrue(
        CaseText.with(inline, new Change.Set("gate.size", "\"4 mm\"")).contains("\"4 mm\" }"));
    Change missing = new Change.Set("gate.land", "\"4 mm\"");
    assertThrows(IllegalArgumentException.class, () -> CaseText.with(inline, missing));
    Change several = new Change.Set("filing.reach", "\"4 mm\"");
    assertThrows(IllegalArgumentException.class, () -> CaseText.with(inline, several));
  }

  @Test
  void aChangedCaseIsReadLikeAnyOther() {
    LoadedCase base = Cases.load(Cases.SOUND);
    LoadedCase other =
        base.with(List.of(Change.mm("gate.size", 3.25e-3), Change.degC("block.start", 45)));

    FeedSystem.Declared feed = (FeedSystem.Declared) other.setup().feed();
    assertEquals(3.25e-3, feed.gate().section().width(), 1e-12);
    assertEquals(45, other.setup().block().startTemperature());
    assertEquals(45, other.stated("block.start", Dimension.TEMPERATURE).getAsDouble());
    assertTrue(base.stated("block.start", Dimension.TEMPERATURE).isEmpty());
    assertThrows(CaseException.class, () -> base.with(List.of(Change.mm("gate.size", 0.9))));
  }

  @Test
  void leavingOutTheFlowOutlivesAChange() {
    LoadedCase base = Cases.load(Cases.SOUND);
    LoadedCase still = base.with(base.setup().numerics().withoutFlow());

    assertEquals(
        false, still.with(List.of(Change.seconds("shot.hold_time", 9))).setup().numerics().flow());
  }

  @Test
  void inputsHaveManySpellings() {
    for (String name : List.of("gate.size", "gate size", "Gate_Size", " gate ", "gate-size")) {
      assertEquals("gate.size", InputName.of(name).key());
    }
    assertEquals("block.start", InputName.of("mould temperature").key());
    assertEquals("shot.temperature", InputName.of("shot temperature").key());
  }

  @ParameterizedTest
  @CsvSource({
    "no_flow, plastisol.no_flow",
    "firm, plastisol.firm",
    "gate width, gate.size",
    "mould start, block.start",
    "mold wall, block.wall"
  })
  void anInputIsKnownByItsKeyAloneAndByOtherWords(String name, String key) {
    assertEquals(key, InputName.of(name).key());
  }

  @ParameterizedTest
  @CsvSource({
    "gaet size, gate size",
    "gat, gate",
    "wall, block wall\" or \"extender wall",
    "temperature, shot temperature\" or \"mould temperature",
    "gate thickness, gate size",
    "sprue lenght, sprue length",
    "diametr, diameter",
    "no_flo, no flow"
  })
  void theNearestInputsAreNamed(String name, String near) {
    String no = assertThrows(IllegalArgumentException.class, () -> InputName.of(name)).getMessage();
    assertTrue(no.contains("did you mean \"" + near + "\"?"), no);
  }

  @Test
  void contradictoryLimitsAreAMistake() {
    String words =
        Cases.words(
            Cases.mistakes(
                Cases.with("limits", "gate_least = \"4 mm\"", "gate_widest = \"3 mm\"")));

    assertTrue(words.contains("the widest gate (3.0 mm) must be wider"), words);
  }

  private static final String SEVERAL =
      """
      [gate]
      size = "3 mm"

      [[another_gate]] # on top
      at = ["0 mm",
        "1 mm", "0 mm"]
      way = [
      ["1 mm", "2 mm", "3 mm"],
      ]
      size = "2 mm" # small

      # the far one
      [[another_gate]]
      size = "4 mm"
      [shot]
      """;

  @Test
  void oneOfSeveralTablesIsChangedByItsNumber() {
    String first = CaseText.with(SEVERAL, new Change.Set("another_gate.1.size", "\"5 mm\""));
    assertEquals(SEVERAL.replace("\"2 mm\" # small", "\"5 mm\" # small"), first);

    String second = CaseText.with(SEVERAL, new Change.Set("another_gate.2.land", "\"1 mm\""));
    assertEquals(SEVERAL.replace("size = \"4 mm\"", "land = \"1 mm\"\nsize = \"4 mm\""), second);

    assertEquals(
        SEVERAL.replace("size = \"4 mm\"\n", "\n"),
        CaseText.with(SEVERAL, new Change.Remove("another_gate.2.size")));
    assertThrows(
        IllegalArgumentException.class,
        () -> CaseText.with(SEVERAL, new Change.Set("another_gate.3.size", "\"5 mm\"")));
  }

  @Test
  void oneOfSeveralTablesIsLeftOutAndCommentsOfTheNextStay() {
    String without = CaseText.with(SEVERAL, new Change.Remove("another_gate.1"));

    assertEquals(
        "[gate]\nsize = \"3 mm\"\n\n# the far one\n[[another_gate]]\nsize = \"4 mm\"\n[shot]\n",
        without);
    String added = CaseText.with(TEXT, new Change.Add("filing", Map.of("reach", "\"2 mm\"")));
    assertEquals(TEXT, CaseText.with(added, new Change.Remove("filing.1")));
  }
}
