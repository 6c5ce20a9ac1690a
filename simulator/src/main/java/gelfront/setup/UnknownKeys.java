// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Nearest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tomlj.TomlTable;

/** Keys of a table that no case file may hold, and what was most likely meant. */
final class UnknownKeys {
  private UnknownKeys() {}

  /**
   * @param name of the table as in {@link CaseKeys}
   * @return key to what is to be said of it, in the file's order
   */
  static Map<String, String> in(String name, TomlTable table) {
    List<String> known = CaseKeys.of(name);
    Map<String, String> unknown = new LinkedHashMap<>();
    for (String key : table.keySet()) {
      if (!known.contains(key)) {
        String where = name.isEmpty() ? "" : " in [" + name + "]";
        String meant = Nearest.question(key, known);
        unknown.put(
            key,
            "unknown key \""
                + key
                + "\""
                + where
                + (meant.isEmpty() ? "; known: " + String.join(", ", known) : meant));
      }
    }
    return unknown;
  }
}
