// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Times as loggers write them, as seconds from some moment: numbers in the unit of the heading,
 * h:m:s and m:s, clock times, dates with times in ISO order, with points, or with slashes and the
 * month first.
 *
 * @param perUnit s in a bare number's unit
 */
record LogClock(double perUnit) {
  private static final Pattern SPAN =
      Pattern.compile("(?:(\\d+):)?(\\d{1,3}):(\\d{1,2}(?:[.,]\\d+)?)");

  private static final List<DateTimeFormatter> DATES =
      List.of(
          of("uuuu-M-d['T'][ ]H:mm[:ss]"),
          of("uuuu/M/d H:mm[:ss]"),
          of("d.M.uuuu H:mm[:ss]"),
          of("M/d/uuuu H:mm[:ss]"),
          of("M/d/uuuu h:mm[:ss] a"));

  private static final LocalDateTime EPOCH = LocalDateTime.of(2000, 1, 1, 0, 0);

  private static final DateTimeFormatter NOON = DateTimeFormatter.ofPattern("h:mm:ss a", Locale.US);

  private static DateTimeFormatter of(String pattern) {
    boolean half = pattern.endsWith(" a");
    String head = half ? pattern.substring(0, pattern.length() - 2) : pattern;
    DateTimeFormatterBuilder b =
        new DateTimeFormatterBuilder()
            .parseCaseInsensitive()
            .appendPattern(head)
            .optionalStart()
            .appendFraction(ChronoField.NANO_OF_SECOND, 1, 9, true)
            .optionalEnd();
    return (half ? b.appendPattern(" a") : b).toFormatter(Locale.US);
  }

  /** s; absent where the text is no time. */
  OptionalDouble seconds(String text) {
    String t = text.strip();
    OptionalDouble number = LogCell.number(t);
    if (number.isPresent()) {
      return OptionalDouble.of(number.getAsDouble() * perUnit);
    }
    Matcher m = SPAN.matcher(t);
    if (m.matches()) {
      double hours = m.group(1) == null ? 0 : Double.parseDouble(m.group(1));
      double s = Double.parseDouble(m.group(3).replace(',', '.'));
      return OptionalDouble.of(3600 * hours + 60 * Double.parseDouble(m.group(2)) + s);
    }
    return DATES.stream()
        .map(f -> date(t.replaceFirst("Z$", ""), f))
        .filter(OptionalDouble::isPresent)
        .findFirst()
        .orElseGet(() -> afterNoon(t));
  }

  private static OptionalDouble date(String text, DateTimeFormatter format) {
    try {
      Duration since = Duration.between(EPOCH, LocalDateTime.parse(text, format));
      return OptionalDouble.of(1e-9 * since.toNanos());
    } catch (DateTimeParseException e) { // in another order, perhaps
      return OptionalDouble.empty();
    }
  }

  private static OptionalDouble afterNoon(String text) {
    try {
      return OptionalDouble.of(LocalTime.parse(text.toUpperCase(Locale.US), NOON).toSecondOfDay());
    } catch (DateTimeParseException e) {
      return OptionalDouble.empty();
    }
  }
}
