// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Sizing;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Where to look for a size that does while none is known that does: a narrow way starves the part,
 * a wide one heats it, so that it dents with the one and, where a clock opens the mould, goes oval
 * with the other.
 *
 * @param visible metres from which either is seen
 * @param tolerance metres between neighbours within which nobody looks
 */
record DentOrOval(double visible, double tolerance) {
  /**
   * Half way between the first neighbours of which the narrower only dents and the wider only goes
   * oval, metres; absent: there are none.
   *
   * @param points rising
   */
  OptionalDouble between(List<Sizing.Point> points) {
    for (int i = 1; i < points.size(); i++) {
      double a = points.get(i - 1).gate();
      double b = points.get(i).gate();
      if (b - a > tolerance && dents(points.get(i - 1)) && goesOval(points.get(i))) {
        return OptionalDouble.of(0.5 * (a + b));
      }
    }
    return OptionalDouble.empty();
  }

  private boolean dents(Sizing.Point p) {
    return p.ran()
        .outcome()
        .filter(o -> o.dentHigh() >= visible && !o.goesOval(visible))
        .isPresent();
  }

  private boolean goesOval(Sizing.Point p) {
    return p.ran().outcome().filter(o -> o.goesOval(visible) && o.dentHigh() < visible).isPresent();
  }
}
