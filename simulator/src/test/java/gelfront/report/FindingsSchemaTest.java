package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.finding.Pocket;
import gelfront.result.StoredRun;
import gelfront.result.SyntheticRun;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingsSchemaTest {
  private static final StoredRun RUN = SyntheticRun.small();

  private static ObjectNode findings(StoredRun run) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new FindingsJson().write(run, out);
    return (ObjectNode) new ObjectMapper().readTree(out.toByteArray());
  }

  @Test
  void findingsAreAsTheSchemaSays() throws IOException {
    assertEquals(List.of(), FindingsSchema.complaints(findings(RUN)));
  }

  @Test
  void soAreThoseWithoutPocketsDentsOrEnd() throws IOException {
    Pocket endless = SyntheticRun.withoutDents(RUN.findings().pockets().get(0));
    JsonNode open = findings(SyntheticRun.withPockets(RUN, List.of(endless)));

    assertTrue(open.get("gate_sets_s").isNull());
    assertTrue(open.get("pockets").get(0).get("dents").isEmpty());
    assertEquals(List.of(), FindingsSchema.complaints(open));
    assertEquals(
        List.of(), FindingsSchema.complaints(findings(SyntheticRun.withPockets(RUN, List.of()))));
  }

  @Test
  void theSchemaRefusesWhatIsMissingUnknownOrOfAnotherKind() throws IOException {
    ObjectNode missing = findings(RUN);
    ((ObjectNode) missing.get("amounts")).remove("shot_ml");
    ObjectNode unknown = findings(RUN);
    ((ObjectNode) unknown.get("pockets").get(0)).put("depth_inch", 1);
    ObjectNode other = findings(RUN);
    other.put("severity", "WILL_DENT");

    for (ObjectNode wrong : List.of(missing, unknown, other)) {
      assertFalse(FindingsSchema.complaints(wrong).isEmpty(), wrong.toString());
    }
  }

  /** Every key is explained: a schema whose words are missing is no documentation. */
  @Test
  void everyKeyOfTheTopIsDescribed() throws IOException {
    JsonNode schema = new ObjectMapper().readTree(PageParts.text("findings.schema.json"));

    schema.get("properties").forEach(p -> assertTrue(p.hasNonNull("description"), p.toString()));
  }
}
