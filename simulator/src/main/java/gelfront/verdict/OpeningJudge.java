// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.dent.Oval;
import gelfront.finding.Opening;
import gelfront.finding.Severity;

/**
 * What a mould that is opened by the clock does to its part: nothing where it is firm by then; soft
 * where it has only set; oval where its core still flows and the skin doesn't hold it round.
 */
final class OpeningJudge {
  private final double visible;

  /**
   * @param visible metres from which an oval is seen
   */
  OpeningJudge(double visible) {
    this.visible = visible;
  }

  /**
   * Without words.
   *
   * @param at s at which the mould is opened
   */
  Opening of(double at, Oval o) {
    return new Opening(
        at, severity(o), o.liquid(), o.depth(), o.least(), o.place(), o.shutUntil(), "", "");
  }

  private Severity severity(Oval o) {
    if (o.least() >= visible) {
      return Severity.WILL_DENT;
    }
    return o.depth() >= visible ? Severity.MAY_DENT : Severity.CLEAN;
  }
}
