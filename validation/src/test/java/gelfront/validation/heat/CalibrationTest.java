// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.answer.Calibrated.Found;
import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.calibrate.CoolingFit;
import gelfront.calibrate.Quantity;
import gelfront.evidence.Check;
import gelfront.grid.VoxelModel;
import gelfront.heat.MouthFilm;
import gelfront.heat.SplitStepper;
import gelfront.material.HeatCurves;
import gelfront.mesh.Vec3;
import gelfront.run.Events;
import gelfront.run.Sensor;
import gelfront.run.ShotRun;
import gelfront.run.StepControl;
import gelfront.setup.Numerics;
import gelfront.state.ThermalState;
import gelfront.validation.exact.CoolingSeries;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Conductivity and contact fitted by our own conduction in 16 voxels across to what the series for
 * an endless cylinder says (Carslaw and Jaeger, Conduction of Heat in Solids, ch. VII) with noise
 * of 1 K.
 */
class CalibrationTest {
  private static final String SERIES = "series for an endless cylinder, Carslaw and Jaeger ch. VII";
  private static final double RADIUS = 5e-3;
  private static final double ACROSS = 16;
  private static final double FILM = 500;
  private static final double NOISE = 1;
  private static final int READINGS = 60;
  private static final double END = 200;

  private static double[] times() {
    return DoubleStream.iterate(1, t -> t + END / READINGS).limit(READINGS).toArray();
  }

  private static double[] exact(double[] times) {
    CoolingSeries series =
        new CoolingSeries(CoolingSeries.Shape.CYLINDER, FILM * RADIUS / Bodies.K);
    return Arrays.stream(times)
        .map(t -> series.at(0, Bodies.ALPHA * t / (RADIUS * RADIUS)))
        .map(Bodies::temperature)
        .toArray();
  }

  /** Our own: a slice of the cylinder, the thermometer in its middle. */
  private static double[] own(Map<Quantity, Double> values, double[] times) {
    double film = values.getOrDefault(Quantity.CONTACT, FILM);
    double k = values.getOrDefault(Quantity.CONDUCTIVITY, Bodies.K);
    VoxelModel model = Bodies.slice(RADIUS, 2 * RADIUS / ACROSS, film);
    HeatCurves curves =
        new HeatCurves(
            new double[] {0, 200},
            new double[] {0, 200 * Bodies.C},
            new double[] {25},
            new double[] {k});
    ThermalState state = new ThermalState(model, curves, Bodies.START);
    Sensor sensor = new Sensor(model.cavity(), Vec3.ZERO);
    sensor.see(state);
    new ShotRun(
            new SplitStepper(model, curves, Workers.SERIAL),
            new ShotRun.Mouth(MouthFilm.INSULATED, 0, MouthFilm.INSULATED),
            Events.NONE,
            StepControl.tolerance(Numerics.Level.FINE),
            List.of(sensor))
        .run(state, -1e6, times[times.length - 1] + 1, Progress.NONE);
    UnivariateFunction seen = sensor.curve();
    return Arrays.stream(times).map(seen::value).toArray();
  }

  private static List<Found> fitted(Random random) {
    double[] times = times();
    double[] noisy =
        Arrays.stream(exact(times)).map(t -> t + NOISE * random.nextGaussian()).toArray();
    Map<Quantity, Double> present = new EnumMap<>(Quantity.class);
    present.put(Quantity.CONDUCTIVITY, 0.18);
    present.put(Quantity.CONTACT, 700.0);
    CoolingFit fit = new CoolingFit(v -> own(v, times), noisy);
    return CoolingFit.found(fit.of(present), present);
  }

  /**
   * @param bias mean of value over truth, less 1
   * @param held share of intervals that hold the truth
   */
  private record Repeats(double bias, double held) {}

  private static Repeats conductivity(int repeats) {
    Random random = new Random(31);
    double sum = 0;
    int held = 0;
    for (int i = 0; i < repeats; i++) {
      Found k = fitted(random).get(0);
      assertEquals("conductivity", k.name());
      sum += k.value() / Bodies.K - 1;
      held += k.low() <= Bodies.K && Bodies.K <= k.high() ? 1 : 0;
    }
    return new Repeats(sum / repeats, (double) held / repeats);
  }

  @Test
  void conductivityComesOutOfNoise() {
    Check.of("conductivity fitted to a noisy curve, bias of 8", SERIES)
        .error(conductivity(8).bias())
        .within(0.02);
  }

  /** Bias under 2 %, 85 to 95 of 100 intervals of 90 % hold the truth. */
  @Test
  @EnabledIfSystemProperty(named = "slow", matches = "true")
  void intervalsHoldTheTruthAsOftenAsTheySay() {
    Repeats r = conductivity(100);
    Check.of("conductivity fitted to a noisy curve, bias of 100", SERIES)
        .error(r.bias())
        .within(0.02);
    Check.of("intervals of 90 % that hold the truth, of 100", SERIES)
        .expected(0.9)
        .got(r.held())
        .within(0.05, 1);
  }

  /** Of a bar of 10 mm in a perfect contact the curve tells nothing of the contact. */
  @Test
  void whatTheCurveDoesNotTellIsLeftOut() {
    double[] times = times();
    Map<Quantity, Double> truth = new EnumMap<>(Quantity.class);
    truth.put(Quantity.CONTACT, 50e3);
    truth.put(Quantity.CONDUCTIVITY, Bodies.K);
    Random random = new Random(2);
    double[] noisy =
        Arrays.stream(own(truth, times)).map(t -> t + NOISE * random.nextGaussian()).toArray();
    Map<Quantity, Double> present = new EnumMap<>(Quantity.class);
    present.put(Quantity.CONDUCTIVITY, 0.17);
    present.put(Quantity.CONTACT, 20e3);

    CoolingFit.Result r =
        new CoolingFit(
                v -> {
                  Map<Quantity, Double> all = new EnumMap<>(present);
                  all.putAll(v);
                  return own(all, times);
                },
                noisy)
            .of(present);

    assertEquals(List.of(Quantity.CONDUCTIVITY), r.told());
    assertEquals("contact with the wall", r.untold().get(0).name());
    assertEquals(Bodies.K, CoolingFit.found(r, present).get(0).value(), 0.03 * Bodies.K);
  }
}
