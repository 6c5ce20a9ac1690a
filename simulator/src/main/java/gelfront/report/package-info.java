// SPDX-License-Identifier: Apache-2.0
/**
 * What people and other programs read. In: a stored run. Out: a page, tables and voxels as files;
 * the same run gives the same bytes. No solver is needed and no display.
 */
package gelfront.report;
