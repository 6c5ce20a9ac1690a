package gelfront.setup;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every key a case file may hold, by table. The one list that reading and the help go by. */
public final class CaseKeys {
  private static final Map<String, Map<String, String>> KEYS = keys();

  private CaseKeys() {}

  private static Map<String, Map<String, String>> keys() {
    Map<String, Map<String, String>> k = new LinkedHashMap<>();
    add(
        k,
        "",
        "name",
        "title of the case",
        "units",
        "units of bare numbers: { length = \"mm\", temperature = \"degC\", time = \"s\" }",
        "up",
        "which way is up while it cools, default [0, 0, 1]",
        "clamping_force",
        "that holds the halves together",
        "cavities",
        "parts on the runner that one shot fills",
        "part",
        "",
        "gate",
        "",
        "runner",
        "",
        "reservoir",
        "",
        "sprue",
        "",
        "feed",
        "",
        "block",
        "",
        "plastisol",
        "",
        "shot",
        "",
        "numerics",
        "",
        "filing",
        "");
    add(
        k,
        "part",
        "mesh",
        "STL file or list of files, from this file's folder",
        "unit",
        "mm, cm, m or inch",
        "caliper",
        "rows measured from the nose");
    add(k, "part.caliper", "distance", "from the nose", "width", "across (y)", "height", "up (z)");
    add(
        k,
        "gate",
        "at",
        "a point on the part's surface",
        "direction",
        "away from the part",
        "shape",
        "round, half-round or rectangular",
        "size",
        "diameter or width",
        "height",
        "of a rectangular one",
        "land",
        "length of the narrow part");
    add(
        k,
        "runner",
        "shape",
        "round, half-round or rectangular",
        "size",
        "diameter or width",
        "height",
        "of a rectangular one",
        "length",
        "between land and sprue");
    add(k, "reservoir", "diameter", "of the bulge", "length", "of the bulge");
    add(
        k,
        "sprue",
        "diameter",
        "at the end towards the part",
        "mouth_diameter",
        "at the open end",
        "taper",
        "full angle, instead of mouth_diameter",
        "length",
        "to the open end",
        "direction",
        "towards the open end; default: the gate's");
    add(
        k,
        "feed",
        "in_mesh",
        "true: gate and sprue are part of the mesh",
        "gate",
        "a point in the gate",
        "mouth",
        "a point on the pour opening");
    add(
        k,
        "block",
        "material",
        "from the material table",
        "wall",
        "metal round the cavity",
        "box_min",
        "corner of the block",
        "box_max",
        "opposite corner",
        "start",
        "temperature before the shot",
        "air",
        "temperature round it",
        "air_film",
        "air and radiation on outer faces",
        "contact",
        "conductance between plastisol and mould",
        "warm_spot",
        "places that start warmer",
        "insert",
        "places of another material");
    add(
        k,
        "block.warm_spot",
        "centre",
        "of a ball",
        "radius",
        "of a ball",
        "box_min",
        "of a box",
        "box_max",
        "of a box",
        "temperature",
        "at the start");
    add(
        k,
        "block.insert",
        "centre",
        "of a ball",
        "radius",
        "of a ball",
        "box_min",
        "of a box",
        "box_max",
        "of a box",
        "material",
        "from the material table");
    add(
        k,
        "plastisol",
        "grade",
        "soft, medium or firm",
        "filler",
        "salt, glitter or hollow-spheres",
        "filler_share",
        "of the mass",
        "density_hot",
        "at 165 °C",
        "density_cold",
        "at 25 °C",
        "specific_heat",
        "",
        "conductivity",
        "",
        "latent_heat",
        "",
        "gel_start",
        "gelling begins",
        "gel_end",
        "gelling is complete",
        "no_flow",
        "below it nothing flows",
        "firm",
        "below it the mould may be opened",
        "expansion_hot",
        "above no-flow, by volume",
        "expansion_gelled",
        "below no-flow, by volume",
        "youngs_modulus",
        "of the set gel",
        "viscosity_165",
        "at 165 °C");
    add(
        k,
        "shot",
        "temperature",
        "of the plastisol",
        "fill_time",
        "to fill the cavity",
        "hold_time",
        "injector kept on",
        "hold_pressure",
        "while it is kept on",
        "top_up",
        "list of times",
        "injector",
        "its capacity",
        "open_at",
        "time at which the mould is opened");
    add(k, "numerics", "level", "quick, normal or fine", "voxel", "edge of a voxel");
    add(k, "filing", "at", "place", "reach", "how far round it", "depth", "metal taken off");
    return k;
  }

  private static void add(Map<String, Map<String, String>> k, String table, String... pairs) {
    Map<String, String> m = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      m.put(pairs[i], pairs[i + 1]);
    }
    k.put(table, m);
  }

  static List<String> of(String table) {
    return List.copyOf(KEYS.get(table).keySet());
  }

  /** All keys as a Markdown table. */
  public static String markdown() {
    StringBuilder s = new StringBuilder("| table | key | meaning |\n|---|---|---|\n");
    KEYS.forEach(
        (table, keys) ->
            keys.forEach(
                (key, meaning) -> {
                  if (!meaning.isEmpty() || !KEYS.containsKey(key)) {
                    s.append("| ").append(table.isEmpty() ? "(top)" : table).append(" | `");
                    s.append(key).append("` | ").append(meaning).append(" |\n");
                  }
                }));
    return s.toString();
  }
}
