// SPDX-License-Identifier: Apache-2.0
package gelfront.finding;

import gelfront.mesh.Vec3;

/**
 * How far the skin may be pulled in, beyond even shrinkage.
 *
 * @param place on or near the surface over the deepest section, part coordinates, metres
 * @param depthLow metres, low bound
 * @param depthHigh metres, high bound
 * @param width of the lobe round the section, metres
 * @param length along the part over which it is deeper than half its depth, metres
 */
public record Dent(Vec3 place, double depthLow, double depthHigh, double width, double length) {}
