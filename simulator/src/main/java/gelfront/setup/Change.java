// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Quantities;
import java.util.LinkedHashMap;
import java.util.Map;

/** One thing that is to stand otherwise in a case file. */
public sealed interface Change {
  /**
   * A key gets another value, or its first.
   *
   * @param key with its table, as {@code gate.size}; of one of several tables with its number from
   *     1 on, as {@code another_gate.1.size}; at the head of the file without
   * @param value as it stands in a case file, quotes included
   */
  record Set(String key, String value) implements Change {}

  /**
   * One more table of a kind that there may be several of.
   *
   * @param table as {@code block.warm_spot}
   * @param values by key, as they stand in a case file, quotes included
   */
  record Add(String table, Map<String, String> values) implements Change {
    public Add {
      values = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }
  }

  /**
   * A key is left out; none of that name does no harm. One of several tables is left out by its
   * number, as {@code another_gate.1}.
   */
  record Remove(String key) implements Change {}

  /** A length. */
  static Change mm(String key, double metres) {
    return new Set(key, quantity(metres * 1e3, "mm"));
  }

  static Change degC(String key, double temperature) {
    return new Set(key, quantity(temperature, "degC"));
  }

  static Change seconds(String key, double time) {
    return new Set(key, quantity(time, "s"));
  }

  /** A word such as {@code round}. */
  static Change word(String key, String word) {
    return new Set(key, text(word));
  }

  /** Any text, such as a file's path, in quotes as it stands in a case file. */
  static String text(String any) {
    StringBuilder q = new StringBuilder("\"");
    for (int i = 0; i < any.length(); i++) {
      char c = any.charAt(i);
      if (c == '"' || c == '\\') {
        q.append('\\').append(c);
      } else if (c < ' ' || c == 0x7f) {
        q.append(Quantities.say("\\u%04x", (int) c));
      } else {
        q.append(c);
      }
    }
    return q.append('"').toString();
  }

  /** A number with its unit as it stands in a case file, with no more digits than it takes. */
  static String quantity(double value, String unit) {
    String digits = Quantities.say("%.6f", value).replaceFirst("\\.?0+$", "");
    return "\"" + digits + " " + unit + "\"";
  }

  /** A place as it stands in a case file. */
  static String place(gelfront.mesh.Vec3 metres) {
    return "["
        + quantity(metres.x() * 1e3, "mm")
        + ", "
        + quantity(metres.y() * 1e3, "mm")
        + ", "
        + quantity(metres.z() * 1e3, "mm")
        + "]";
  }

  /** A direction as it stands in a case file. */
  static String direction(gelfront.mesh.Vec3 d) {
    return Quantities.say("[%.8f, %.8f, %.8f]", d.x(), d.y(), d.z());
  }
}
