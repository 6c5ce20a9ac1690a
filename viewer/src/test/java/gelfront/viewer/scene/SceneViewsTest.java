// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.report.ColourRamp;
import gelfront.result.DentSurface;
import gelfront.result.StoredRun;
import gelfront.viewer.StoredBall;
import gelfront.viewer.model.Colours;
import gelfront.viewer.model.Look;
import gelfront.viewer.model.Mode;
import gelfront.viewer.model.Orbit;
import gelfront.viewer.model.Plane;
import gelfront.viewer.model.ResultShown;
import gelfront.viewer.model.ShotShown;
import gelfront.viewer.work.LiveFreezing;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Every view of made-up results whose picture follows from geometry: colours are those of the
 * legend, and as much of the picture has them as lines of sight say.
 */
@Timeout(120)
class SceneViewsTest {
  /** Of 255: rounding in texture and ramp. */
  private static final int EXACT = 2;

  /** Every so many pixels are looked at. */
  private static final int APART = 7;

  private static Offscreen offscreen;
  private static final ResultShown BAR = new ResultShown(StoredBar.plain(), 0);

  @BeforeAll
  static void begin() {
    offscreen = new Offscreen();
  }

  @AfterAll
  static void end() throws Exception {
    if (offscreen != null) {
      offscreen.end();
    }
  }

  /** Along +y, x to the right: square on the bar's long side. */
  private static Look at(Mode mode, ResultShown shown, Vec3 target) {
    Orbit o = new Orbit(shown.extent(), target, -Math.PI / 2, 0, 60);
    return Look.at(o).with(mode);
  }

  private static int ramp(double seconds) {
    return ColourRamp.STANDARD.at(seconds / BAR.scale());
  }

  /** What a pixel must be; -1 where that is not sure. */
  private interface Expected {
    int at(int x, int y);
  }

  /** Pixels that were held against a colour. */
  private static int assertColours(Shot shot, Expected expected) {
    int looked = 0;
    for (int y = APART; y < Offscreen.HEIGHT; y += APART) {
      for (int x = APART; x < Offscreen.WIDTH; x += APART) {
        int want = shot.atTheAxes(x, y) ? -1 : expected.at(x, y);
        if (want >= 0) {
          int is = shot.at(x, y);
          String words = "%d, %d: %06x, not %06x".formatted(x, y, is, want);
          assertTrue(Shot.apart(is, want) <= EXACT, words);
          looked++;
        }
      }
    }
    return looked;
  }

  /** On the cut, away from its edge. */
  private static Optional<Vec3> onCut(Shot shot, int x, int y) {
    var ray = shot.ray(x, y);
    Vec3 p = ray.at(ray.to(shot.look().plane().orElseThrow()));
    return StoredBar.wellInside(p, 1) ? Optional.of(p) : Optional.empty();
  }

  private static Shot cut(Plane plane, double yaw, double pitch) throws Exception {
    Orbit o = new Orbit(BAR.extent(), StoredBar.MIDDLE, yaw, pitch, 60);
    return offscreen.of(BAR, Look.at(o).with(Mode.OPEN).cut(Optional.of(plane)));
  }

  @Test
  void aCutAtAnyPlaneHasTheLegendsColours() throws Exception {
    Plane along = new Plane(StoredBar.MIDDLE, new Vec3(0, 1, 0));
    Plane across = new Plane(new Vec3(6, 6, 6), new Vec3(-1, 0, 0));
    Plane tilted = new Plane(StoredBar.MIDDLE, new Vec3(-0.5, 0.7, -0.3));
    double back = -Math.PI / 2;
    for (Shot shot :
        new Shot[] {cut(along, back, 0), cut(across, 0, 0.2), cut(tilted, back + 0.4, 0.3)}) {
      int looked =
          assertColours(
              shot, (x, y) -> onCut(shot, x, y).map(p -> ramp(StoredBar.sets(p.x()))).orElse(-1));
      assertTrue(looked > 150, looked + " pixels of the cut");
    }
  }

  /**
   * Voxels of 1 mm in a ball of 20 mm, all of it liquid, with a second solid in it: on the cut
   * there is one colour up to the mesh's own edge, and beyond it none of it.
   */
  @Test
  void theCutEndsWhereTheMeshDoesNotWhereItsVoxelsDo() throws Exception {
    ResultShown ball = ball(0);
    Vec3 middle = new Vec3(12, 12, 12);
    Plane half = new Plane(middle, new Vec3(0, 1, 0));
    Look look = at(Mode.OPEN, ball, middle).cut(Optional.of(half)).atTime(0);
    Shot square = offscreen.of(ball, look);
    int within = colourEndsAt(10, middle, square);
    assertTrue(within > 40_000 && within < 100_000, within + " pixels");

    Orbit o = look.orbit();
    Shot aslant = offscreen.look(look.with(new Orbit(o.extent(), middle, -1.2, 0.35, 60)));
    assertTrue(colourEndsAt(10, middle, aslant) > 30_000);
  }

  /** Pixels within; beyond it, aslant, the rest of the ball is seen. */
  private static int colourEndsAt(double mm, Vec3 middle, Shot shot) {
    boolean square = shot.look().orbit().pitch() == 0;
    int within = 0;
    for (int y = 0; y < Offscreen.HEIGHT; y++) {
      for (int x = 0; x < Offscreen.WIDTH; x++) {
        var ray = shot.ray(x, y);
        double off = ray.at(ray.to(shot.look().plane().orElseThrow())).distance(middle);
        boolean sure = Math.abs(off - mm) > 0.12 && (square || off < mm);
        if (sure && !shot.atTheAxes(x, y)) {
          int is = shot.at(x, y);
          boolean liquid = Shot.apart(is, Colours.LIQUID) <= EXACT;
          assertEquals(off < mm, liquid, () -> "%.2f mm off: %06x".formatted(off, is));
          within += off < mm ? 1 : 0;
        }
      }
    }
    return within;
  }

  @Test
  void theFrontStandsWhereTheSliderIsAndCutOffLiquidIsHatched() throws Exception {
    Plane plane = new Plane(StoredBar.MIDDLE, new Vec3(0, 1, 0));
    Shot whole = cut(plane, -Math.PI / 2, 0);
    double cutShare = onPlane(whole, p -> StoredBar.wellInside(p, 0) ? 1 : 0);

    Shot at30 = offscreen.look(whole.look().atTime(30));
    double liquid = onPlane(at30, p -> StoredBar.wellInside(p, 0) && p.x() > 10 ? 1 : 0);
    assertEquals(liquid, at30.share(c -> Shot.apart(c, Colours.LIQUID) == 0), 0.02 * cutShare);
    assertEquals(0, at30.share(c -> Shot.apart(c, Colours.SHUT) <= EXACT), 1e-4);

    Shot at45 = offscreen.look(whole.look().atTime(45));
    double shut = onPlane(at45, p -> StoredBar.wellInside(p, 0) && p.x() > 17.5 ? 1 : 0);
    assertEquals(
        0.5 * shut, at45.share(c -> Shot.apart(c, Colours.SHUT) <= EXACT), 0.03 * cutShare);
    assertEquals(
        0.5 * shut, at45.share(c -> Shot.apart(c, Colours.LIQUID) <= EXACT), 0.03 * cutShare);
  }

  @Test
  void theShotHasTheLegendsColoursAndAirThatStaysIsHatched() throws Exception {
    ResultShown bar = new ResultShown(StoredBar.filled(), 0);
    double end = ShotShown.end(bar.run().fields());
    assertEquals(1.03 * 2.05, end, 1e-6);
    Plane plane = new Plane(StoredBar.MIDDLE, new Vec3(0, 1, 0));
    Look look = at(Mode.FILL, bar, StoredBar.MIDDLE).cut(Optional.of(plane));
    Shot whole = offscreen.of(bar, look);
    int seen =
        assertColours(
            whole,
            (x, y) ->
                onCut(whole, x, y)
                    .filter(p -> p.x() < 20)
                    .map(p -> ColourRamp.STANDARD.at(0.1 * p.x() / end))
                    .orElse(-1));
    assertTrue(seen > 400, seen + " pixels of the cut");
    double air = onPlane(whole, p -> StoredBar.wellInside(p, 0) && p.x() > 21 ? 1 : 0);
    assertEquals(0.5 * air, whole.share(c -> Shot.apart(c, Colours.SHUT) <= EXACT), 0.15 * air);

    Shot early = offscreen.look(look.shotAt(1));
    assertColours(
        early,
        (x, y) ->
            onCut(early, x, y)
                .filter(p -> Math.abs(p.x() - 10) > 0.6 && p.x() < 20)
                .map(p -> p.x() > 10 ? Colours.AIR : ColourRamp.STANDARD.at(0.1 * p.x() / end))
                .orElse(-1));
  }

  /** Share of all pixels whose line of sight meets the cut where something holds. */
  private static double onPlane(Shot shot, ToDoubleFunction<Vec3> held) {
    double sum = 0;
    for (int y = 0; y < Offscreen.HEIGHT; y++) {
      for (int x = 0; x < Offscreen.WIDTH; x++) {
        var ray = shot.ray(x, y);
        sum += held.applyAsDouble(ray.at(ray.to(shot.look().plane().orElseThrow())));
      }
    }
    return sum / (Offscreen.WIDTH * Offscreen.HEIGHT);
  }

  /** mm along x where a line of sight meets the bar's near side; NaN beside it or near an edge. */
  private static double onSide(Shot shot, int x, int y) {
    var ray = shot.ray(x, y);
    Vec3 p = ray.at(ray.to(new Plane(Vec3.ZERO, new Vec3(0, 1, 0))));
    boolean there = StoredBar.wellInside(new Vec3(p.x(), 6, p.z()), 0.2);
    double off = Math.abs(p.x() - Math.rint(p.x()));
    return there && off > 0.15 ? p.x() : Double.NaN;
  }

  @Test
  void cellsHaveTheColourOfTheirTimeAndThoseThatSetBeforeTheSliderAreGone() throws Exception {
    Look look = at(Mode.CELLS, BAR, StoredBar.MIDDLE);
    Shot all = offscreen.of(BAR, look);
    int seen =
        assertColours(
            all,
            (x, y) -> {
              double mm = onSide(all, x, y);
              return Double.isNaN(mm) ? -1 : ramp(StoredBar.sets(Math.floor(mm) + 0.5));
            });
    assertTrue(seen > 800, seen + " pixels of cells");

    Shot late = offscreen.look(look.hidingBefore(StoredBar.CUT_OFF));
    int background = late.at(5, 200);
    int gone = 0;
    int left = 0;
    for (int y = APART; y < Offscreen.HEIGHT; y += APART) {
      for (int x = APART; x < Offscreen.WIDTH; x += APART) {
        double mm = late.atTheAxes(x, y) ? Double.NaN : onSide(late, x, y);
        if (mm > 15) {
          assertTrue(
              Shot.apart(late.at(x, y), ramp(StoredBar.sets(Math.floor(mm) + 0.5))) <= EXACT);
          left++;
        } else if (mm > 3 && mm < 13 && Math.abs(y - Offscreen.HEIGHT / 2) < 50) {
          // The far wall of the glass, square on: only a little lighter than the ground.
          assertTrue(Shot.apart(late.at(x, y), background) <= 12, "gone at " + mm);
          gone++;
        }
      }
    }
    assertTrue(left > 300 && gone > 150, left + " left, " + gone + " gone");
  }

  @Test
  void pocketsStandOpaqueInAGhostedBody() throws Exception {
    ResultShown bar = new ResultShown(StoredBar.run(), 0);
    Vec3 centre = new Vec3(19.5, 6, 6);
    Shot shot = offscreen.of(bar, at(Mode.POCKETS, bar, centre));
    int colour = Colours.pocket(1);
    int below = shot.at(Offscreen.WIDTH / 2, Offscreen.HEIGHT / 2 + 12);
    assertTrue(Shot.apart(below, colour) <= 6, "%06x".formatted(below));

    // Its near side is 9 x 12 mm, 54 mm away; rounded corners take some of it, the number's plate
    // too.
    double mm = Offscreen.HEIGHT / (2 * 54 * Math.tan(Stage.FIELD_OF_VIEW / 2));
    double face = 9 * 12 * mm * mm / (Offscreen.WIDTH * Offscreen.HEIGHT);
    double seen = shot.share(c -> Shot.lit(c, colour));
    assertTrue(seen > 0.8 * face && seen < 1.02 * face, seen + " of " + face);

    // The body about it is seen and seen through.
    int ground = shot.at(5, 200);
    double body = shot.share(c -> c != ground);
    assertTrue(body > 1.8 * face, body + " of " + face);
  }

  /** A ball whose skin is pulled in everywhere. */
  private static ResultShown ball(double depth) {
    StoredRun b = StoredBall.run();
    StoredRun r = LiveFreezing.stored(b.fields(), b.surface());
    TriangleMesh mesh = Solids.sphere(new Vec3(12, 12, 12).times(1e-3), 10e-3, 96);
    Vec3 corner = new Vec3(8.2e-3, 7.1e-3, 9.3e-3);
    TriangleMesh inner = Solids.box(corner, corner.plus(new Vec3(5.3e-3, 9e-3, 4.7e-3)));
    float[] deep = new float[mesh.vertexCount()];
    Arrays.fill(deep, (float) depth);
    DentSurface dents = new DentSurface(mesh, deep, deep, deep);
    return new ResultShown(
        new StoredRun(
            r.name(),
            r.caseText(),
            r.inputs(),
            r.findings(),
            r.series(),
            r.health(),
            r.cautions(),
            r.provenance(),
            r.fields(),
            r.surface().plus(inner),
            dents),
        0);
  }

  /** Share of the picture that a ball of that radius takes, mm, 60 mm away. */
  private static double disc(double radius) {
    double tan = Math.tan(Math.asin(radius / 60)) / Math.tan(Stage.FIELD_OF_VIEW / 2);
    double pixels = 0.5 * Offscreen.HEIGHT * tan;
    return Math.PI * pixels * pixels / (Offscreen.WIDTH * Offscreen.HEIGHT);
  }

  @Test
  void dentsAreAsDeepAsTheSliderSaysAndColouredByTheirOwnDepth() throws Exception {
    ResultShown ball = ball(0.6e-3);
    int colour = Colours.dents()[(int) Math.round(255 * 0.6 / (0.2 * Colours.DEEPEST))];
    Look look = at(Mode.DENTS, ball, new Vec3(12, 12, 12));
    for (double times : new double[] {0, 1, 8}) {
      Shot shot = offscreen.of(ball, look.exaggerated(times));

      assertTrue(Shot.apart(shot.middle(), colour) <= 4, "%06x".formatted(shot.middle()));
      assertEquals(1, shot.share(c -> Shot.lit(c, colour)) / disc(10 - 0.6 * times), 0.04);
    }
  }

  @Test
  void thickSpotsShowTheLatestTimeBehindTheSkinOnAllOfIt() throws Exception {
    ResultShown ball = ball(0);
    Shot shot = offscreen.of(ball, at(Mode.SKIN, ball, new Vec3(12, 12, 12)));

    // The skin itself sets within 15 s: the dark end. Its middle sets last: the light end.
    int light = ColourRamp.STANDARD.at(1);
    assertTrue(Shot.apart(shot.at(322, 244), light) <= 6, "%06x".formatted(shot.at(322, 244)));
    assertEquals(1, shot.share(c -> Shot.lit(c, light)) / disc(10), 0.05);
  }

  @Test
  void twoDesignsStandSideBySideLookedAtAlike() throws Exception {
    Look look = at(Mode.CELLS, BAR, StoredBar.MIDDLE);
    offscreen.stage().compare(new ResultShown(StoredBar.plain(), 2 * BAR.scale()));
    Shot both = offscreen.of(BAR, look.with(look.orbit().zoomed(1.5)));
    offscreen.stage().compareNothing();

    // On twice the scale the right one ends where the left one is half way.
    int half = Offscreen.WIDTH / 2;
    assertEquals(
        0, countRight(both, ramp(StoredBar.sets(23.5)), half), "no light end on the right");
    assertTrue(countRight(both, ColourRamp.STANDARD.at(57.0 / (2 * BAR.scale())), half) > 50);
    assertTrue(both.share(c -> Shot.apart(c, ramp(StoredBar.sets(23.5))) <= EXACT) > 1e-4);
  }

  private static int countRight(Shot shot, int colour, int from) {
    int n = 0;
    for (int y = 0; y < Offscreen.HEIGHT; y++) {
      for (int x = from; x < Offscreen.WIDTH; x++) {
        n += Shot.apart(shot.at(x, y), colour) <= EXACT ? 1 : 0;
      }
    }
    return n;
  }
}
