// SPDX-License-Identifier: Apache-2.0
/** Making closed solids from numbers. Out: outward-wound meshes in metres. */
package gelfront.mesh.shape;
