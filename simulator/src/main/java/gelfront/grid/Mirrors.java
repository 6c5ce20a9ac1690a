// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

/** Planes of symmetry at the lower end of axes. */
public record Mirrors(boolean x, boolean y, boolean z) {
  public static final Mirrors NONE = new Mirrors(false, false, false);

  public boolean at(int axis) {
    return axis == 0 ? x : axis == 1 ? y : z;
  }

  /** One more. */
  Mirrors and(int axis) {
    return new Mirrors(x || axis == 0, y || axis == 1, z || axis == 2);
  }
}
