// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class DoubtCommandTest {
  @TempDir private Path folder;
  private String out = "";
  private String err = "";
  private Path caseFile;

  @BeforeEach
  void writeCase() throws IOException {
    caseFile = Files.writeString(folder.resolve("pea.toml"), CommandLineTest.CASE);
  }

  private int run(String... more) {
    return told(Stream.concat(Stream.of("doubt", caseFile), Stream.of(more)).toArray());
  }

  private int told(Object... args) {
    Program.Answer a = Program.run(args);
    out = a.out();
    err = a.err();
    return a.code();
  }

  @Test
  void doubtIsToldInWordsAndFilesAndNothingIsCalculatedTwice() throws IOException {
    assertEquals(0, run("--cases", "4"), () -> err);
    assertTrue(out.contains("4 plausible cases"), out);
    assertTrue(out.contains("9 runs."), out);
    Path study = folder.resolve("pea-study");
    String page = Files.readString(study.resolve("doubt.html"));
    assertTrue(page.contains("What decides") && page.contains("no-flow temperature"));
    assertTrue(page.contains("Cautions"));
    JsonNode n = new ObjectMapper().readTree(study.resolve("doubt.json").toFile());
    assertEquals("gelfront doubt 1", n.get("schema").asText());
    assertEquals(4, n.get("plausible_cases").size());
    assertEquals(n.get("unknowns").size(), n.get("plausible_cases").get(0).get("values").size());
    long lines = Files.readString(study.resolve("doubt.csv")).lines().count();
    assertEquals(5, lines);
    assertTrue(page.contains("in all plausible cases") && page.contains("<polygon"));
    List<String> keys = new ArrayList<>();
    n.get("curves").forEach(c -> keys.add(c.get("key").asText()));
    assertTrue(
        keys.containsAll(List.of("gate", "mould", "drawn", "unfed", "gate_suction")), keys + "");
    JsonNode drawn = n.get("curves").get(keys.indexOf("drawn"));
    int last = drawn.get("time_s").size() - 1;
    assertTrue(drawn.get("p95").get(last).asDouble() >= drawn.get("p5").get(last).asDouble());
    String curves = Files.readString(study.resolve("doubt-curves.csv"));
    assertTrue(curves.startsWith("time_s,\"gate [°C] 5 %\",\"gate [°C] 50 %\""), curves);

    assertEquals(0, run("--cases", "4"), () -> err);
    assertTrue(out.contains("9 runs, 9 of them kept from earlier."), out);
  }

  @Test
  void whatMakesNoSenseIsRefusedInALine() {
    assertEquals(ExitCode.INPUT, run("--cases", "2"));
    assertEquals("fewer than 3 plausible cases tell nothing: 2", err.strip());
    assertEquals(ExitCode.INPUT, run("--sizes-within", "3 kg"));
    assertTrue(err.contains("kg"), () -> err);
    assertEquals(ExitCode.INPUT, run("--temperatures-within", "-3"));
    assertTrue(err.contains("not negative"), () -> err);
  }

  @Test
  void aCheckSaysHowSureItIsWhereThatIsKnownOrAskedFor() throws IOException {
    assertEquals(0, run("--cases", "3"), () -> err);
    Path result = folder.resolve("pea-result");
    assertEquals(0, told("check", caseFile), () -> err);
    assertTrue(Files.notExists(result.resolve("doubt.json")), "of 3 cases, not of 20");

    assertEquals(0, told("check", caseFile, "--doubt", 3), () -> err);
    assertTrue(out.contains("3 plausible cases"), out);
    String report = Files.readString(result.resolve("report.html"));
    assertTrue(report.contains("How sure is that?") && report.contains("another way"));
    assertTrue(report.contains("<polygon") && report.contains("Lines: this run."));
    assertTrue(Files.size(result.resolve("doubt-curves.csv")) > 0);
    JsonNode n = new ObjectMapper().readTree(result.resolve("doubt.json").toFile());
    assertEquals(2, n.get("model_otherwise").size());
  }
}
