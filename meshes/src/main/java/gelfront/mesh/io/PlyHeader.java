// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The head of a PLY file.
 *
 * @param format {@code ascii}, {@code binary_little_endian} or {@code binary_big_endian}
 * @param elements in the file's order
 * @param end first byte of the body
 */
record PlyHeader(String format, List<Element> elements, int end) {
  /** Longer heads are no heads. */
  private static final int LONGEST = 64 * 1024;

  /** A kind of number: its bytes, and whether it is one with a point. */
  enum Type {
    INT8(1),
    UINT8(1),
    INT16(2),
    UINT16(2),
    INT32(4),
    UINT32(4),
    FLOAT32(4),
    FLOAT64(8);

    final int bytes;

    Type(int bytes) {
      this.bytes = bytes;
    }

    static Type of(String name) {
      return switch (name) {
        case "char", "int8" -> INT8;
        case "uchar", "uint8" -> UINT8;
        case "short", "int16" -> INT16;
        case "ushort", "uint16" -> UINT16;
        case "int", "int32" -> INT32;
        case "uint", "uint32" -> UINT32;
        case "float", "float32" -> FLOAT32;
        case "double", "float64" -> FLOAT64;
        default -> throw new MeshException("no type of a PLY file: " + Words.quoted(name));
      };
    }
  }

  /**
   * @param count null type where the property is a single number
   */
  record Property(String name, @Nullable Type count, Type type) {
    boolean list() {
      return count != null;
    }

    /** Kind of a list's length. */
    Type counts() {
      return java.util.Objects.requireNonNull(count, "a list");
    }
  }

  /**
   * @param count how often it comes
   */
  record Element(String name, long count, List<Property> properties) {
    /** Bytes that one takes at least; in text, a digit and a space for each number. */
    long least(boolean text) {
      return properties.stream()
          .mapToLong(p -> text ? 2 : p.list() ? p.counts().bytes : p.type().bytes)
          .sum();
    }
  }

  static boolean begins(byte[] c) {
    return c.length > 4
        && c[0] == 'p'
        && c[1] == 'l'
        && c[2] == 'y'
        && (c[3] == '\n' || c[3] == '\r' || c[3] == ' ');
  }

  static PlyHeader of(byte[] content) {
    List<Element> elements = new ArrayList<>();
    String format = "";
    int at = 0;
    int number = 0;
    while (true) {
      int end = lineEnd(content, at);
      String[] w =
          new String(content, at, end - at, StandardCharsets.ISO_8859_1).strip().split("\\s+");
      at = afterLine(content, end);
      number++;
      try {
        switch (w[0]) {
          case "format" -> format = format(w);
          case "element" -> elements.add(element(w));
          case "property" -> property(elements, w);
          case "ply", "comment", "obj_info", "" -> {}
          case "end_header" -> {
            if (format.isEmpty()) {
              throw new MeshException("the head has no format");
            }
            return new PlyHeader(format, elements, at);
          }
          default -> throw new MeshException("no line of a PLY head: " + Words.quoted(w[0]));
        }
      } catch (MeshException e) {
        throw new MeshException("line " + number + ": " + e.getMessage());
      }
    }
  }

  private static int lineEnd(byte[] c, int from) {
    int at = from;
    while (at < c.length && c[at] != '\n' && c[at] != '\r') {
      at++;
    }
    if (at == c.length || at > LONGEST) {
      throw new MeshException("the head of the PLY file has no end_header: it is cut short");
    }
    return at;
  }

  private static int afterLine(byte[] c, int end) {
    boolean pair = c[end] == '\r' && end + 1 < c.length && c[end + 1] == '\n';
    return end + (pair ? 2 : 1);
  }

  private static String format(String[] w) {
    String f = w.length > 1 ? w[1] : "";
    if (!List.of("ascii", "binary_little_endian", "binary_big_endian").contains(f)) {
      throw new MeshException("no format of a PLY file: " + Words.quoted(f));
    }
    return f;
  }

  private static Element element(String[] w) {
    if (w.length < 3 || !w[2].matches("\\d{1,18}")) {
      throw new MeshException("an element needs a name and a number");
    }
    return new Element(w[1].toLowerCase(Locale.ROOT), Long.parseLong(w[2]), new ArrayList<>());
  }

  private static void property(List<Element> elements, String[] w) {
    boolean list = w.length > 1 && w[1].equals("list");
    if (elements.isEmpty() || w.length < (list ? 5 : 3)) {
      throw new MeshException("a property needs an element before it, a type and a name");
    }
    elements
        .get(elements.size() - 1)
        .properties()
        .add(
            list
                ? new Property(w[4], Type.of(w[2]), Type.of(w[3]))
                : new Property(w[2], null, Type.of(w[1])));
  }
}
