// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A cell of a log: a number, perhaps with a unit of temperature behind it. */
record LogCell(double value, Optional<Unit> unit) {
  private static final Pattern NUMBER =
      Pattern.compile("([-+]?\\d+(?:[.,]\\d+)?(?:[eE][-+]?\\d+)?)\\s*(?:°|º|deg)?\\s*([CFK]?)");

  /** Of temperature. */
  enum Unit {
    C,
    F,
    K;

    double celsius(double v) {
      return switch (this) {
        case C -> v;
        case F -> (v - 32) / 1.8;
        case K -> v - 273.15;
      };
    }
  }

  /** Absent where the text is no number. */
  static Optional<LogCell> of(String text) {
    Matcher m = NUMBER.matcher(text.strip().replace("\"", ""));
    if (!m.matches()) {
      return Optional.empty();
    }
    double v = Double.parseDouble(m.group(1).replace(',', '.'));
    Optional<Unit> unit =
        m.group(2).isEmpty() ? Optional.empty() : Optional.of(Unit.valueOf(m.group(2)));
    return Optional.of(new LogCell(v, unit));
  }

  /** A bare number. */
  static OptionalDouble number(String text) {
    return of(text)
        .filter(c -> c.unit().isEmpty())
        .map(c -> OptionalDouble.of(c.value()))
        .orElse(OptionalDouble.empty());
  }
}
