// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.answer.VoxelDoubt;
import java.util.Locale;

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
}
