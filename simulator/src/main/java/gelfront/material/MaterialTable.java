// SPDX-License-Identifier: Apache-2.0
package gelfront.material;

import gelfront.base.Entries;
import gelfront.base.Nearest;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The built-in material table: names to properties with low, typical, high and source. */
public final class MaterialTable {
  private static final MaterialTable BUILT_IN = read();

  private final Map<String, Map<String, Map<String, Ranged>>> kinds;

  private MaterialTable(Map<String, Map<String, Map<String, Ranged>>> kinds) {
    this.kinds = kinds;
  }

  /** Read once; can't be changed. */
  public static MaterialTable builtIn() {
    return BUILT_IN;
  }

  private static MaterialTable read() {
    try (InputStream in = MaterialTable.class.getResourceAsStream("materials.toml")) {
      return parse("materials.toml", new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A table from its text.
   *
   * @param name of the file, for messages
   * @throws IllegalArgumentException with file, line and column of the first mistake
   */
  static MaterialTable parse(String name, String text) {
    return new MaterialTable(new MaterialFile(name, text).read());
  }

  /**
   * This table and somebody's own beside it.
   *
   * @param name of the file, for messages
   * @param text of theirs, written as the built-in one
   * @throws IllegalArgumentException with file, line and column of the first mistake, or where a
   *     name is taken
   */
  public MaterialTable with(String name, String text) {
    Map<String, Map<String, Map<String, Ranged>>> both = new TreeMap<>();
    kinds.forEach((kind, entries) -> both.put(kind, new TreeMap<>(entries)));
    parse(name, text)
        .kinds
        .forEach(
            (kind, entries) ->
                entries.forEach(
                    (entry, values) -> {
                      if (Entries.of(both, kind).putIfAbsent(entry, values) != null) {
                        throw new IllegalArgumentException(
                            name + ": " + kind + "." + entry + " is built in; choose another name");
                      }
                    }));
    return new MaterialTable(both);
  }

  /**
   * Names known of a kind: plastisol, filler, mould or film.
   *
   * @throws IllegalArgumentException if there is no such kind
   */
  public List<String> names(String kind) {
    return List.copyOf(of(kind).keySet());
  }

  /**
   * All properties of an entry.
   *
   * @throws IllegalArgumentException if there is none of that name, or no such kind
   */
  public Map<String, Ranged> entry(String kind, String name) {
    Map<String, Ranged> e = of(kind).get(name);
    if (e == null) {
      throw new IllegalArgumentException(
          "no " + kind + " named " + name + Nearest.question(name, names(kind)));
    }
    return Collections.unmodifiableMap(e); // keeps the file's order
  }

  private Map<String, Map<String, Ranged>> of(String kind) {
    Map<String, Map<String, Ranged>> entries = kinds.get(kind);
    if (entries == null) {
      throw new IllegalArgumentException(
          "no kind of material \"" + kind + "\"; known: " + String.join(", ", kinds.keySet()));
    }
    return entries;
  }

  /** Conductance of a surface: "contact" or "still-air", W/m2 K. */
  public Ranged film(String name) {
    return Entries.of(entry("film", name), "conductance");
  }

  /** A mould material at its typical values. */
  public MouldMaterial mould(String name) {
    Map<String, Ranged> e = entry("mould", name);
    return new MouldMaterial(
        name,
        Entries.of(e, "conductivity").typical(),
        Entries.of(e, "density").typical(),
        Entries.of(e, "specific_heat").typical());
  }

  /** A plastisol at its typical values. */
  public Plastisol plastisol(String name) {
    Map<String, Double> typical = new LinkedHashMap<>();
    entry("plastisol", name).forEach((k, v) -> typical.put(k, v.typical()));
    return plastisol(name, typical);
  }

  /** A plastisol from values by the table's property names. */
  public static Plastisol plastisol(String name, Map<String, Double> v) {
    return new Plastisol(
        name,
        Entries.of(v, "density_hot"),
        Entries.of(v, "density_cold"),
        Entries.of(v, "specific_heat"),
        Entries.of(v, "conductivity"),
        Entries.of(v, "latent_heat"),
        Entries.of(v, "gel_start"),
        Entries.of(v, "gel_end"),
        Entries.of(v, "no_flow"),
        Entries.of(v, "firm"),
        Entries.of(v, "expansion_hot"),
        Entries.of(v, "expansion_gelled"),
        Entries.of(v, "youngs_modulus"),
        Entries.of(v, "viscosity_165"));
  }
}
