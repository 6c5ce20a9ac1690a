// SPDX-License-Identifier: Apache-2.0
package gelfront.material;

import gelfront.base.Nearest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Reads the text of a material table, and says where it is wrong. */
final class MaterialFile {
  /** Each kind has all of these properties and no others. */
  private static final Map<String, List<String>> PROPERTIES =
      Map.of(
          "plastisol",
          List.of(
              "density_cold",
              "density_hot",
              "specific_heat",
              "conductivity",
              "latent_heat",
              "gel_start",
              "gel_end",
              "no_flow",
              "firm",
              "expansion_hot",
              "expansion_gelled",
              "youngs_modulus",
              "viscosity_165"),
          "filler",
          List.of("density", "specific_heat", "conductivity"),
          "mould",
          List.of("conductivity", "density", "specific_heat"),
          "film",
          List.of("conductance"));

  private final String name;
  private final TomlParseResult toml;

  /**
   * @param name of the file, for messages
   */
  MaterialFile(String name, String text) {
    this.name = name;
    this.toml = parsed(name, text);
    if (toml.hasErrors()) {
      throw at(toml.errors().get(0).position(), String.valueOf(toml.errors().get(0).getMessage()));
    }
  }

  /** Most mistakes are collected, a few are thrown. */
  private static TomlParseResult parsed(String name, String text) {
    try {
      return Toml.parse(text);
    } catch (TomlParseError e) {
      throw new IllegalArgumentException(name + ": " + e.getMessage(), e);
    } catch (StackOverflowError e) {
      throw new IllegalArgumentException(name + ": brackets are nested too deeply", e);
    }
  }

  /**
   * Kind to name to property.
   *
   * @throws IllegalArgumentException with file, line and column of the first mistake
   */
  Map<String, Map<String, Map<String, Ranged>>> read() {
    Map<String, Map<String, Map<String, Ranged>>> kinds = new TreeMap<>();
    for (String kind : toml.keySet()) {
      List<String> wanted = PROPERTIES.get(kind);
      if (wanted == null) {
        throw at(toml, kind, "no kind of material \"" + kind + "\"" + near(kind));
      }
      Map<String, Map<String, Ranged>> entries = new TreeMap<>();
      TomlTable table = table(toml, kind);
      for (String entry : table.keySet()) {
        entries.put(entry, properties(table, entry, wanted));
      }
      kinds.put(kind, entries);
    }
    return kinds;
  }

  private static String near(String kind) {
    return Nearest.question(kind, PROPERTIES.keySet().stream().sorted().toList());
  }

  private Map<String, Ranged> properties(TomlTable kind, String entry, List<String> wanted) {
    TomlTable t = table(kind, entry);
    if (!(t.get("about") instanceof String)) {
      throw at(kind, entry, entry + " needs about = \"what it is\"");
    }
    Map<String, Ranged> map = new LinkedHashMap<>();
    for (String key : t.keySet()) {
      if (wanted.contains(key)) {
        map.put(key, ranged(t, key));
      } else if (!key.equals("about")) {
        throw at(t, key, "unknown property \"" + key + "\"" + Nearest.question(key, wanted));
      }
    }
    for (String key : wanted) {
      if (!map.containsKey(key)) {
        throw at(kind, entry, entry + " needs " + key + " = [low, typical, high, \"source\"]");
      }
    }
    return map;
  }

  private Ranged ranged(TomlTable t, String key) {
    if (t.get(List.of(key)) instanceof TomlArray a
        && a.size() == 4
        && a.get(0) instanceof Number low
        && a.get(1) instanceof Number typical
        && a.get(2) instanceof Number high
        && a.get(3) instanceof String source
        && !source.isBlank()) {
      try {
        return new Ranged(low.doubleValue(), typical.doubleValue(), high.doubleValue(), source);
      } catch (IllegalArgumentException e) {
        throw at(t, key, key + ": " + e.getMessage());
      }
    }
    throw at(t, key, key + " must be [low, typical, high, \"source\"]");
  }

  private TomlTable table(TomlTable in, String key) {
    if (in.get(List.of(key)) instanceof TomlTable t) {
      return t;
    }
    throw at(in, key, key + " must be a table");
  }

  private IllegalArgumentException at(TomlTable table, String key, String message) {
    return at(table.inputPositionOf(List.of(key)), message);
  }

  private IllegalArgumentException at(TomlPosition p, String message) {
    return new IllegalArgumentException(name + ":" + p.line() + ":" + p.column() + ": " + message);
  }
}
