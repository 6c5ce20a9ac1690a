// SPDX-License-Identifier: Apache-2.0
package gelfront.finding;

import gelfront.mesh.Vec3;
import java.util.List;

/**
 * A connected region of the part that was cut off while it still flowed.
 *
 * @param number from 1, deepest dent first; the same in table, picture and window
 * @param cavities numbers of the cavities it lies in, from 1, rising; empty where the block has one
 * @param severity from its dent
 * @param centre where it sets last, part coordinates, metres
 * @param volume m3 still flowing at cut-off
 * @param cutOff s at which the last flowing path to the sprue closed
 * @param lastSet s at which it has set altogether
 * @param meanTemperatureAtCutOff °C
 * @param constriction what closed
 * @param unfedLow m3 of contraction that can't be fed, down to no-flow only
 * @param unfedHigh m3, the gelled core pulling on until the skin's temperature
 * @param dents one per hot spot, deepest first
 * @param spots hot spots, last-setting first
 * @param openUntil s that the way in would have had to stay open for no dent to be seen; its
 *     cut-off where none is seen anyway
 * @param dentVolume m3 that its dents hold: unfed contraction, even shrinkage taken off
 * @param sunk how far the sprue has sunk by then
 * @param sentence the verdict on this pocket in plain words
 * @param sign what a maker sees at the bench when this is so, in plain words
 */
public record Pocket(
    int number,
    List<Integer> cavities,
    Severity severity,
    Vec3 centre,
    double volume,
    double cutOff,
    double lastSet,
    double meanTemperatureAtCutOff,
    Constriction constriction,
    double unfedLow,
    double unfedHigh,
    List<Dent> dents,
    List<HotSpot> spots,
    double openUntil,
    double dentVolume,
    Sunk sunk,
    String sentence,
    String sign) {
  public Pocket {
    cavities = List.copyOf(cavities);
    dents = List.copyOf(dents);
    spots = List.copyOf(spots);
  }

  /** s longer that the way in would have had to stay open; 0 where no dent is seen. */
  public double margin() {
    return Math.max(0, openUntil - cutOff);
  }

  /** The same in other words. */
  public Pocket told(String newSentence, String newSign) {
    return new Pocket(
        number,
        cavities,
        severity,
        centre,
        volume,
        cutOff,
        lastSet,
        meanTemperatureAtCutOff,
        constriction,
        unfedLow,
        unfedHigh,
        dents,
        spots,
        openUntil,
        dentVolume,
        sunk,
        newSentence,
        newSign);
  }

  /** The only cavity's, without dents to speak of. */
  public Pocket(
      int number,
      Severity severity,
      Vec3 centre,
      double volume,
      double cutOff,
      double lastSet,
      double meanTemperatureAtCutOff,
      Constriction constriction,
      double unfedLow,
      double unfedHigh,
      List<Dent> dents,
      List<HotSpot> spots,
      String sentence) {
    this(
        number,
        List.of(),
        severity,
        centre,
        volume,
        cutOff,
        lastSet,
        meanTemperatureAtCutOff,
        constriction,
        unfedLow,
        unfedHigh,
        dents,
        spots,
        cutOff,
        0,
        Sunk.UNKNOWN,
        sentence,
        "");
  }
}
