// SPDX-License-Identifier: Apache-2.0
package gelfront.finding;

import gelfront.mesh.Vec3;
import java.util.List;

/**
 * What the shot itself came to.
 *
 * @param calculated whether it was; false: all else means nothing
 * @param mayNotFill whether some place of the part is reached too cold, or not at all
 * @param end why no more came
 * @param sentence in words
 * @param time s until no more came
 * @param pressure Pa over the air's at the mouth, at most
 * @param reynolds of the flow in the gate, rho u d / eta as hot as shot
 * @param speed m/s in the gate, mean
 * @param coldest °C of the front where it was coldest in the part
 * @param coldestAt where
 * @param margin K by which that is above where nothing flows; negative where a place isn't reached
 * @param spare s for which the front could have gone on cooling as it did; +infinity: it didn't
 * @param last place of the part that was filled last
 * @param lastAt s
 * @param unfilled m3 of the part that no liquid reached, trapped air apart
 * @param cold places that may not fill, largest first
 * @param air trapped, largest first
 * @param welds where fronts met, coolest first
 * @param course how it went, some thirty moments from the start to the end
 */
public record Filled(
    boolean calculated,
    boolean mayNotFill,
    End end,
    String sentence,
    double time,
    double pressure,
    double reynolds,
    double speed,
    double coldest,
    Vec3 coldestAt,
    double margin,
    double spare,
    Vec3 last,
    double lastAt,
    double unfilled,
    List<Cold> cold,
    List<TrappedAir> air,
    List<Weld> welds,
    List<Moment> course) {
  /** The cavity was taken to be full at the start. */
  public static final Filled NOT_CALCULATED =
      new Filled(
          false, false, End.FULL, "", 0, 0, 0, 0, 0, Vec3.ZERO, 0, 0, Vec3.ZERO, 0, 0, List.of(),
          List.of(), List.of(), List.of());

  /** How to tell the two faults apart; common practice, no source. */
  public static final String APART =
      "A dent still has the cavity's texture on it; trapped air leaves a polished hollow with rounded"
          + " rims and no texture, for no wall was there.";

  public Filled {
    cold = List.copyOf(cold);
    air = List.copyOf(air);
    welds = List.copyOf(welds);
    course = List.copyOf(course);
  }

  /** Why no more came. */
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

  /** The same in words. */
  public Filled told(String newSentence, List<TrappedAir> newAir) {
    return new Filled(
        calculated,
        mayNotFill,
        end,
        newSentence,
        time,
        pressure,
        reynolds,
        speed,
        coldest,
        coldestAt,
        margin,
        spare,
        last,
        lastAt,
        unfilled,
        cold,
        newAir,
        welds,
        course);
  }

  /**
   * A place that may not fill.
   *
   * @param place its middle
   * @param volume m3
   * @param reached whether any liquid came
   * @param margin K above where nothing flows; 0 where none came
   * @param spare s that the front could have come later; 0 where none came
   */
  public record Cold(Vec3 place, double volume, boolean reached, double margin, double spare) {}

  /**
   * Air that could not leave.
   *
   * @param number from 1, apart from those of dents
   * @param place its middle
   * @param volume m3 that it has under the pressure that holds
   * @param began m3 when it was cut off
   * @param since s at which that was
   * @param pressure Pa over the air's at the end of filling
   * @param vent where a vent would meet it, on the parting face where it can be
   * @param offFace metres from there to the parting face; 0: it lies on it
   * @param ventWidth metres that a vent on that face wants; 0 where none reaches it
   * @param proposal in words
   */
  public record TrappedAir(
      int number,
      Vec3 place,
      double volume,
      double began,
      double since,
      double pressure,
      Vec3 vent,
      double offFace,
      double ventWidth,
      String proposal) {
    /** Metres: deep enough for air, too thin for plastisol: common practice, no source. */
    public static final double VENT_DEPTH = 0.03e-3;

    private static final int ALPHABET = 26;

    /** A, B, ...: numbers are those of dents' pockets. */
    public String letter() {
      return number <= ALPHABET
          ? String.valueOf((char) ('A' + number - 1))
          : "A" + (number - ALPHABET);
    }

    /** The same in words. */
    public TrappedAir told(String newProposal) {
      return new TrappedAir(
          number, place, volume, began, since, pressure, vent, offFace, ventWidth, newProposal);
    }
  }

  /**
   * A moment while it fills.
   *
   * @param time s
   * @param volume m3 that are in
   * @param mouth Pa over the air's at the mouth
   * @param gate Pa over the air's in the gates, mean; 0 before liquid is there
   * @param front where the front is that has come farthest from the gate, or in the feed from the
   *     mouth
   */
  public record Moment(double time, double volume, double mouth, double gate, Vec3 front) {}

  /**
   * Where fronts met.
   *
   * @param place its middle
   * @param area m2
   * @param temperature °C of the cooler front
   * @param cool whether that is so cool that the seam may be seen or tear
   */
  public record Weld(Vec3 place, double area, double temperature, boolean cool) {}
}
