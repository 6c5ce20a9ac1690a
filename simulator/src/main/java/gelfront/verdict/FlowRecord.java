// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.finding.Sunk;
import gelfront.grid.Cavity;
import java.util.List;

/**
 * What the feeding flow of a shot left.
 *
 * @param unfed m3 per plastisol cell that no liquid came for
 * @param starved s since when less than half of what it needs came, per plastisol cell; +infinity:
 *     it was fed until it set
 * @param demand m3 that the part contracted by above no-flow
 * @param partUnfed m3 of that which no liquid came for
 * @param drawnIn m3 that entered through the mouth or that the sprue gave
 * @param half s at which what the part gets fell below half of what it needs; +infinity: never
 * @param closings of each cavity
 * @param dryAt s at which air came to the sprue's end; +infinity: never
 * @param worstImbalance share of a step's contraction that fed and unfed don't make up, at most
 * @param trace over time
 */
public record FlowRecord(
    float[] unfed,
    float[] starved,
    double demand,
    double partUnfed,
    double drawnIn,
    double half,
    List<Closing> closings,
    double dryAt,
    double worstImbalance,
    Trace trace) {
  public FlowRecord {
    closings = List.copyOf(closings);
  }

  /**
   * When and where the way to one cavity closed.
   *
   * @param half s at which what it gets fell below half of what it needs; +infinity: never
   * @param spentOn region that most suction was spent on before that, on the way to it
   * @param narrowest cell of it where most was spent by volume then; -1: none
   */
  public record Closing(double half, Cavity.Region spentOn, int narrowest) {}

  /**
   * The flow over time; all of one length.
   *
   * @param time s, rising
   * @param drawn m3 that has entered by then
   * @param unfed m3 that the part lacks by then
   * @param share of what the part contracts by that is fed
   * @param level metres that the sprue's surface has sunk
   * @param gateSuction Pa below the mouth's pressure in the middle of the gate, NaN where set
   */
  public record Trace(
      double[] time,
      double[] drawn,
      double[] unfed,
      double[] share,
      double[] level,
      double[] gateSuction) {

    /** How far the sprue's surface has sunk when a pocket is cut off. */
    Sunk sunk(double cutOff) {
      if (time.length == 0) {
        return Sunk.UNKNOWN;
      }
      int last = time.length - 1;
      int then = 0;
      while (then < last && time[then] < cutOff) {
        then++;
      }
      return new Sunk(level[then], time[then], level[last]);
    }
  }
}
