// SPDX-License-Identifier: Apache-2.0
/**
 * Common practice of the trade, which has no source, held against what the tool computes. In:
 * practices.json, what is said and the cases to run. Out: their figures, and whether these agree.
 */
package gelfront.validation.practice;
