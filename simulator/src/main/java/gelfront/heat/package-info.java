// SPDX-License-Identifier: Apache-2.0
/**
 * Conduction and gelation in part and mould. In: voxel model, curves, state. Out: the state one
 * step later, heat conserved to rounding. Knows neither flow nor results.
 */
package gelfront.heat;
