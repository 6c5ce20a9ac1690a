// SPDX-License-Identifier: Apache-2.0
/**
 * Moulds as drawn. In: closed solids of the mould's parts, put together. Out: the hollow in them
 * that is poured, as a closed mesh, with its opening and vents in words, or a {@code
 * MeshException}. Knows no files.
 */
package gelfront.mesh.mould;
