// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import gelfront.material.Plastisol;

/**
 * Young's modulus of plastisol that has set, over temperature.
 *
 * <pre>  E(T) = E_25 (T_gel - T) / (T_gel - 25 °C),  E_25 / 100 at least, E_25 at most</pre>
 *
 * <p>with T_gel where gelling begins on cooling: the junctions that hold the gel melt away evenly
 * up to there. An estimate, no source; only E_25 is measured.
 *
 * @param cold Pa at 25 °C
 * @param gels °C where gelling begins on cooling
 */
record GelModulus(double cold, double gels) {
  private static final double COLD = 25;
  private static final double LEAST = 0.01;

  static GelModulus of(Plastisol p) {
    return new GelModulus(p.youngsModulus(), Math.max(p.gelStart(), p.noFlow()));
  }

  /** Pa at °C. */
  double at(double t) {
    return cold * Math.max(LEAST, Math.min(1, (gels - t) / (gels - COLD)));
  }
}
