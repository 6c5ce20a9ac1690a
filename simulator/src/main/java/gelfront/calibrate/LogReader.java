// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Reads what loggers write: parted by tabs, semicolons or commas, with or without headings, in °C,
 * °F or K, with decimal points or commas. What can't be trusted is refused with its line; what is
 * left out is noted.
 */
public final class LogReader {
  private static final int LEAST = 20;

  /** Of all lines that may be without a reading. */
  private static final double MOST_MISSING = 0.1;

  /** Of the whole time that may pass without a reading. */
  private static final double LONGEST_GAP = 0.1;

  /** Of all readings that may stand at the highest value. */
  private static final double MOST_AT_TOP = 0.1;

  /** K that a cooling log must fall by. */
  private static final double LEAST_FALL = 10;

  /** K from one value to the next, from which on a thermometer is a coarse one. */
  private static final double COARSE = 0.5;

  private static final double DAY = 86400;

  private final String file;
  private final LogTable table;
  private final int time;
  private final int temperature;
  private final LogClock clock;
  private final List<String> notes = new ArrayList<>();

  private LogReader(String file, LogTable table, Optional<String> column) {
    this.file = file;
    this.table = table;
    List<Integer> clocks = table.titled("time", "elapsed", "sec", "zeit", "date");
    time = clocks.isEmpty() ? 0 : clocks.get(clocks.size() - 1);
    temperature = temperature(column, clocks);
    clock = new LogClock(unit(table.heading().get(time).toLowerCase(Locale.ROOT)));
  }

  /**
   * @param file name, for messages
   * @param column heading of the temperature, where there are several
   * @throws LogException in words, with file and line
   */
  public static TemperatureLog read(String file, String text, Optional<String> column) {
    return new LogReader(file, LogTable.of(file, text), column).log();
  }

  private static double unit(String heading) {
    if (heading.contains("min")) {
      return 60;
    }
    return heading.contains("msec") || heading.contains("(ms)") || heading.contains("[ms]")
        ? 1e-3
        : heading.matches(".*[(\\[](h|hours?)[)\\]].*") ? 3600 : 1;
  }

  private int temperature(Optional<String> column, List<Integer> clocks) {
    if (column.isPresent()) {
      int c = table.heading().indexOf(column.get());
      if (c < 0) {
        throw new LogException(
            file, 0, "no column \"" + column.get() + "\"; there are " + table.heading());
      }
      return c;
    }
    List<Integer> titled =
        new ArrayList<>(table.titled("temp", "°", "deg", "celsius", "fahrenheit"));
    titled.removeAll(clocks);
    if (titled.isEmpty()) {
      for (int c = 0; c < table.heading().size(); c++) {
        boolean number = LogCell.of(table.rows().get(0).get(c)).isPresent();
        if (c != time && !clocks.contains(c) && number) {
          titled.add(c);
        }
      }
    }
    if (titled.size() != 1) {
      String which = titled.isEmpty() ? "no column of temperatures" : "several temperatures";
      throw new LogException(
          file, 0, which + " among " + table.heading() + ": say which by --column");
    }
    return titled.get(0);
  }

  private TemperatureLog log() {
    List<Double> times = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    List<Integer> lines = new ArrayList<>();
    List<Integer> missing = new ArrayList<>();
    LogCell.Unit unit = headingUnit();
    Optional<LogCell.Unit> inCells = Optional.empty();
    double days = 0;
    for (int r = 0; r < table.rows().size(); r++) {
      int line = table.lines().get(r);
      List<String> row = table.rows().get(r);
      OptionalDouble t = cell(row, time).map(clock::seconds).orElse(OptionalDouble.empty());
      Optional<LogCell> v = cell(row, temperature).flatMap(LogCell::of);
      if (t.isEmpty() || v.isEmpty()) {
        missing.add(line);
        continue;
      }
      if (inCells.isPresent() && v.get().unit().isPresent() && !inCells.equals(v.get().unit())) {
        throw new LogException(file, line, "°C and °F are mixed: " + row.get(temperature));
      }
      inCells = v.get().unit().isPresent() ? v.get().unit() : inCells;
      double now = t.getAsDouble() + days;
      double before = times.isEmpty() ? now : times.get(times.size() - 1);
      if (now < before - 0.5 * DAY && t.getAsDouble() < DAY) { // past midnight
        days += DAY;
        now += DAY;
      }
      if (now < before) {
        throw new LogException(file, line, "the clock jumps back: " + row.get(time));
      }
      if (now > before || times.isEmpty()) {
        times.add(now);
        values.add(v.get().unit().orElse(unit).celsius(v.get().value()));
        lines.add(line);
      }
    }
    told(missing);
    return checked(times, values, lines);
  }

  private static Optional<String> cell(List<String> row, int at) {
    return at < row.size() ? Optional.of(row.get(at)) : Optional.empty();
  }

  private LogCell.Unit headingUnit() {
    String h = table.heading().get(temperature);
    String last = h.replaceAll("[\\s)\\]]+$", "");
    if (h.toLowerCase(Locale.ROOT).contains("fahr") || last.matches(".*(°|º|deg ?|[(\\[])F")) {
      return LogCell.Unit.F;
    }
    if (last.matches(".*[(\\[]K")) {
      return LogCell.Unit.K;
    }
    boolean inCells =
        LogCell.of(table.rows().get(0).get(temperature)).flatMap(LogCell::unit).isPresent();
    if (!last.matches(".*(°|º|deg ?|[(\\[])C") && !h.contains("elsius") && !inCells) {
      notes.add("No unit of temperature is stated: taken for °C.");
    }
    return LogCell.Unit.C;
  }

  private void told(List<Integer> missing) {
    if (missing.size() > MOST_MISSING * table.rows().size()) {
      throw new LogException(
          file,
          missing.get(0),
          missing.size() + " of " + table.rows().size() + " lines have no reading");
    }
    if (!missing.isEmpty()) {
      notes.add(
          missing.size() + " lines without a reading left out, the first is " + missing.get(0));
    }
  }

  /** Whether the thermometer shows whole or half degrees: all steps are so many of the least. */
  private static boolean coarse(double[] v) {
    double[] steps =
        IntStream.range(1, v.length)
            .mapToDouble(i -> Math.abs(v[i] - v[i - 1]))
            .filter(d -> d > 1e-6)
            .toArray();
    double least = Arrays.stream(steps).min().orElse(0);
    return least >= COARSE - 1e-6
        && Arrays.stream(steps).allMatch(d -> Math.abs(d / least - Math.rint(d / least)) < 1e-3);
  }

  private TemperatureLog checked(List<Double> times, List<Double> values, List<Integer> lines) {
    int n = times.size();
    if (n < LEAST) {
      throw new LogException(file, 0, n + " readings are too few: " + LEAST + " are needed");
    }
    double[] t = times.stream().mapToDouble(Double::doubleValue).toArray();
    double[] v = values.stream().mapToDouble(Double::doubleValue).toArray();
    double high = Arrays.stream(v).max().orElseThrow();
    double low = Arrays.stream(v).min().orElseThrow();
    if (high == low) {
      throw new LogException(file, 0, "every reading is the same: is the sensor dead?");
    }
    long top = Arrays.stream(v).filter(x -> x == high).count();
    boolean flat = top > MOST_AT_TOP * n && top > 5;
    if (flat && coarse(v)) {
      notes.add(
          String.format(
              Locale.ROOT,
              "%d readings stand at the highest value, %.0f °C: right for the middle of a thick cup,"
                  + " but if the thermometer can't show more, believe none of this.",
              top,
              high));
    } else if (flat) {
      throw new LogException(
          file,
          lines.get(values.indexOf(high)),
          top + " readings stand at the highest value: did the logger reach its limit?");
    }
    for (int i = 1; i < n; i++) {
      if (t[i] - t[i - 1] > LONGEST_GAP * (t[n - 1] - t[0])) {
        throw new LogException(
            file,
            lines.get(i),
            String.format(
                Locale.ROOT, "nothing was logged for %.0f s before this", t[i] - t[i - 1]));
      }
    }
    if (high > 250 || low < -20) {
      double odd = high > 250 ? high : low;
      throw new LogException(
          file,
          lines.get(values.indexOf(odd)),
          String.format(Locale.ROOT, "%.0f °C is no plastisol: is the unit right?", odd));
    }
    TemperatureLog log = new TemperatureLog(t, v, notes);
    double[] cooling = log.cooling().temperatures();
    if (cooling.length < LEAST || cooling[0] - cooling[cooling.length - 1] < LEAST_FALL) {
      throw new LogException(file, 0, "it hardly cools: 20 readings and 10 K of fall are needed");
    }
    return log;
  }
}
