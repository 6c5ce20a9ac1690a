// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import gelfront.finding.Constriction;
import gelfront.finding.Opening;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One run of a study in a few numbers, SI and °C.
 *
 * @param severity of the worst pocket, or of the oval that opening makes
 * @param verdict one sentence
 * @param dentLow metres, the deepest dent's low bound; 0 where nothing is cut off
 * @param dentHigh metres, its high bound: what stays under the visible depth when the part is clean
 * @param dentPlace where it is deepest; absent where nothing is cut off
 * @param blamed what closed and left it; absent where nothing is cut off
 * @param pocketCentre where what it cut off sets last; absent with it
 * @param partedBy the narrowest neck that parts a place of the deepest pocket from the rest of it
 * @param openUntil s that the blamed place would have had to stay open; its closing time where
 *     nothing is seen
 * @param demand m3 of contraction above no-flow in one part
 * @param unfed m3 of it that nothing fed
 * @param gateSets s at which the last path through the gate closes
 * @param partSets s at which all of the part has set
 * @param cycle s from the start until the mould is opened: by the case's clock, or with the part
 *     firm and the injector taken off
 * @param feedVolume m3 of gate, runner and sprue: what is trimmed
 * @param drawnIn m3 that shrinkage draws in
 * @param mould °C of the mould at the wall, mean, at the end
 * @param pressing what pushes the halves apart
 * @param filling whether the cavity fills at all
 * @param halfAt s at which less than half of what the part needs comes; +infinity: never
 * @param opening what becomes of the part if a clock opens the mould
 * @param cavities each of several cavities for itself; empty where the block has one
 * @param cells of plastisol that were calculated
 * @param seconds of calculation, on one thread
 * @param curves over time
 */
public record RunOutcome(
    Severity severity,
    String verdict,
    double dentLow,
    double dentHigh,
    Optional<Vec3> dentPlace,
    Optional<Constriction> blamed,
    Optional<Vec3> pocketCentre,
    Optional<Constriction> partedBy,
    double openUntil,
    double demand,
    double unfed,
    double gateSets,
    double partSets,
    double cycle,
    double feedVolume,
    double drawnIn,
    double mould,
    Pressing pressing,
    Filling filling,
    double halfAt,
    Opening opening,
    List<OfCavity> cavities,
    int cells,
    double seconds,
    Curves curves) {
  public RunOutcome {
    cavities = List.copyOf(cavities);
  }

  /**
   * What becomes of one cavity.
   *
   * @param number from 1
   * @param dentLow metres, the deepest dent's low bound; 0 where nothing is cut off
   * @param dentHigh metres, its high bound
   * @param closed s at which its way in closed; +infinity where nothing is cut off
   */
  public record OfCavity(int number, double dentLow, double dentHigh, double closed) {}

  /** Whether a shot fills the cavity before it sets. */
  public enum Filling {
    /** Not calculated. */
    UNKNOWN,
    FILLS,
    MAY_NOT_FILL
  }

  /**
   * @param pressure Pa on the cavity while the plunger holds
   * @param holding N that it pushes the halves apart with then
   * @param filling N that liquid and air push them apart with while the shot fills the cavity, at
   *     most; 0 where that was not calculated
   * @param held N that hold them; absent: the case doesn't say
   */
  public record Pressing(double pressure, double holding, double filling, OptionalDouble held) {
    /** Whether the halves are pushed apart harder while it fills than by the plunger that holds. */
    public boolean mostWhileFilling() {
      return filling > holding;
    }

    /** N that push the halves apart, at most. */
    public double force() {
      return Math.max(holding, filling);
    }

    /** N to spare, negative where the mould opens; absent where the case doesn't say. */
    public OptionalDouble margin() {
      return held.isPresent() ? OptionalDouble.of(held.getAsDouble() - force()) : held;
    }
  }

  /** Metres at the worst: the deepest dent's high bound, or the oval that opening makes. */
  public double defect() {
    return Math.max(dentHigh, opening.oval());
  }

  /** Metres of the same at the least. */
  public double leastDefect() {
    return Math.max(dentLow, opening.least());
  }

  /** Whether an oval is seen, from {@code visible} metres on. */
  public boolean goesOval(double visible) {
    return opening.oval() >= visible;
  }

  /** Whether neither a dent is seen, from {@code visible} metres on, nor an oval. */
  public boolean clean(double visible) {
    return defect() < visible;
  }

  /** Share of the demand that nothing fed, 0 to 1. */
  public double unfedShare() {
    return demand > 0 ? unfed / demand : 0;
  }
}
