// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A log's lines cut into cells.
 *
 * @param heading of each column; empty texts where there is none
 * @param rows cells of each reading
 * @param lines number of each in the file, 1 the first
 */
record LogTable(List<String> heading, List<List<String>> rows, List<Integer> lines) {
  private static final String[] DELIMITERS = {"\t", ";", ","};

  /** Readings begin with the first line that has a time and a number behind it. */
  static LogTable of(String file, String text) {
    List<String> all = text.replace("\ufeff", "").lines().toList();
    String delimiter = delimiter(file, all);
    List<String> heading = List.of();
    List<List<String>> rows = new ArrayList<>();
    List<Integer> lines = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      List<String> cells = cells(all.get(i), delimiter);
      if (all.get(i).isBlank() || all.get(i).startsWith("#")) {
        continue;
      }
      if (rows.isEmpty() && !reading(cells)) {
        heading = cells.size() > 1 ? cells : heading;
      } else {
        rows.add(cells);
        lines.add(i + 1);
      }
    }
    if (rows.isEmpty()) {
      throw new LogException(file, 0, "no line has a time and a temperature");
    }
    int columns = rows.get(0).size();
    List<String> padded = new ArrayList<>(heading.size() == columns ? heading : List.of());
    while (padded.size() < columns) {
      padded.add("");
    }
    return new LogTable(padded, rows, lines);
  }

  private static String delimiter(String file, List<String> lines) {
    for (String d : DELIMITERS) {
      if (lines.stream().map(l -> cells(l, d)).filter(LogTable::reading).count() >= 2) {
        return d;
      }
    }
    throw new LogException(
        file, 0, "no line has a time and a temperature, parted by a tab, a semicolon or a comma");
  }

  static List<String> cells(String line, String delimiter) {
    return Arrays.stream(line.split(java.util.regex.Pattern.quote(delimiter), -1))
        .map(c -> c.strip().replaceAll("^\"|\"$", ""))
        .toList();
  }

  private static boolean reading(List<String> cells) {
    boolean time = cells.size() > 1 && cells.stream().anyMatch(c -> time(c));
    return time && cells.stream().filter(c -> LogCell.of(c).isPresent() || time(c)).count() >= 2;
  }

  private static boolean time(String cell) {
    return new LogClock(1).seconds(cell).isPresent();
  }

  /** Columns whose heading has one of the words. */
  List<Integer> titled(String... words) {
    List<Integer> found = new ArrayList<>();
    for (int c = 0; c < heading.size(); c++) {
      String h = heading.get(c).toLowerCase(Locale.ROOT);
      if (Arrays.stream(words).anyMatch(h::contains)) {
        found.add(c);
      }
    }
    return found;
  }
}
