package gelfront.setup;

import gelfront.base.Dimension;
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
  private record Property(Dimension unit, double low, double high, double print, String format) {}

  private static final Map<String, Property> PROPERTIES = properties();

  private final CaseTable table;
  private final MaterialTable materials;
  private final List<Statement> assumed;

  PlastisolReader(CaseTable table, MaterialTable materials, List<Statement> assumed) {
    this.table = table;
    this.materials = materials;
    this.assumed = assumed;
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
    PROPERTIES.forEach((key, p) -> values.put(key, value(key, p, built.get(key))));
    gelRange(values, built);
    Plastisol plain;
    try {
      plain = MaterialTable.plastisol(grade, values);
    } catch (IllegalArgumentException e) {
      table.mistake("", "[plastisol] " + e.getMessage());
      return materials.plastisol("soft");
    }
    return withFiller(plain);
  }

  private double value(String key, Property p, Ranged built) {
    OptionalDouble stated = table.quantity(key, p.unit(), p.low(), p.high());
    if (stated.isPresent()) {
      return stated.getAsDouble();
    }
    assumed.add(
        new Statement(
            "plastisol: " + key.replace('_', ' '),
            Quantities.say(p.format(), built.typical() * p.print())
                + Quantities.say(
                    " (" + p.format() + " to " + p.format() + ")",
                    built.low() * p.print(),
                    built.high() * p.print()),
            built.source()));
    return built.typical();
  }

  /** Who states another no-flow temperature moves the gel range with it. */
  private void gelRange(Map<String, Double> values, Map<String, Ranged> built) {
    double shift = values.get("no_flow") - built.get("no_flow").typical();
    for (String key : List.of("gel_start", "gel_end")) {
      if (!table.has(key)) {
        values.merge(key, shift, Double::sum);
      }
    }
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
    if (share.isEmpty()) {
      table.mistake("filler", "filler needs filler_share = \"5 %\", its share of the mass");
      return plain;
    }
    return Mixture.of(plain, filler, materials.entry("filler", filler), share.getAsDouble());
  }
}
