// SPDX-License-Identifier: Apache-2.0
/**
 * The user's own plastisol from measurements. In: a case that describes where a thermometer stood,
 * and what it logged. Out: properties with intervals, which of them the data can't tell, a table
 * for later cases. The fit itself knows nothing of plastisol.
 */
package gelfront.calibrate;
