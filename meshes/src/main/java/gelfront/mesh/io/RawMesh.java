// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.TriangleMesh;
import java.util.List;
import java.util.Optional;

/**
 * A mesh as its file has it, unchecked.
 *
 * @param mesh in metres, corners with equal coordinates merged
 * @param own the unit that the file itself states
 * @param notes what in the file was odd and how it was taken, in words; empty where nothing was
 */
public record RawMesh(TriangleMesh mesh, Optional<LengthUnit> own, List<String> notes) {
  public RawMesh {
    notes = List.copyOf(notes);
  }

  /** Of a file that states no unit. */
  static RawMesh of(TriangleMesh mesh, List<String> notes) {
    return new RawMesh(mesh, Optional.empty(), notes);
  }
}
