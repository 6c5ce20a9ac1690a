// SPDX-License-Identifier: Apache-2.0
/**
 * The case. In: a text file. Out: immutable checked records in SI units and °C, or all mistakes at
 * once with their lines.
 */
package gelfront.setup;
