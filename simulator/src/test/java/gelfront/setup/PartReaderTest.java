// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.example.Examples;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.mesh.shape.Solids;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a part comes from: files beside the case, or caliper rows. */
final class PartReaderTest {
  private static final String ROWS = Cases.SOUND.substring(0, Cases.SOUND.indexOf("[gate]"));
  private static final String REST = Cases.SOUND.substring(ROWS.length());

  @TempDir private Path folder;

  private static void write(TriangleMesh mesh, Path file) throws IOException {
    Files.createDirectories(file.getParent());
    try (OutputStream out = Files.newOutputStream(file)) {
      MeshFiles.writeStl(mesh, out, LengthUnit.MM);
    }
  }

  private PartShape.Meshes meshes(Path caseFile, String part) throws IOException {
    Files.createDirectories(caseFile.getParent());
    Files.writeString(caseFile, "[part]\n" + part + "\n" + REST);
    return (PartShape.Meshes) CaseFile.read(caseFile).setup().part();
  }

  private String told(String part) {
    try {
      CaseFile.parse("bait.toml", part + "\n" + REST, folder);
    } catch (CaseException e) {
      return e.getMessage();
    }
    return "";
  }

  @Test
  void pathsStartFromTheCaseFileWhereverItIsReadFrom() throws IOException {
    write(Examples.all().get("cone-body"), folder.resolve("cad/cone body.stl"));

    PartShape.Meshes m =
        meshes(folder.resolve("cases/a.toml"), "mesh = \"../cad/cone body.stl\"\nunit = \"mm\"");

    assertTrue(Files.isSameFile(folder.resolve("cad/cone body.stl"), m.files().get(0)));
    assertEquals(Optional.of(LengthUnit.MM), m.unit());
    assertEquals(
        folder.resolve("cases").toAbsolutePath(),
        CaseFile.read(folder.resolve("cases/a.toml")).folder());
  }

  @Test
  void absolutePathsAreTakenAsTheyAre() throws IOException {
    Path file = folder.resolve("cad/x.stl").toAbsolutePath();
    write(Examples.all().get("cone-body"), file);

    PartShape.Meshes m = meshes(folder.resolve("cases/a.toml"), "mesh = '" + file + "'");

    assertEquals(List.of(file), m.files());
    assertEquals(Optional.empty(), m.unit());
  }

  @Test
  void severalFilesMakeOnePart() throws IOException {
    write(Solids.sphere(Vec3.ZERO, 5e-3, 24), folder.resolve("a.stl"));
    write(Solids.sphere(new Vec3(30e-3, 0, 0), 5e-3, 24), folder.resolve("b.stl"));

    PartShape.Meshes m =
        meshes(folder.resolve("c.toml"), "mesh = [\"a.stl\", \"b.stl\"]\nunit = \"mm\"");

    Box box = PartLoader.load(m).mesh().box();
    assertEquals(40e-3, box.size().x(), 1e-6);
    assertEquals(10e-3, box.size().z(), 1e-4);
  }

  /** What was odd in a file and what was mended is told with the file's name. */
  @Test
  void notesAndRepairsNameTheirFile() throws IOException {
    TriangleMesh ball = Solids.sphere(Vec3.ZERO, 5e-3, 24);
    int[] corners = ball.copyTriangles();
    corners[0] = ball.corner(0, 1);
    corners[1] = ball.corner(0, 0);
    write(new TriangleMesh(ball.copyVertices(), corners), folder.resolve("a.stl"));
    write(Solids.sphere(new Vec3(30e-3, 0, 0), 5e-3, 24), folder.resolve("b.stl"));
    Files.write(folder.resolve("b.stl"), new byte[7], StandardOpenOption.APPEND);

    PartShape.Meshes m = meshes(folder.resolve("c.toml"), "mesh = [\"a.stl\", \"b.stl\"]");

    assertEquals(
        List.of(
            "a.stl: 1 triangles turned round to face outwards",
            "b.stl: 7 bytes after the last triangle were not read"),
        PartLoader.load(m).repairs());
  }

  /** Caliper rows lie along +x, width along y, height along z. */
  @Test
  void caliperRowsMakeAClosedBody() {
    PartShape.Calipers c = (PartShape.Calipers) Cases.read(Cases.SOUND).part();

    Box box = PartLoader.load(c).mesh().box();

    assertEquals(2, c.rows().size());
    assertEquals(0, box.min().x(), 1e-9);
    assertEquals(20e-3, box.size().x(), 1e-9);
    assertEquals(8e-3, box.size().y(), 1e-4);
    assertEquals(9e-3, box.size().z(), 1e-4);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "\"20 mm\" | \"0 mm\" | bait.toml:6:1: caliper rows go from the nose to the tail",
        "\"20 mm\" | \"-1 mm\" | bait.toml:6:1: distance = -1 mm is out of range",
        "\"8 mm\" | \"0 mm\" | bait.toml:7:1: width = 0 mm is out of range: 0.1 mm to 1000 mm",
        "\"9 mm\" | \"9 m\" | bait.toml:8:1: height = 9 m is out of range",
        "width = \"8 mm\" | # none | bait.toml:5:1: [part.caliper] needs width",
        "width = \"8 mm\" | widht = \"8 mm\" | bait.toml:7:1: unknown key \"widht\" in [part.caliper]",
      })
  void caliperRowsWithAMistake(String sound, String broken, String told) {
    assertTrue(told(ROWS.replace(sound, broken)).contains(told), told(ROWS.replace(sound, broken)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "mesh = \"none.stl\" | :2:1: there is no file \"none.stl\" in ",
        "mesh = \".\" | :2:1: there is no file \".\" in ",
        "mesh = \"\" | :2:1: ",
        "mesh = [] | :2:1: mesh needs one file name at least",
        "mesh = [1] | :2:1: mesh must be a text in quotes or a list of such",
        "mesh = 3 | :2:1: mesh must be a text in quotes",
        "mesh = \"a\\u0000b.stl\" | :2:1: ",
        "unit = \"mm\" | :1:1: [part] needs mesh",
        "mesh = \"x\"; caliper = [] | [part] has both mesh and caliper rows",
        "caliper = [] | two caliper rows are needed at least",
        "caliper = [{distance = \"0 mm\", width = \"1 mm\", height = \"1 mm\"}] | two caliper rows",
        "caliper = 3 | write [[part.caliper]] with double brackets",
      })
  void partsThatAreNone(String part, String told) {
    String words = told("[part]\n" + part.replace("; ", "\n"));

    assertTrue(words.contains(told), words);
  }

  @Test
  void aUnitBelongsToAMesh() {
    String words = told("[part]\nunit = \"mm\"\n" + ROWS);

    assertTrue(words.contains(":2:1: unit belongs to a mesh"), words);
  }
}
