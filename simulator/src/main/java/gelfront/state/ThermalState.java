// SPDX-License-Identifier: Apache-2.0
package gelfront.state;

import gelfront.grid.VoxelModel;
import gelfront.material.HeatCurves;
import java.util.Arrays;

/** Temperatures and enthalpies of a run at one time, and the ledger of the heat moved so far. */
public final class ThermalState {
  /** s since the shot began. */
  public double time;

  /** °C per plastisol cell. */
  public double[] temperature;

  /** °C per plastisol cell one step earlier. */
  public double[] previous;

  /** J/m3 per plastisol cell. */
  public final double[] enthalpy;

  /** °C per mould cell. */
  public final double[] mould;

  /** m2 K/W that the contact at a cell's walls has become poorer by, per plastisol cell. */
  public final float[] lostContact;

  /** J. */
  public final HeatLedger ledger = new HeatLedger();

  /** All plastisol at one temperature, the mould at its own. */
  public ThermalState(VoxelModel model, HeatCurves curves, double shotTemperature) {
    int n = model.cavity().count();
    temperature = new double[n];
    lostContact = new float[n];
    enthalpy = new double[n];
    Arrays.fill(temperature, shotTemperature);
    Arrays.fill(enthalpy, curves.enthalpy(shotTemperature));
    previous = temperature.clone();
    mould = model.mould().startTemperature().clone();
  }
}
