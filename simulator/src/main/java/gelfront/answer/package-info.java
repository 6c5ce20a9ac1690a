// SPDX-License-Identifier: Apache-2.0
/**
 * What studies answer, as plain data that store, report and command line share: the outcome of one
 * run, and what was made of many. No solver, no files.
 */
package gelfront.answer;
