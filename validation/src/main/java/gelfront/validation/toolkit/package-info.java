// SPDX-License-Identifier: Apache-2.0
/**
 * gelfront's share of the comparison with general-purpose toolkits ({@code validation/toolkits}).
 * In: a voxel size. Out: a file of errors and costs, laid out as the toolkits' scripts lay out
 * theirs.
 */
package gelfront.validation.toolkit;
