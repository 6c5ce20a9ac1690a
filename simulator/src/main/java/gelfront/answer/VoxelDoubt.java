// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import gelfront.finding.Constriction;
import gelfront.finding.Dent;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import java.util.Optional;

/**
 * What a case says in coarse voxels beside what it says in finer ones: how far its verdict hangs on
 * their size.
 *
 * @param visible metres from which a dent is seen
 * @param finer the run whose verdict is told
 * @param coarser the same case in coarser voxels; absent where that gave no result
 * @param error why it gave none, in words; empty where it did
 */
public record VoxelDoubt(double visible, At finer, Optional<At> coarser, String error) {
  /** Metres that two places called the same may lie apart: three of quick's voxels. */
  private static final double SAME = 2.1e-3;

  public VoxelDoubt {
    if (coarser.isPresent() != error.isEmpty()) {
      throw new IllegalArgumentException("a coarser run or the reason why there is none");
    }
  }

  /**
   * One of the two.
   *
   * @param level in a word
   * @param voxel edge, metres
   * @param severity of the worst pocket
   * @param dentLow metres, the deepest dent's low bound; 0 where nothing is cut off
   * @param dentHigh metres, its high bound
   * @param blamed what closed and left it; absent where nothing is cut off
   */
  public record At(
      String level,
      double voxel,
      Severity severity,
      double dentLow,
      double dentHigh,
      Optional<Constriction> blamed) {
    /** Of a run's findings. */
    public static At of(String level, double voxel, Findings f) {
      Optional<Pocket> worst = f.pockets().stream().findFirst();
      Optional<Dent> dent = worst.flatMap(p -> p.dents().stream().findFirst());
      return new At(
          level,
          voxel,
          f.severity(),
          dent.map(Dent::depthLow).orElse(0.0),
          dent.map(Dent::depthHigh).orElse(0.0),
          worst.map(Pocket::constriction));
    }

    /** Of a study's outcome. */
    public static At of(String level, double voxel, RunOutcome o) {
      return new At(level, voxel, o.severity(), o.dentLow(), o.dentHigh(), o.blamed());
    }
  }

  /** How far a verdict hangs on the voxels. */
  public enum Hold {
    /** Both say the same, and as large a step again would not change it. */
    HOLDS,
    /** Both say the same, but as large a step again might change it. */
    CLOSE,
    /** They say different things. */
    HANGS,
    /** The coarser voxels gave no result. */
    UNKNOWN
  }

  public Hold hold() {
    if (coarser.isEmpty()) {
      return Hold.UNKNOWN;
    }
    At rough = coarser.get();
    if (rough.severity() != finer.severity()) {
      return Hold.HANGS;
    }
    boolean near =
        nearer(finer.dentHigh(), rough.dentHigh()) || nearer(finer.dentLow(), rough.dentLow());
    return near ? Hold.CLOSE : Hold.HOLDS;
  }

  /** Whether a bound lies nearer to what is seen than to the coarser one of it. */
  private boolean nearer(double fine, double rough) {
    return Math.abs(fine - visible) < Math.abs(fine - rough);
  }

  /** Whether both blame the same place; true where there is nothing to compare. */
  public boolean sameBlamed() {
    Optional<Constriction> rough = coarser.flatMap(At::blamed);
    if (rough.isEmpty() || finer.blamed().isEmpty()) {
      return true;
    }
    Constriction a = finer.blamed().get();
    Constriction b = rough.get();
    double apart = a.place().minus(b.place()).length();
    return a.kind() == b.kind() && apart <= Math.max(SAME, Math.max(a.width(), b.width()));
  }
}
