// SPDX-License-Identifier: Apache-2.0
/**
 * Triangle meshes. In: vertices and corners. Out: immutable meshes in metres. Knows no files; those
 * are in {@code gelfront.mesh.io}.
 */
package gelfront.mesh;
