// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.material.MaterialTable;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.mesh.shape.Solids;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Places within the block, its channels, its own shape, and a row of shots in it. */
final class BlockReaderTest {
  private static final Vec3 LOW = new Vec3(0, 0, 0);
  private static final Vec3 HIGH = new Vec3(8e-3, 8e-3, 8e-3);

  private static String corner(String key, String x, String y, String z) {
    return "%s = [\"%s mm\", \"%s mm\", \"%s mm\"]\n".formatted(key, x, y, z);
  }

  private static final String CUBOID =
      corner("box_min", "0", "0", "0") + corner("box_max", "8", "8", "8");

  private static final String BALL = corner("centre", "1", "2", "3") + "radius = \"4 mm\"\n";

  private static Block read(String added) {
    return Cases.read(Cases.SOUND + added).block();
  }

  private static void told(String added, String words) {
    String found = Cases.words(Cases.mistakes(Cases.SOUND + added));
    assertTrue(found.contains(words), () -> words + "\nis not in\n" + found);
  }

  private static String spot(String place) {
    return "[[block.warm_spot]]\n" + place + "temperature = \"40 degC\"\n";
  }

  @Test
  void placesAreBallsOrCuboids() {
    Block.Region ball = read(spot(BALL)).warmSpots().get(0).region();
    Block.Region cuboid = read(spot(CUBOID)).warmSpots().get(0).region();

    assertEquals(new Block.Region.Ball(new Vec3(1e-3, 2e-3, 3e-3), 4e-3), ball);
    assertEquals(new Block.Region.Cuboid(new Box(LOW, HIGH)), cuboid);
    assertTrue(ball.contains(new Vec3(4.9e-3, 2e-3, 3e-3)));
    assertFalse(ball.contains(new Vec3(4.9e-3, 3.9e-3, 3e-3)), "in its box, not in it");
    assertEquals(new Box(new Vec3(-3e-3, -2e-3, -1e-3), new Vec3(5e-3, 6e-3, 7e-3)), ball.box());
    assertTrue(cuboid.contains(new Vec3(1e-3, 7.9e-3, 1e-3)));
    assertFalse(cuboid.contains(new Vec3(1e-3, 8.1e-3, 1e-3)));
  }

  @Test
  void placesThatAreNoneAreTold() {
    told(spot(BALL + CUBOID), "either centre and radius, or box_min and box_max");
    told(spot(""), "either centre and radius, or box_min and box_max");
    told(spot("radius = \"4 mm\"\n"), "a ball needs centre");
    told(spot(BALL.replace("\"4 mm\"", "\"0.01 mm\"")), "radius = 0.01 mm is out of range");
    for (String flat : List.of("0, 8, 7", "9, 0, 7", "9, 8, 0")) {
      String[] at = flat.split(", ", -1);
      String box = corner("box_min", "0", "0", "0") + corner("box_max", at[0], at[1], at[2]);
      told(spot(box), "box_max must lie above box_min on every axis");
    }
  }

  @Test
  void anInsertIsOfItsMaterialAndWhereItIsStated() {
    Block.Insert brass =
        read("[[block.insert]]\n" + BALL + "material = \"brass\"\n").inserts().get(0);

    assertEquals(new Block.Region.Ball(new Vec3(1e-3, 2e-3, 3e-3), 4e-3), brass.region());
    assertEquals(MaterialTable.builtIn().mould("brass"), brass.material());
  }

  @Test
  void aBlockIsMeasuredInOneWay() {
    String box = corner("box_min", "-60", "-30", "-30") + corner("box_max", "60", "30", "30");

    toldInBlock("[block] has both wall and box_min, box_max: keep one", box);
    toldInBlock("[block] has both wall and mesh: keep one", "mesh = \"none.stl\"");
    toldInBlock("box_min and box_max go together", corner("box_min", "-60", "-30", "-30"));
  }

  /**
   * Shrunk off its wall a part touches it less; as much is allowed, and means that it never does.
   */
  @Test
  void contactIsNoBetterOnceShrunkOff() {
    String pressed = "contact = \"1000 W/m2K\"";

    assertEquals(
        1000,
        Cases.read(Cases.with("block", pressed, "contact_shrunk_off = \"1000 W/m2K\""))
            .block()
            .shrunkOff());
    toldInBlock(
        "shrunk off, there is less contact than pressed on",
        pressed,
        "contact_shrunk_off = \"1001 W/m2K\"");
  }

  private static void toldInBlock(String words, String... lines) {
    String found = Cases.words(Cases.mistakes(Cases.with("block", lines)));
    assertTrue(found.contains(words), () -> words + "\nis not in\n" + found);
  }

  private static String channel(String to) {
    return "[[block.channel]]\n"
        + corner("from", "-20", "0", "20")
        + to
        + "diameter = \"8 mm\"\nfilm = \"0 W/m2K\"\ntemperature = \"15 degC\"\n";
  }

  @Test
  void aChannelIsAsFarAsItsAxisOrItsEnd() {
    Block.Channel c = read(channel(corner("to", "80", "0", "20"))).channels().get(0);

    Vec3 from = new Vec3(-20e-3, 0, 20e-3);
    assertEquals(new Block.Channel(from, new Vec3(80e-3, 0, 20e-3), 8e-3, 0, 15), c);
    assertEquals(5e-3, c.distance(new Vec3(30e-3, 3e-3, 24e-3)), 1e-15);
    assertEquals(5e-3, c.distance(new Vec3(-24e-3, 3e-3, 20e-3)), 1e-15);
    assertEquals(5e-3, c.distance(new Vec3(83e-3, 0, 24e-3)), 1e-15);
  }

  @Test
  void aChannelWithoutLengthOrEndIsTold() {
    told(channel(corner("to", "-20", "0", "20")), "the channel has no length");
    told(channel(""), "[[block.channel]] needs to, the middle of one of its ends");
  }

  private static Path half(Path file, double z) throws IOException {
    Vec3 low = new Vec3(-45e-3, -20e-3, Math.min(0, z));
    try (OutputStream out = Files.newOutputStream(file)) {
      MeshFiles.writeStl(
          Solids.box(low, new Vec3(40e-3, 20e-3, Math.max(0, z))), out, LengthUnit.MM);
    }
    return file;
  }

  @Test
  void aRunDependsOnWhatTheHalvesFilesHold(@TempDir Path folder) throws IOException {
    Path low = half(folder.resolve("low.stl"), -20e-3);
    Path high = half(folder.resolve("high.stl"), 20e-3);
    String text =
        Cases.with("block", "mesh = [\"low.stl\", \"high.stl\"]", "unit = \"mm\"")
            .replace("wall = \"15 mm\"\n", "");

    MouldMesh first = CaseFile.parse("a.toml", text, folder).setup().block().mesh().orElseThrow();
    MouldMesh again = CaseFile.parse("a.toml", text, folder).setup().block().mesh().orElseThrow();
    half(high, 21e-3);
    MouldMesh other = CaseFile.parse("a.toml", text, folder).setup().block().mesh().orElseThrow();

    assertEquals(List.of(low, high), first.files());
    assertEquals(64, first.content().length(), "of SHA-256");
    assertEquals(first, again);
    assertNotEquals(first.content(), other.content());
  }

  @Test
  void theBlockIsTheBoxRoundItsHalvesAndABrokenOneIsTold(@TempDir Path folder) throws IOException {
    half(folder.resolve("low.stl"), -20e-3);
    Path high = half(folder.resolve("high.stl"), 20e-3);
    String text =
        Cases.with("block", "mesh = [\"low.stl\", \"high.stl\"]", "unit = \"mm\"")
            .replace("wall = \"15 mm\"\n", "");

    LoadedCase c = CaseFile.parse("a.toml", text, folder);
    assertTrue(c.given().contains(new Statement("block: mesh", "low.stl, high.stl", "")));
    Box box = c.setup().block().outer().orElseThrow();
    assertEquals(0, box.min().distance(new Vec3(-45e-3, -20e-3, -20e-3)), 1e-8);
    assertEquals(0, box.max().distance(new Vec3(40e-3, 20e-3, 20e-3)), 1e-8);

    Files.writeString(high, "nothing");
    CaseException e =
        assertThrows(CaseException.class, () -> CaseFile.parse("a.toml", text, folder));
    assertTrue(Cases.words(e.mistakes()).contains("high.stl: not an STL"), e.getMessage());
  }

  @Test
  void aUnitWithoutHalvesIsTold() {
    String text = Cases.with("block", "unit = \"mm\"");

    assertTrue(Cases.words(Cases.mistakes(text)).contains("unit belongs to a mesh of the block"));
  }

  @Test
  void aRowThatCantBeIsTold() {
    String all = "[series]\nshots = 3\nidle = \"40 s\"\ncycle = \"300 s\"\nopen = \"20 s\"\n";

    Rhythm r = Cases.read(Cases.SOUND + all).rhythm();
    assertEquals(3, r.shots());
    assertEquals(300, r.cycle().orElseThrow());
    assertEquals(List.of(40.0, 20.0), List.of(r.idle(), r.open()));
    told(all.replace("20 s", "41 s"), "lies open for 41 s of only 40 s");
    told(all.replace("300 s", "40 s"), "a cycle of 40 s leaves no time to cool");
    assertEquals(40, Cases.read(Cases.SOUND + all.replace("20 s", "40 s")).rhythm().open());
  }

  @Test
  void aComplaintStandsAtTheKeyItIsAbout() {
    LoadedCase c = Cases.load(Cases.SOUND + spot(BALL) + spot(CUBOID));
    int last = (int) Cases.SOUND.lines().count();

    assertEquals("bait.toml:12:1: too big", c.told("gate.size", "too big"));
    assertEquals("bait.toml:7:1: no", c.told("part.caliper.1.width", "no"));
    assertEquals("bait.toml:" + (last + 3) + ":1: no", c.told("block.warm_spot.0.radius", "no"));
    assertEquals(
        "bait.toml:" + (last + 8) + ":1: no", c.told("block.warm_spot.1.temperature", "no"));
    assertTrue(c.told("gate.colour", "no").startsWith("bait.toml:9:"), "at its table");
    assertEquals("bait.toml: no", c.told("nowhere", "no"));
  }
}
