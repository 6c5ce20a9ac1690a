// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
import gelfront.heat.HeatStepper;
import gelfront.heat.MouthFilm;
import gelfront.material.HeatCurves;
import gelfront.material.MouldMaterial;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Block;
import gelfront.state.ThermalState;
import gelfront.validation.exact.CoolingSeries;
import gelfront.validation.exact.CoolingSeries.Shape;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Labelled;
import gelfront.voxelize.MouldBuilder;
import gelfront.voxelize.Mouth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every heat stepper must keep, whatever its scheme. */
abstract class HeatStepperContract {
  private static final double START = 165;
  private static final double MOULD = 30;
  private static final double AIR = 20;
  private static final double FILM = 2000;
  private static final double RADIUS = 4e-3;

  /** Conductivity, density, specific heat: of aluminium and of printed resin. */
  private static final MouldMaterial ALUMINIUM = new MouldMaterial("aluminium", 167, 2700, 896);

  private static final MouldMaterial RESIN = new MouldMaterial("resin", 0.2, 1170, 1350);

  abstract HeatStepper stepper(VoxelModel model, HeatCurves curves);

  private static HeatCurves gelling(double[] conductivity) {
    double c = 1000 * 1900;
    double l = 1000 * 20e3;
    double[] at = conductivity.length == 1 ? new double[] {25} : new double[] {90, 130};
    return new HeatCurves(
        new double[] {0, 110, 130, 200},
        new double[] {0, 110 * c, 130 * c + l, 200 * c + l},
        at,
        conductivity);
  }

  private static MouldMaterial material(String name) {
    return name.equals("resin") ? RESIN : ALUMINIUM;
  }

  /** A bar with an open end, in a block with air round it. */
  private static VoxelModel bar(MouldMaterial material) {
    Vec3 open = new Vec3(-8e-3, 0, 0);
    Mouth mouth = new Mouth(open, new Vec3(-1, 0, 0), RADIUS);
    Cavity cavity =
        CavityBuilder.build(
            List.of(
                new Labelled(
                    Cavity.Region.PART,
                    Solids.cylinder(open, new Vec3(8e-3, 0, 0), RADIUS, RADIUS, 64))),
            1e-3,
            Optional.of(mouth),
            Progress.NONE);
    Block block =
        new Block(material, 1, Optional.empty(), MOULD, AIR, 50, FILM, List.of(), List.of());
    Box box = new Box(new Vec3(-8e-3, -10e-3, -10e-3), new Vec3(15e-3, 10e-3, 10e-3));
    return MouldBuilder.build(cavity, block, box);
  }

  @ParameterizedTest
  @CsvSource({"aluminium, 0.15, 0.15", "resin, 0.15, 0.15", "resin, 0.12, 0.18"})
  void heatIsKeptEveryStep(String material, double kCold, double kHot) {
    VoxelModel model = bar(material(material));
    double[] k = kCold == kHot ? new double[] {kCold} : new double[] {kCold, kHot};
    HeatCurves curves = gelling(k);
    ThermalState s = new ThermalState(model, curves, START);
    HeatStepper stepper = stepper(model, curves);

    for (int i = 0; i < 40; i++) {
      MouthFilm mouth = s.time < 2 ? new MouthFilm(1000, START) : new MouthFilm(50, AIR);
      stepper.step(s, 0.05 + 0.05 * s.time, mouth);
      assertTrue(s.ledger.imbalance() < 1e-6, "after " + s.time + " s: " + s.ledger.imbalance());
    }

    assertTrue(s.ledger.toAir() > 0 && s.ledger.throughMouth() > 0);
    assertEquals(contents(model, s, curves), s.ledger.plastisolGain(), 1e-6);
  }

  /** J gained by the plastisol since the start. */
  private static double contents(VoxelModel model, ThermalState s, HeatCurves curves) {
    double[] volume = model.cavity().volumes();
    double gain = 0;
    for (int i = 0; i < volume.length; i++) {
      gain += volume[i] * (s.enthalpy[i] - curves.enthalpy(START));
      assertEquals(curves.temperature(s.enthalpy[i]), s.temperature[i], 1e-9);
    }
    return gain;
  }

  @ParameterizedTest
  @ValueSource(strings = {"aluminium", "resin"})
  void nothingGetsHotterThanTheShotOrColderThanTheAir(String material) {
    VoxelModel model = bar(material(material));
    HeatCurves curves = gelling(new double[] {0.15});
    ThermalState s = new ThermalState(model, curves, START);
    HeatStepper stepper = stepper(model, curves);

    for (int i = 0; i < 40; i++) {
      stepper.step(s, 0.05 + 0.05 * s.time, MouthFilm.INSULATED);
      for (double t : s.temperature) {
        assertTrue(t < START + 1e-3 && t > MOULD, "plastisol " + t);
      }
      for (double t : s.mould) {
        assertTrue(t < START && t > AIR, "mould " + t);
      }
    }
  }

  /** Series of Carslaw and Jaeger ch. III and IX, Incropera and DeWitt ch. 5. */
  @ParameterizedTest
  @CsvSource({"SLAB, 1", "SLAB, 10", "SLAB, 80", "BALL, 1", "BALL, 10", "BALL, 80"})
  void centreAgainstTheSeries(Shape shape, double biot) {
    double radius = 5e-3;
    double film = Bodies.film(biot, radius);
    VoxelModel model =
        shape == Shape.SLAB
            ? Column.slab(20, radius / 10, Bodies.AROUND, film)
            : Bodies.ball(radius, radius / 10, film);
    Vec3 centre = shape == Shape.SLAB ? new Vec3(radius, 0, 0) : Vec3.ZERO;
    HeatCurves curves = Bodies.plain();

    Watch watch =
        Bodies.run(
                stepper(model, curves),
                model,
                centre,
                curves,
                Bodies.START,
                Bodies.temperature(0.29),
                1e6)
            .watch();

    CoolingSeries series = new CoolingSeries(shape, biot);
    for (double theta : List.of(0.5, 0.3)) {
      double exact = series.fourierAtCentre(theta) * radius * radius / Bodies.ALPHA;
      assertEquals(exact, watch.crossing(0, Bodies.temperature(theta)), 0.005 * exact);
    }
  }

  /** At least first order, and the differences small; {@link #order()} says how good. */
  @ParameterizedTest
  @ValueSource(strings = {"aluminium", "resin"})
  void twoHalfStepsMakeOneStepWithinTheOrder(String material) {
    VoxelModel model = bar(material(material));
    HeatCurves curves =
        new HeatCurves(
            new double[] {0, 200}, new double[] {0, 3.8e8}, new double[] {25}, new double[] {0.15});

    double[][] end = new double[3][];
    for (int level = 0; level < 3; level++) {
      ThermalState s = new ThermalState(model, curves, START);
      HeatStepper stepper = stepper(model, curves);
      for (int i = 0; i < 10 << level; i++) {
        stepper.step(s, 0.8 / (1 << level), MouthFilm.INSULATED);
      }
      end[level] = s.temperature;
    }

    double coarse = largest(end[0], end[1]);
    double fine = largest(end[1], end[2]);
    // Curvature is foreseen from the step before, not solved for: seen 1.03e-3.
    assertTrue(coarse < 1.1e-3 * (START - MOULD), "K between steps of 0.8 s and 0.4 s: " + coarse);
    assertTrue(Math.log(coarse / fine) / Math.log(2) > order(), coarse + ", then " + fine);
  }

  /** Least order in time of the coupled scheme, plastisol and mould. */
  abstract double order();

  static double largest(double[] a, double[] b) {
    double most = 0;
    for (int i = 0; i < a.length; i++) {
      most = Math.max(most, Math.abs(a[i] - b[i]));
    }
    return most;
  }

  @Test
  void aStepNeedsALength() {
    VoxelModel model = bar(ALUMINIUM);
    HeatCurves curves = gelling(new double[] {0.15});
    ThermalState s = new ThermalState(model, curves, START);

    assertThrows(
        IllegalArgumentException.class,
        () -> stepper(model, curves).step(s, 0, MouthFilm.INSULATED));
  }
}
