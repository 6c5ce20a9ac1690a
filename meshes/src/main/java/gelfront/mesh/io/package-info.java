// SPDX-License-Identifier: Apache-2.0
/**
 * Mesh files. In: a path and a unit. Out: a mesh in metres, equal corners merged, or a {@code
 * MeshException} with file and place.
 */
package gelfront.mesh.io;
