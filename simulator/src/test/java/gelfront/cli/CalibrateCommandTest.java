// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.run.CoolingCurve;
import gelfront.run.Sensor;
import gelfront.setup.CaseFile;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import gelfront.voxelize.CaseVoxels;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A tube whose cooling the program itself has calculated, logged with noise, and fitted again. */
final class CalibrateCommandTest {
  private static final String TUBE =
      """
      name = "Tube"
      [[part.caliper]]
      distance = "0 mm"
      width = "8 mm"
      height = "8 mm"
      [[part.caliper]]
      distance = "20 mm"
      width = "8 mm"
      height = "8 mm"
      [feed]
      in_mesh = true
      gate = ["2 mm", "0 mm", "0 mm"]
      mouth = ["0 mm", "0 mm", "0 mm"]
      [block]
      material = "aluminium-6061"
      wall = "3 mm"
      start = "25 degC"
      [plastisol]
      grade = "soft"
      [shot]
      temperature = "165 degC"
      hold_time = "0 s"
      [numerics]
      level = "quick"
      """;

  private static final double TRUE_CONDUCTIVITY = 0.165;

  @TempDir private Path folder;
  private String out = "";
  private String err = "";
  private Path caseFile;

  @BeforeEach
  void writeCase() throws IOException {
    caseFile = Files.writeString(folder.resolve("tube.toml"), TUBE);
  }

  private int run(String... args) {
    Program.Answer a = Program.run((Object[]) args);
    out = a.out();
    err = a.err();
    return a.code();
  }

  private String log() {
    LoadedCase base = CaseFile.parse("tube.toml", TUBE, folder);
    LoadedCase truth =
        base.with(
            List.of(
                new Change.Set(
                    "plastisol.conductivity", Change.quantity(TRUE_CONDUCTIVITY, "W/mK"))));
    TriangleMesh part = PartLoader.load(base.setup().part()).mesh();
    CaseVoxels voxels = CaseVoxels.of(truth.setup(), part, Progress.NONE);
    Sensor sensor =
        CoolingCurve.of(
            truth.setup(), voxels, new Vec3(10e-3, 0, 0), 90, Workers.SERIAL, Progress.NONE);
    Random random = new Random(4);
    StringBuilder s = new StringBuilder("Time (s);Cup (°C)\n");
    for (int t = 0; t < 90; t++) {
      double noisy = sensor.curve().value(t) + (t == 0 ? 0.5 : 0.2 * random.nextGaussian());
      s.append(String.format(Locale.ROOT, "%d;%.2f%n", t, noisy));
    }
    return s.toString();
  }

  @Test
  void whatTheTubeWasMadeOfIsFoundAndUsedByName() throws IOException {
    Path log = Files.writeString(folder.resolve("tube.csv"), log());

    int code =
        run("calibrate", caseFile.toString(), log.toString(), "--at", "10,0,0", "--name", "jug");

    assertEquals(0, code, () -> err);
    Path done = folder.resolve("tube-calibration");
    JsonNode n = new ObjectMapper().readTree(done.resolve("calibration.json").toFile());
    JsonNode k = n.get("found").get(1);
    assertEquals("conductivity", k.get("name").asText());
    assertEquals(TRUE_CONDUCTIVITY, k.get("value").asDouble(), 0.04 * TRUE_CONDUCTIVITY);
    assertTrue(Files.readString(done.resolve("calibration.html")).contains("What is left over"));

    String using =
        "materials = \"tube-calibration/jug.toml\"\n" + TUBE.replace("\"soft\"", "\"jug\"");
    LoadedCase later = CaseFile.parse("later.toml", using, folder);
    assertEquals(k.get("value").asDouble(), later.setup().plastisol().conductivity(), 1e-4);
    double apart = later.setup().plastisol().gelStart() - later.setup().plastisol().noFlow();
    assertEquals(10, apart, 0.05, "no-flow moves with gelling");
    assertTrue(
        later
            .materials()
            .entry("plastisol", "jug")
            .get("conductivity")
            .source()
            .startsWith("fitted to tube.csv (SHA-256 "));
  }

  @Test
  void badLogsAndPlacesAreToldInALine() throws IOException {
    Path log = Files.writeString(folder.resolve("tube.csv"), log() + "30;80\n");
    String[] args = {"calibrate", caseFile.toString(), log.toString(), "--at", "10,0,0"};
    assertEquals(ExitCode.INPUT, run(args));
    assertEquals("tube.csv:92: the clock jumps back: 30", err.strip());

    Files.writeString(log, log());
    args[4] = "10,20,0";
    assertEquals(ExitCode.INPUT, run(args));
    assertTrue(err.contains("outside the plastisol"), () -> err);

    args[2] = folder.resolve("none.csv").toString();
    assertEquals(ExitCode.INPUT, run(args));
    assertTrue(err.contains("there is no such file"), () -> err);
  }

  @Test
  void trialShotsGiveATableThatLaterCasesRead() throws IOException {
    Path pea = Files.writeString(folder.resolve("pea.toml"), CommandLineTest.CASE);
    Path log =
        Files.writeString(
            folder.resolve("shots.csv"),
            """
            gate (mm),hold (s),gate froze
            2,1,after
            2,12,before
            """);
    assertEquals(0, run("calibrate", pea.toString(), log.toString(), "--name", "mine"), () -> err);
    assertTrue(out.contains("o-flow"), out);
    Path made = folder.resolve("pea-calibration");
    JsonNode n = new ObjectMapper().readTree(made.resolve("trials.json").toFile());
    assertEquals(2, n.get("shots").size());
    double low = n.get("no_flow_degc").get("low_90").asDouble();
    double high = n.get("no_flow_degc").get("high_90").asDouble();
    assertTrue(99 < low && low < high && high < 151, low + " to " + high);
    assertTrue(Files.readString(made.resolve("trials.html")).contains("Shot by shot"));
    Files.copy(made.resolve("mine.toml"), folder.resolve("mine.toml"));
    String own = "materials = \"mine.toml\"\n" + CommandLineTest.CASE;
    CaseFile.parse("own.toml", own + "[plastisol]\ngrade = \"mine\"\n", folder);

    Files.writeString(log, "gate (mm),cavity,dented\n2,3,yes\n");
    assertEquals(3, run("calibrate", pea.toString(), log.toString()));
    assertTrue(err.contains("shots.csv:2: cavity 3: the case has one"), () -> err);
    Files.writeString(log, "case,dented\nother.toml,yes\n");
    assertEquals(3, run("calibrate", pea.toString(), log.toString()));
    assertTrue(err.contains("shots.csv:2: there is no case"), () -> err);
  }
}
