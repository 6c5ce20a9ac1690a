// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import gelfront.material.HeatCurves;
import gelfront.material.ViscosityCurve;

/**
 * What the shot goes by.
 *
 * @param curves enthalpy and conductivity
 * @param viscosity of the liquid
 * @param noFlow °C below which it doesn't flow
 * @param entering °C as it comes
 * @param drive what pushes it
 * @param longest s after which it is given up
 * @param looks times that the mould's chill is reckoned with while it fills
 */
public record FillLaw(
    HeatCurves curves,
    ViscosityCurve viscosity,
    double noFlow,
    double entering,
    Drive drive,
    double longest,
    int looks) {
  public FillLaw {
    if (!(entering > noFlow) || !(longest > 0) || looks < 1) {
      throw new IllegalArgumentException("what is shot must flow, for some time, and be looked at");
    }
  }
}
