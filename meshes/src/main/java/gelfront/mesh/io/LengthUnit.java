// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import java.util.Locale;

/** Units that mesh files come in; most files themselves don't say. */
public enum LengthUnit {
  MM(1e-3),
  CM(1e-2),
  M(1),
  INCH(0.0254),
  FOOT(0.3048),
  MICRON(1e-6);

  private final double metres;

  LengthUnit(double metres) {
    this.metres = metres;
  }

  /** As people write it: "mm". */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Length of one unit in metres. */
  public double metres() {
    return metres;
  }
}
