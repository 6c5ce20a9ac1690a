// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.check;

import gelfront.mesh.TriangleMesh;
import java.util.List;

/**
 * A mesh that can be trusted.
 *
 * @param mesh every shell closed; solids face outwards, voids inside them inwards
 * @param report on the mesh as it came
 * @param repairs what was changed, in words
 */
public record PreparedMesh(TriangleMesh mesh, MeshReport report, List<String> repairs) {
  public PreparedMesh {
    repairs = List.copyOf(repairs);
  }
}
