// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

/**
 * Whether the flow of an earlier step, scaled to what is drawn now, will do for this one.
 *
 * <pre>  q = q0 S / S0,   where |S - S0| is at most 0.15 S0 and q0 under a tenth of what skins bear
 * </pre>
 *
 * <p>Courses change slowly as long as nothing is about to close; what is drawn changes faster. So
 * the flow need not be solved for at every step of conduction: what enters is right either way,
 * only how it spreads lags behind. Both limits were tried: DEVELOPERS says what looser ones do.
 */
final class Coasting {
  /** Of what was drawn when the flow was solved for, by which it may have changed. */
  private static final double CHANGED = 0.15;

  /** Of what the skin bears: more suction than this, anywhere, and every step is solved for. */
  private static final double CALM = 0.1;

  private double drawn;
  private double pressure;
  private Feeding.Supply supply = Feeding.Supply.SPRUE;
  private int sunk;
  private boolean calm;

  /**
   * A flow has been solved for.
   *
   * @param drawn m3/s
   * @param strain largest share of what it bears that the skin bears anywhere
   * @param sunk how far the sprue's surface has come
   */
  void solved(double drawn, double strain, Feeding.Supply supply, double pressure, int sunk) {
    this.drawn = drawn;
    this.supply = supply;
    this.pressure = pressure;
    this.sunk = sunk;
    calm = strain < CALM;
  }

  /** The next flow has to be solved for. */
  void stop() {
    calm = false;
  }

  /** Whether a step that draws {@code now} m3/s may go on with that flow. */
  boolean goesOn(double now, Feeding.Supply supply, double pressure, int sunk) {
    boolean same = supply == this.supply && pressure == this.pressure && sunk == this.sunk;
    // Nothing drawn can't be scaled to anything.
    return calm && same && drawn > 0 && Math.abs(now - drawn) <= CHANGED * drawn;
  }
}
