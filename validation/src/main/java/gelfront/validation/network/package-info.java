// SPDX-License-Identifier: Apache-2.0
/**
 * Feeding as a chain of cooled tubes: a second opinion on the tool's, by other equations. In: an
 * axisymmetric design and its liquid. Out: what the part was fed, and when that fell off. Shares no
 * code with the tool.
 */
package gelfront.validation.network;
