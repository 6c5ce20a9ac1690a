// SPDX-License-Identifier: Apache-2.0
/**
 * Judging a run. In: set times, cut-offs, sinks. Out: findings in numbers and plain words. Claims
 * nothing that was not computed.
 */
package gelfront.verdict;
