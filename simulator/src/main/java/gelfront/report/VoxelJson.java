// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.answer.VoxelDoubt;
import gelfront.finding.Constriction;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import java.util.Locale;
import java.util.Optional;

/** How far a verdict hangs on the voxels, for findings.json. */
final class VoxelJson {
  private VoxelJson() {}

  static void put(ObjectNode n, VoxelDoubt d) {
    n.put("verdict", d.hold().name().toLowerCase(Locale.ROOT));
    n.put("same_blamed", d.sameBlamed());
    at(n.putObject("here"), d.finer());
    if (d.coarser().isPresent()) {
      at(n.putObject("coarser"), d.coarser().get());
    } else {
      n.putNull("coarser");
      n.put("error", d.error());
    }
    n.put("words", String.join(" ", VoxelWords.of(d)));
  }

  private static void at(ObjectNode n, VoxelDoubt.At at) {
    n.put("level", at.level());
    FindingsJson.number(n, "voxel_mm", at.voxel() * 1e3);
    n.put("severity", FindingsJson.lower(at.severity()));
    FindingsJson.number(n, "depth_low_mm", at.dentLow() * 1e3);
    FindingsJson.number(n, "depth_high_mm", at.dentHigh() * 1e3);
    if (at.blamed().isPresent()) {
      FindingsJson.constriction(n.putObject("constriction"), at.blamed().get());
    } else {
      n.putNull("constriction");
    }
  }

  /**
   * Back again, as far as six digits go.
   *
   * @param visible metres from which a dent is seen
   * @throws IllegalArgumentException if it isn't what {@link #put} wrote
   */
  static VoxelDoubt of(JsonNode n, double visible) {
    Optional<VoxelDoubt.At> coarser =
        n.path("coarser").isObject() ? Optional.of(at(n.path("coarser"))) : Optional.empty();
    return new VoxelDoubt(visible, at(n.path("here")), coarser, n.path("error").asText(""));
  }

  private static VoxelDoubt.At at(JsonNode n) {
    JsonNode c = n.path("constriction");
    return new VoxelDoubt.At(
        n.path("level").asText(),
        n.path("voxel_mm").asDouble() * 1e-3,
        Severity.valueOf(upper(n.path("severity"))),
        n.path("depth_low_mm").asDouble() * 1e-3,
        n.path("depth_high_mm").asDouble() * 1e-3,
        c.isObject() ? Optional.of(constriction(c)) : Optional.empty());
  }

  private static Constriction constriction(JsonNode n) {
    JsonNode at = n.path("place_mm");
    return new Constriction(
        Constriction.Kind.valueOf(upper(n.path("kind"))),
        new Vec3(at.path(0).asDouble(), at.path(1).asDouble(), at.path(2).asDouble()).times(1e-3),
        n.path("width_mm").asDouble() * 1e-3,
        n.path("closed_at_s").asDouble(Double.POSITIVE_INFINITY));
  }

  private static String upper(JsonNode word) {
    return word.asText().toUpperCase(Locale.ROOT);
  }
}
