// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.setup.Change;
import gelfront.setup.InputName;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a log of trial shots: a heading, then one shot a line. Columns "case", "cavity", "dented"
 * (yes or no), "depth (mm)", "gate froze" (before or after the plunger's release), "note"; all
 * others are inputs of a case by name, their unit in brackets or with each value. Empty cells say
 * nothing.
 */
public final class TrialReader {
  private static final String[] DELIMITERS = {"\t", ";", ","};
  private static final Pattern HEADING =
      Pattern.compile("([^(\\[]+?)\\s*(?:[(\\[]([^)\\]]+)[)\\]])?");

  /** Metres: a dent that is not seen is hardly deeper. */
  private static final double UNSEEN = 1e-3;

  private final String file;
  private final List<Column> columns = new ArrayList<>();
  private final List<TrialShot> shots = new ArrayList<>();

  private TrialReader(String file) {
    this.file = file;
  }

  /** What a column holds. */
  private enum Kind {
    CASE,
    CAVITY,
    DENTED,
    DEPTH,
    FROZE,
    NOTE,
    INPUT
  }

  /**
   * @param key of an input; empty for other kinds
   * @param unit in brackets; empty: none
   */
  private record Column(Kind kind, String heading, String key, String unit) {}

  /**
   * @param file its name, for messages
   * @throws LogException with the line, if it can't be used or contradicts itself
   */
  public static List<TrialShot> read(String file, String text) {
    TrialReader r = new TrialReader(file);
    List<String> lines = text.replace("\ufeff", "").lines().toList();
    String delimiter = "";
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      if (delimiter.isEmpty()) {
        delimiter = delimiter(line);
        r.heading(i + 1, LogTable.cells(line, delimiter));
      } else {
        r.shot(i + 1, LogTable.cells(line, delimiter));
      }
    }
    r.whole();
    return List.copyOf(r.shots);
  }

  private static String delimiter(String heading) {
    return Arrays.stream(DELIMITERS).filter(heading::contains).findFirst().orElse(",");
  }

  private LogException wrong(int line, String why) {
    return new LogException(file, line, why);
  }

  private void heading(int line, List<String> cells) {
    for (String cell : cells) {
      Matcher m = HEADING.matcher(cell.strip());
      if (!m.matches()) {
        throw wrong(line, "a column has no heading");
      }
      String unit = m.group(2) == null ? "" : m.group(2).strip();
      columns.add(column(line, m.group(1).strip(), unit));
    }
    boolean tells =
        columns.stream()
            .anyMatch(c -> List.of(Kind.DENTED, Kind.DEPTH, Kind.FROZE).contains(c.kind()));
    if (!tells) {
      throw wrong(line, "no column says what came of it: dented, depth (mm) or gate froze");
    }
  }

  private Column column(int line, String name, String unit) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[\\s._-]+", " ");
    Kind kind =
        switch (plain) {
          case "case" -> Kind.CASE;
          case "cavity", "body", "rung" -> Kind.CAVITY;
          case "dented", "dent" -> Kind.DENTED;
          case "depth", "dent depth" -> Kind.DEPTH;
          case "gate froze", "froze" -> Kind.FROZE;
          case "note", "notes", "date", "shot number" -> Kind.NOTE;
          default -> Kind.INPUT;
        };
    if (kind == Kind.DEPTH && unit.isEmpty()) {
      throw wrong(line, "\"" + name + "\" has no unit: write depth (mm)");
    }
    try {
      String key = kind == Kind.INPUT ? InputName.of(name).key() : "";
      return new Column(kind, name, key, unit);
    } catch (IllegalArgumentException e) {
      throw wrong(line, String.valueOf(e.getMessage()));
    }
  }

  private void shot(int line, List<String> cells) {
    if (cells.size() != columns.size()) {
      throw wrong(line, cells.size() + " cells where the heading has " + columns.size());
    }
    String caseName = "";
    int cavity = 0;
    Optional<Boolean> dented = Optional.empty();
    OptionalDouble depth = OptionalDouble.empty();
    Optional<Boolean> froze = Optional.empty();
    List<Change> recipe = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      Column c = columns.get(i);
      String cell = cells.get(i).strip();
      if (cell.isEmpty()) {
        continue;
      }
      switch (c.kind()) {
        case CASE -> caseName = cell;
        case CAVITY -> cavity = whole(line, c, cell);
        case DENTED -> dented = Optional.of(word(line, c, cell, "yes", "no"));
        case DEPTH -> depth = OptionalDouble.of(length(line, c, cell));
        case FROZE -> froze = Optional.of(word(line, c, cell, "before", "after"));
        case INPUT -> recipe.add(input(line, c, cell));
        case NOTE -> {
          // for people
        }
      }
    }
    if (depth.isPresent() && depth.getAsDouble() == 0 && dented.isEmpty()) {
      dented = Optional.of(false); // no dent at all says as much as a no
    }
    add(new TrialShot(line, caseName, recipe, cavity, dented, depth, froze));
  }

  private void add(TrialShot s) {
    if (s.dented().isEmpty() && s.depth().isEmpty() && s.froze().isEmpty()) {
      throw wrong(s.line(), "says nothing of what came of it");
    }
    boolean flat = s.depth().isPresent() && s.depth().getAsDouble() == 0;
    if (flat && s.dented().orElse(false)) {
      throw wrong(s.line(), "contradicts itself: dented, and yet 0 mm deep");
    }
    boolean deep = s.depth().isPresent() && s.depth().getAsDouble() > UNSEEN;
    if (deep && s.dented().filter(d -> !d).isPresent()) {
      throw wrong(
          s.line(),
          Quantities.say(
              "contradicts itself: not dented, and yet %.2f mm deep",
              s.depth().getAsDouble() * 1e3));
    }
    shots.add(s);
  }

  private int whole(int line, Column c, String cell) {
    if (!cell.matches("[1-9][0-9]?")) {
      throw wrong(line, c.heading() + " \"" + cell + "\" is no number from 1 to 99");
    }
    return Integer.parseInt(cell);
  }

  private boolean word(int line, Column c, String cell, String yes, String no) {
    String plain = cell.toLowerCase(Locale.ROOT);
    if (!plain.equals(yes) && !plain.equals(no)) {
      throw wrong(line, c.heading() + " \"" + cell + "\": " + yes + " or " + no);
    }
    return plain.equals(yes);
  }

  private double length(int line, Column c, String cell) {
    try {
      double v = Quantities.parse(cell + " " + c.unit(), Dimension.LENGTH);
      if (!(v >= 0 && v < 0.05)) {
        throw wrong(line, c.heading() + " \"" + cell + "\" is no depth of a dent");
      }
      return v;
    } catch (IllegalArgumentException e) {
      throw wrong(line, c.heading() + ": " + e.getMessage());
    }
  }

  /** The value is checked with the case that it goes into. */
  private Change input(int line, Column c, String cell) {
    boolean bare = cell.matches("[-+]?[0-9]*[.,]?[0-9]+");
    if (bare && c.unit().isEmpty()) {
      throw wrong(
          line,
          "\""
              + c.heading()
              + "\" has no unit: write it in brackets in the heading, or with "
              + cell);
    }
    String value = bare ? cell.replace(',', '.') + " " + c.unit() : cell;
    return new Change.Set(c.key(), "\"" + value.replace("\"", "") + "\"");
  }

  private void whole() {
    if (shots.isEmpty()) {
      throw wrong(0, "holds no shot: a heading, then one line for each");
    }
    for (int i = 0; i < shots.size(); i++) {
      for (int k = i + 1; k < shots.size(); k++) {
        if (shots.get(i).repeats(shots.get(k))) {
          contradict(shots.get(i), shots.get(k));
        }
      }
    }
  }

  /** Shots that say the opposite of each other, with no third that decides. */
  private void contradict(TrialShot a, TrialShot b) {
    List<TrialShot> alike = shots.stream().filter(s -> s.repeats(a)).toList();
    boolean dented = evenly(alike.stream().flatMap(s -> s.dented().stream()).toList());
    boolean froze = evenly(alike.stream().flatMap(s -> s.froze().stream()).toList());
    if (dented || froze) {
      throw wrong(
          b.line(),
          "contradicts line "
              + a.line()
              + ": the same shot "
              + (dented ? "dented and not dented" : "froze before and after the release")
              + " as often; leave both out, or shoot a third");
    }
  }

  private static boolean evenly(List<Boolean> words) {
    long yes = words.stream().filter(w -> w).count();
    return !words.isEmpty() && 2 * yes == words.size();
  }
}
