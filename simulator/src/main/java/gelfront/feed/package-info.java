// SPDX-License-Identifier: Apache-2.0
/**
 * Feeding. Two ways to say when a place is cut off. By connectivity: in, set times; out, when each
 * place lost its last flowing path to the sprue, and what closed it. By flow: in, temperatures
 * before and after each step of conduction; out, what the liquid draws, what the skin gives, and
 * the heat carried. Knows no heat equation and no results.
 */
package gelfront.feed;
