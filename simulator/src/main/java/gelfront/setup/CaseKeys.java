// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every key a case file may hold, by table. The one list that reading and the help go by. */
public final class CaseKeys {
  /** Table, then key and meaning a line; keys without a meaning are tables. */
  private static final String TEXT =
      """
      (top)
        name             title of the case; left out: the file's name
        units            of bare numbers: { length = "mm", temperature = "degC", time = "s" }
        materials        file with materials of your own, written as the built-in table
        up               direction that is up while it cools, as [0, 0, 1]; left out: where the mouth looks
        clamping_force   that holds the halves together, as "2 kN"
        visible_dent     depth from which an eye or a finger notices a dent, as "0.2 mm"
        cavities         parts that one shot fills, where all but one are left out, a whole number
        part
        gate
        runner
        reservoir
        another_gate
        sprue
        extender
        feed
        block
        plastisol
        shot
        fill
        numerics
        filing
        limits
        series
      [part]
        mesh             STL, 3MF, OBJ or PLY file, or a list of such, from this file's folder
        unit             of the mesh: mm, cm, m or inch
        caliper          rows measured from the nose, instead of a mesh
        copy             further cavities of the same shape, each with its own gate
      [[part.caliper]]
        distance         from the nose, as "12 mm"
        width            across (y)
        height           up (z)
      [[part.copy]]
        shift            where to, as ["0 mm", "20 mm", "0 mm"]
        turn             as "180 deg", before the shift
        axis             of the turn, as [0, 0, 1]; left out: up where that is stated, else z
        mirror           direction in which it is mirrored, instead of turn
        about            a point on axis or mirror; left out: the origin
      [gate]
        at               a point on the part's surface, as ["0 mm", "2 mm", "0 mm"]
        direction        away from the part, as [-1, 0, 0]
        shape            round, half-round or rectangular
        size             diameter or width
        height           of a rectangular one
        land             length of the narrow piece
      [runner]
        shape            round, half-round or rectangular
        size             diameter or width
        height           of a rectangular one
        length           between land and sprue
      [reservoir]
        diameter         of the bulge
        length           of the bulge
      [[another_gate]]
        at               a point on the part's surface, for a further gate of the same part
        direction        away from the part
        shape            round, half-round or rectangular; gate and runner alike
        size             diameter or width
        height           of a rectangular one
        land             length of the narrow piece
        runner           diameter or width of its runner; left out: twice the gate's
        way              a place or places that its runner leads through to the sprue
      [sprue]
        at               its end towards the part; left out: where the runner ends
        diameter         at the end towards the part
        mouth_diameter   at the open end; left out: the same
        taper            full angle, as "4 deg", instead of mouth_diameter
        length           to the open end
        direction        towards the open end; left out: the gate's
      [extender]
        bore             of a tube set on the block over the sprue
        height           above the block
        wall             thickness of the tube's wall
        material         from the material table, as "silicone"
        start            temperature of the tube before the shot; left out: the air's
        air_film         on its outside; left out: the block's
      [feed]
        in_mesh          true: gate and sprue are part of the mesh
        gate             a point in the gate, or a list of points, one for each cavity
        mouth            a point on the pour opening
      [block]
        material         from the material table, as "aluminium-6061"
        wall             metal round the cavity
        box_min          corner of the block, instead of wall
        box_max          opposite corner
        mesh             solids of the mould's halves, one file or a list: outside them is air
        unit             of that mesh: mm, cm, m, inch
        start            temperature before the shot
        air              temperature round it
        air_film         air and radiation on outer faces, as "9 W/m2K"
        contact          conductance between plastisol and mould, pressed on, as "2500 W/m2K"
        contact_shrunk_off  what is left of it where the skin has left the wall
        warm_spot        places that start warmer or colder
        insert           places of another material
        face             outer faces cooled otherwise than by the air round the block
        channel          straight channels drilled for a coolant
      [[block.warm_spot]]
        centre           of a ball
        radius           of a ball
        box_min          corner of a box
        box_max          opposite corner
        temperature      at the start
      [[block.insert]]
        centre           of a ball
        radius           of a ball
        box_min          corner of a box
        box_max          opposite corner
        material         from the material table
      [[block.face]]
        side             -x, +x, -y, +y, -z, +z, or by up: top, bottom
        cooled_by        fan, water, bench or still-air
        film             instead of cooled_by, as "500 W/m2K"; 0 insulates
        temperature      of what cools it, as "15 degC"
      [[block.channel]]
        from             middle of one end; it may lie outside the block
        to               middle of the other end
        diameter         of the drill
        film             of the coolant on the wall, as "3000 W/m2K"
        temperature      of the coolant, the mean of in and out
      [plastisol]
        grade            soft, medium or firm
        filler           salt, glitter or hollow-spheres
        filler_share     of the mass, as "5 %"
        density_hot      at 165 °C, as "935 kg/m3"
        density_cold     at 25 °C
        specific_heat    as "1900 J/kgK"
        conductivity     as "0.145 W/mK"
        latent_heat      of gelling, as "1.3 kJ/kg"
        gel_start        temperature at which gelling begins on cooling
        gel_end          temperature at which gelling is complete
        no_flow          temperature below which nothing flows
        firm             temperature below which the mould may be opened
        expansion_hot    above no_flow, by volume, as "7.5e-4 1/K"
        expansion_gelled below no_flow, by volume
        youngs_modulus   of the set gel, as "50 kPa"
        viscosity_165    at 165 °C, as "1.5 Pas"; its rise on cooling is estimated
        viscosity        a measured curve, instead of viscosity_165
      [[plastisol.viscosity]]
        temperature      of a point of the curve
        value            there, as "40 Pas"
      [shot]
        temperature      of the plastisol
        fill_time        to fill the cavity
        hold_time        that the injector is kept on
        hold_pressure    while it is kept on, as "20 kPa"
        top_up           times at which the sprue is filled up, as ["20 s", "40 s"]
        injector         its capacity, as "100 ml"
        open_at          time at which the mould is opened; left out: when the part is firm; sooner it may go oval
      [fill]
        on               false: the table is there, but the shot itself is not calculated
        pressure         that the plunger keeps up, as "50 kPa"; left out: what fill_time takes
        most_pressure    that the plunger gives at most, as "200 kPa"
        parting_gap      between the halves, as "25 um": air leaves by it
        vent             channels scratched for the air
      [[fill.vent]]
        at               where it meets the cavity, as ["100 mm", "0 mm", "0 mm"]
        width            as "5 mm"
        depth            as "0.03 mm"
        length           to the open air
      [numerics]
        level            quick, normal or fine
        voxel            edge of a voxel; left out: by level; gates get smaller ones
        whole            true: calculate both sides of a plane of symmetry, not one for both
      [[filing]]
        at               place
        reach            how far round it
        depth            metal taken off
      [limits]
        gate_least       thinnest gate that can be cut, for sizing, as "1.5 mm"
        gate_widest      widest gate that is accepted to be trimmed, as "6 mm"
        sprue_widest     widest sprue that is accepted, as "14 mm"
        gate_place       places that a gate may be cut at; left out: proposed by thickness
      [[limits.gate_place]]
        at               a point on the part's surface, as ["0 mm", "2 mm", "0 mm"]
        direction        away from the part, as [-1, 0, 0]
      [series]
        shots            the shot of a row in one mould that is looked at, a whole number
        idle             from opening the mould to the next shot, as "60 s"
        cycle            from shot to shot; left out: opened as soon as all of the shot is firm
        open             that the halves lie apart; left out: all of the idle time
      """;

  private static final Map<String, Map<String, String>> KEYS = keys();

  /**
   * A key.
   *
   * @param table as it stands in a case file, brackets included; empty for keys at the head
   * @param name of the key
   * @param meaning in a few words, with an example where that says more
   */
  public record Key(String table, String name, String meaning) {}

  private CaseKeys() {}

  private static Map<String, Map<String, String>> keys() {
    Map<String, Map<String, String>> all = new LinkedHashMap<>();
    Map<String, String> table = new LinkedHashMap<>();
    for (String line : TEXT.lines().toList()) {
      if (line.startsWith("  ")) {
        String[] words = line.strip().split("\\s+", 2);
        table.put(words[0], words.length > 1 ? words[1] : "");
      } else {
        table = new LinkedHashMap<>();
        all.put(line, table);
      }
    }
    return all;
  }

  /**
   * @param table without brackets, empty for the keys at the head
   */
  static List<String> of(String table) {
    String top = table.isEmpty() ? "(top)" : "[" + table + "]";
    for (String head : List.of(top, "[[" + table + "]]")) {
      if (KEYS.containsKey(head)) {
        return List.copyOf(KEYS.get(head).keySet());
      }
    }
    throw new IllegalArgumentException("no table " + table);
  }

  /** All keys in the order of a case file; tables are told by the keys in them. */
  public static List<Key> all() {
    List<Key> all = new ArrayList<>();
    KEYS.forEach(
        (head, keys) ->
            keys.forEach(
                (key, meaning) -> {
                  if (!meaning.isEmpty()) {
                    all.add(new Key(head.equals("(top)") ? "" : head, key, meaning));
                  }
                }));
    return all;
  }

  /** All keys as a Markdown table. */
  public static String markdown() {
    StringBuilder s = new StringBuilder("| table | key | meaning |\n|---|---|---|\n");
    for (Key k : all()) {
      String table = k.table().isEmpty() ? "(at the head)" : "`" + k.table() + "`";
      s.append("| ").append(table).append(" | `").append(k.name()).append("` | ");
      s.append(k.meaning()).append(" |\n");
    }
    return s.toString();
  }
}
