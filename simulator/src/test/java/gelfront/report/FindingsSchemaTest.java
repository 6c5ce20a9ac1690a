// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.answer.VoxelDoubt;
import gelfront.answer.VoxelDoubt.At;
import gelfront.finding.Opening;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import gelfront.result.StoredRun;
import gelfront.result.SyntheticRun;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FindingsSchemaTest {
  private static final StoredRun RUN = SyntheticRun.small();

  private static ObjectNode findings(StoredRun run) throws IOException {
    return findings(run, Optional.empty());
  }

  private static ObjectNode findings(StoredRun run, Optional<VoxelDoubt> voxels)
      throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new FindingsJson(voxels).write(run, out);
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
  void soAreThoseComparedWithCoarserVoxels() throws IOException {
    At fine = At.of("normal", 0.5e-3, RUN.findings());
    At none = new At("quick", 0.7e-3, Severity.CLEAN, 0, 0, Optional.empty());
    ObjectNode compared =
        findings(RUN, Optional.of(new VoxelDoubt(2e-4, fine, Optional.of(none), "")));
    ObjectNode alone =
        findings(RUN, Optional.of(new VoxelDoubt(2e-4, fine, Optional.empty(), "too narrow")));

    assertEquals("hangs", compared.at("/voxel_size/verdict").asText());
    assertEquals(0.7, compared.at("/voxel_size/coarser/voxel_mm").asDouble());
    assertTrue(alone.at("/voxel_size/words").asText().contains("(too narrow)"));
    for (ObjectNode sound : List.of(compared, alone)) {
      assertEquals(List.of(), FindingsSchema.complaints(sound));
    }
    ((ObjectNode) compared.get("voxel_size")).put("verdict", "maybe");
    assertFalse(FindingsSchema.complaints(compared).isEmpty());
  }

  @Test
  void aComparisonOfVoxelsIsReadBackAsItWas(@TempDir Path folder) throws IOException {
    At fine = At.of("normal", 0.5e-3, RUN.findings());
    At none = new At("quick", 0.7e-3, Severity.CLEAN, 0, 0, Optional.empty());
    assertTrue(fine.blamed().isPresent());
    assertEquals(Optional.empty(), FindingsJson.voxels(folder, 2e-4), "no file");
    for (VoxelDoubt was :
        List.of(
            new VoxelDoubt(2e-4, fine, Optional.of(none), ""),
            new VoxelDoubt(2e-4, none, Optional.of(fine), ""),
            new VoxelDoubt(2e-4, fine, Optional.empty(), "too narrow"))) {
      try (OutputStream out = Files.newOutputStream(folder.resolve("findings.json"))) {
        new FindingsJson(Optional.of(was)).write(RUN, out);
      }

      VoxelDoubt is = FindingsJson.voxels(folder, 2e-4).orElseThrow();

      assertEquals(was.hold(), is.hold());
      assertEquals(was.sameBlamed(), is.sameBlamed());
      assertEquals(VoxelWords.of(was), VoxelWords.of(is));
    }
    Files.writeString(folder.resolve("findings.json"), "{\"voxel_size\": {\"here\": 3}}");
    assertEquals(Optional.empty(), FindingsJson.voxels(folder, 2e-4), "another file");
  }

  @Test
  void soAreThoseOfAPartThatTheClockOpens() throws IOException {
    Opening early =
        new Opening(6, Severity.WILL_DENT, 2e-6, 6e-4, 5e-4, Vec3.ZERO, 11, "Oval.", "Flat.");
    ObjectNode open = findings(SyntheticRun.opened(RUN, early));

    assertEquals(0.6, open.at("/opening/oval_mm").asDouble());
    assertEquals(11, open.at("/opening/shut_until_s").asDouble());
    assertEquals(List.of(), FindingsSchema.complaints(open));
    assertTrue(findings(RUN).at("/opening").isMissingNode(), "opened when firm");
    ((ObjectNode) open.get("opening")).put("oval_mm", -1);
    assertFalse(FindingsSchema.complaints(open).isEmpty());
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
