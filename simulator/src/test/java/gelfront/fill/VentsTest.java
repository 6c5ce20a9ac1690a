// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.base.Progress;
import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Case;
import gelfront.setup.Fill;
import gelfront.setup.PlainCase;
import gelfront.voxelize.CaseVoxels;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The gap round a plate of 40 x 16 mm, wherever between its faces the halves part. */
final class VentsTest {
  private static final double VOXEL = 0.5e-3;
  private static final double WALL = 10e-3;
  private static final double LONG = 40e-3;

  /** Creeping air between plates: C = w d^3 / (12 eta L), both sides, whatever the voxels do. */
  @ParameterizedTest
  @CsvSource({"-3, 3", "-3, 2.2", "-2.5, 3.1", "0, 5", "-5, 0", "-0.5, 0.5"})
  void letsOutWhatItsLengthDoes(double low, double high) {
    Case c =
        PlainCase.fedAtTheNose(3e-3, 8e-3, 15e-3)
            .withWall(WALL)
            .withVoxel(VOXEL)
            .make()
            .with(new Fill(true, OptionalDouble.empty(), Fill.BY_HAND, Fill.GAP, List.of()));
    CaseVoxels voxels =
        CaseVoxels.of(
            c,
            Solids.box(new Vec3(0, -8e-3, 1e-3 * low), new Vec3(LONG, 8e-3, 1e-3 * high)),
            Progress.NONE);
    Cavity cavity = voxels.model().cavity();
    double[] vents = Vents.of(voxels, c.fill());

    double sum = 0;
    for (int cell = 0; cell < vents.length; cell++) {
      double x = cavity.centre(cell, 0);
      sum += x > 0.25 * LONG && x < 0.75 * LONG ? vents[cell] : 0;
    }
    double land = WALL + 0.5 * VOXEL;
    double both = 2 * Vents.conductance(0.5 * LONG, Fill.GAP, land);
    assertEquals(both, sum, 0.02 * both);
  }
}
