// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

/** Volumes of a feeding flow over all cells, and what solving it took. */
public final class FeedSums {
  private double drawn;
  private double entered;
  private double worst;
  private double partShare;
  private double partDemand;
  private double partUnfed;
  private int mostIterations;

  /** A step's rates, m3/s: drawn, given by the skin, entering through the mouth. */
  void step(double drawnNow, double givenNow, double enteringNow, double dt) {
    drawn += drawnNow * dt;
    entered += enteringNow * dt;
    if (drawnNow > 0) {
      worst = Math.max(worst, Math.abs(drawnNow - givenNow - enteringNow) / drawnNow);
    }
  }

  /** The part's so far, m3; what isn't joined to the mouth counts as unfed. */
  void part(double demand, double unfed) {
    double needs = demand - partDemand;
    partShare = needs > 0 ? Math.max(0, 1 - (unfed - partUnfed) / needs) : 0;
    partDemand = demand;
    partUnfed = unfed;
  }

  void solved(int iterations) {
    mostIterations = Math.max(mostIterations, iterations);
  }

  /** m3 drawn by liquid joined to the mouth. */
  public double drawn() {
    return drawn;
  }

  /** m3 that entered through the mouth. */
  public double entered() {
    return entered;
  }

  /** Largest share of a step's draw that given and entered do not make up. */
  public double worstImbalance() {
    return worst;
  }

  /** Share of what the part contracted by in the last step that was fed; sprue and gate apart. */
  public double fedShare() {
    return partShare;
  }

  /** m3 that the part has contracted by above no-flow. */
  public double partDemand() {
    return partDemand;
  }

  /** m3 of that which no liquid came for. */
  public double partUnfed() {
    return partUnfed;
  }

  /** Most iterations of one solve. */
  public int mostIterations() {
    return mostIterations;
  }
}
