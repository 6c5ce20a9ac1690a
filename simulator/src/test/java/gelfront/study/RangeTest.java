// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.setup.CaseFile;
import gelfront.setup.FeedSystem;
import gelfront.setup.LoadedCase;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

final class RangeTest {
  private static LoadedCase base() {
    return CaseFile.parse("bean.toml", StudyCases.BEAN, Path.of("").toAbsolutePath());
  }

  private static String no(String text) {
    return assertThrows(IllegalArgumentException.class, () -> Range.parse(text, 5)).getMessage();
  }

  @Test
  void rangesAreReadInAnyUnitAndEvenlySpaced() {
    Range r = Range.parse("gate size = 2 .. 4 mm", 5);
    assertEquals(List.of(2.0, 2.5, 3.0, 3.5, 4.0), r.values());
    assertEquals(2, r.present(base()).getAsDouble(), 1e-9);
    Range f = Range.parse("shot temperature=300degF..350degF/3", 5);
    assertEquals(3, f.steps());
    assertEquals(329, f.present(base()).getAsDouble(), 1e-6);
    assertTrue(Range.parse("mould temperature = 20..60 degC", 2).present(base()).isPresent());
    assertEquals(-5, Range.parse("block air = -5..-1 degC", 2).low());
  }

  /** The count is what stands behind the last slash. */
  @Test
  void aUnitMayHaveSlashesInIt() {
    Range r = Range.parse("plastisol.conductivity = 0.12..0.17 W/mK/3", 5);
    assertEquals("W/mK", r.unit());
    assertEquals(3, r.steps());
    assertEquals(5, Range.parse("block.air_film = 5..30 W/m2K", 5).steps());
    assertEquals(
        "J/kg/K", Range.parse("plastisol specific heat = 1800 J/kg/K..2e3 J/kg/K", 2).unit());
    Range small = Range.parse("plastisol expansion hot = 6.5e-4..7e-4 1/K / 2", 5);
    assertEquals("1/K", small.unit());
    assertEquals(2, small.steps());
    assertTrue(small.label(small.low()).endsWith("expansion hot 0.00065 1/K"));
    assertTrue(no("gate = 1/8..1/4 in").contains("no range"));
  }

  @Test
  void aMapOverAFilmTakesItsValues() {
    Range film = Range.parse("block.air_film = 5..30 W/m2K", 2);
    Range gate = Range.parse("gate = 2..4 mm", 2);

    List<Job> jobs = new MapStudy(film, gate, UnaryOperator.identity()).jobs(base());
    assertEquals(30, jobs.get(1).setup().block().airFilm(), 1e-9);
  }

  @Test
  void emptyRangesAndUnknownNamesAreSaid() {
    assertTrue(no("gate = 5..5 mm").contains("the range from 5 to 5 mm is empty"));
    assertTrue(no("gate = 5..2 mm").contains("empty"));
    assertTrue(no("gate = 2..5").contains("one unit"));
    assertTrue(no("gate = 2 mm..5 in").contains("one unit"));
    assertTrue(no("gate 2 5").contains("no range"));
    assertTrue(no("gat size = 2..5 mm").contains("did you mean \"gate size\"?"));
    assertTrue(no("gate = 2..5 mm/1").contains("2 to 100"));
    assertTrue(no("gate = 2..5 mm/99999999999999").endsWith(": 2 to 100 values make a map"));
  }

  @Test
  void aMapNeedsTwoInputsAndValuesThatCanBeHad() {
    Range gate = Range.parse("gate = 2..4 mm", 2);
    Range sprue = Range.parse("sprue = 6..900 mm", 2);
    UnaryOperator<Job> quick = Job::quick;
    assertThrows(IllegalArgumentException.class, () -> new MapStudy(gate, gate, quick));
    MapStudy map = new MapStudy(gate, sprue, quick);
    String no = assertThrows(IllegalArgumentException.class, () -> map.jobs(base())).getMessage();
    assertTrue(no.contains("sprue diameter 900 mm") && no.contains("out of range"), no);
  }

  @Test
  void aWiderSprueGetsAsWideAMouthWhereOneIsStated() {
    LoadedCase base = base().with(List.of(gelfront.setup.Change.mm("sprue.mouth_diameter", 9e-3)));
    Range sprue = Range.parse("sprue = 6..12 mm", 2);

    FeedSystem.Declared feed =
        (FeedSystem.Declared) base.with(sprue.changes(base, 12)).setup().feed();

    assertEquals(12e-3, feed.sprue().mouthDiameter(), 1e-9);
    assertEquals(
        9e-3,
        ((FeedSystem.Declared) base.with(sprue.changes(base, 6)).setup().feed())
            .sprue()
            .mouthDiameter(),
        1e-9);
  }
}
