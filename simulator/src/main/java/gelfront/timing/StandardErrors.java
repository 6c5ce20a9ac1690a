// SPDX-License-Identifier: Apache-2.0
package gelfront.timing;

import gelfront.grid.Cavity;
import gelfront.grid.Refinement;
import gelfront.grid.UniformGrid;
import gelfront.mesh.Vec3;
import gelfront.result.FieldProbe;
import gelfront.result.Fields;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How far a run of the standard case is from its reference, an axisymmetric finite-element solution
 * with error bars of 0.01 to 0.05 %. The validation module holds the reference with its origin
 * ({@code standard-case.json}) and a test that the numbers here are those.
 *
 * @param axis found over wanted less 1, for each probe's set time on the axis
 * @param half the same half way to the wall, in the mean round the axis
 * @param last the same for the last plastisol below 90 °C
 */
public record StandardErrors(double[] axis, double[] half, double last) {
  /** Which of the probes lies in the gate. */
  public static final int GATE = 1;

  /** s. */
  public static final double LAST = 137.774;

  private static final List<Probe> PROBES =
      List.of(
          new Probe(-18, 63.575, 2.5, 40.937),
          new Probe(-1.5, 6.436, 0.75, 4.263),
          new Probe(5, 34.652, 1.875, 22.546),
          new Probe(20, 81.13, 2.83333, 52.129),
          new Probe(40, 111.699, 3.5, 70.215),
          new Probe(55, 53.085, 2.3, 34.207),
          new Probe(65, 25.999, 1.5, 17.265),
          new Probe(75, 40.679, 2.0, 26.293),
          new Probe(85, 56.366, 2.5, 35.466),
          new Probe(95, 26.611, 1.66667, 17.589));

  /** Where the body is thickest, metres along the axis: no cell's middle need lie on that. */
  private static final double THICK_FROM = 30e-3;

  private static final double THICK_TO = 50e-3;

  /** Places round the axis of which the mean is taken. */
  private static final int ROUND = 16;

  /**
   * A place on the axis, and the ring half way to the wall.
   *
   * @param axisSet s, when the place on the axis sets
   * @param halfSet s, when the ring does
   */
  public record Probe(double xMm, double axisSet, double halfMm, double halfSet) {}

  /** In the order of the errors. */
  public static List<Probe> probes() {
    return PROBES;
  }

  /**
   * @param cavity that the run had
   */
  public static StandardErrors of(Cavity cavity, StandardCase.Run run) {
    List<FieldProbe> set = probes(cavity, run.set());
    double[] axis = PROBES.stream().mapToDouble(p -> ring(set, p, 0) / p.axisSet() - 1).toArray();
    double[] half =
        PROBES.stream().mapToDouble(p -> ring(set, p, p.halfMm()) / p.halfSet() - 1).toArray();
    List<FieldProbe> firm = probes(cavity, run.firm());
    double last = 0;
    for (double x = THICK_FROM; x <= THICK_TO; x += 0.5e-3) {
      last = Math.max(last, at(firm, new Vec3(x, 0, 0)));
    }
    return new StandardErrors(axis, half, last / LAST - 1);
  }

  private static double ring(List<FieldProbe> set, Probe probe, double radiusMm) {
    double sum = 0;
    for (int i = 0; i < ROUND; i++) {
      double a = 2 * Math.PI * i / ROUND;
      Vec3 place =
          new Vec3(probe.xMm(), radiusMm * Math.cos(a), radiusMm * Math.sin(a)).times(1e-3);
      sum += at(set, place) / ROUND;
    }
    return sum;
  }

  /** From the first that has cells there. */
  private static double at(List<FieldProbe> set, Vec3 place) {
    return set.stream().flatMap(p -> p.at(place).stream()).findFirst().orElseThrow().setTime();
  }

  /** One for each refined box, and one for the voxels. */
  private static List<FieldProbe> probes(Cavity c, float[] set) {
    List<FieldProbe> probes = new ArrayList<>();
    for (Refinement.Patch p : c.refinement().patches()) {
      probes.add(new FieldProbe(fields(c, p.grid(), set, p.first(), p.end())));
    }
    probes.add(new FieldProbe(fields(c, c.grid(), set, 0, c.voxels())));
    return probes;
  }

  private static Fields fields(Cavity c, UniformGrid g, float[] set, int from, int to) {
    float[] own = Arrays.copyOfRange(set, from, to);
    return new Fields(
        g.origin(),
        g.spacing(),
        g.nx(),
        g.ny(),
        g.nz(),
        Arrays.copyOfRange(c.cells(), from, to),
        Arrays.copyOfRange(c.region(), from, to),
        own,
        own,
        new short[own.length],
        List.of());
  }

  /** Largest error on the axis outside the gate. */
  public double worstAxis() {
    return worst(axis);
  }

  /** Largest error half way to the wall outside the gate. */
  public double worstHalf() {
    return worst(half);
  }

  /** On the gate's axis. */
  public double gate() {
    return axis[GATE];
  }

  private static double worst(double[] errors) {
    double most = 0;
    for (int i = 0; i < errors.length; i++) {
      most = i == GATE ? most : Math.max(most, Math.abs(errors[i]));
    }
    return most;
  }
}
