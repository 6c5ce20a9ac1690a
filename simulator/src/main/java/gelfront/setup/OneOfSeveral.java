// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One table of a kind that there may be several of, in a case file's text: what stands between its
 * head, as {@code [[another_gate]]}, and the next one.
 *
 * @param table as {@code another_gate}
 * @param number from 1, in the order of the file
 * @param key in it; empty: all of it
 */
record OneOfSeveral(String table, int number, String key) {
  private static final Pattern PATH = Pattern.compile("(.+?)\\.(\\d{1,4})(?:\\.(.+))?");

  /** Head, body and what follows it: from, body and end are offsets in a text. */
  private record Place(int from, int body, int end) {}

  /** Absent where a key is of no such table. */
  static Optional<OneOfSeveral> of(String key) {
    Matcher m = PATH.matcher(key);
    return m.matches()
        ? Optional.of(
            new OneOfSeveral(
                m.group(1),
                Integer.parseInt(m.group(2)),
                Optional.ofNullable(m.group(3)).orElse("")))
        : Optional.empty();
  }

  /**
   * @throws IllegalArgumentException where there is no such table, or it is written otherwise
   */
  String set(String text, String value) {
    return within(text, new Change.Set(key, value));
  }

  /**
   * @throws IllegalArgumentException where there is no such table, or it is written otherwise
   */
  String remove(String text) {
    if (!key.isEmpty()) {
      return within(text, new Change.Remove(key));
    }
    Place p = place(text);
    // The empty line that parts it from what stands above goes with it.
    int from = text.startsWith("\n\n", p.from - 2) ? p.from - 1 : p.from;
    return text.substring(0, from) + text.substring(p.end);
  }

  private String within(String text, Change change) {
    String whole = text.endsWith("\n") ? text : text + "\n";
    Place p = place(whole);
    String body = CaseText.with(whole.substring(p.body, p.end), change);
    return whole.substring(0, p.body) + body + whole.substring(p.end);
  }

  private Place place(String text) {
    List<Integer> heads = new ArrayList<>();
    Matcher m = Pattern.compile("(?m)^[ \\t]*\\[\\[" + Pattern.quote(table) + "]]").matcher(text);
    while (m.find()) {
      heads.add(m.start());
    }
    if (number < 1 || number > heads.size()) {
      throw new IllegalArgumentException(
          "there is no [[" + table + "]] number " + number + " that stands on lines of its own");
    }
    int from = heads.get(number - 1);
    int line = text.indexOf('\n', from);
    int body = line < 0 ? text.length() : line + 1;
    return new Place(from, body, end(text, body));
  }

  /** Where the next table's head is, or the text ends; comments above that head stay with it. */
  private static int end(String text, int body) {
    Matcher m = Pattern.compile("(?m)^[ \\t]*\\[").matcher(text);
    int end = text.length();
    for (boolean found = m.find(body); found; found = m.find()) {
      // A line within an array over several lines begins so, too: then what is before is not whole.
      if (CaseFile.toml("", text.substring(body, m.start())).errors().isEmpty()) {
        end = m.start();
        break;
      }
    }
    return end < text.length() ? body + written(text.substring(body, end)) : end;
  }

  /** Up to the last line that says something, its end included. */
  private static int written(String body) {
    int end = 0;
    int at = 0;
    for (String line : body.split("(?<=\n)", -1)) {
      at += line.length();
      end = line.isBlank() || line.stripLeading().startsWith("#") ? end : at;
    }
    return end;
  }
}
