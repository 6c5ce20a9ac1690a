// SPDX-License-Identifier: Apache-2.0
package gelfront.state;

/**
 * The joules of a run since the shot began: what the plastisol gave is what mould, air and mouth
 * took. Sums in double, corrected for lost digits (Kahan).
 */
public final class HeatLedger {
  private final Sum plastisol = new Sum();
  private final Sum mould = new Sum();
  private final Sum air = new Sum();
  private final Sum mouth = new Sum();

  /** J gained by each in a step; what the plastisol gives is negative. */
  public void add(double plastisolGain, double mouldGain, double toAir, double throughMouth) {
    plastisol.add(plastisolGain);
    mould.add(mouldGain);
    air.add(toAir);
    mouth.add(throughMouth);
  }

  /** All that another ledger has moved. */
  public void add(HeatLedger other) {
    add(other.plastisol.value, other.mould.value, other.air.value, other.mouth.value);
  }

  /**
   * What had been moved part of the way from an earlier time to this one, 0 to 1, by even rates.
   */
  public HeatLedger between(HeatLedger earlier, double way) {
    HeatLedger between = new HeatLedger();
    between.add(
        lerp(earlier.plastisol, plastisol, way),
        lerp(earlier.mould, mould, way),
        lerp(earlier.air, air, way),
        lerp(earlier.mouth, mouth, way));
    return between;
  }

  private static double lerp(Sum from, Sum to, double way) {
    return from.value + way * (to.value - from.value);
  }

  /** J gained by the plastisol, negative while it cools. */
  public double plastisolGain() {
    return plastisol.value;
  }

  /** J gained by the mould. */
  public double mouldGain() {
    return mould.value;
  }

  /** J given to the air by the block. */
  public double toAir() {
    return air.value;
  }

  /** J that left through the sprue's open end. */
  public double throughMouth() {
    return mouth.value;
  }

  /** What does not add up, as a share of the heat moved. */
  public double imbalance() {
    double moved = Math.max(Math.abs(plastisol.value), Math.abs(mould.value) + Math.abs(air.value));
    double sum = plastisol.value + mould.value + air.value + mouth.value;
    return moved == 0 ? 0 : Math.abs(sum) / moved;
  }

  private static final class Sum {
    private double value;
    private double lost;

    void add(double x) {
      double y = x - lost;
      double t = value + y;
      lost = (t - value) - y;
      value = t;
    }
  }
}
