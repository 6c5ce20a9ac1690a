package gelfront.material;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;

/** The built-in material table: names to properties with low, typical, high and source. */
public final class MaterialTable {
  private final Map<String, Map<String, Map<String, Ranged>>> kinds = new TreeMap<>();

  private MaterialTable(TomlParseResult toml) {
    if (toml.hasErrors()) {
      throw new IllegalStateException("the built-in material table: " + toml.errors().get(0));
    }
    for (String kind : toml.keySet()) {
      Map<String, Map<String, Ranged>> entries = new TreeMap<>();
      TomlTable table = toml.getTable(kind);
      for (String name : table.keySet()) {
        entries.put(name, properties(table.getTable(List.of(name))));
      }
      kinds.put(kind, entries);
    }
  }

  public static MaterialTable builtIn() {
    try (InputStream in = MaterialTable.class.getResourceAsStream("materials.toml")) {
      return new MaterialTable(Toml.parse(in));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, Ranged> properties(TomlTable t) {
    Map<String, Ranged> map = new LinkedHashMap<>();
    for (String key : t.keySet()) {
      if (t.get(key) instanceof TomlArray a) {
        map.put(key, new Ranged(number(a, 0), number(a, 1), number(a, 2), a.getString(3)));
      }
    }
    return map;
  }

  private static double number(TomlArray a, int i) {
    return ((Number) a.get(i)).doubleValue();
  }

  /** Names known of a kind: plastisol, filler or mould. */
  public List<String> names(String kind) {
    return List.copyOf(kinds.get(kind).keySet());
  }

  /**
   * All properties of an entry.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  public Map<String, Ranged> entry(String kind, String name) {
    Map<String, Ranged> e = kinds.get(kind).get(name);
    if (e == null) {
      throw new IllegalArgumentException("no " + kind + " named " + name);
    }
    return Map.copyOf(e);
  }

  /** A mould material at its typical values. */
  public MouldMaterial mould(String name) {
    Map<String, Ranged> e = entry("mould", name);
    return new MouldMaterial(
        name,
        e.get("conductivity").typical(),
        e.get("density").typical(),
        e.get("specific_heat").typical());
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
        v.get("density_hot"),
        v.get("density_cold"),
        v.get("specific_heat"),
        v.get("conductivity"),
        v.get("latent_heat"),
        v.get("gel_start"),
        v.get("gel_end"),
        v.get("no_flow"),
        v.get("firm"),
        v.get("expansion_hot"),
        v.get("expansion_gelled"),
        v.get("youngs_modulus"),
        v.get("viscosity_165"));
  }
}
