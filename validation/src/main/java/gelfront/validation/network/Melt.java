// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.network;

import java.util.function.DoubleUnaryOperator;

/**
 * The liquid, with constant properties, and the wall it cools on.
 *
 * @param conductivity W/m K
 * @param capacity J/m3 K
 * @param expansion 1/K above no-flow
 * @param hot °C at the start and of what enters
 * @param wall °C
 * @param film W/m2 K between liquid and wall
 * @param noFlow °C
 * @param bears Pa of suction that the skin bears; it gives from 0.9 to 1.1 times that on
 * @param lnViscosity natural logarithm of Pa s at °C
 */
public record Melt(
    double conductivity,
    double capacity,
    double expansion,
    double hot,
    double wall,
    double film,
    double noFlow,
    double bears,
    DoubleUnaryOperator lnViscosity) {
  public Melt {
    if (!(hot > noFlow && noFlow > wall && expansion > 0 && bears > 0)) {
      throw new IllegalArgumentException("hot above no-flow above wall, and a liquid that shrinks");
    }
  }
}
