// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.evidence.Check;
import gelfront.grid.Cavity;
import gelfront.grid.WallDistance;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Labelled;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Fronts that are known: set time of a cell is the square of its middle's distance to the wall. */
class SkinTest {
  private static final double RADIUS = 6e-3;

  private static Cavity cavity(TriangleMesh part, double dx) {
    return CavityBuilder.build(
        List.of(new Labelled(Cavity.Region.PART, part)), dx, Optional.empty(), Progress.NONE);
  }

  /** On a grid whose planes have {@code off} in a voxel's corner: it hangs on the first solid. */
  private static Cavity cavity(TriangleMesh part, Vec3 off, double dx) {
    TriangleMesh hook =
        Solids.box(off.plus(new Vec3(-dx, -dx, -dx)), off.plus(new Vec3(dx, dx, dx)));
    return CavityBuilder.build(
        List.of(new Labelled(Cavity.Region.PART, hook), new Labelled(Cavity.Region.PART, part)),
        dx,
        Optional.empty(),
        Progress.NONE);
  }

  /** Thickness in the middle slice of a bar whose fronts have come {@code d} metres far. */
  private static double thickness(Cavity cavity, double d, Depth depth) {
    double[] volumes = cavity.volumes();
    Sections sections = Sections.of(cavity, volumes, c -> true);
    float[] set = new float[cavity.count()];
    for (int c = 0; c < set.length; c++) {
      double deep = Math.max(0, depth.at(cavity.grid().centre(cavity.cells()[c])));
      set[c] = (float) (1e6 * deep * deep);
    }
    PocketSkin skin =
        new PocketSkin(new FrontPassage(cavity, set), WallDistance.of(cavity), sections);
    skin.clear();
    for (int c = 0; c < set.length; c++) {
      skin.add(c, volumes[c], 1e6 * d * d);
    }
    assertTrue(skin.skin().isRound(sections.count() / 2));
    return skin.skin().thickness(sections.count() / 2);
  }

  /** Metres from a point to the wall. */
  private interface Depth {
    double at(Vec3 p);
  }

  @Test
  void skinOfARoundBarGrowsSmoothlyHoweverTheBarLiesOnTheGrid() {
    Random random = new Random(11);
    for (int i = 0; i < 6; i++) {
      double y = random.nextDouble() * 1e-3;
      double z = random.nextDouble() * 1e-3;
      double dx = i % 2 == 0 ? 0.5e-3 : 0.8e-3;
      Cavity bar =
          cavity(
              Solids.cylinder(Vec3.ZERO, new Vec3(30e-3, 0, 0), RADIUS, RADIUS, 96),
              new Vec3(15e-3, y, z),
              dx);
      for (double d = 0.7e-3; d < 4e-3; d += 0.31e-3) {
        double t = thickness(bar, d, p -> RADIUS - Math.hypot(p.y(), p.z()));

        assertEquals(d, t, 0.06e-3);
      }
    }
  }

  @Test
  void skinOfAFlatBarIsThatOfItsFlatSides() {
    Vec3 corner = new Vec3(30e-3, 5e-3, 16e-3);
    Cavity bar = cavity(Solids.box(Vec3.ZERO, corner), 0.5e-3);
    for (double d = 0.6e-3; d < 1.8e-3; d += 0.17e-3) {
      double t =
          thickness(
              bar,
              d,
              p ->
                  Math.min(
                      Math.min(p.y(), corner.y() - p.y()), Math.min(p.z(), corner.z() - p.z())));

      // Four corners hold (4 - pi) t^2 less skin than the formula's round ones.
      assertEquals(d, t, 0.05 * d + 0.02e-3);
    }
  }

  @Test
  void everySliceOfAnEvenBarIsAlikeWhereverTheVoxelsLie() {
    Cavity bar =
        cavity(
            Solids.cylinder(new Vec3(0.13e-3, 0, 0), new Vec3(30.4e-3, 0, 0), RADIUS, RADIUS, 96),
            0.6e-3);
    Sections sections = Sections.of(bar, bar.volumes(), c -> true);

    Check area = Check.of("area of a round bar's slices", "geometry");
    Check rim = Check.of("perimeter of a round bar's slices", "geometry");
    // The last two slices may share a cell cut by the end face.
    for (int s = 1; s < sections.count() - 2; s++) {
      area.expected(Math.PI * RADIUS * RADIUS).got(sections.area(s));
      rim.expected(2 * Math.PI * RADIUS).got(sections.perimeter(s));
    }
    area.within(0.005);
    rim.within(0.02);
  }
}
