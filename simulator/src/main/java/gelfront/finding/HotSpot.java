// SPDX-License-Identifier: Apache-2.0
package gelfront.finding;

import gelfront.mesh.Vec3;

/**
 * A place inside a pocket that sets later than all round it.
 *
 * @param place part coordinates, metres
 * @param setTime s
 * @param separatedAt s at which it parted from the rest of the pocket; its pocket's cut-off time
 *     for the last-setting one
 * @param neck what parted it from the rest; for the last-setting one its pocket's constriction
 */
public record HotSpot(Vec3 place, double setTime, double separatedAt, Constriction neck) {}
