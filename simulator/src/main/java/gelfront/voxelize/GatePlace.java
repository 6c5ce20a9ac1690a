// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.mesh.Vec3;

/**
 * A gate.
 *
 * @param middle metres
 * @param width its narrowest, metres
 * @param cavity number of the cavity that it leads into, from 1
 */
public record GatePlace(Vec3 middle, double width, int cavity) {}
