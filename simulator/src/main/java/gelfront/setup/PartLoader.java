// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.check.PreparedMesh;
import gelfront.mesh.io.MeshFiles;
import gelfront.mesh.io.RawMesh;
import gelfront.mesh.shape.Loft;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A part's shape as a mesh that can be trusted. */
public final class PartLoader {
  private PartLoader() {}

  /**
   * @throws MeshException with the file, the reason and the place
   */
  public static PreparedMesh load(PartShape shape) {
    return shape instanceof PartShape.Meshes m
        ? read(m)
        : MeshRepair.prepare(loft((PartShape.Calipers) shape), MeshRepair.WELD);
  }

  private static PreparedMesh read(PartShape.Meshes shape) {
    @Nullable TriangleMesh all = null;
    List<String> repairs = new ArrayList<>();
    for (Path file : shape.files()) {
      String name = String.valueOf(file.getFileName());
      RawMesh raw = MeshFiles.load(file, shape.unit());
      raw.notes().forEach(n -> repairs.add(name + ": " + n));
      try {
        PreparedMesh one = MeshRepair.prepare(raw.mesh(), MeshRepair.WELD);
        one.repairs().forEach(r -> repairs.add(name + ": " + r));
        all = all == null ? one.mesh() : all.plus(one.mesh());
      } catch (MeshException e) {
        throw e.in(name);
      }
    }
    if (all == null) {
      throw new MeshException("no mesh file is named");
    }
    PreparedMesh united = MeshRepair.prepare(all, MeshRepair.WELD);
    repairs.addAll(united.repairs());
    return new PreparedMesh(united.mesh(), united.report(), repairs);
  }

  private static TriangleMesh loft(PartShape.Calipers shape) {
    List<PartShape.Row> rows = shape.rows();
    return Loft.of(
        rows.stream().mapToDouble(PartShape.Row::distance).toArray(),
        rows.stream().mapToDouble(PartShape.Row::width).toArray(),
        rows.stream().mapToDouble(PartShape.Row::height).toArray());
  }
}
