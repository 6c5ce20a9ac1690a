// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.feed;

import gelfront.base.Progress;
import gelfront.feed.Course;
import gelfront.feed.Liquid;
import gelfront.feed.Mobility;
import gelfront.feed.Suction;
import gelfront.grid.Cavity;
import gelfront.material.ViscosityCurve;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Closer;
import gelfront.voxelize.Filing;
import gelfront.voxelize.Labelled;
import gelfront.voxelize.Mouth;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A round land between two wider tubes, viscosity 1 Pa s; liquid is drawn from the far tube's end.
 */
final class Contraction {
  private static final int SEGMENTS = 128;
  private static final double DRAW = 1e-9;
  private final double bore;
  private final double land;
  private final double wide;
  private final double depth;
  private final Vec3 along;
  private final Cavity cavity;
  private final Liquid liquid;
  private final boolean[] flowing;
  private final double[] temperature;
  private final Mobility mobility;
  private final Suction suction;
  private final Course course = new Course();
  private int mostIterations;

  /**
   * @param along unit vector, from the mouth on
   * @param gathered false: every cell is a block of its own
   */
  Contraction(double bore, double land, double wide, double dx, Vec3 along, boolean gathered) {
    this(bore, land, wide, dx, 1, along, gathered);
  }

  /**
   * As above, with smaller cells in and about the land.
   *
   * @param dx of the small cells
   * @param factor voxels over them
   */
  Contraction(
      double bore, double land, double wide, double dx, int factor, Vec3 along, boolean gathered) {
    this.bore = bore;
    this.land = land;
    this.wide = wide;
    this.along = along;
    depth = 1.25 * wide;
    cavity = cavity(dx, factor);
    liquid = new Liquid(cavity, gathered);
    flowing = new boolean[cavity.count()];
    temperature = new double[cavity.count()];
    Arrays.fill(flowing, true);
    Arrays.fill(temperature, 100);
    liquid.update(flowing);
    mobility = new Mobility(cavity);
    suction = new Suction(cavity);
  }

  private Cavity cavity(double dx, int factor) {
    Vec3 mouth = at(-depth);
    List<Labelled> solids =
        List.of(
            tube(Cavity.Region.SPRUE, -depth, 0, wide),
            tube(Cavity.Region.GATE, -1e-4, land + 1e-4, bore),
            tube(Cavity.Region.PART, land, land + depth, wide));
    Box about = solids.get(1).mesh().box().grown(0.5 * bore);
    return CavityBuilder.build(
        solids,
        factor * dx,
        factor == 1 ? Closer.NONE : new Closer(factor, List.of(about)),
        Optional.of(new Mouth(mouth, along.times(-1), wide / 2)),
        Filing.NONE,
        Progress.NONE);
  }

  private Labelled tube(Cavity.Region region, double from, double to, double across) {
    return new Labelled(
        region, Solids.cylinder(at(from), at(to), across / 2, across / 2, SEGMENTS));
  }

  private Vec3 at(double s) {
    return along.times(s);
  }

  private double along(int cell) {
    return cavity.centre(cell).dot(along);
  }

  /** Resistance after some rounds of mobility and suction, over Poiseuille's of the land alone. */
  double resistance(int rounds) {
    ViscosityCurve one = new ViscosityCurve(new double[] {100}, new double[] {0});
    double[] draw = draw();
    for (int r = 0; r < rounds; r++) {
      double[] w = mobility.solve(liquid, flowing, temperature, one, 0, course);
      mostIterations = Math.max(mostIterations, mobility.iterations());
      suction.solve(liquid, flowing, w, draw, new Suction.Skin(1e9, 2e9));
      course.follow(liquid, suction.suction(), w);
    }
    double tubes = 8 / Math.PI * (0.8 * depth + depth) / Math.pow(wide / 2, 4);
    double alone = 8 / Math.PI * land / Math.pow(bore / 2, 4);
    return (measured() / DRAW - tubes) / alone;
  }

  /** Of one solve for the mobility. */
  int mostIterations() {
    return mostIterations;
  }

  /** From the last tenth of the far tube. */
  private double[] draw() {
    double[] draw = new double[liquid.count()];
    double all = 0;
    double[] volume = cavity.volumes();
    for (int c = 0; c < cavity.count(); c++) {
      if (along(c) > land + 0.9 * depth) {
        draw[liquid.block(c)] += volume[c];
        all += volume[c];
      }
    }
    for (int b = 0; b < draw.length; b++) {
      draw[b] *= DRAW / all;
    }
    return draw;
  }

  /** Pa, mean about the section at eight tenths of the far tube. */
  private double measured() {
    double sum = 0;
    double cells = 0;
    for (int c = 0; c < cavity.count(); c++) {
      if (Math.abs(along(c) - land - 0.8 * depth) < 0.05 * depth) {
        sum += suction.suction()[liquid.block(c)];
        cells++;
      }
    }
    return sum / cells;
  }
}
