// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The mould's own shape: solids of its halves and what else belongs to it, put together as for
 * pouring.
 *
 * @param files one or more, each of one or more solids
 * @param unit of those that state none; absent: guessed by size
 * @param content a hash of the files' bytes
 */
public record MouldMesh(List<Path> files, Optional<LengthUnit> unit, String content) {
  public MouldMesh {
    files = List.copyOf(files);
    if (files.isEmpty()) {
      throw new IllegalArgumentException("a mould's shape takes one file at least");
    }
  }

  /**
   * All solids in one mesh, closed and wound outwards; they may touch and overlap.
   *
   * @throws MeshException with the file, the reason and the place
   */
  public TriangleMesh load() {
    return files.stream().map(this::load).reduce(TriangleMesh::plus).orElseThrow();
  }

  private TriangleMesh load(Path file) {
    TriangleMesh raw = MeshFiles.read(file, unit);
    try {
      return MeshRepair.prepare(raw, MeshRepair.WELD).mesh();
    } catch (MeshException e) {
      throw e.in(String.valueOf(file.getFileName()));
    }
  }
}
