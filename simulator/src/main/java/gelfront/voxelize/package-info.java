// SPDX-License-Identifier: Apache-2.0
/**
 * Meshes, feed system and block into a voxel model. In: closed, outward-wound solids. Out: the
 * cavity's cells with true wall distances, the mould's cells, and a report of the error made.
 */
package gelfront.voxelize;
