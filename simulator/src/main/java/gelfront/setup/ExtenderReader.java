// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.material.MaterialTable;
import java.util.List;
import java.util.Optional;

/** The table [extender]: a tube on the block. */
final class ExtenderReader {
  private final CaseTable table;
  private final MaterialTable materials;
  private final List<Statement> assumed;

  /**
   * @param assumed collects what is filled in
   */
  ExtenderReader(CaseTable table, MaterialTable materials, List<Statement> assumed) {
    this.table = table;
    this.materials = materials;
    this.assumed = assumed;
  }

  /**
   * The tube; empty where none is stated or mistakes were found.
   *
   * @param block whose air it stands in
   */
  Optional<FeedSystem.Extender> read(Block block) {
    if (!table.present()) {
      return Optional.empty();
    }
    double bore = table.need("bore", Dimension.LENGTH, 1e-3, 0.1);
    double height = table.need("height", Dimension.LENGTH, 1e-3, 0.3);
    double wall = table.need("wall", Dimension.LENGTH, 0.2e-3, 0.05);
    String material = table.needChoice("material", materials.names("mould"));
    double air = block.airTemperature();
    double film = block.airFilm();
    double start =
        or("start", Dimension.TEMPERATURE, -30, 180, air, Quantities.say("%.0f °C", air));
    double outside =
        or("air_film", Dimension.FILM, 0, 5000, film, Quantities.say("%.0f W/m2 K", film));
    return bore > 0 && height > 0 && wall > 0
        ? Optional.of(
            new FeedSystem.Extender(bore, height, wall, materials.mould(material), start, outside))
        : Optional.empty();
  }

  private double or(
      String key, Dimension d, double low, double high, double otherwise, String shown) {
    if (!table.has(key)) {
      String why = key.equals("start") ? "the air's" : "the block's";
      assumed.add(new Statement("extender: " + key.replace('_', ' '), shown, why));
      return otherwise;
    }
    return table.quantity(key, d, low, high).orElse(otherwise);
  }
}
