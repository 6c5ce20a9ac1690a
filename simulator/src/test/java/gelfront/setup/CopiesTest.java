// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Copies of the part in the same block: [[part.copy]]. */
final class CopiesTest {
  private static final Vec3 PROBE = new Vec3(3e-3, 1e-3, 2e-3);

  private static Case read(String... lines) {
    return Cases.read(Cases.SOUND + String.join("\n", lines) + "\n");
  }

  private static void goesTo(double x, double y, double z, Placement p) {
    assertEquals(0, p.point(PROBE).distance(new Vec3(x * 1e-3, y * 1e-3, z * 1e-3)), 1e-12);
  }

  @Test
  void shiftedTurnedAndMirroredInThisOrder() {
    Case c =
        read(
            "[[part.copy]]",
            "shift = [\"0 mm\", \"20 mm\", \"0 mm\"]",
            "[[part.copy]]",
            "turn = \"180 deg\"",
            "about = [\"-10 mm\", \"0 mm\", \"0 mm\"]",
            "[[part.copy]]",
            "turn = \"90 deg\"",
            "axis = [1, 0, 0]",
            "shift = [\"1 mm\", \"0 mm\", \"0 mm\"]",
            "[[part.copy]]",
            "mirror = [0, 1, 0]",
            "about = [\"0 mm\", \"10 mm\", \"0 mm\"]");

    assertEquals(5, c.cavities(), "counted without being stated");
    goesTo(3, 21, 2, c.copies().get(0));
    goesTo(-23, -1, 2, c.copies().get(1));
    goesTo(4, -2, 1, c.copies().get(2));
    goesTo(3, 19, 2, c.copies().get(3));
  }

  /** Up left out is where the mouth looks, but the copy is turned in the parting plane. */
  @Test
  void theAxisLeftOutIsZWhereUpIs() {
    Case c = Cases.read(Cases.SOUND + "[[part.copy]]\nturn = \"90 deg\"\n");

    assertEquals(Optional.empty(), c.up());
    assertEquals(new Vec3(-1, 0, 0), c.up(new Vec3(-1, 0, 0)));
    goesTo(-1, 3, 2, c.copies().get(0));
  }

  @Test
  void theAxisLeftOutIsUp() {
    Case c = Cases.read("up = [0, 1, 0]\n" + Cases.SOUND + "[[part.copy]]\nturn = \"90 deg\"\n");

    goesTo(2, 1, -3, c.copies().get(0));
  }

  @Test
  void whatATurnOrAMirrorLeavesOutIsToldAsAssumed() {
    assertEquals(List.of(), assumed("shift = [\"0 mm\", \"20 mm\", \"0 mm\"]"));
    assertEquals(List.of("about", "axis"), assumed("turn = \"180 deg\""));
    assertEquals(List.of("about"), assumed("mirror = [0, 1, 0]"));
    String about = "about = [\"-10 mm\", \"0 mm\", \"0 mm\"]\n";
    assertEquals(List.of("axis"), assumed(about + "turn = \"180 deg\""));
    assertEquals(List.of(), assumed(about + "turn = \"180 deg\"\naxis = [0, 0, 1]"));
  }

  private static List<String> assumed(String copy) {
    return Cases.load(Cases.SOUND + "[[part.copy]]\n" + copy + "\n").assumed().stream()
        .map(Statement::name)
        .filter(n -> n.startsWith("part.copy 1: "))
        .map(n -> n.substring("part.copy 1: ".length()))
        .toList();
  }

  @Test
  void aCopyEnclosesWhatThePartDoes() {
    TriangleMesh cone = Solids.cylinder(Vec3.ZERO, new Vec3(9e-3, 0, 0), 3e-3, 1e-3, 24);
    Vec3 slant = new Vec3(1, 2, -1).unit();
    for (Placement p :
        List.of(Placement.turned(1, slant, PROBE), Placement.mirrored(slant, PROBE))) {
      assertEquals(cone.volume(), p.of(cone).volume(), 1e-12 * cone.volume());
      assertEquals(0, p.point(PROBE).distance(PROBE), 1e-15);
    }
  }

  @Test
  void allMistakesAtTheirPlace() {
    String text =
        "cavities = 2\n"
            + Cases.SOUND
            + """
            [[part.copy]]
            axis = [1, 0, 0]
            [[part.copy]]
            turn = "180 deg"
            mirror = [0, 1, 0]
            [[part.copy]]
            shift = ["0 mm", "20 mm", "0 mm"]
            about = ["0 mm", "0 mm", "0 mm"]
            [[part.copy]]
            shift = ["0 mm", "20 mm", "0 mm"]
            sihft = 3
            """;
    int at = (int) Cases.SOUND.lines().count() + 2;

    String told = Cases.words(Cases.mistakes(text));

    for (String one :
        List.of(
            "1:1: cavities = 2, but 5 lie in the block: leave the key out",
            at + ":1: [[part.copy]] needs shift, turn or mirror",
            at + 1 + ":1: an axis goes with turn",
            at + 4 + ":1: [[part.copy]] has both turn and mirror: keep one",
            at + 7 + ":1: about goes with turn or mirror",
            at + 8 + ":1: this copy lies where another one does",
            at + 10 + ":1: unknown key \"sihft\" in [part.copy]; did you mean \"shift\"?")) {
      assertTrue(told.contains("bait.toml:" + one), () -> one + "\nnot in\n" + told);
    }
  }

  @Test
  void aFeedInTheMeshTakesAListOfGatesButNoCopies() {
    String mesh =
        """
        [part]
        mesh = "pom.xml"
        [feed]
        in_mesh = true
        gate = [["1 mm", "0 mm", "0 mm"], ["1 mm", "9 mm", "0 mm"]]
        [shot]
        temperature = "165 degC"
        """;

    Case c = Cases.read(mesh);
    String told =
        Cases.words(Cases.mistakes(mesh + "[[part.copy]]\nshift = [\"0 mm\", \"9 mm\", \"0 mm\"]"));

    assertEquals(2, c.drawn());
    Vec3 second = ((FeedSystem.InMesh) c.feed()).gates().get(1);
    assertEquals(0, second.distance(new Vec3(1e-3, 9e-3, 0)), 1e-15);
    assertTrue(told.contains("bait.toml:8:1: copies are fed by declared gates"), told);
  }
}
