// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Change;
import gelfront.setup.FeedSystem;
import gelfront.setup.Section;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PickerTest {
  /** 40 x 20 x 10 mm round the origin. */
  private static final TriangleMesh BOX =
      Solids.box(new Vec3(-0.02, -0.01, -0.005), new Vec3(0.02, 0.01, 0.005));

  private static final Ray ALONG_X = new Ray(new Vec3(-100, 1, 2), new Vec3(1, 0, 0));

  @Test
  void theNearestSideIsMet() {
    Picker.Hit hit = new Picker(BOX).first(ALONG_X).orElseThrow();

    assertEquals(0, hit.place().distance(new Vec3(-20, 1, 2)), 1e-9);
    assertEquals(0, hit.outward().distance(new Vec3(-1, 0, 0)), 1e-9);
    assertEquals(80, hit.distance(), 1e-9);
  }

  @Test
  void whatIsCutAwayIsNotMet() {
    Plane keepsRight = new Plane(Vec3.ZERO, new Vec3(1, 0, 0));

    Picker.Hit hit = new Picker(BOX).first(ALONG_X, Optional.of(keepsRight)).orElseThrow();

    assertEquals(20, hit.place().x(), 1e-9);
  }

  @Test
  void onABallEveryLineThroughTheMiddleMeetsItsRadius() {
    Picker ball = new Picker(Solids.sphere(Vec3.ZERO, 0.01, 64));
    Random random = new Random(7);
    for (int i = 0; i < 200; i++) {
      Vec3 from = new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
      Ray ray = new Ray(from.unit().times(50), from.unit().times(-1));

      assertEquals(10, ball.first(ray).orElseThrow().place().length(), 0.05);
    }
    assertTrue(ball.first(new Ray(new Vec3(0, 0, 50), new Vec3(0, 0, 1))).isEmpty());
  }

  private static final FeedSystem.Gate GATE =
      new FeedSystem.Gate(new Vec3(-0.02, 0, 0), new Vec3(-1, 0, 0), Section.round(0.004), 0.003);

  private static Ray at(double y, double z) {
    return new Ray(new Vec3(-100, y, z), new Vec3(1, 0, 0));
  }

  @Test
  void aPressOnTheGateMovesItItsRimSizesItElsewhereNothing() {
    Picker part = new Picker(BOX);

    assertTrue(!GateDrag.at(List.of(GATE), part, at(0.5, 0), 0.05).orElseThrow().rim());
    assertTrue(GateDrag.at(List.of(GATE), part, at(3, 0), 0.05).orElseThrow().rim());
    assertTrue(GateDrag.at(List.of(GATE), part, at(8, 0), 0.05).isEmpty());
  }

  @Test
  void aDragOfTheRimSetsTheSizeInTenths() {
    GateDrag drag = new GateDrag(GATE, 0, true);

    // The ring that is drawn is 1.5 gates wide.
    List<Change> changes = drag.to(at(4.5, 0), new Picker(BOX), null, BOX);

    assertEquals(List.of(Change.mm("gate.size", 6e-3)), changes);
  }

  @Test
  void aGateOnANearlyFlatSideIsSquareToIt() {
    Picker.Hit hit = new Picker.Hit(new Vec3(1.23456, 10, 0), new Vec3(0.1, 1, 0.05).unit(), 1);

    List<Change> changes = GateDrag.moved(hit);

    assertTrue(
        changes.contains(new Change.Set("gate.direction", Change.direction(new Vec3(0, 1, 0)))));
    assertTrue(
        changes.contains(new Change.Set("gate.at", Change.place(new Vec3(1.23e-3, 10e-3, 0)))));
  }
}
