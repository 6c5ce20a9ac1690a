// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Builds a page or a drawing in it. Text and attribute values pass {@link #escape}, always; only
 * the program's own style and script go in as they are.
 */
final class Html {
  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Opens an element; attributes as name, value, name, value. */
  Html open(String tag, String... attributes) {
    start(tag, attributes).append('>');
    open.push(tag);
    return this;
  }

  /** An element without content that is never closed (HTML) or closes itself (SVG). */
  Html empty(String tag, String... attributes) {
    start(tag, attributes).append("/>");
    return this;
  }

  private StringBuilder start(String tag, String... attributes) {
    out.append('<').append(tag);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"");
      out.append(escape(attributes[i + 1])).append('"');
    }
    return out;
  }

  /** Closes the innermost open element. */
  Html close() {
    out.append("</").append(open.pop()).append('>');
    if (open.size() < 5) {
      out.append('\n');
    }
    return this;
  }

  /** Any text, from anywhere. */
  Html text(String any) {
    out.append(escape(any));
    return this;
  }

  /** A whole element with text in it. */
  Html element(String tag, String text, String... attributes) {
    return open(tag, attributes).text(text).close();
  }

  /** A table's row: what it is, then what is known of it. */
  Html row(String name, String... values) {
    open("tr").element("th", name, "scope", "row");
    for (String v : values) {
      element("td", v);
    }
    return close();
  }

  /** The program's own style or script, never anything that came from outside. */
  Html trusted(String own) {
    out.append(own);
    return this;
  }

  /**
   * Text as it may stand between tags and in quoted attributes. Control characters, and those that
   * turn the direction of writing, become a replacement mark: a name must not disguise itself.
   */
  static String escape(String any) {
    StringBuilder s = new StringBuilder(any.length() + 16);
    any.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> s.append("&amp;");
                case '<' -> s.append("&lt;");
                case '>' -> s.append("&gt;");
                case '"' -> s.append("&quot;");
                case '\'' -> s.append("&#39;");
                default -> s.appendCodePoint(disguises(c) ? 0xFFFD : c);
              }
            });
    return s.toString();
  }

  private static boolean disguises(int c) {
    boolean control = (c < ' ' && c != '\n' && c != '\t') || (c >= 0x7F && c < 0xA0);
    boolean turns = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
    boolean half = c >= 0xD800 && c <= 0xDFFF;
    return control || turns || half;
  }

  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("not closed: " + open);
    }
    return out.toString();
  }
}
