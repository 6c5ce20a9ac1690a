// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Caution;
import gelfront.base.Dimension;
import gelfront.base.Entries;
import gelfront.base.Quantities;
import gelfront.material.MaterialTable;
import gelfront.material.Mixture;
import gelfront.material.Plastisol;
import gelfront.material.Ranged;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The [plastisol] table: a grade, single properties stated, a filler. */
final class PlastisolReader {
  /**
   * A property: its unit of input, sane bounds in SI, and how it is printed.
   *
   * @param print factor from SI to the printed unit
   * @param format with the unit
   */
  private record Property(Dimension unit, double low, double high, double print, String format) {
    String shown(double si) {
      return Quantities.say(format, si * print);
    }
  }

  private static final Map<String, Property> PROPERTIES = properties();

  private static final Map<String, Property> GRAINS =
      Map.of(
          "density", Entries.of(PROPERTIES, "density_hot"),
          "specific_heat", Entries.of(PROPERTIES, "specific_heat"),
          "conductivity", Entries.of(PROPERTIES, "conductivity"));

  private static final List<String> MOVES_WITH_NO_FLOW = List.of("gel_start", "gel_end");

  /** Two properties of which one must lie below the other. */
  private record Order(String low, String high, boolean mayBeEqual, String why) {}

  private static final List<Order> ORDERS =
      List.of(
          new Order("density_hot", "density_cold", true, "it shrinks as it cools"),
          new Order("gel_end", "gel_start", false, "gelling ends below where it starts"),
          new Order("firm", "no_flow", false, "what still flows isn't firm"));

  private final CaseTable table;
  private final MaterialTable materials;
  private final List<Statement> assumed;
  private final List<Caution> warnings;

  /**
   * @param assumed collects what is filled in
   * @param warnings collects what is allowed but odd
   */
  PlastisolReader(
      CaseTable table, MaterialTable materials, List<Statement> assumed, List<Caution> warnings) {
    this.table = table;
    this.materials = materials;
    this.assumed = assumed;
    this.warnings = warnings;
  }

  private static Map<String, Property> properties() {
    Map<String, Property> p = new LinkedHashMap<>();
    p.put("density_hot", new Property(Dimension.DENSITY, 500, 2500, 1, "%.0f kg/m3"));
    p.put("density_cold", new Property(Dimension.DENSITY, 500, 2500, 1, "%.0f kg/m3"));
    p.put("specific_heat", new Property(Dimension.SPECIFIC_HEAT, 500, 5000, 1, "%.0f J/kg K"));
    p.put("conductivity", new Property(Dimension.CONDUCTIVITY, 0.02, 2, 1, "%.3f W/m K"));
    p.put("latent_heat", new Property(Dimension.SPECIFIC_ENERGY, 0, 4e5, 1e-3, "%.1f kJ/kg"));
    p.put("gel_start", new Property(Dimension.TEMPERATURE, 0, 200, 1, "%.0f °C"));
    p.put("gel_end", new Property(Dimension.TEMPERATURE, 0, 200, 1, "%.0f °C"));
    p.put("no_flow", new Property(Dimension.TEMPERATURE, 40, 180, 1, "%.0f °C"));
    p.put("firm", new Property(Dimension.TEMPERATURE, 25, 150, 1, "%.0f °C"));
    p.put("expansion_hot", new Property(Dimension.EXPANSION, 1e-4, 3e-3, 1e4, "%.1fe-4 per K"));
    p.put("expansion_gelled", new Property(Dimension.EXPANSION, 1e-4, 3e-3, 1e4, "%.1fe-4 per K"));
    p.put("youngs_modulus", new Property(Dimension.STIFFNESS, 1e3, 1e9, 1e-3, "%.0f kPa"));
    p.put("viscosity_165", new Property(Dimension.VISCOSITY, 1e-3, 1e3, 1, "%.1f Pa s"));
    return p;
  }

  Plastisol read() {
    String grade = table.choice("grade", materials.names("plastisol")).orElse("soft");
    if (!table.has("grade")) {
      assumed.add(new Statement("plastisol: grade", grade, "the most common one"));
    }
    Map<String, Double> values = new LinkedHashMap<>();
    Map<String, Ranged> built = materials.entry("plastisol", grade);
    PROPERTIES.forEach(
        (key, p) ->
            values.put(
                key,
                table
                    .quantity(key, p.unit(), p.low(), p.high())
                    .orElse(Entries.of(built, key).typical())));
    double shift = Entries.of(values, "no_flow") - Entries.of(built, "no_flow").typical();
    PROPERTIES.forEach((key, p) -> assume(key, p, Entries.of(built, key), shift, values));
    ORDERS.forEach(o -> check(o, values));
    Plastisol plain;
    try {
      plain = MaterialTable.plastisol(grade, values);
    } catch (IllegalArgumentException e) { // its mistakes are noted
      plain = materials.plastisol("soft");
    }
    return withFiller(new ViscosityReader(table).read().map(plain::with).orElse(plain));
  }

  private void check(Order o, Map<String, Double> values) {
    double low = Entries.of(values, o.low());
    double high = Entries.of(values, o.high());
    if (low < high || (low == high && o.mayBeEqual())) {
      return;
    }
    table.mistake(
        table.has(o.low()) ? o.low() : o.high(),
        "[plastisol] "
            + o.low()
            + " ("
            + Entries.of(PROPERTIES, o.low()).shown(low)
            + ") must lie below "
            + o.high()
            + " ("
            + Entries.of(PROPERTIES, o.high()).shown(high)
            + "): "
            + o.why());
  }

  /** Tells what is used for a property not stated. The gel range moves with no-flow. */
  private void assume(
      String key, Property p, Ranged built, double shift, Map<String, Double> values) {
    if (table.has(key) || (key.equals("viscosity_165") && table.has("viscosity"))) {
      return;
    }
    boolean moves = MOVES_WITH_NO_FLOW.contains(key) && shift != 0;
    double by = moves ? shift : 0;
    values.put(key, built.typical() + by);
    String range =
        p.shown(built.typical() + by)
            + " ("
            + p.shown(built.low() + by)
            + " to "
            + p.shown(built.high() + by)
            + ")";
    String source =
        moves ? built.source() + ", moved with the stated no-flow temperature" : built.source();
    assumed.add(new Statement("plastisol: " + key.replace('_', ' '), range, source));
  }

  private Plastisol withFiller(Plastisol plain) {
    OptionalDouble share = table.quantity("filler_share", Dimension.SHARE, 0, 0.5);
    if (!table.has("filler")) {
      if (share.isPresent()) {
        table.mistake("filler_share", "a filler share without a filler");
      }
      return plain;
    }
    String filler = table.needChoice("filler", materials.names("filler"));
    if (!table.has("filler_share")) {
      table.mistake("filler", "filler needs filler_share = \"5 %\", its share of the mass");
    }
    if (share.isEmpty()) {
      return plain;
    }
    return mixed(plain, filler, share.getAsDouble());
  }

  private Plastisol mixed(Plastisol plain, String filler, double share) {
    Map<String, Ranged> grains = materials.entry("filler", filler);
    Plastisol mix;
    try {
      mix = Mixture.of(plain, filler, grains, share);
    } catch (IllegalArgumentException e) {
      table.mistake("filler_share", "filler_share: " + e.getMessage());
      return plain;
    }
    double phi = Mixture.volumeShare(plain, grains, share);
    if (phi > Mixture.SCATTERED) {
      warnings.add(
          Caution.of(
              Quantities.say(
                  "The filler takes %.0f %% of the volume. The rule for its conductivity holds up to"
                      + " %.0f %%, and so full a liquid is far thicker than assumed: measure both.",
                  phi * 100, Mixture.SCATTERED * 100)));
    }
    grains.forEach((key, v) -> assumeFiller(key, v));
    tell(mix, phi);
    return mix;
  }

  private void assumeFiller(String key, Ranged v) {
    Property p = Entries.of(GRAINS, key);
    assumed.add(
        new Statement(
            "filler: " + key.replace('_', ' '),
            p.shown(v.typical()) + " (" + p.shown(v.low()) + " to " + p.shown(v.high()) + ")",
            v.source()));
  }

  /** The mixture's own values, which are what is calculated with. */
  private void tell(Plastisol mix, double phi) {
    String why = "the two mixed, " + Quantities.say("%.0f %% of the volume filler", phi * 100);
    tell("density_hot", mix.densityHot(), why);
    tell("density_cold", mix.densityCold(), why);
    tell("specific_heat", mix.specificHeat(), why);
    tell("conductivity", mix.conductivity(), why);
    tell("latent_heat", mix.latentHeat(), why);
    tell("expansion_hot", mix.expansionHot(), why);
    tell("expansion_gelled", mix.expansionGelled(), why);
  }

  private void tell(String key, double value, String why) {
    assumed.add(
        new Statement(
            "mixture: " + key.replace('_', ' '), Entries.of(PROPERTIES, key).shown(value), why));
  }
}
