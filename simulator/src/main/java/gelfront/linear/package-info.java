// SPDX-License-Identifier: Apache-2.0
/**
 * Linear systems on cubes and the edges between them. In: coefficients of edges and sinks. Out: the
 * solution by conjugate gradients with one multigrid cycle each. Allocates only when made.
 */
package gelfront.linear;
