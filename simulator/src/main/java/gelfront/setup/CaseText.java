// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlInvalidTypeException;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * Changes a case file's text in place: comments, order and all other lines stay as they are. What
 * it made is read back, and held against what was wanted.
 */
final class CaseText {
  private static final String OWN_TABLE = ": write it in a table of its own, as in [gate]";

  private CaseText() {}

  /**
   * @param text a sound case file
   * @throws IllegalArgumentException where the text is written in a way that can't be changed
   */
  static String with(String text, Change change) {
    return with(text, List.of(change));
  }

  /**
   * As above, one change after the other; of what can be set at once the text is read once: a study
   * makes some hundred texts.
   */
  static String with(String text, List<Change> changes) {
    Read now = new Read(text);
    List<Change> left = changes;
    while (!left.isEmpty()) {
      List<Change.Set> sets = apart(now, left);
      now = sets.isEmpty() ? with(now, left.get(0)) : set(now, sets);
      left = left.subList(Math.max(1, sets.size()), left.size());
    }
    return now.text;
  }

  /** A text as it reads; what a change is held against, the next one goes by. */
  private record Read(String text, TomlParseResult toml) {
    Read(String text) {
      this(text, CaseFile.toml("", text));
    }
  }

  private static Read with(Read now, Change change) {
    if (change instanceof Change.Set s) {
      return OneOfSeveral.of(s.key())
          .map(o -> new Read(o.set(now.text, s.value())))
          .orElseGet(() -> set(now, List.of(s)));
    }
    if (change instanceof Change.Add a) {
      return add(now.text, a);
    }
    String key = ((Change.Remove) change).key();
    return OneOfSeveral.of(key)
        .map(o -> new Read(o.remove(now.text)))
        .orElseGet(() -> remove(now, key));
  }

  /**
   * Of the changes, as many from the first on as set keys of tables that stand, none in another.
   */
  private static List<Change.Set> apart(Read now, List<Change> changes) {
    List<Change.Set> sets = new ArrayList<>();
    List<List<String>> touched = new ArrayList<>();
    for (Change c : changes) {
      if (!(c instanceof Change.Set s) || OneOfSeveral.of(s.key()).isPresent()) {
        break;
      }
      List<String> path = path(s.key());
      boolean opens = path.size() > 1 && !now.toml.contains(path.subList(0, path.size() - 1));
      if (opens || touched.stream().anyMatch(t -> within(t, path) || within(path, t))) {
        break;
      }
      touched.add(path);
      sets.add(s);
    }
    return sets;
  }

  private static boolean within(List<String> path, List<String> table) {
    return path.size() >= table.size() && path.subList(0, table.size()).equals(table);
  }

  private static Read set(Read now, List<Change.Set> sets) {
    StringBuilder text = new StringBuilder(now.text);
    sets.stream()
        .map(s -> edit(now, path(s.key()), s.value()))
        .sorted(Comparator.comparingInt(Edit::from).reversed()) // what lies before keeps its place
        .forEach(e -> text.replace(e.from, e.end, e.put));
    Read changed = new Read(text.toString());
    for (Change.Set s : sets) {
      Object wanted = Toml.parse("x = " + s.value()).get(List.of("x"));
      Object found = changed.toml.get(path(s.key()));
      if (wanted == null || !plain(wanted).equals(plain(found))) {
        throw new IllegalArgumentException(
            s.key() + " can't be changed to " + s.value() + OWN_TABLE);
      }
    }
    return changed;
  }

  /** What is put in the place of a text's characters {@code from} to {@code end}. */
  private record Edit(int from, int end, String put) {}

  private static Edit edit(Read now, List<String> path, String value) {
    if (!now.toml.contains(path)) {
      return inserted(now.text, now.toml, path, value);
    }
    int from = valueStart(now.text, now.toml, path);
    return new Edit(from, valueEnd(now.text, from), value);
  }

  private static String plain(Object toml) {
    return toml instanceof TomlArray a
        ? a.toList().stream().map(CaseText::plain).toList().toString()
        : String.valueOf(toml);
  }

  private static Read remove(Read now, String key) {
    List<String> path = path(key);
    if (!now.toml.contains(path)) {
      return now;
    }
    int from = offset(now.text, now.toml.inputPositionOf(path));
    int end = valueEnd(now.text, valueStart(now.text, now.toml, path));
    Read changed = new Read(now.text.substring(0, from) + now.text.substring(end));
    if (!changed.toml.errors().isEmpty() || changed.toml.contains(path)) {
      throw new IllegalArgumentException(key + " can't be left out" + OWN_TABLE);
    }
    return changed;
  }

  private static Edit inserted(String text, TomlParseResult toml, List<String> path, String value) {
    String line = path.get(path.size() - 1) + " = " + value + "\n";
    if (path.size() == 1) {
      return new Edit(0, 0, line);
    }
    List<String> table = path.subList(0, path.size() - 1);
    TomlPosition at = toml.contains(table) ? toml.inputPositionOf(table) : null;
    if (at == null) {
      String head = "\n[" + String.join(".", table) + "]\n";
      return new Edit(text.length(), text.length(), (isEnded(text) ? "" : "\n") + head + line);
    }
    int head = offset(text, at);
    int next = text.indexOf('\n', head);
    boolean header = text.startsWith("[", head);
    if (!(toml.get(table) instanceof TomlTable) || !header) {
      throw new IllegalArgumentException(String.join(".", path) + " can't be added" + OWN_TABLE);
    }
    return next < 0
        ? new Edit(text.length(), text.length(), "\n" + line)
        : new Edit(next + 1, next + 1, line);
  }

  private static Read add(String text, Change.Add a) {
    StringBuilder s = new StringBuilder(text).append(isEnded(text) ? "\n[[" : "\n\n[[");
    s.append(a.table()).append("]]\n");
    for (Map.Entry<String, String> e : a.values().entrySet()) {
      s.append(e.getKey()).append(" = ").append(e.getValue()).append('\n');
    }
    Read changed = new Read(s.toString());
    if (!changed.toml.errors().isEmpty()) {
      throw new IllegalArgumentException("[[" + a.table() + "]] can't be added to this case");
    }
    return changed;
  }

  private static boolean isEnded(String text) {
    return text.isEmpty() || text.endsWith("\n");
  }

  private static List<String> path(String key) {
    return Arrays.asList(key.split("\\.", -1));
  }

  private static int offset(String text, TomlPosition p) {
    int at = text.startsWith(CaseFile.BYTE_ORDER_MARK) ? 1 : 0;
    for (int line = 1; line < p.line(); line++) {
      at = text.indexOf('\n', at) + 1;
    }
    return at + p.column() - 1;
  }

  private static int valueStart(String text, TomlParseResult toml, List<String> path) {
    TomlPosition at;
    try {
      at = Objects.requireNonNull(toml.inputPositionOf(path));
    } catch (TomlInvalidTypeException e) {
      throw new IllegalArgumentException(String.join(".", path) + " is one of several", e);
    }
    int equals = text.indexOf('=', offset(text, at));
    int from = equals + 1;
    while (from < text.length() && (text.charAt(from) == ' ' || text.charAt(from) == '\t')) {
      from++;
    }
    return from;
  }

  /** Behind the value that begins there: a text, an array, an inline table or a bare word. */
  private static int valueEnd(String text, int from) {
    int depth = 0;
    int at = from;
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c == '"' || c == '\'') {
        at = stringEnd(text, at);
      } else if (c == '#' && depth > 0) {
        at = Math.max(at + 1, text.indexOf('\n', at));
      } else {
        boolean ends = depth == 0 && (c == ',' || c == '}' || c == ']' || c == '#' || c <= ' ');
        if (ends) {
          return at;
        }
        depth += c == '[' || c == '{' ? 1 : c == ']' || c == '}' ? -1 : 0;
        at++;
      }
      if (depth == 0 && at > from && "\"']}".indexOf(text.charAt(at - 1)) >= 0) {
        return at;
      }
    }
    return at;
  }

  private static int stringEnd(String text, int from) {
    char quote = text.charAt(from);
    String three = String.valueOf(quote).repeat(3);
    if (text.startsWith(three, from)) {
      int end = text.indexOf(three, from + 3);
      return end < 0 ? text.length() : end + 3;
    }
    int at = from + 1;
    while (at < text.length() && text.charAt(at) != quote) {
      at += quote == '"' && text.charAt(at) == '\\' ? 2 : 1;
    }
    return Math.min(text.length(), at + 1);
  }
}
