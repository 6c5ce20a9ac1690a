// SPDX-License-Identifier: Apache-2.0
/**
 * Can a mesh be trusted. In: any mesh. Out: a report of what is wrong with it and where, and a
 * closed, consistently wound mesh or a refusal.
 */
package gelfront.mesh.check;
