// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Units;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.CaseFile;
import gelfront.setup.FeedSystem;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import gelfront.viewer.Cases;
import gelfront.voxelize.FeedSolids;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Further gates of a bar of 24 x 10 x 8 mm that is fed at x = 0. */
class GatesTest {
  private static final Picker.Hit TOP = hit(18, 0, 4, new Vec3(0, 0, 1));

  @TempDir Path folder;
  private LoadedCase one;
  private TriangleMesh part;

  @BeforeEach
  void read() throws IOException {
    one = CaseFile.read(Cases.barCase(folder));
    part = PartLoader.load(one.setup().part()).mesh();
  }

  private static Picker.Hit hit(double x, double y, double z, Vec3 outward) {
    return new Picker.Hit(new Vec3(x, y, z), outward, 100);
  }

  private static FeedSystem.Declared feed(LoadedCase loaded) {
    return (FeedSystem.Declared) loaded.setup().feed();
  }

  private LoadedCase added(Picker.Hit hit) {
    return one.with(Gates.added(feed(one), part, hit));
  }

  /** Refused where a runner meets the part. */
  private TriangleMesh drawn(LoadedCase loaded) {
    return FeedSolids.of(loaded.setup(), feed(loaded), part);
  }

  @Test
  void aGateOnAnySideHasARunnerThatIsClearOfThePart() {
    List<Picker.Hit> sides =
        List.of(
            TOP,
            hit(12, 0, -4, new Vec3(0, 0, -1)),
            hit(20, 5, 0, new Vec3(0, 1, 0)),
            hit(20, -5, 1, new Vec3(0, -1, 0)),
            hit(24, 0, 0, new Vec3(1, 0, 0)),
            hit(0, 4, -3, new Vec3(-1, 0, 0)));
    for (Picker.Hit side : sides) {
      LoadedCase two = added(side);

      assertEquals(2, Gates.of(two).size());
      assertEquals(3e-3, Gates.of(two).get(1).section().width(), 1e-9);
      assertTrue(drawn(two).triangleCount() > drawn(one).triangleCount());
    }
  }

  /** On a slope the sprue still leaves square to a face of the block. */
  @Test
  void aGateOnASlopeLooksAlongTheNearestAxis() {
    Picker.Hit slope = hit(12, -4, 3, new Vec3(0.3, -0.8, 0.52).unit());

    LoadedCase moved = one.with(Gates.moved(one, part, 0, slope));

    assertEquals(new Vec3(0, -1, 0), Gates.of(moved).get(0).direction());
    assertEquals(new Vec3(0, -1, 0), feed(moved).sprue().direction());
  }

  @Test
  void aGateIsTakenHoldOfWhereItIsAndMovedWithItsRunner() {
    LoadedCase two = added(TOP);
    Picker picker = new Picker(part);
    Ray down = new Ray(new Vec3(18.2, 0.1, 60), new Vec3(0, 0, -1));
    GateDrag drag = GateDrag.at(Gates.of(two), picker, down, 0.05).orElseThrow();
    assertEquals(1, drag.number());
    assertFalse(drag.rim());

    Ray there = new Ray(new Vec3(10, 1, 60), new Vec3(0, 0, -1));
    LoadedCase moved = two.with(drag.to(there, picker, two, part));

    assertEquals(0, Gates.of(moved).get(1).at().distance(new Vec3(10, 1, 4).times(1e-3)), 1e-9);
    assertEquals(Gates.of(two).get(0), Gates.of(moved).get(0));
    assertTrue(drawn(moved).triangleCount() > 0);
  }

  @Test
  void itsRimSizesItAlone() {
    LoadedCase two = added(TOP);
    GateDrag rim = new GateDrag(Gates.of(two).get(1), 1, true);
    Ray down = new Ray(new Vec3(18, 3, 60), new Vec3(0, 0, -1));

    LoadedCase wider = two.with(rim.to(down, new Picker(part), two, part));

    assertEquals(4e-3, Gates.of(wider).get(1).section().width(), 1e-9);
    assertEquals(3e-3, Gates.of(wider).get(0).section().width(), 1e-9);
  }

  @Test
  void whereTheFirstGateGoesTheOthersRunnersFollowItsSprue() {
    LoadedCase two = added(TOP);

    LoadedCase moved = two.with(Gates.moved(two, part, 0, hit(12, -5, 0, new Vec3(0, -1, 0))));

    assertTrue(drawn(moved).triangleCount() > 0);
    assertEquals(Gates.of(two).get(1), Gates.of(moved).get(1));
  }

  @Test
  void aGateThatIsRemovedLeavesTheCaseAsItWas() {
    assertEquals(one.text(), added(TOP).with(Gates.removed(1)).text());
  }

  @Test
  void theFormHasItsLinesOnceItIsThere() {
    LoadedCase two = added(TOP);
    String heading = Form.FURTHER.get(0);
    assertFalse(Form.fits(heading, one));
    assertTrue(Form.fits(heading, two) && !Form.fits(Form.FURTHER.get(1), two));

    FormField size = field(heading, "another_gate.1.size");
    FormField shape = field(heading, "another_gate.1.shape");
    assertEquals("3", size.shown(two, Units.METRIC));
    LoadedCase flat = two.with(shape.changed("rectangular", two, Units.METRIC));
    assertEquals("1.5", field(heading, "another_gate.1.height").shown(flat, Units.METRIC));
    LoadedCase wide = flat.with(size.changed("5", flat, Units.METRIC));
    assertEquals(5e-3, Gates.of(wide).get(1).section().width(), 1e-9);
    assertEquals("round", field("Gate", "gate.shape").shown(wide, Units.METRIC));
  }

  private static FormField field(String heading, String key) {
    return Form.sections().get(heading).stream()
        .filter(f -> f.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theNearerOfTwoGatesIsTaken() {
    FeedSystem.Gate first = Gates.of(one).get(0);
    FeedSystem.Gate near =
        new FeedSystem.Gate(new Vec3(0, 2e-3, 0), first.direction(), first.section(), 2e-3);
    Picker picker = new Picker(Solids.box(new Vec3(0, -5e-3, -4e-3), new Vec3(24e-3, 5e-3, 4e-3)));
    Ray ray = new Ray(new Vec3(-50, 1.6, 0), new Vec3(1, 0, 0));

    assertEquals(1, GateDrag.at(List.of(first, near), picker, ray, 0.05).orElseThrow().number());
  }
}
