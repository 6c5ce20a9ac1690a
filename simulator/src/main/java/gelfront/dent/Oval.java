// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import gelfront.mesh.Vec3;

/**
 * How far a part goes oval that is opened with a liquid core.
 *
 * @param liquid m3 that still flow as it is opened
 * @param depth metres that the worst section's flat sides come in
 * @param least metres of the same if no liquid goes along the part
 * @param place middle of that section, metres
 * @param shutUntil s that the mould would have had to stay shut for no oval to be seen
 */
public record Oval(double liquid, double depth, double least, Vec3 place, double shutUntil) {
  Oval until(double s) {
    return new Oval(liquid, depth, least, place, s);
  }
}
