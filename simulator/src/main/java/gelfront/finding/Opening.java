// SPDX-License-Identifier: Apache-2.0
package gelfront.finding;

import gelfront.mesh.Vec3;

/**
 * What becomes of a part whose mould the clock opens. Dents are those of a part that stays in the
 * mould until it is firm; this comes beside them.
 *
 * @param at s after the shot at which the mould is opened; +infinity: as soon as the part is firm
 * @param severity of the oval
 * @param liquid m3 of the part that still flowed then
 * @param oval metres that the flat sides of the worst section come in, and the others go out; 0: it
 *     stays round
 * @param least metres of the same if no liquid goes along the part
 * @param place middle of that section, part coordinates, metres
 * @param shutUntil s that the mould would have had to stay shut for no oval to be seen; {@code at}
 *     where none is
 * @param sentence the same in plain words; empty where it is opened firm
 * @param sign what a maker sees at the bench then; empty where no oval is seen
 */
public record Opening(
    double at,
    Severity severity,
    double liquid,
    double oval,
    double least,
    Vec3 place,
    double shutUntil,
    String sentence,
    String sign) {
  /** Opened as soon as the part is firm. */
  public static final Opening WHEN_FIRM =
      new Opening(
          Double.POSITIVE_INFINITY,
          Severity.CLEAN,
          0,
          0,
          0,
          Vec3.ZERO,
          Double.POSITIVE_INFINITY,
          "",
          "");

  /** Whether a clock opens it. */
  public boolean byClock() {
    return Double.isFinite(at);
  }

  /** The same in words. */
  public Opening told(String newSentence, String newSign) {
    return new Opening(at, severity, liquid, oval, least, place, shutUntil, newSentence, newSign);
  }
}
