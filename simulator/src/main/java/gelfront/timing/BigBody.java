// SPDX-License-Identifier: Apache-2.0
package gelfront.timing;

import gelfront.base.Progress;
import gelfront.base.Quantities;
import gelfront.base.Workers;
import gelfront.grid.VoxelModel;
import gelfront.heat.MouthFilm;
import gelfront.heat.SplitStepper;
import gelfront.material.HeatCurves;
import gelfront.mesh.TriangleMesh;
import gelfront.run.CaseRunner;
import gelfront.setup.Case;
import gelfront.setup.CaseFile;
import gelfront.setup.PartLoader;
import gelfront.state.ThermalState;
import gelfront.voxelize.CaseVoxels;
import java.nio.file.Path;

/** A thick stick of 0.24 litres, from caliper rows, in as many cells as wanted. */
final class BigBody {
  /** mm3 of part, gate and sprue. */
  private static final double VOLUME = 246_600;

  private static final int STEPS = 12;

  /** Last step that isn't counted. */
  private static final int WARM = 2;

  private static final String CASE =
      """
      [[part.caliper]]
      distance = "0 mm"
      width = "20 mm"
      height = "20 mm"
      [[part.caliper]]
      distance = "40 mm"
      width = "42 mm"
      height = "42 mm"
      [[part.caliper]]
      distance = "150 mm"
      width = "44 mm"
      height = "44 mm"
      [[part.caliper]]
      distance = "200 mm"
      width = "20 mm"
      height = "20 mm"
      [gate]
      at = ["0 mm", "0 mm", "0 mm"]
      direction = [-1, 0, 0]
      shape = "round"
      size = "10 mm"
      land = "4 mm"
      [sprue]
      diameter = "14 mm"
      mouth_diameter = "16 mm"
      length = "30 mm"
      [plastisol]
      grade = "soft"
      [shot]
      temperature = "165 degC"
      injector = "500 ml"
      [numerics]
      level = "quick"
      voxel = "%.4f mm"
      """;

  private final Case setup;
  private final CaseVoxels voxels;

  /**
   * @param cells of plastisol wanted, within a per cent
   */
  BigBody(double cells) {
    String text = Quantities.say(CASE, Math.cbrt(VOLUME / cells));
    setup = CaseFile.parse("stick", text, Path.of("")).setup();
    TriangleMesh part = PartLoader.load(setup.part()).mesh();
    voxels = CaseVoxels.of(setup, part, Progress.NONE);
  }

  int cells() {
    return voxels.model().cavity().count();
  }

  /**
   * @param perCellStage s of a step over its cells and stages
   * @param held bytes of heap per cell, with all that a run holds
   */
  record Cost(double perCellStage, double held) {}

  /** Some growing steps, the first ones left out of the count. */
  Cost cost(Workers workers) {
    VoxelModel model = voxels.model();
    HeatCurves curves = HeatCurves.of(setup.plastisol());
    ThermalState state = new ThermalState(model, curves, setup.shot().temperature());
    SplitStepper stepper = new SplitStepper(model, curves, workers);
    double seconds = 0;
    double stages = 0;
    double held = 0;
    for (int i = 0; i < STEPS; i++) {
      double dt = 0.05 * Math.pow(1.4, i);
      double took = Stopwatch.seconds(() -> stepper.step(state, dt, MouthFilm.INSULATED));
      if (i == WARM) { // state and stepper are still needed, so they count
        held = (double) Stopwatch.heldHeap() / cells();
      }
      if (i > WARM) {
        seconds += took;
        stages += (double) stepper.stages() * stepper.passes();
      }
    }
    return new Cost(seconds / (stages * cells()), held);
  }

  /** From voxels to the verdict. */
  CaseRunner.Outcome run(Workers workers) {
    return CaseRunner.run(setup, voxels, workers, Progress.NONE);
  }
}
