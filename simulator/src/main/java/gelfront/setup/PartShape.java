// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.mesh.io.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Where the part's shape comes from. */
public sealed interface PartShape {
  /** One or several closed solids, united. No unit: mm, if the size is plausible. */
  record Meshes(List<Path> files, Optional<LengthUnit> unit) implements PartShape {}

  /** Measured with calipers: at each distance from the nose a width (y) and a height (z). */
  record Calipers(List<Row> rows) implements PartShape {}

  /**
   * @param distance from the nose along +x, metres
   * @param width along y, metres
   * @param height along z, metres
   */
  record Row(double distance, double width, double height) {}
}
