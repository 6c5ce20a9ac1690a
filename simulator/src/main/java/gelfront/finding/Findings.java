// SPDX-License-Identifier: Apache-2.0
package gelfront.finding;

import java.util.List;

/**
 * What a run found out.
 *
 * @param severity of the worst pocket, or of the oval that opening makes where that is worse
 * @param verdict one sentence with the number and the culprit
 * @param explanation two or three sentences: when what closed, what stayed soft
 * @param advice what to change, in words, best first; a direction, not a sizing
 * @param pockets deepest dent first
 * @param gateSets s at which the last path through the gate closes
 * @param sprueSets s at which the mouth of the sprue has set through
 * @param partSets s at which all of the part has set
 * @param firmAt s at which all of the part is firm enough to open the mould
 * @param linearShrinkage share of length that the part is smaller when cold, even shrinkage
 * @param visibleDepth metres from which a dent is called visible
 * @param amounts what to melt
 * @param fed what the part needed and got
 * @param filled what the shot itself came to
 * @param opening what becomes of it if a clock opens the mould
 */
public record Findings(
    Severity severity,
    String verdict,
    String explanation,
    List<String> advice,
    List<Pocket> pockets,
    double gateSets,
    double sprueSets,
    double partSets,
    double firmAt,
    double linearShrinkage,
    double visibleDepth,
    Amounts amounts,
    Fed fed,
    Filled filled,
    Opening opening) {
  /** Shares of the part from which it isn't whole, by what never came and by air: own judgement. */
  private static final double MISSING = 0.005;

  private static final double HOLLOWS = 0.02;

  /** The shot itself was not calculated, and the mould is opened when the part is firm. */
  public Findings(
      Severity severity,
      String verdict,
      String explanation,
      List<String> advice,
      List<Pocket> pockets,
      double gateSets,
      double sprueSets,
      double partSets,
      double firmAt,
      double linearShrinkage,
      double visibleDepth,
      Amounts amounts,
      Fed fed) {
    this(
        severity,
        verdict,
        explanation,
        advice,
        pockets,
        gateSets,
        sprueSets,
        partSets,
        firmAt,
        linearShrinkage,
        visibleDepth,
        amounts,
        fed,
        Filled.NOT_CALCULATED,
        Opening.WHEN_FIRM);
  }

  public Findings {
    advice = List.copyOf(advice);
    pockets = List.copyOf(pockets);
  }

  /**
   * m3 of the part that the shot leaves empty: no liquid comes to more than a corner, or more air
   * stays than a hollow or two. 0 where it fills, and where that wasn't calculated.
   */
  public double empty() {
    double part = amounts.cavities() * amounts.partVolume();
    double air = filled.air().stream().mapToDouble(Filled.TrappedAir::volume).sum();
    double never = filled.unfilled();
    return Math.min(part, (never < MISSING * part ? 0 : never) + (air < HOLLOWS * part ? 0 : air));
  }

  /** The same in other words: pockets, shot and opening differ from these in words alone. */
  public Findings told(
      String newVerdict,
      String newExplanation,
      List<String> newAdvice,
      List<Pocket> toldPockets,
      Filled toldShot,
      Opening toldOpening) {
    return new Findings(
        severity,
        newVerdict,
        newExplanation,
        newAdvice,
        toldPockets,
        gateSets,
        sprueSets,
        partSets,
        firmAt,
        linearShrinkage,
        visibleDepth,
        amounts,
        fed,
        toldShot,
        toldOpening);
  }
}
