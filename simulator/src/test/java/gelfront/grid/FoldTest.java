// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.material.MouldMaterial;
import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Block;
import gelfront.setup.Numerics;
import gelfront.timing.StandardCase;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Labelled;
import gelfront.voxelize.MouldBuilder;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Closed forms only: halves of a half, and what a mirror does to a place. */
final class FoldTest {
  private static final Mirrors ALL = new Mirrors(true, true, true);

  private static Block block(List<Block.Insert> inserts) {
    return new Block(
        new MouldMaterial("aluminium", 167, 2700, 896),
        10e-3,
        Optional.empty(),
        30,
        25,
        10,
        1500,
        List.of(),
        inserts);
  }

  private static VoxelModel boxed(Box around, Block block, TriangleMesh... solids) {
    List<Labelled> all =
        Arrays.stream(solids).map(s -> new Labelled(Cavity.Region.PART, s)).toList();
    Cavity cavity = CavityBuilder.build(all, 1e-3, Optional.empty(), Progress.NONE);
    return MouldBuilder.build(cavity, block, around);
  }

  private static final Box ROUND =
      new Box(new Vec3(-20e-3, -20e-3, -20e-3), new Vec3(20e-3, 20e-3, 20e-3));

  private static TriangleMesh box(
      double x0, double y0, double z0, double x1, double y1, double z1) {
    return Solids.box(new Vec3(x0, y0, z0).times(1e-3), new Vec3(x1, y1, z1).times(1e-3));
  }

  private static Fold fold(VoxelModel m) {
    return Fold.of(m, new short[m.cavity().count()], ALL);
  }

  @Test
  void aCubeInTheMiddleOfABlockIsFoldedThreeTimes() {
    VoxelModel whole = boxed(ROUND, block(List.of()), box(-6, -6, -6, 6, 6, 6));
    Fold fold = fold(whole);

    assertEquals(8, fold.times());
    assertEquals(whole.cavity().count(), 8 * fold.model().cavity().count());
    assertEquals(whole.mould().count(), 8 * fold.model().mould().count());
    assertEquals(whole.cavity().walls().count(), 8 * fold.model().cavity().walls().count());
    assertEquals(whole.cavity().volume(), 8 * fold.model().cavity().volume(), 1e-12);
    assertEquals(
        Arrays.stream(whole.mould().capacity()).sum(),
        8 * Arrays.stream(fold.model().mould().capacity()).sum(),
        1e-9);
  }

  @Test
  void everyCellIsStoodForByItsMirrorImage() {
    VoxelModel whole = StandardCase.model(Numerics.Level.QUICK);
    Fold fold = fold(whole);
    Cavity all = whole.cavity();

    assertEquals(4, fold.times());
    assertTrue(all.refinement().factor() > 1, "with small cells in its gate");
    for (int c = 0; c < all.count(); c++) {
      Vec3 own = all.centre(c);
      Vec3 by = fold.model().cavity().centre(fold.cell()[c]);
      assertEquals(0, own.x() - by.x(), 1e-9);
      assertEquals(0, Math.abs(own.y()) - by.y(), 1e-9);
      assertEquals(0, Math.abs(own.z()) - by.z(), 1e-9);
      assertEquals(all.region()[c], fold.model().cavity().region()[fold.cell()[c]]);
    }
    for (int c = 0; c < fold.kept().length; c++) {
      assertEquals(c, fold.cell()[fold.kept()[c]]);
    }
  }

  @Test
  void facesInAPlaneLeadNowhereAndAreNoWalls() {
    Fold fold = fold(StandardCase.model(Numerics.Level.QUICK));
    Cavity left = fold.model().cavity();
    boolean[] wall = new boolean[6 * left.count()];
    Cavity.Walls walls = left.walls();
    for (int w = 0; w < walls.count(); w++) {
      wall[6 * walls.cell()[w] + walls.face()[w]] = true;
    }
    int mirrored = 0;
    for (int c = 0; c < left.count(); c++) {
      for (int f = 0; f < 6; f++) {
        boolean nowhere = left.neighbours()[6 * c + f] == c && !wall[6 * c + f];
        boolean inPlane = f % 2 == 0 && f > 0 && left.centre(c, f / 2) < left.edge(c);
        assertEquals(inPlane, left.mirrored(c, f));
        // Faces between cells of two sizes are joints.
        assertTrue(nowhere || !inPlane);
        mirrored += inPlane ? 1 : 0;
      }
    }
    assertTrue(mirrored > 100);
  }

  @Test
  void aBumpOnOneSideLeavesThatPlaneOut() {
    Fold fold =
        fold(boxed(ROUND, block(List.of()), box(-6, -6, -6, 6, 6, 6), box(-2, 5, -2, 2, 9, 2)));

    assertEquals(4, fold.times());
    assertFalse(fold.model().cavity().mirrors().y());
  }

  @Test
  void aBlockThatReachesFartherOnOneSideLeavesThatPlaneOut() {
    Box off = new Box(new Vec3(-20e-3, -20e-3, -20e-3), new Vec3(20e-3, 20e-3, 26e-3));
    Fold fold = fold(boxed(off, block(List.of()), box(-6, -6, -6, 6, 6, 6)));

    assertEquals(4, fold.times());
    assertFalse(fold.model().cavity().mirrors().z());
  }

  /** A small one far from the part still conducts otherwise. */
  @Test
  void anInsertOnOneSideLeavesThatPlaneOut() {
    Block.Region corner =
        new Block.Region.Cuboid(new Box(new Vec3(9e-3, -4e-3, -4e-3), new Vec3(17e-3, 4e-3, 4e-3)));
    Block.Insert steel = new Block.Insert(corner, new MouldMaterial("steel", 15, 7900, 500));
    Fold fold = fold(boxed(ROUND, block(List.of(steel)), box(-6, -6, -6, 6, 6, 6)));

    assertEquals(4, fold.times());
    assertFalse(fold.model().cavity().mirrors().x());
  }

  /** A scratch of half a voxel, 5 mm by 5 mm: little of all, but it may be the narrowest place. */
  @Test
  void aScratchOnOneSideLeavesThatPlaneOut() {
    TriangleMesh bar = box(-18, -6, -6, 18, 6, 6);
    VoxelModel filed =
        boxed(ROUND.grown(5e-3), block(List.of()), bar, box(-2.5, -2.5, 5.5, 2.5, 2.5, 6.4));
    Fold fold = fold(filed);

    assertEquals(4, fold.times());
    assertFalse(fold.model().cavity().mirrors().z());
  }

  /** As a rounded mesh may leave, right below the plane, too: what stands for it lies above. */
  @Test
  void aCellWithoutAnImageIsStoodForByItsNeighbours() {
    VoxelModel whole = boxed(ROUND, block(List.of()), box(-6, -6, -6, 6, 6, 6));
    short[] labels = new short[whole.cavity().count()];
    MirrorImage all = MirrorImage.find(whole, labels, 0).orElseThrow();
    for (int c = 0; c < labels.length; c++) {
      int[] cell = all.cell().clone();
      cell[c] = -1;
      MirrorImage lacking = new MirrorImage(0, all.plane(), cell, all.mould());

      int by = lacking.standIn(whole.cavity(), c);
      assertTrue(by >= 0 && lacking.keeps(whole.cavity(), by));
    }
  }

  /** A cell that hangs on nothing and has no image: no plane, and no run that fails. */
  @Test
  void aCellByItselfWithoutAnImageLeavesThatPlaneOut() {
    TriangleMesh bar = box(-18, -6, -6, 18, 6, 6);
    VoxelModel whole =
        boxed(ROUND.grown(5e-3), block(List.of()), bar, box(-4, -8.2, -1, -3, -7.2, 0));

    assertFalse(fold(whole).model().cavity().mirrors().x());
  }

  /** A bar of 61 sides has a side where its image has an edge: 0.01 mm apart at most. */
  @Test
  void unlikeTrianglesOfOneShapeAreAlike() {
    TriangleMesh round =
        Solids.cylinder(new Vec3(-12e-3, 0, 0), new Vec3(12e-3, 0, 0), 4e-3, 4e-3, 61);

    assertEquals(8, fold(boxed(ROUND, block(List.of()), round)).times());
  }

  @Test
  void whatIsLabelledOtherwiseIsNoImage() {
    VoxelModel whole = boxed(ROUND, block(List.of()), box(-6, -6, -6, 6, 6, 6));
    short[] labels = new short[whole.cavity().count()];
    for (int c = 0; c < labels.length; c++) {
      labels[c] = (short) (whole.cavity().centre(c, 0) > 0 ? 1 : 2);
    }

    assertFalse(Fold.of(whole, labels, ALL).model().cavity().mirrors().x());
    assertEquals(4, Fold.of(whole, labels, ALL).times());
  }

  @Test
  void whatIsUnfoldedIsTheSameOnAllSides() {
    VoxelModel whole = boxed(ROUND, block(List.of()), box(-6, -6, -6, 6, 6, 6));
    Fold fold = fold(whole);
    double[] distance = new double[whole.cavity().count()];
    for (int c = 0; c < distance.length; c++) {
      distance[c] = whole.cavity().centre(c).length();
    }

    double[] back = fold.unfold(fold.fold(distance));
    for (int c = 0; c < distance.length; c++) {
      assertEquals(distance[c], back[c], 1e-12);
    }
  }
}
