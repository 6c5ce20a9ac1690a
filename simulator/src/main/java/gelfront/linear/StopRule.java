// SPDX-License-Identifier: Apache-2.0
package gelfront.linear;

/**
 * When a solve ends: both residuals small.
 *
 * @param share of the measure's 2-norm, the right-hand side as a rule, to which the residual's is
 *     brought down
 * @param sumShare of the sum of |measure| that the residual's sum may have: what a balance is off
 *     by
 * @param ceiling iterations after which it is an error
 */
public record StopRule(double share, double sumShare, int ceiling) {
  public StopRule {
    if (!(share > 0) || !(sumShare > 0) || ceiling < 1) {
      throw new IllegalArgumentException("a solve must be able to end");
    }
  }
}
