// SPDX-License-Identifier: Apache-2.0
/**
 * How a skin gives way. In: a pocket, its temperatures over time, the set-time field. Out: unfed
 * contraction and dent depths with their bounds.
 */
package gelfront.dent;
