// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import java.util.List;

/** Inputs and health of {@link SyntheticRun}. */
final class SyntheticTexts {
  private SyntheticTexts() {}

  static Inputs inputs() {
    return new Inputs(
        List.of(
            new Inputs.Line("Mesh", "two-bulbs.stl, closed, 2,160 triangles", ""),
            new Inputs.Line("Gate", "round, 5 mm, 4 mm land, at the nose", ""),
            new Inputs.Line("Sprue", "7 to 10 mm, 23 mm long", ""),
            new Inputs.Line("Shot temperature", "168 °C (334 °F)", ""),
            new Inputs.Line("Mould temperature", "42 °C (108 °F)", "")),
        List.of(
            new Inputs.Line("No-flow temperature", "125 °C", "estimate, 100 to 150"),
            new Inputs.Line("Conductivity", "0.145 W/m K", "S5, S7, S8"),
            new Inputs.Line("Contact to mould", "2500 W/m² K", "S28")));
  }

  static Health health() {
    return new Health(
        List.of(
            new Health.Line(
                "Heat lost and found again", "3e-9 of the heat moved", Health.Mark.GOOD),
            new Health.Line("Cells across the narrowest gate", "6", Health.Mark.GOOD),
            new Health.Line("Volume of cells against the mesh", "-0.4 %", Health.Mark.LOOK_AT_IT)));
  }
}
