// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Further gates of the same part, [[another_gate]], and what follows from all of them together. */
final class AnotherGateTest {
  private static final String GATE =
      """
      [[another_gate]]
      at = ["10 mm", "3 mm", "0 mm"]
      direction = [0, 1, 0]
      size = "2 mm"
      land = "1.5 mm"
      """;

  private static FeedSystem.Declared feed(String added) {
    return (FeedSystem.Declared) Cases.read(Cases.SOUND + added).feed();
  }

  private static void told(String added, String words) {
    String found = Cases.words(Cases.mistakes(Cases.SOUND + added));
    assertTrue(found.contains(words), () -> words + "\nis not in\n" + found);
  }

  @Test
  void itIsReadAsStated() {
    String way =
        "runner = \"5 mm\"\nway = [[\"0 mm\", \"8 mm\", \"0 mm\"], [\"-6 mm\", \"8 mm\", \"1 mm\"]]\n";
    FeedSystem.Branch b = feed(GATE + way).others().get(0);

    FeedSystem.Gate gate =
        new FeedSystem.Gate(
            new Vec3(10e-3, 3e-3, 0), new Vec3(0, 1, 0), Section.round(2e-3), 1.5e-3);
    List<Vec3> through = List.of(new Vec3(0, 8e-3, 0), new Vec3(-6e-3, 8e-3, 1e-3));
    assertEquals(new FeedSystem.Branch(gate, Section.round(5e-3), through), b);
    String told = "(0 mm, 8 mm, 0 mm), (-6 mm, 8 mm, 1 mm)";
    List<Statement> given = Cases.load(Cases.SOUND + GATE + way).given();
    assertTrue(given.contains(new Statement("another_gate 1: way", told, "")), "" + given);
  }

  @ParameterizedTest
  @CsvSource({
    "'', ROUND, 4, 4",
    "shape = \"half-round\", HALF_ROUND, 4, 2",
    "shape = \"rectangular\"; height = \"1.5 mm\", RECTANGULAR, 4, 3"
  })
  void aRunnerLeftOutIsTwiceAsWideAsItsGateAndLikeIt(
      String shape, Section.Kind kind, double width, double height) {
    LoadedCase c = Cases.load(Cases.SOUND + GATE + shape.replace("; ", "\n") + "\n");

    Section runner = ((FeedSystem.Declared) c.setup().feed()).others().get(0).runner();
    assertEquals(kind, runner.kind());
    assertEquals(width * 1e-3, runner.width(), 1e-12);
    assertEquals(height * 1e-3, runner.height(), 1e-12);
    assertTrue(
        c.assumed()
            .contains(
                new Statement("another_gate 1: runner", "4.0 mm", "twice as wide as the gate")),
        "" + c.assumed());
  }

  @Test
  void whatItLacksIsTold() {
    told(GATE.replaceFirst("at = .*\n", ""), "[[another_gate]] needs at, for example at = [");
    told(
        GATE.replaceFirst("direction = .*\n", ""), "[[another_gate]] needs direction, for example");
    told(GATE.replaceFirst("land = .*\n", ""), "needs land");
    told(GATE.replace("\"1.5 mm\"", "\"0.1 mm\""), "land = 0.1 mm is out of range");
    told(GATE + "runner = \"60 mm\"\n", "runner = 60 mm is out of range: 0.3 mm to 50 mm");
  }

  /** Gates of 2.5 and 2 mm, a runner of 4 mm and one of 5 mm: areas of circles. */
  @Test
  void theNarrowestCountsAndOpeningsAdd() {
    FeedSystem.Declared one = feed("");
    FeedSystem.Declared two = feed(GATE + "[runner]\nsize = \"5 mm\"\nlength = \"9 mm\"\n");

    assertEquals(2.5e-3, one.narrowestGate());
    assertEquals(2.5e-3, one.narrowestRunner(), "the gate's, for want of a runner");
    assertEquals(2e-3, two.narrowestGate());
    assertEquals(4e-3, two.narrowestRunner());
    assertEquals(Math.PI / 4 * 6.25e-6, one.opening(), 1e-15);
    assertEquals(Math.PI / 4 * (6.25e-6 + 4e-6), two.opening(), 1e-15);
  }

  /** A land of 3 mm, then a runner of 9 mm or a reservoir of 12 mm, whichever is longer. */
  @Test
  void theSprueBeginsWhereTheWayEnds() {
    String runner = "[runner]\nsize = \"5 mm\"\nlength = \"9 mm\"\n";
    String reservoir = "[reservoir]\ndiameter = \"12 mm\"\nlength = \"12 mm\"\n";

    assertEquals(0, feed("").inner().distance(new Vec3(-3e-3, 0, 0)), 1e-15);
    assertEquals(0, feed(runner).inner().distance(new Vec3(-12e-3, 0, 0)), 1e-15);
    assertEquals(0, feed(runner + reservoir).inner().distance(new Vec3(-15e-3, 0, 0)), 1e-15);
  }

  @Test
  void sectionsHaveTheAreasOfTheirShapes() {
    assertEquals(Math.PI * 4e-6, Section.round(4e-3).area(), 1e-18);
    assertEquals(Math.PI * 2e-6, Section.halfRound(4e-3).area(), 1e-18);
    assertEquals(12e-6, new Section(Section.Kind.RECTANGULAR, 4e-3, 3e-3).area(), 1e-18);
    assertEquals(2e-3, Section.halfRound(4e-3).narrowest());
    assertEquals(3e-3, new Section(Section.Kind.RECTANGULAR, 4e-3, 3e-3).narrowest());
  }
}
