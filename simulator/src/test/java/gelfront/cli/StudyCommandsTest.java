// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartShape;
import gelfront.study.StudyCases;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class StudyCommandsTest {
  private static final String BEAN = "visible_dent = \"0.1 mm\"\n" + StudyCases.BEAN;

  @TempDir private Path folder;
  private Path bean;
  private String out = "";
  private String err = "";

  @BeforeEach
  void writeCase() throws IOException {
    bean = Files.writeString(folder.resolve("bean.toml"), BEAN);
  }

  private int run(String... args) {
    Program.Answer a = Program.run((Object[]) args);
    out = a.out();
    err = a.err();
    return a.code();
  }

  private int map(String x, String y, String... more) {
    List<String> args =
        Stream.concat(Stream.of("map", bean.toString(), x, y, "--no-flow"), Stream.of(more))
            .toList();
    return run(args.toArray(String[]::new));
  }

  @Test
  void aMapIsWrittenAndItsRunsAreUsedAgain() throws IOException {
    assertEquals(0, map("gate = 2..4 mm/2", "mould temperature = 30..50 degC/2"), () -> err);
    assertTrue(out.contains("4 runs."), out);
    Path study = folder.resolve("bean-study");
    String csv = Files.readString(study.resolve("map-gate-size-mould-temperature.csv"));
    assertEquals(5, csv.lines().count());
    JsonNode json =
        new ObjectMapper()
            .readTree(Files.readAllBytes(study.resolve("map-gate-size-mould-temperature.json")));
    assertEquals(4, json.get("runs").size());
    assertEquals(2, json.get("x").get("present").asDouble());
    String page = Files.readString(study.resolve("map-gate-size-mould-temperature.html"));
    assertTrue(page.contains("as it is") && page.contains("<svg"), "drawn");
    assertFalse(page.contains("http:") || page.contains("https:"), "loads nothing");

    assertEquals(0, map("gate = 2..4 mm/2", "mould temperature = 30..50 degC/2", "--json"));
    assertEquals(json, new ObjectMapper().readTree(out));
    assertEquals(0, map("gate = 2..4 mm/2", "mould temperature = 30..50 degC/2"));
    assertTrue(out.contains("4 runs, 4 of them kept from earlier."), out);
  }

  @Test
  void wrongInputsEndWithWordsBeforeAnythingRuns() {
    assertEquals(3, map("gat = 2..4 mm", "sprue = 6..8 mm"));
    assertTrue(err.contains("no input \"gat\"; did you mean \"gate"), err);
    assertEquals(3, map("gate = 4..4 mm", "sprue = 6..8 mm"));
    assertTrue(err.contains("is empty"), err);
    assertEquals(3, map("gate = 2..400 mm", "sprue = 6..8 mm"));
    assertTrue(err.contains("out of range"), err);
    assertEquals(3, map("gate = 2..4 degC", "sprue = 6..8 mm"));
    assertTrue(err.contains("not a unit of length"), err);
    assertEquals(1, err.lines().count(), err);
    assertEquals(3, run("study", "jobs", bean.toString(), "gate = 2..400 mm", "sprue = 6..8 mm"));
    assertTrue(err.contains("out of range"), err);
    assertFalse(Files.exists(folder.resolve("bean-study")), "an empty study is left");
  }

  @Test
  void aJobListIsRunLineByLineAndCollected() throws IOException {
    Path study = folder.resolve("array");
    String to = study.toString();
    int code =
        run(
            "study",
            "jobs",
            bean.toString(),
            "gate = 2..4 mm/2",
            "hold = 3..4 s/2",
            "--no-flow",
            "-o",
            to);
    assertEquals(0, code, () -> err);
    List<String> lines = Files.readAllLines(study.resolve("jobs.txt"));
    assertEquals(5, lines.size());
    assertTrue(lines.get(2).startsWith("gelfront study run ") && lines.get(2).endsWith(" 2"));
    for (int i = 0; i < 4; i++) {
      assertEquals(0, run("study", "run", to, String.valueOf(i)), () -> err);
    }
    assertEquals(3, run("study", "collect", to));
    assertTrue(err.contains("1 of 5 runs is missing: 4"), err);
    assertEquals(3, run("study", "run", to, "5"));
    assertTrue(err.contains("0 to 4"), err);
    assertEquals(0, run("study", "run", to, "4"));
    assertEquals(0, run("study", "collect", to), () -> err);
    String collected = Files.readString(study.resolve("map-gate-size-shot-hold-time.csv"));

    assertEquals(0, map("gate = 2..4 mm/2", "hold = 3..4 s/2"), () -> err);
    Path direct = folder.resolve("bean-study/map-gate-size-shot-hold-time.csv");
    assertEquals(Files.readString(direct), collected);
    Files.writeString(bean, BEAN.replace("165", "166"));
    assertEquals(3, run("study", "run", to, "0"));
    assertTrue(err.contains("has changed since the jobs were listed"), err);
  }

  @Test
  void anotherCasesStudyIsRefusedUntouched() throws IOException {
    Path study = folder.resolve("s");
    assertEquals(0, map("gate = 2..3 mm/2", "hold = 4..5 s/2", "-o", study.toString()), () -> err);
    String before = Files.readString(study.resolve("study.json"));
    Files.writeString(bean, BEAN.replace("\"Bean\"", "\"Pea\""));

    assertEquals(3, map("gate = 2..3 mm/2", "hold = 4..5 s/2", "-o", study.toString()));

    assertTrue(err.contains("of another case, \"Bean\"; nothing was overwritten"), err);
    assertEquals(before, Files.readString(study.resolve("study.json")));
  }

  @Test
  void aSizedFeedComesAsClosedSolidsAndASheet() throws IOException {
    assertEquals(0, run("size", bean.toString(), "--no-flow"), () -> err);
    assertTrue(out.contains("What to cut") && out.contains("depth in each half"), out);
    Path study = folder.resolve("bean-study");
    for (String stl : List.of("size-feed.stl", "size-feed-mm.stl", "size-feed-inch.stl")) {
      TriangleMesh feed =
          MeshRepair.prepare(
                  MeshFiles.read(study.resolve(stl), Optional.of(LengthUnit.MM)), MeshRepair.WELD)
              .mesh();
      assertTrue(
          feed.volume() > 0 && feed.box().max().x() < 12e-3 && feed.box().min().x() < -21e-3, stl);
    }
    JsonNode json = new ObjectMapper().readTree(Files.readAllBytes(study.resolve("size.json")));
    assertEquals("as it is", json.get("best").asText());
    double gate = json.get("places").get(0).get("choices").get(0).get("gate_mm").asDouble();
    assertTrue(gate > 2 && gate < 12, gate + " mm");
    assertTrue(Files.readString(study.resolve("size-sheet.csv")).contains("\"gate, diameter\""));
    assertTrue(CaseFile.read(study.resolve("size-case.toml")).text().contains("land = "));
    assertTrue(Files.readString(study.resolve("size.html")).contains("What to cut"));
  }

  @Test
  void aSizedCaseNamesItsMeshWhateverTheFolderIsCalled() throws IOException {
    Path moulds = Files.createDirectory(folder.resolve("bob's moulds"));
    Path mesh = Files.createFile(moulds.resolve("it's.stl"));
    String part = "[part]\nmesh = \"it's.stl\"\nunit = \"mm\"\n";
    String text = BEAN.replaceAll("(?s)\\[\\[part.caliper.*(?=\\[gate)", part);
    LoadedCase read = CaseFile.parse("bean.toml", text, moulds);

    LoadedCase there =
        CaseFile.parse("size.toml", SizeCommand.wherever(read).text(), folder.resolve("study"));

    assertEquals(List.of(mesh), ((PartShape.Meshes) there.setup().part()).files());
  }

  @Test
  void aCaseThatGivesNoResultWhateverIsChangedIsToldWhy() throws IOException {
    Files.writeString(bean, BEAN + "[[part.copy]]\nshift = [\"0 mm\", \"30 mm\", \"0 mm\"]\n");

    assertEquals(3, run("size", bean.toString(), "--no-flow"), () -> out);
    assertTrue(err.startsWith("bean.toml: the runner of cavity 2 must lead from "), err);
    assertEquals(1, err.lines().count(), err);
    assertEquals(3, map("gate = 2..3 mm/2", "hold = 4..5 s/2"), () -> out);
    assertTrue(err.startsWith("bean.toml: the runner of cavity 2 must lead from "), err);
    assertFalse(Files.exists(folder.resolve("bean-study/size.html")));
  }
}
