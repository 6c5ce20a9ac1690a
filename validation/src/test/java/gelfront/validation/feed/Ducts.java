// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.feed;

import gelfront.base.Progress;
import gelfront.feed.Liquid;
import gelfront.feed.Mobility;
import gelfront.grid.Cavity;
import gelfront.linear.StopRule;
import gelfront.material.ViscosityCurve;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Labelled;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;

/** Straight ducts along x, a few cells of them; their ends are open. */
final class Ducts {
  private static final StopRule EXACT = new StopRule(1e-8, 1e-8, 100);
  private static final double FLOWS = 0;

  private Ducts() {}

  /** A section of given counter-clockwise corners (u, v). */
  static Cavity cavity(List<double[]> outline, double dx) {
    Vec3 end = new Vec3(3 * dx, 0, 0);
    return open(Solids.prism(outline, end.times(-1), end, new Vec3(0, 0, 1)), dx);
  }

  static Cavity round(double radius, double dx) {
    return round(radius, dx, 6);
  }

  /** Some cells long. */
  static Cavity round(double radius, double dx, int length) {
    Vec3 end = new Vec3(0.5 * length * dx, 0, 0);
    return open(Solids.cylinder(end.times(-1), end, radius, radius, 512), dx);
  }

  private static Cavity open(TriangleMesh mesh, double dx) {
    Cavity c =
        CavityBuilder.build(
            List.of(new Labelled(Cavity.Region.PART, mesh)), dx, Optional.empty(), Progress.NONE);
    Cavity.Walls w = c.walls();
    boolean[] mouth = w.mouth().clone();
    for (int i = 0; i < mouth.length; i++) {
      mouth[i] |= w.face()[i] < 2;
    }
    return new Cavity(
        c.grid(),
        c.cells(),
        c.neighbours(),
        c.region(),
        new Cavity.Walls(w.cell(), w.face(), w.distance(), w.cosine(), w.edge(), mouth));
  }

  /** m4/(Pa s): litres per second and pressure gradient, viscosity 1 Pa s. */
  static double flow(Cavity cavity) {
    ViscosityCurve one = new ViscosityCurve(new double[] {100}, new double[] {0});
    return flow(cavity, one, (y, z) -> 100);
  }

  /** With a temperature over the section. */
  static double flow(Cavity cavity, ViscosityCurve curve, DoubleBinaryOperator temperature) {
    double sum = 0;
    for (double v : mobility(cavity, curve, temperature)) {
      sum += v * cavity.cubeVolume(0);
    }
    return sum / length(cavity);
  }

  /** m2/(Pa s) per cell, viscosity 1 Pa s. */
  static double[] mobility(Cavity cavity) {
    ViscosityCurve one = new ViscosityCurve(new double[] {100}, new double[] {0});
    return mobility(cavity, one, (y, z) -> 100);
  }

  private static double[] mobility(
      Cavity cavity, ViscosityCurve curve, DoubleBinaryOperator temperature) {
    Mobility mobility = new Mobility(cavity, EXACT);
    Liquid liquid = new Liquid(cavity, false);
    boolean[] flowing = new boolean[cavity.count()];
    double[] t = new double[cavity.count()];
    for (int c = 0; c < t.length; c++) {
      Vec3 at = cavity.grid().centre(cavity.cells()[c]);
      t[c] = temperature.applyAsDouble(at.y(), at.z());
      flowing[c] = t[c] > FLOWS;
    }
    liquid.update(flowing);
    return mobility.perCell(liquid, flowing, t, curve, FLOWS);
  }

  private static double length(Cavity cavity) {
    int first = Integer.MAX_VALUE;
    int last = 0;
    for (int c : cavity.cells()) {
      int i = cavity.grid().position(c, 0);
      first = Math.min(first, i);
      last = Math.max(last, i);
    }
    return (last - first + 1) * cavity.grid().spacing();
  }
}
