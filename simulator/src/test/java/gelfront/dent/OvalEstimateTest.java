// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.evidence.Check;
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
import org.junit.jupiter.api.Test;

/** Parts whose front goes in by the square root of time, opened early and late. */
final class OvalEstimateTest {
  private static final Plastisol SOFT = MaterialTable.builtIn().plastisol("soft");

  /** s for each square metre that the front has gone in. */
  private static final double SLOW = 1.3e6;

  private static final double VISIBLE = 0.2e-3;
  private static final double END = 160;

  private static Cavity rod(double voxel, double[] x, double[] r) {
    return CavityBuilder.build(
        List.of(new Labelled(Cavity.Region.PART, Solids.revolution(x, r, 96))),
        voxel,
        Optional.empty(),
        Progress.NONE);
  }

  /** Liquid at {@code hot} °C at first, evenly down to no-flow as the last of it sets. */
  private static SinkEstimate sinks(Cavity cavity, double hot) {
    WallDistance walls = WallDistance.of(cavity);
    float[] set = new float[cavity.count()];
    for (int c = 0; c < set.length; c++) {
      set[c] = (float) (SLOW * Math.pow(walls.distance(c), 2));
    }
    TemperatureHistory history = new TemperatureHistory();
    for (double t = 0; t <= END; t += 0.5) {
      double[] temperature = new double[set.length];
      for (int c = 0; c < set.length; c++) {
        double liquid = SOFT.noFlow() + (hot - SOFT.noFlow()) * (1 - t / END);
        temperature[c] = t < set[c] ? liquid : 40;
      }
      history.add(t, temperature);
    }
    return new SinkEstimate(
        cavity, c -> true, walls, set, history, SOFT, 30, Optional.empty(), new Vec3(0, 0, 1));
  }

  private static final double[] BULB_X = {0, 20e-3, 30e-3, 40e-3, 60e-3};
  private static final double[] BULB_R = {3e-3, 4e-3, 8e-3, 4e-3, 3e-3};

  /**
   * An even rod, front 1 mm in, against the closed form with what the voxels don't know: true
   * radius and thickness; e of a round core of uniform temperature.
   */
  @Test
  void anEvenRodGoesAsOvalAsTheClosedFormSays() {
    double radius = 6e-3;
    double t = 1e-3;
    double time = SLOW * t * t;
    double hot = SOFT.noFlow() + 60;
    Cavity rod = rod(0.4e-3, new double[] {0, 60e-3}, new double[] {radius, radius});

    Oval oval = sinks(rod, hot).opened(time, VISIBLE);

    double liquid = 60 * (1 - time / END);
    double core = Math.pow(1 - t / radius, 2);
    double e = core * -Math.expm1(-SOFT.expansionHot() * liquid);
    double expected = radius * Math.sqrt((e - Math.pow(t / radius, 2) / 2) / 1.5);
    assertTrue(expected > 2 * VISIBLE, "" + expected);
    Check.of("oval of an even rod, both bounds", "free ring of fixed length, closed form")
        .expected(expected)
        .got(oval.depth())
        .expected(expected)
        .got(oval.least()) // nothing goes along an even rod
        .within(0.05);
    double volume = Math.PI * radius * radius * core * (60e-3 - 2 * t);
    Check.of("liquid of an even rod", "geometry").expected(volume).got(oval.liquid()).within(0.02);
  }

  @Test
  void theSoonerItIsOpenedTheMoreOvalItIsAndOpenedSetItStaysRound() {
    SinkEstimate sinks = sinks(rod(0.7e-3, BULB_X, BULB_R), 165);
    double before = Double.POSITIVE_INFINITY;
    for (double time : new double[] {0.5, 1, 2, 3, 5, 8, 12, 20, 40, 80}) {
      double depth = sinks.opened(time, VISIBLE).depth();
      assertTrue(depth <= before, time + ": " + depth + " after " + before);
      before = depth;
    }

    assertTrue(sinks.opened(0.5, VISIBLE).depth() > VISIBLE);
    assertEquals(0, before);
    assertEquals(0, sinks.opened(120, VISIBLE).liquid(), "all has set");
  }

  @Test
  void shutUntilThenNoOvalIsSeenAndASecondLessIsTooLittle() {
    SinkEstimate sinks = sinks(rod(0.7e-3, BULB_X, BULB_R), 165);

    double until = sinks.opened(0.5, VISIBLE).shutUntil();

    assertTrue(sinks.opened(until, VISIBLE).depth() < VISIBLE);
    assertTrue(sinks.opened(until - 0.2, VISIBLE).depth() >= VISIBLE);
    assertEquals(until + 1, sinks.opened(until + 1, VISIBLE).shutUntil());
  }

  /** The softest section gives way, where the bulb is widest; its own liquid alone makes less. */
  @Test
  void aBulbGoesOvalRatherThanItsStick() {
    Oval oval = sinks(rod(0.7e-3, BULB_X, BULB_R), 165).opened(1, VISIBLE);

    assertEquals(30e-3, oval.place().x(), 2e-3);
    assertTrue(oval.least() > 0 && oval.least() < oval.depth(), "" + oval);
  }
}
