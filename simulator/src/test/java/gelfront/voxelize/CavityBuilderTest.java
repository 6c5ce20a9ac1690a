// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.evidence.Check;
import gelfront.grid.Cavity;
import gelfront.grid.WallDistance;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Growth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CavityBuilderTest {
  private static Cavity cavity(double spacing, TriangleMesh... meshes) {
    List<Labelled> solids =
        java.util.Arrays.stream(meshes).map(m -> new Labelled(Cavity.Region.PART, m)).toList();
    return CavityBuilder.build(solids, spacing, Optional.empty(), Progress.NONE);
  }

  private static double area(Cavity c) {
    double sum = 0;
    for (float cosine : c.walls().cosine()) {
      sum += cosine;
    }
    return sum * c.grid().spacing() * c.grid().spacing();
  }

  @Test
  void volumeAndWallAreaOfASphereAndATorusAreTheMeshs() {
    for (TriangleMesh mesh :
        List.of(
            Solids.sphere(new Vec3(1.1e-4, 2e-5, -7e-5), 5e-3, 96),
            Solids.torus(8e-3, 3e-3, 96),
            Solids.cylinder(
                new Vec3(-8e-3, -5e-3, -3e-3), new Vec3(8e-3, 6e-3, 4e-3), 3e-3, 3e-3, 96))) {
      Cavity coarse = cavity(0.5e-3, mesh);
      Cavity fine = cavity(0.25e-3, mesh);

      assertEquals(mesh.volume(), coarse.volume(), 0.02 * mesh.volume());
      assertEquals(mesh.volume(), fine.volume(), 0.005 * mesh.volume());
      // The links carry the true area in the mean: sum over axes of n_d^2 is one.
      assertEquals(mesh.area(), area(coarse), 0.02 * mesh.area());
      assertEquals(mesh.area(), area(fine), 0.01 * mesh.area());
    }
  }

  @Test
  void overlappingSolidsCountOnce() {
    TriangleMesh a = Solids.box(Vec3.ZERO, new Vec3(10e-3, 4e-3, 4e-3));
    TriangleMesh b = Solids.box(new Vec3(5e-3, 0, 0), new Vec3(15e-3, 4e-3, 4e-3));

    Cavity apart = cavity(0.5e-3, a, b);
    Cavity inOne = cavity(0.5e-3, a.plus(b));

    assertEquals(15e-3 * 4e-3 * 4e-3, apart.volume(), 1e-9 * 0.01 + 1e-12);
    assertEquals(apart.count(), inOne.count());
  }

  @Test
  void aVoidInsideStaysEmpty() {
    TriangleMesh outer = Solids.sphere(Vec3.ZERO, 5e-3, 48);
    TriangleMesh inner = Solids.sphere(Vec3.ZERO, 3e-3, 48);
    int[] t = inner.copyTriangles();
    for (int i = 0; i < t.length; i += 3) {
      int keep = t[i];
      t[i] = t[i + 1];
      t[i + 1] = keep;
    }
    TriangleMesh hollow = outer.plus(new TriangleMesh(inner.copyVertices(), t));

    Cavity c = cavity(0.25e-3, hollow);

    assertEquals(hollow.volume(), c.volume(), 0.01 * hollow.volume());
  }

  @Test
  void wallsOfABoxLieWhereTheBoxEnds() {
    TriangleMesh box = Solids.box(Vec3.ZERO, new Vec3(3.1e-3, 2.3e-3, 2.7e-3));

    Cavity c = cavity(0.4e-3, box);

    for (int w = 0; w < c.walls().count(); w++) {
      double[] p = c.wallPoint(w);
      int a = c.walls().face()[w] / 2;
      double[] size = {3.1e-3, 2.3e-3, 2.7e-3};
      double off = Math.min(Math.abs(p[a]), Math.abs(p[a] - size[a]));
      assertTrue(off < 1e-8, "wall off by " + off);
      assertEquals(1, c.walls().cosine()[w], 1e-6);
    }
  }

  @Test
  void theMouthIsTheOpenEndAndNothingElse() {
    TriangleMesh tube = Solids.cylinder(Vec3.ZERO, new Vec3(10e-3, 0, 0), 3e-3, 3e-3, 96);
    Mouth mouth = new Mouth(new Vec3(10e-3, 0, 0), new Vec3(1, 0, 0), 3e-3);

    Cavity c =
        CavityBuilder.build(
            List.of(new Labelled(Cavity.Region.SPRUE, tube)),
            0.25e-3,
            Optional.of(mouth),
            Progress.NONE);

    double open = 0;
    for (boolean m : c.walls().mouth()) {
      open += m ? 0.25e-3 * 0.25e-3 : 0;
    }
    Check.of("open area of a round mouth, cells", "geometry")
        .expected(Math.PI * 9e-6)
        .got(open)
        .within(0.03);
  }

  @Test
  void wallDistanceInACylinderIsRadiusLessPlace() {
    TriangleMesh tube =
        Solids.cylinder(new Vec3(-20e-3, 0, 0), new Vec3(20e-3, 0, 0), 4e-3, 4e-3, 96);
    Cavity c = cavity(0.3e-3, tube);
    WallDistance d = WallDistance.of(c);
    Check distance = Check.of("distance to the wall of a cylinder", "geometry");

    for (int i = 0; i < c.count(); i++) {
      Vec3 p = c.grid().centre(c.cells()[i]);
      double r = Math.hypot(p.y(), p.z());
      double wanted = Math.min(4e-3 - r, 20e-3 - Math.abs(p.x()));
      // the wall is known where lines through cell centres meet it: half a voxel at an edge
      distance.expected(wanted).got(d.distance(i));
    }
    distance.within(0.15e-3 / 4e-3, 4e-3);
  }

  @Test
  void filingMovesTheWallOutwards() {
    TriangleMesh tube =
        Solids.cylinder(new Vec3(-20e-3, 0, 0), new Vec3(20e-3, 0, 0), 2e-3, 2e-3, 96);
    List<Labelled> solids = List.of(new Labelled(Cavity.Region.PART, tube));
    Growth g = new Growth(Vec3.ZERO, 6e-3, 0.5e-3);

    Cavity plain = CavityBuilder.build(solids, 0.25e-3, Optional.empty(), Progress.NONE);
    Cavity filed =
        CavityBuilder.build(
            solids,
            0.25e-3,
            Closer.NONE,
            Optional.empty(),
            new Filing(List.of(g), solids),
            Progress.NONE);
    double atMiddle = 0;
    double atEnd = 0;
    WallDistance d = WallDistance.of(filed);
    for (int i = 0; i < filed.count(); i++) {
      Vec3 p = filed.grid().centre(filed.cells()[i]);
      if (Math.abs(p.x()) < 0.3e-3) {
        atMiddle = Math.max(atMiddle, d.distance(i));
      } else if (Math.abs(p.x() - 12e-3) < 0.3e-3) {
        atEnd = Math.max(atEnd, d.distance(i));
      }
    }

    assertTrue(filed.count() > plain.count());
    assertEquals(2.5e-3, atMiddle, 0.2e-3);
    assertEquals(2e-3, atEnd, 0.2e-3);
  }
}
