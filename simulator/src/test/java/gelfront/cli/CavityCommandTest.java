package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.mesh.shape.Solids;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A mould of boxes round a room of 12 x 12 x 12 mm with a shaft of 5 x 5 x 14 mm to +x. */
final class CavityCommandTest {
  private static final double ROOM = 12 * 12 * 12 + 5 * 5 * 14;

  @TempDir private Path folder;
  private Path stl;
  private String out = "";
  private String err = "";

  @BeforeEach
  void writeMould() throws IOException {
    // floor, roof and three sides; the fourth, at +x, leaves the shaft open
    TriangleMesh low =
        box(-20, -20, -20, 20, 20, -6)
            .plus(box(-20, -20, -6, -6, 20, 6))
            .plus(box(-6, -20, -6, 20, -6, 6));
    TriangleMesh high =
        box(-20, -20, 6, 20, 20, 20)
            .plus(box(-6, 6, -6, 20, 20, 6))
            .plus(box(6, -6, -6, 20, -2.5, 6))
            .plus(box(6, 2.5, -6, 20, 6, 6))
            .plus(box(6, -2.5, -6, 20, 2.5, -2.5))
            .plus(box(6, -2.5, 2.5, 20, 2.5, 6));
    write("low.stl", low);
    write("high.stl", high);
    stl = folder.resolve("cavity.stl");
  }

  private static TriangleMesh box(
      double x, double y, double z, double toX, double toY, double toZ) {
    return Solids.box(
        new Vec3(x * 1e-3, y * 1e-3, z * 1e-3), new Vec3(toX * 1e-3, toY * 1e-3, toZ * 1e-3));
  }

  private void write(String name, TriangleMesh mesh) throws IOException {
    try (OutputStream to = Files.newOutputStream(folder.resolve(name))) {
      MeshFiles.writeStl(mesh, to, LengthUnit.MM);
    }
  }

  private int run(String... args) {
    ByteArrayOutputStream o = new ByteArrayOutputStream();
    ByteArrayOutputStream e = new ByteArrayOutputStream();
    int code =
        Main.run(
            args,
            new PrintStream(o, true, StandardCharsets.UTF_8),
            new PrintStream(e, true, StandardCharsets.UTF_8));
    out = o.toString(StandardCharsets.UTF_8);
    err = e.toString(StandardCharsets.UTF_8);
    return code;
  }

  private int cavity(String... more) {
    String[] args = {"cavity", at("low.stl"), at("high.stl"), "-o", stl.toString()};
    String[] all = java.util.Arrays.copyOf(args, args.length + more.length);
    System.arraycopy(more, 0, all, args.length, more.length);
    return run(all);
  }

  private String at(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void halvesBecomeACavityWithACaseThatIsCalculated() throws IOException {
    assertEquals(0, cavity(), () -> err);
    assertTrue(out.contains("Pour opening: on side +x at (20.0, "), out);
    assertTrue(out.contains("23.0 mm2") && out.contains("40.0 x 40.0 x 40.0 mm"), out);

    Path toml = folder.resolve("cavity.toml");
    String gate = "gate = [\"7 mm\", \"0 mm\", \"0 mm\"]"; // a shaft has no neck to propose
    Files.writeString(
        toml,
        Files.readString(toml)
            .replace("\"normal\"", "\"quick\"")
            .replace("# gate = [\"0 mm\", \"0 mm\", \"0 mm\"]", gate));
    assertEquals(0, run("check", toml.toString(), "--no-flow"), () -> err);
    assertTrue(out.contains("Cavity of the mould: "), out);

    String text = Files.readString(toml);
    assertTrue(text.contains("mesh = [\"low.stl\", \"high.stl\"]"), text);
    double halves = gateSets(toml);
    Files.writeString(toml, text.replace("mesh = [\"low.stl\", \"high.stl\"]\n", ""));
    double box = gateSets(toml);
    assertEquals(box, halves, 1e-3 * box, "these halves fill their box");
  }

  private double gateSets(Path toml) throws IOException {
    assertEquals(0, run("check", toml.toString(), "--no-flow", "--json"), () -> err);
    return new ObjectMapper().readTree(out).get("gate_sets_s").asDouble();
  }

  @Test
  void itsVolumeIsThatOfTheRoom() throws IOException {
    assertEquals(0, cavity("--json"), () -> err);

    double mm3 = new ObjectMapper().readTree(out).get("cavity_mm3").asDouble();
    assertEquals(ROOM, mm3, 0.005 * ROOM);
  }

  @Test
  void wrongInputIsToldInOneLine() {
    assertEquals(3, cavity("--voxel-mm", "1e-9"));
    assertTrue(err.contains("too many for the mould"), err);
    assertEquals(3, run("cavity", at("low.stl"), "-o", stl.toString()));
    assertTrue(err.contains("is a part of the mould missing?"), err);
    assertEquals(0, cavity(), () -> err);
    assertEquals(4, cavity());
    assertTrue(err.contains("is there already"), err);
  }
}
