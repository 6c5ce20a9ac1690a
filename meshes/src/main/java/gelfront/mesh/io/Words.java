// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Words of a text, lower case, with the line they stand in; lines end with LF, CR or CR LF. */
final class Words {
  /** What a message quotes of a word at most. */
  private static final int QUOTED = 40;

  private final byte[] text;
  private final int end;
  private int at;
  private int line = 1;

  Words(byte[] text) {
    this(text, 0);
  }

  Words(byte[] text, int from) {
    this.text = text;
    this.end = endOfText(text);
    this.at = Math.max(from, from == 0 ? afterByteOrderMark(text) : from);
  }

  /** Without zeros and the old mark for a text's end (26) that some programs pad files with. */
  private static int endOfText(byte[] text) {
    int n = text.length;
    while (n > 0 && (text[n - 1] == 0 || text[n - 1] == 26)) {
      n--;
    }
    return n;
  }

  private static int afterByteOrderMark(byte[] t) {
    boolean mark =
        t.length >= 3 && (t[0] & 0xFF) == 0xEF && (t[1] & 0xFF) == 0xBB && (t[2] & 0xFF) == 0xBF;
    return mark ? 3 : 0;
  }

  private int peek() {
    return at < end ? text[at] & 0xFF : -1;
  }

  /** Bytes that aren't read yet. */
  int remaining() {
    return Math.max(0, end - at);
  }

  /** The next word, null at the end. */
  @Nullable String next() {
    while (peek() >= 0 && peek() <= ' ') {
      advance();
    }
    return word();
  }

  /** The next word of this line, null at its end; a backslash carries a line on. */
  @Nullable String onLine() {
    while (true) {
      int c = peek();
      if (c == '\\' && at + 1 < end && (text[at + 1] == '\n' || text[at + 1] == '\r')) {
        at++;
        advanceLine();
      } else if (c >= 0 && c <= ' ' && c != '\n' && c != '\r') {
        at++;
      } else {
        return word();
      }
    }
  }

  private @Nullable String word() {
    int from = at;
    while (peek() > ' ') {
      at++;
    }
    return at == from
        ? null
        : new String(text, from, at - from, StandardCharsets.ISO_8859_1).toLowerCase(Locale.ROOT);
  }

  private void advance() {
    boolean pair = text[at] == '\r' && at + 1 < end && text[at + 1] == '\n';
    line += text[at] == '\n' || (text[at] == '\r' && !pair) ? 1 : 0;
    at++;
  }

  private void advanceLine() {
    boolean pair = text[at] == '\r' && at + 1 < end && text[at + 1] == '\n';
    advance();
    if (pair) {
      advance();
    }
  }

  /** Goes to the end of this line. */
  void skipLine() {
    while (peek() >= 0 && peek() != '\n' && peek() != '\r') {
      at++;
    }
  }

  /** Goes to the first word of the next line. */
  boolean nextLine() {
    skipLine();
    if (peek() < 0) {
      return false;
    }
    advanceLine();
    return true;
  }

  void skipWord() {
    if (next() == null) {
      throw cut();
    }
  }

  void expect(String word) {
    String w = next();
    if (w == null) {
      throw cut();
    }
    if (w.equals("end") && word.startsWith("end")) {
      w += next();
    }
    if (!w.equals(word)) {
      throw error("expected " + word + ", found " + quoted(w));
    }
  }

  double number() {
    return number(next());
  }

  /** A word as a finite number; null stands for the end. */
  double number(@Nullable String w) {
    if (w == null) {
      throw cut();
    }
    double d;
    try {
      d = Double.parseDouble(w);
    } catch (NumberFormatException e) {
      throw error(
          "not a number: "
              + quoted(w)
              + (w.matches("[-+]?\\d+,\\d+.*") ? "; a decimal comma? Numbers need a point" : ""));
    }
    if (!Double.isFinite(d)) {
      throw error("a coordinate is " + w);
    }
    return d;
  }

  /** A place to come back to by {@link #back}. */
  int[] mark() {
    return new int[] {at, line};
  }

  void back(int[] mark) {
    at = mark[0];
    line = mark[1];
  }

  /** A word for a message: short, and without anything that a terminal might obey. */
  static String quoted(String w) {
    String plain = w.replaceAll("[^\\x20-\\x7e]", "?");
    return '"' + (plain.length() > QUOTED ? plain.substring(0, QUOTED) + "..." : plain) + '"';
  }

  private MeshException cut() {
    return error("the file is cut short");
  }

  MeshException error(String what) {
    return new MeshException("line " + line + ": " + what);
  }
}
