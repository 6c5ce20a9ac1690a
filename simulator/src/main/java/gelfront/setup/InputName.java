// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Nearest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * An input of a case by the name that a person gives it: a key with its table in any spelling
 * ("gate.size", "gate size", "gate_size"), or a word of the trade for it ("mould temperature").
 *
 * @param key with its table, as {@code gate.size}
 * @param words to print
 */
public record InputName(String key, String words) {
  private static final Map<String, String> TRADE =
      Map.ofEntries(
          Map.entry("gate", "gate.size"),
          Map.entry("land", "gate.land"),
          Map.entry("runner", "runner.size"),
          Map.entry("sprue", "sprue.diameter"),
          Map.entry("sprue mouth", "sprue.mouth_diameter"),
          Map.entry("mould", "block.start"),
          Map.entry("mould temperature", "block.start"),
          Map.entry("mold", "block.start"),
          Map.entry("mold temperature", "block.start"),
          Map.entry("mould wall", "block.wall"),
          Map.entry("shot", "shot.temperature"),
          Map.entry("hold", "shot.hold_time"),
          Map.entry("hold time", "shot.hold_time"),
          Map.entry("hold pressure", "shot.hold_pressure"),
          Map.entry("fill time", "shot.fill_time"));

  /**
   * @throws IllegalArgumentException in words with the nearest name, where there is none such
   */
  public static InputName of(String name) {
    String asked = plain(name);
    Map<String, String> known = known();
    String key = known.get(asked);
    if (key == null) {
      throw new IllegalArgumentException(
          "no input \""
              + name.strip()
              + "\""
              + Nearest.question(asked, known.keySet())
              + "; gelfront keys lists all");
    }
    return new InputName(key, words(key));
  }

  /** Names of all inputs that a value can be given to. */
  public static List<String> all() {
    return new ArrayList<>(known().keySet());
  }

  private static Map<String, String> known() {
    Map<String, String> known = new LinkedHashMap<>();
    for (CaseKeys.Key k : CaseKeys.all()) {
      if (!k.table().startsWith("[[") && !k.table().equals("[limits]")) {
        String table = k.table().replaceAll("[\\[\\]]", "");
        String key = table.isEmpty() ? k.name() : table + "." + k.name();
        known.put(plain(key), key);
      }
    }
    known.putAll(TRADE);
    return known;
  }

  private static String words(String key) {
    return key.equals("block.start") ? "mould temperature" : plain(key);
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s._-]+", " ");
  }
}
