// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.base.Units;
import gelfront.finding.Filled;
import gelfront.finding.Findings;
import gelfront.finding.Opening;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import java.util.Comparator;
import java.util.List;

/**
 * Findings in words. A result stores those in millimetres and °C; from the same figures the same
 * sentences can be told in other units.
 */
public final class Telling {
  private final Words words;
  private final BenchSign sign;
  private final FillWords fill;
  private final OpeningWords opened;

  /**
   * @param units of lengths and temperatures
   */
  public Telling(Units units) {
    words = new Words(units);
    sign = new BenchSign(units);
    fill = new FillWords(units);
    opened = new OpeningWords(units);
  }

  /** The same findings; whatever words they had are told anew. */
  public Findings of(Findings f) {
    Opening opening = of(f.opening(), f.firmAt());
    List<Pocket> pockets =
        f.pockets().stream().map(p -> p.told(words.sentence(p), sign.of(p))).toList();
    Severity dents =
        pockets.stream()
            .map(Pocket::severity)
            .max(Comparator.naturalOrder())
            .orElse(Severity.CLEAN);
    Filled filled = of(f.filled());
    double empty = f.empty();
    return empty > 0
        ? f.told(
            fill.verdict(filled, empty),
            FillWords.EXPLANATION,
            fill.advice(filled),
            pockets,
            filled,
            opening)
        : f.told(
            words.verdict(dents, pockets, opening),
            words.explanation(dents, pockets),
            words.advice(pockets, opening),
            pockets,
            filled,
            opening);
  }

  private Opening of(Opening o, double firmAt) {
    return o.told(opened.sentence(o, firmAt), OpeningWords.sign(o));
  }

  /** What a shot came to. */
  Filled of(Filled f) {
    List<Filled.TrappedAir> air = f.air().stream().map(a -> a.told(fill.proposal(a))).toList();
    return f.calculated() ? f.told(fill.sentence(f), air) : f;
  }
}
