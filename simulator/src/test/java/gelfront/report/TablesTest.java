// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.finding.Pocket;
import gelfront.result.ArtifactWriter;
import gelfront.result.Fields;
import gelfront.result.StoredRun;
import gelfront.result.SyntheticRun;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.InflaterInputStream;
import org.junit.jupiter.api.Test;

class TablesTest {
  private static final StoredRun RUN = SyntheticRun.small();

  private static byte[] bytes(ArtifactWriter writer) throws IOException {
    return bytes(writer, RUN);
  }

  private static byte[] bytes(ArtifactWriter writer, StoredRun run) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    writer.write(run, out);
    return out.toByteArray();
  }

  private static Set<String> keys(JsonNode n) {
    Set<String> out = new TreeSet<>();
    n.fieldNames().forEachRemaining(out::add);
    return out;
  }

  @Test
  void findingsAreInMillimetresUnderTheDocumentedKeys() throws IOException {
    JsonNode n = new ObjectMapper().readTree(bytes(new FindingsJson()));
    Pocket first = RUN.findings().pockets().get(0);
    JsonNode pocket = n.get("pockets").get(0);

    assertEquals("gelfront findings 1", n.get("schema").asText());
    assertEquals("will_dent", n.get("severity").asText());
    assertEquals(2, n.get("pockets").size());
    assertEquals(first.volume() * 1e9, pocket.get("volume_mm3").asDouble(), 0.01);
    assertEquals(first.centre().x() * 1e3, pocket.get("centre_mm").get(0).asDouble(), 1e-3);
    assertEquals(0.6, pocket.get("dents").get(0).get("depth_high_mm").asDouble(), 1e-9);
    assertEquals("gate", pocket.get("constriction").get("kind").asText());
    assertEquals(
        Set.of(
            "schema",
            "name",
            "feeding",
            "severity",
            "verdict",
            "explanation",
            "advice",
            "gate_sets_s",
            "sprue_sets_s",
            "part_sets_s",
            "firm_at_s",
            "linear_shrinkage_percent",
            "visible_dent_mm",
            "amounts",
            "pockets",
            "health",
            "cautions"),
        keys(n));
  }

  @Test
  void pocketsHaveOneLineEachAndAsManyCellsAsTheHead() throws IOException {
    String csv = new String(bytes(new PocketsCsv()), StandardCharsets.UTF_8);
    String[] lines = csv.split("\r\n", 0);

    assertEquals(1 + RUN.findings().pockets().size(), lines.length);
    int cells = lines[0].split(",", -1).length;
    for (int i = 1; i < lines.length; i++) {
      assertEquals(cells, lines[i].split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1).length);
    }
  }

  @Test
  void whatNeverCameOrIsNotThereIsAnEmptyField() throws IOException {
    Pocket endless = SyntheticRun.withoutDents(RUN.findings().pockets().get(0));
    StoredRun run = SyntheticRun.withPockets(RUN, List.of(endless));

    String[] lines =
        new String(bytes(new PocketsCsv(), run), StandardCharsets.UTF_8).split("\r\n", 0);
    List<String> head = List.of(lines[0].split(",", 0));
    String[] cells = lines[1].split(",", head.size());

    assertEquals(Say.fixed(endless.cutOff(), 3), cells[head.indexOf("cut_off_s")]);
    for (String empty : List.of("last_set_s", "dent_x_mm", "dent_z_mm", "dent_high_mm")) {
      assertEquals("", cells[head.indexOf(empty)], empty);
    }
    assertEquals(PocketsCsv.cell(endless.sentence()), cells[head.indexOf("sentence")]);
  }

  @Test
  void spreadsheetsSeeNoFormula() {
    assertEquals("\"'=1+1\"", PocketsCsv.cell("=1+1"));
    assertEquals("\"'@x\"", PocketsCsv.cell("@x"));
    assertEquals("\"say \"\"so\"\"\"", PocketsCsv.cell("say \"so\""));
  }

  @Test
  void seriesHasAColumnForEachCurve() throws IOException {
    String[] lines = new String(bytes(new SeriesCsv()), StandardCharsets.UTF_8).split("\r\n", 0);

    assertEquals(1 + RUN.series().time().length, lines.length);
    assertEquals(1 + RUN.series().curves().size(), lines[5].split(",", -1).length);
  }

  @Test
  void voxelsUnpackToTheirFieldsAtTheirOffsets() throws IOException {
    byte[] file = bytes(new VoxelsVti());
    String head = new String(file, StandardCharsets.ISO_8859_1);
    int data = head.indexOf("<AppendedData encoding=\"raw\">\n_") + 31;
    Fields f = RUN.fields();

    float[] set = array(file, data, head, "set_time");
    float[] region = array(file, data, head, "region");

    assertEquals(f.nx() * f.ny() * f.nz(), set.length);
    for (int c = 0; c < f.cells().length; c += 7) {
      assertEquals(f.setTime()[c], set[f.cells()[c]]);
      assertEquals(f.region()[c], region[f.cells()[c]]);
    }
    assertEquals(-1, region[0], "outside");
    assertTrue(head.contains("WholeExtent=\"0 " + f.nx() + " 0 " + f.ny() + " 0 " + f.nz()));
  }

  private static float[] array(byte[] file, int data, String head, String name) throws IOException {
    Matcher m = Pattern.compile("Name=\"" + name + "\"[^>]*offset=\"(\\d+)\"").matcher(head);
    assertTrue(m.find(), name);
    ByteBuffer b = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    int at = data + Integer.parseInt(m.group(1));
    int blocks = b.getInt(at);
    int body = at + 4 * (3 + blocks);
    ByteArrayOutputStream raw = new ByteArrayOutputStream();
    for (int i = 0; i < blocks; i++) {
      int size = b.getInt(at + 4 * (3 + i));
      new InflaterInputStream(new ByteArrayInputStream(file, body, size)).transferTo(raw);
      body += size;
    }
    float[] out = new float[raw.size() / 4];
    ByteBuffer.wrap(raw.toByteArray()).order(ByteOrder.LITTLE_ENDIAN).asFloatBuffer().get(out);
    return out;
  }
}
