// SPDX-License-Identifier: Apache-2.0
/**
 * The shot itself: liquid that comes through the mouth and drives the air before it. In: a cavity,
 * what drives the liquid, where air can leave. Out: when each place was reached and how hot, what
 * air is left, and the temperatures that cooling starts from. Liquid is exact to rounding: what has
 * come in is what is in. Knows no cases, no results.
 */
package gelfront.fill;
