// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Entries;
import gelfront.base.Nearest;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * An input of a case by the name that a person gives it: a key with its table in any spelling
 * ("gate.size", "gate size", "gate_size"), the key alone where no other is called so ("no_flow"),
 * or a word of the trade for it ("mould temperature").
 *
 * @param key with its table, as {@code gate.size}
 * @param words to print
 */
public record InputName(String key, String words) {
  private static final Map<String, String> TRADE =
      Map.ofEntries(
          Map.entry("gate", "gate.size"),
          Map.entry("gate width", "gate.size"),
          Map.entry("gate diameter", "gate.size"),
          Map.entry("land", "gate.land"),
          Map.entry("runner", "runner.size"),
          Map.entry("runner width", "runner.size"),
          Map.entry("runner diameter", "runner.size"),
          Map.entry("sprue", "sprue.diameter"),
          Map.entry("sprue width", "sprue.diameter"),
          Map.entry("sprue mouth", "sprue.mouth_diameter"),
          Map.entry("mould", "block.start"),
          Map.entry("mould temperature", "block.start"),
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
              + question(asked, known)
              + "; gelfront keys lists all");
    }
    return new InputName(key, words(key));
  }

  private static String question(String asked, Map<String, String> known) {
    List<String> ending = List.copyOf(ending(asked, known).values());
    String first = asked.replaceFirst(" .*", "");
    if (!ending.isEmpty()) {
      return "; did you mean \"" + String.join("\" or \"", ending) + "\"?";
    }
    return known.containsKey(first)
        ? "; did you mean \"" + beside(first, asked, known) + "\"?"
        : Nearest.question(asked, withKeysAlone(known));
  }

  /** Keys of several tables, too: asked for by such a name, all are told. */
  private static List<String> withKeysAlone(Map<String, String> known) {
    return Stream.concat(known.keySet().stream(), known.values().stream().map(InputName::alone))
        .toList();
  }

  private static String alone(String key) {
    return plain(key.substring(key.lastIndexOf('.') + 1));
  }

  /** By key, the shortest name of each that has such an end. */
  private static Map<String, String> ending(String end, Map<String, String> known) {
    Map<String, String> all = new LinkedHashMap<>();
    known.forEach(
        (name, key) -> {
          if (name.endsWith(" " + end)) {
            all.putIfAbsent(key, name);
          }
        });
    return all;
  }

  /** What is nearest among names that begin alike, else what the beginning alone stands for. */
  private static String beside(String first, String asked, Map<String, String> known) {
    int from = first.length() + 1;
    List<String> ends =
        known.keySet().stream()
            .filter(n -> n.startsWith(first + " "))
            .map(n -> n.substring(from))
            .toList();
    return Nearest.to(asked.substring(from), ends)
        .map(end -> first + " " + end)
        .orElseGet(() -> words(Entries.of(known, first)));
  }

  /** Keys by name, short names first. */
  private static Map<String, String> known() {
    Map<String, String> known =
        new TreeMap<>(
            Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()));
    for (CaseKeys.Key k : CaseKeys.all()) {
      if (!k.table().startsWith("[[") && !k.table().equals("[limits]")) {
        String table = k.table().replaceAll("[\\[\\]]", "");
        String key = table.isEmpty() ? k.name() : table + "." + k.name();
        known.put(plain(key), key);
        if (table.equals("block")) {
          known.put(plain("mould " + k.name()), key);
        }
      }
    }
    known.putAll(TRADE);
    unambiguous(known).forEach(known::putIfAbsent);
    return known;
  }

  /** Keys that need no table, as no other name ends like them. */
  private static Map<String, String> unambiguous(Map<String, String> known) {
    Map<String, String> alone = new HashMap<>();
    for (String key : known.values()) {
      String name = alone(key);
      if (ending(name, known).size() == 1) {
        alone.put(name, key);
      }
    }
    return alone;
  }

  private static String words(String key) {
    return key.equals("block.start") ? "mould temperature" : plain(key);
  }

  private static String plain(String name) {
    return name.strip()
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\s._-]+", " ")
        .replaceAll("\\bmold\\b", "mould");
  }
}
