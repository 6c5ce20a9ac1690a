// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.grid.Basins;
import gelfront.grid.Cavity;
import gelfront.grid.WallDistance;
import gelfront.material.MaterialTable;
import gelfront.material.Plastisol;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Labelled;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A bulb on a stick whose places set by the square of their depth. */
final class OpenLongerTest {
  private static final Plastisol SOFT = MaterialTable.builtIn().plastisol("soft");
  private static final float CUT = 6;

  private final Cavity cavity =
      CavityBuilder.build(
          List.of(
              new Labelled(
                  Cavity.Region.PART,
                  Solids.revolution(
                      new double[] {0, 20e-3, 30e-3, 40e-3, 60e-3},
                      new double[] {3e-3, 4e-3, 8e-3, 4e-3, 3e-3},
                      64))),
          0.7e-3,
          Optional.empty(),
          Progress.NONE);
  private final WallDistance walls = WallDistance.of(cavity);
  private final float[] set = new float[cavity.count()];
  private final SinkEstimate sinks = sinks();

  private SinkEstimate sinks() {
    for (int c = 0; c < set.length; c++) {
      set[c] = (float) (1.3e6 * Math.pow(walls.distance(c), 2) + 0.5);
    }
    TemperatureHistory history = new TemperatureHistory();
    for (double t = 0; t < 160; t += 0.5) {
      double[] temperature = new double[set.length];
      for (int c = 0; c < set.length; c++) {
        double rate = Math.log((165 - 30) / (SOFT.noFlow() - 30)) / set[c];
        temperature[c] = 30 + 135 * Math.exp(-rate * t);
      }
      history.add(t, temperature);
    }
    return new SinkEstimate(
        cavity, c -> true, walls, set, history, SOFT, 30, Optional.empty(), new Vec3(0, 0, 1));
  }

  private Basins.Basin closedAt(double time) {
    int[] cells = IntStream.range(0, set.length).filter(c -> set[c] > CUT).toArray();
    int last = IntStream.of(cells).reduce((a, b) -> set[a] > set[b] ? a : b).orElseThrow();
    return new Basins.Basin(
        cells,
        new int[cells.length],
        (float) time,
        0,
        List.of(new Basins.Peak(last, set[last], (float) time, 0)));
  }

  private Sink closing(double time, double visible) {
    return sinks.of(closedAt(time), visible, Progress.NONE);
  }

  private double deepest(double time) {
    return closing(time, 1).dents().get(0).depthHigh();
  }

  @Test
  void aWayThatClosesThenLeavesNoDentAndOneThatClosesBeforeDoes() {
    double visible = 0.3 * deepest(CUT);

    double until = closing(CUT, visible).openUntil();

    assertTrue(until > CUT + 2 && until < 83, "" + until);
    assertTrue(deepest(until) < visible);
    assertTrue(deepest(until - 1) >= visible);
  }

  @Test
  void whoSeesLessNeedsLess() {
    double keen = closing(CUT, 0.2 * deepest(CUT)).openUntil();
    double usual = closing(CUT, 0.5 * deepest(CUT)).openUntil();
    double easy = closing(CUT, 1.01 * deepest(CUT)).openUntil();

    assertTrue(keen > usual, keen + " " + usual);
    assertEquals(CUT, easy, 1e-6, "no dent that deep, whenever it closes");
  }
}
