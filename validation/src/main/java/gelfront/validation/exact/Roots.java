// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/** Zeros of functions of one variable, to rounding. */
final class Roots {
  private Roots() {}

  /** The zero between two places where the function differs in sign. */
  static double find(
      org.apache.commons.math3.analysis.UnivariateFunction f, double from, double to) {
    return new BracketingNthOrderBrentSolver(1e-15, 1e-15, 1e-300, 5).solve(500, f, from, to);
  }
}
