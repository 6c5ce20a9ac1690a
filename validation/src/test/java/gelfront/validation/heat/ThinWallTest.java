// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import gelfront.base.Workers;
import gelfront.evidence.Check;
import gelfront.grid.VoxelModel;
import gelfront.heat.SplitStepper;
import gelfront.material.MaterialTable;
import gelfront.mesh.Vec3;
import gelfront.validation.exact.LayeredPlate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Flat cavities near outer faces, with water, a fan or air on them, against the series of layered
 * plates: the mould that every run gets, as coarse as it chooses, within 1 %. Errors in space
 * alone: steps are short. Walls lie anywhere between voxel middles, whatever the mould is made of.
 */
class ThinWallTest {
  private static final String SERIES = "series of layered plates";
  private static final double THICK = 6e-3;
  private static final double SHARE = 0.01;

  private static Plate plate(String material, double wallMm, double otherMm, double film) {
    return new Plate(
        MaterialTable.builtIn().mould(material),
        1e-3 * otherMm,
        THICK,
        1e-3 * wallMm,
        new LayeredPlate.Outside(9, 23),
        new LayeredPlate.Outside(film, 15));
  }

  /** Times at which a place in the plastisol has cooled to 140, 125 and 100 °C. */
  private static void agree(Check check, Plate plate, double voxel, double share) {
    LayeredPlate exact = plate.exact();
    VoxelModel model = plate.model(voxel);
    double[] levels = {140, 125, 100};
    double end = 1.1 * exact.crossing(1, share * THICK, levels[2], 0.5, 1000);

    Watch watch =
        Bodies.run(
                new SplitStepper(model, Bodies.plain(), Workers.SERIAL),
                model,
                new Vec3(0, 0, share * THICK),
                Bodies.plain(),
                Plate.SHOT,
                Double.NEGATIVE_INFINITY,
                end)
            .watch();

    for (double t : levels) {
      double wanted = exact.crossing(1, share * THICK, t, 0.5, 1000);
      check.expected(wanted).got(watch.crossing(0, t));
    }
  }

  /** At 20 to 24 voxels across, in the middle and half way to either wall. */
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          printed-resin, 1, 9, 2000, 0.25
          printed-resin, 2, 9, 30, 0.25
          printed-resin, 1.3, 1.7, 500, 0.27
          printed-resin, 9, 9, 500, 0.29
          silicone, 1, 9, 500, 0.25
          silicone, 1.2, 2, 30, 0.28
          plaster, 2, 9, 500, 0.25
          plaster, 1.1, 9, 500, 0.26
          mdf, 1.4, 9, 9, 0.27
          aluminium-filled-epoxy, 1, 9, 500, 0.25
          stainless-steel, 1, 9, 2000, 0.25
          carbon-steel, 2.2, 9, 2000, 0.25
          brass, 1, 9, 2000, 0.26
          aluminium-6061, 1, 9, 2000, 0.25
          aluminium-6061, 2, 9, 9, 0.25
          aluminium-6061, 2.3, 15, 500, 0.27
          """)
  void fine(String material, double wallMm, double otherMm, double film, double voxelMm) {
    String name =
        "wall of "
            + wallMm
            + " mm "
            + material
            + " to "
            + film
            + " W/m2K, fine: times to 140, 125, 100 degC";
    Check check = Check.of(name, SERIES);
    for (double share : new double[] {0.25, 0.5, 0.75}) {
      agree(check, plate(material, wallMm, otherMm, film), 1e-3 * voxelMm, share);
    }
    check.within(SHARE);
  }

  /** In the middle, at the normal level's half millimetre and about it: 10 to 13 voxels across. */
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          printed-resin, 1, 9, 2000, 0.5
          printed-resin, 1.3, 1.7, 500, 0.53
          plaster, 2, 9, 500, 0.47
          silicone, 1.2, 2, 30, 0.5
          aluminium-filled-epoxy, 1, 9, 500, 0.5
          stainless-steel, 1, 9, 2000, 0.48
          aluminium-6061, 1, 9, 2000, 0.5
          aluminium-6061, 2.3, 15, 500, 0.45
          """)
  void normal(String material, double wallMm, double otherMm, double film, double voxelMm) {
    String name =
        "wall of "
            + wallMm
            + " mm "
            + material
            + " to "
            + film
            + " W/m2K, normal: times to 140, 125, 100 degC";
    Check check = Check.of(name, SERIES);
    agree(check, plate(material, wallMm, otherMm, film), 1e-3 * voxelMm, 0.5);
    check.within(SHARE);
  }
}
