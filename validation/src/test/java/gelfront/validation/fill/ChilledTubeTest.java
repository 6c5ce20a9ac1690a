// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.evidence.Check;
import gelfront.fill.Drive;
import gelfront.fill.FillLaw;
import gelfront.fill.FillRecord;
import gelfront.fill.Filling;
import gelfront.fill.MouldChill;
import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
import gelfront.heat.MouthFilm;
import gelfront.material.HeatCurves;
import gelfront.material.MouldMaterial;
import gelfront.material.ViscosityCurve;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Block;
import gelfront.state.ThermalState;
import gelfront.validation.exact.Graetz;
import gelfront.voxelize.MouldBuilder;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A tube with walls of one temperature filled at a given rate: what has been passed by much liquid
 * cools as Graetz's series says, x* = pi alpha x / (4 Q).
 */
final class ChilledTubeTest {
  private static final double ALPHA = 8e-8;
  private static final double CAPACITY = 1.8e6;
  private static final double HOT = 165;
  private static final double WALL = 30;
  private static final double R = 2e-3;
  private static final double LENGTH = 36e-3;
  private static final double RATE = Math.PI * ALPHA * LENGTH / (4 * 0.02);
  private static final MouldMaterial FIXED = new MouldMaterial("fixed", 1e9, 1e6, 1e6);

  private final Cavity tube =
      Shots.cavity(
          List.of(Solids.cylinder(Vec3.ZERO, new Vec3(LENGTH, 0, 0), R, R, 128)),
          2 * R / 12.3,
          Shots.mouth(Vec3.ZERO, new Vec3(-1, 0, 0), R));
  private final HeatCurves curves =
      new HeatCurves(
          new double[] {0, 200},
          new double[] {0, 200 * CAPACITY},
          new double[] {25},
          new double[] {ALPHA * CAPACITY});
  private final VoxelModel model = model();
  private final ThermalState state = new ThermalState(model, curves, HOT);

  @Test
  void coolsBehindTheFrontAsGraetzSays() {
    FillRecord r = shoot(60);
    assertEquals(FillRecord.End.FULL, r.end());
    Check check = Check.of("shot into a cold tube, bulk behind the front", "Graetz's series");
    for (double share : new double[] {0.15, 0.3}) {
      double theta = (bulk(share * LENGTH) - WALL) / (HOT - WALL);
      check.expected(Graetz.bulk(0.02 * share)).got(theta);
    }
    check.within(0.02, 1);
    assertTrue(arrival(r, 0.9) < arrival(r, 0.4) && arrival(r, 0.4) < arrival(r, 0.1));
  }

  @Test
  void joulesAreWhatCameLessWhatTheWallTook() {
    FillRecord r = shoot(20);
    double in = 0;
    double[] volume = tube.volumes();
    for (int c = 0; c < volume.length; c++) {
      in += volume[c] * state.enthalpy[c];
    }
    double came = r.held() * curves.enthalpy(HOT);
    double took = state.ledger.mouldGain() + state.ledger.toAir();
    assertEquals(0, state.ledger.imbalance(), 1e-9);
    assertEquals(came - took, in, 1e-4 * came);
    assertTrue(took > 0.05 * came, "the wall took " + took / came);
  }

  private FillRecord shoot(int looks) {
    FillLaw law =
        new FillLaw(
            curves,
            new ViscosityCurve(new double[] {HOT}, new double[] {0}),
            0,
            HOT,
            new Drive(RATE, 1e9),
            1e3,
            looks);
    double[] vents = new double[tube.count()];
    Arrays.fill(vents, Shots.OPEN);
    MouldChill chill = new MouldChill(model, curves, Workers.SERIAL, MouthFilm.INSULATED);
    return new Filling(tube, law, vents, new double[tube.count()], chill, state, true)
        .run(Progress.NONE);
  }

  /** °C, mean over a section by volume rate. */
  private double bulk(double x) {
    double sum = 0;
    double weight = 0;
    double dx = tube.grid().spacing();
    for (int c = 0; c < tube.count(); c++) {
      if (Math.abs(tube.centre(c, 0) - x) < dx) {
        double r = Math.hypot(tube.centre(c, 1), tube.centre(c, 2)) / R;
        double w = Math.max(0, 1 - r * r);
        sum += w * state.temperature[c];
        weight += w;
      }
    }
    return sum / weight;
  }

  private double arrival(FillRecord r, double share) {
    return r.arrival()[tube.nearest(new Vec3(share * LENGTH, 0, 0))];
  }

  private VoxelModel model() {
    double dx = tube.grid().spacing();
    Block block =
        new Block(FIXED, 10 * dx, Optional.empty(), WALL, WALL, 0, 1e9, List.of(), List.of());
    Box box = new Box(new Vec3(0, -R, -R), new Vec3(LENGTH, R, R)).grown(8 * dx);
    VoxelModel m = MouldBuilder.build(tube, block, box);
    double[] resistance = m.resistance().clone();
    for (int w = 0; w < resistance.length; w++) {
      if (tube.walls().face()[w] < 2) {
        resistance[w] = 1e30;
      }
    }
    return new VoxelModel(tube, m.mould(), m.mouldCell(), resistance);
  }
}
