// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import java.util.List;

/**
 * What the shot left.
 *
 * @param end why it ended
 * @param time s that it took
 * @param reached s per plastisol cell at which the front passed; +infinity: never
 * @param arrival °C per cell that the liquid had as it came; NaN: it never came
 * @param bodies of air that are left
 * @param welds where fronts met
 * @param held m3 of liquid
 * @param room m3 of the cavity
 * @param worstImbalance share of what came to the front that didn't come through the mouth, at most
 * @param heatOff share of the heat brought that the cells don't have, before the mould took any
 * @param trace over time
 */
public record FillRecord(
    End end,
    double time,
    float[] reached,
    float[] arrival,
    List<AirBody> bodies,
    List<Weld> welds,
    double held,
    double room,
    double worstImbalance,
    double heatOff,
    Trace trace) {
  public FillRecord {
    bodies = List.copyOf(bodies);
    welds = List.copyOf(welds);
  }

  /** Why it ended. */
  public enum End {
    /** No air is left. */
    FULL,
    /** What air is left is as dense as the pressure makes it, or leaves too slowly. */
    AIR_HOLDS,
    /** No way to the front flows any more. */
    FROZEN,
    /** It took too long. */
    TOO_SLOW
  }

  /**
   * Air that is left.
   *
   * @param cells that it fills in part at least
   * @param volume m3 that are left of it
   * @param began m3 that it had when it was cut off from other air
   * @param since s at which that was
   * @param pressure Pa, absolute
   * @param vents m3/(Pa s) that let it out
   */
  public record AirBody(
      int[] cells, double volume, double began, double since, double pressure, double vents) {}

  /**
   * Where fronts met that came from different sides.
   *
   * @param cells beside it
   * @param area m2
   * @param coldest °C of the fronts as they met
   * @param time s at which the last of it closed
   */
  public record Weld(int[] cells, double area, double coldest, double time) {}

  /**
   * All of one length.
   *
   * @param time s, rising
   * @param held m3 by then
   * @param pressure Pa at the mouth, over the air's
   * @param gate Pa in the gates, mean of what is full of them, over the air's; 0 before liquid is
   *     there
   * @param push N that liquid and air push the halves apart with
   */
  public record Trace(
      double[] time, double[] held, double[] pressure, double[] gate, double[] push) {
    /** Of all that came, what was there before the last corners that fill by and by. */
    private static final double NEARLY = 0.98;

    /** The most of one of these, before the last corners fill. */
    public double most(double[] values) {
      double all = held[held.length - 1];
      double most = 0;
      for (int i = 0; i < values.length; i++) {
        most = held[i] < NEARLY * all ? Math.max(most, values[i]) : most;
      }
      return most;
    }
  }
}
