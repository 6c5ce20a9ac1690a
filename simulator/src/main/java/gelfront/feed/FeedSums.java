package gelfront.feed;

/** Volumes of a feeding flow over all cells, and what solving it took. */
public final class FeedSums {
  private double drawn;
  private double given;
  private double entered;
  private double swelled;
  private double worst;
  private double partShare;
  private double partDemand;
  private double partUnfed;
  private int mobilityIterations;
  private int suctionIterations;
  private int passes;
  private int mostIterations;
  private int steps;

  void step(double drawnRate, double givenNow, double enteringRate, double dt) {
    drawn += drawnRate * dt;
    given += givenNow * dt;
    entered += enteringRate * dt;
    steps++;
    if (drawnRate > 0) {
      worst = Math.max(worst, Math.abs(drawnRate - givenNow - enteringRate) / drawnRate);
    }
  }

  /** The part's share in a step, m3; what isn't joined to the mouth counts as unfed. */
  void part(double demand, double unfed) {
    partShare = demand > 0 ? Math.max(0, 1 - unfed / demand) : 0;
    partDemand += demand;
    partUnfed += unfed;
  }

  void swells(double volume) {
    swelled += volume;
  }

  void solved(int forMobility, int forSuction, int newton) {
    mobilityIterations += forMobility;
    suctionIterations += forSuction;
    passes += newton;
    mostIterations = Math.max(mostIterations, Math.max(forMobility, forSuction / newton));
  }

  /** m3 drawn by liquid joined to the mouth. */
  public double drawn() {
    return drawn;
  }

  /** m3 of it that the skin gave. */
  public double given() {
    return given;
  }

  /** m3 that entered through the mouth. */
  public double entered() {
    return entered;
  }

  /** m3 that conduction made liquid swell by. */
  public double swelled() {
    return swelled;
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

  public int steps() {
    return steps;
  }

  /** Iterations for all mobilities. */
  public int mobilityIterations() {
    return mobilityIterations;
  }

  /** Iterations for all suctions. */
  public int suctionIterations() {
    return suctionIterations;
  }

  /** Newton passes of all steps. */
  public int passes() {
    return passes;
  }

  /** Most iterations of one solve. */
  public int mostIterations() {
    return mostIterations;
  }
}
