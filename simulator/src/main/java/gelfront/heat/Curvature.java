// SPDX-License-Identifier: Apache-2.0
package gelfront.heat;

/**
 * What differences between neighbours leave out. Along an axis they give d2T/dx2 + dx^2/12 d4T/dx4,
 * so heat is driven by
 *
 * <pre>  T* = T - b,   b = c dx^2/12 (laplacian T),   dx^2 (laplacian T) = inflow / (k dx) dx^3 / V
 * </pre>
 *
 * <p>instead of T between cells; walls have {@link WallBend}. The sum of the fourth derivatives is
 * 1 (plate along an axis), 3/4 (round bar along an axis) or 3/5 (ball) of the laplacian's
 * laplacian; c lies between. (Compact differences in this way: Collatz, The Numerical Treatment of
 * Differential Equations, from memory.)
 *
 * <p>Taken once a step, at its middle. No face's flow changes by more than a tenth: where fronts
 * are sharper than a cell nothing gets hotter or colder than its surroundings. What one cell gets
 * by it its neighbour gives. Faces between cells of two sizes are left alone.
 */
public final class Curvature {
  private static final double SHARE = 0.6 / 12;
  private static final double MOST = 0.1;

  private Curvature() {}

  /**
   * b.
   *
   * @param inflow W into a cell over the conductance of one of its faces, K
   * @param cubes of its edge that a cell holds, V / dx^3
   */
  public static double bend(double inflow, double cubes) {
    return SHARE * inflow / cubes;
  }

  /**
   * K that drives heat into a cell through a face, by the bends on both sides.
   *
   * @param otherT °C across the face
   * @param otherBend K across the face
   */
  public static double driven(double t, double bend, double otherT, double otherBend) {
    double most = MOST * Math.abs(otherT - t);
    return -Math.max(-most, Math.min(most, otherBend - bend));
  }

  /**
   * The same for one face of consecutive cells.
   *
   * @param t K per cell
   * @param bend K per cell
   * @param otherT across the face
   * @param otherBend across the face
   * @param out K per cell; overwritten
   */
  static void driven(
      int count, double[] t, double[] bend, double[] otherT, double[] otherBend, double[] out) {
    for (int i = 0; i < count; i++) {
      out[i] = driven(t[i], bend[i], otherT[i], otherBend[i]);
    }
  }
}
