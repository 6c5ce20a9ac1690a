// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import java.util.Arrays;
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

  /** As above, one change after the other. */
  static String with(String text, List<Change> changes) {
    Read now = new Read(text);
    for (Change c : changes) {
      now = with(now, c);
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
          .orElseGet(() -> set(now, s.key(), s.value()));
    }
    if (change instanceof Change.Add a) {
      return add(now.text, a);
    }
    String key = ((Change.Remove) change).key();
    return OneOfSeveral.of(key)
        .map(o -> new Read(o.remove(now.text)))
        .orElseGet(() -> remove(now, key));
  }

  private static Read set(Read now, String key, String value) {
    List<String> path = path(key);
    Read changed =
        new Read(
            now.toml.contains(path)
                ? replaced(now.text, now.toml, path, value)
                : inserted(now.text, now.toml, path, value));
    Object wanted = Toml.parse("x = " + value).get(List.of("x"));
    Object found = changed.toml.get(path);
    if (wanted == null || !plain(wanted).equals(plain(found))) {
      throw new IllegalArgumentException(key + " can't be changed to " + value + OWN_TABLE);
    }
    return changed;
  }

  private static String plain(Object toml) {
    return toml instanceof TomlArray a
        ? a.toList().stream().map(CaseText::plain).toList().toString()
        : String.valueOf(toml);
  }

  private static String replaced(
      String text, TomlParseResult toml, List<String> path, String value) {
    int from = valueStart(text, toml, path);
    return text.substring(0, from) + value + text.substring(valueEnd(text, from));
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

  private static String inserted(
      String text, TomlParseResult toml, List<String> path, String value) {
    String line = path.get(path.size() - 1) + " = " + value + "\n";
    if (path.size() == 1) {
      return line + text;
    }
    List<String> table = path.subList(0, path.size() - 1);
    TomlPosition at = toml.contains(table) ? toml.inputPositionOf(table) : null;
    if (at == null) {
      return ended(text) + "\n[" + String.join(".", table) + "]\n" + line;
    }
    int head = offset(text, at);
    int next = text.indexOf('\n', head);
    boolean header = text.startsWith("[", head);
    if (!(toml.get(table) instanceof TomlTable) || !header) {
      throw new IllegalArgumentException(String.join(".", path) + " can't be added" + OWN_TABLE);
    }
    return next < 0
        ? text + "\n" + line
        : text.substring(0, next + 1) + line + text.substring(next + 1);
  }

  private static Read add(String text, Change.Add a) {
    StringBuilder s = new StringBuilder(ended(text)).append("\n[[").append(a.table());
    s.append("]]\n");
    for (Map.Entry<String, String> e : a.values().entrySet()) {
      s.append(e.getKey()).append(" = ").append(e.getValue()).append('\n');
    }
    Read changed = new Read(s.toString());
    if (!changed.toml.errors().isEmpty()) {
      throw new IllegalArgumentException("[[" + a.table() + "]] can't be added to this case");
    }
    return changed;
  }

  private static String ended(String text) {
    return text.isEmpty() || text.endsWith("\n") ? text : text + "\n";
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
