// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.mesh.MeshException;
import gelfront.setup.MouldMesh;
import gelfront.viewer.model.MouldShown;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The mould's own shape, read once for all previews of a case. For one thread. */
public final class MouldShapes {
  private @Nullable MouldMesh of;
  private Optional<MouldShown> shown = Optional.empty();

  /** Empty where it can't be read: the quick verdict says why. */
  Optional<MouldShown> of(MouldMesh mesh) {
    if (!mesh.equals(of)) {
      of = mesh;
      shown = read(mesh);
    }
    return shown;
  }

  private static Optional<MouldShown> read(MouldMesh mesh) {
    try {
      return Optional.of(MouldShown.of(mesh.load()));
    } catch (MeshException e) {
      return Optional.empty();
    }
  }
}
