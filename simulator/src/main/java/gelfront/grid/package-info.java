// SPDX-License-Identifier: Apache-2.0
/**
 * Where values live. Uniform cubes for the plastisol, rectilinear cells for the mould, and the
 * voxel model that joins both. In: edges and arrays. Out: index arithmetic, distances, connected
 * regions; no physics.
 */
package gelfront.grid;
