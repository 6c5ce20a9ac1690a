// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.material.MaterialTable;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Soft plastisol in a block of aluminium, built up for tests that hand over a mesh of their own:
 * 165 °C filled in 2 s and held for 5 s into a mould of 30 °C with 15 mm of wall, level quick,
 * until another is said.
 */
public final class PlainCase {
  /** No shape: the mesh is handed over. */
  public static final PartShape SHAPE = new PartShape.Calipers(List.of());

  /** Out of a part whose nose lies at the origin and looks that way. */
  public static final Vec3 BACK = new Vec3(-1, 0, 0);

  private static final MaterialTable MATERIALS = MaterialTable.builtIn();

  private final FeedSystem feed;
  private double wall = 15e-3;
  private double start = 30;
  private Vec3 up = new Vec3(0, 0, 1);
  private Shot shot = shot(165, 2, 5);
  private OptionalDouble voxel = OptionalDouble.empty();

  private PlainCase(FeedSystem feed) {
    this.feed = feed;
  }

  public static PlainCase fedBy(FeedSystem feed) {
    return new PlainCase(feed);
  }

  /** A round gate of 2 mm land at the nose, and a sprue as wide at its mouth as within; metres. */
  public static PlainCase fedAtTheNose(double gate, double sprue, double length) {
    FeedSystem.Sprue straight = new FeedSystem.Sprue(sprue, sprue, length, BACK);
    return fedBy(feed(new FeedSystem.Gate(Vec3.ZERO, BACK, Section.round(gate), 2e-3), straight));
  }

  /** A gate and a sprue, and nothing between them. */
  public static FeedSystem.Declared feed(FeedSystem.Gate gate, FeedSystem.Sprue sprue) {
    return new FeedSystem.Declared(gate, Optional.empty(), Optional.empty(), sprue);
  }

  /** °C and seconds; held at 20 kPa. */
  public static Shot shot(double temperature, double fillTime, double holdTime) {
    OptionalDouble none = OptionalDouble.empty();
    return new Shot(temperature, fillTime, holdTime, 20e3, List.of(), none, none);
  }

  /** Metres of mould round the part. */
  public PlainCase withWall(double metres) {
    wall = metres;
    return this;
  }

  /** °C of the mould at first. */
  public PlainCase withMouldAt(double celsius) {
    start = celsius;
    return this;
  }

  public PlainCase withUp(Vec3 direction) {
    up = direction;
    return this;
  }

  public PlainCase withShot(Shot other) {
    shot = other;
    return this;
  }

  /** Metres. */
  public PlainCase withVoxel(double edge) {
    voxel = OptionalDouble.of(edge);
    return this;
  }

  public Case make() {
    return new Case(
        "test",
        SHAPE,
        List.of(),
        feed,
        List.of(),
        block(),
        MATERIALS.plastisol("soft"),
        shot,
        Optional.of(up),
        OptionalDouble.empty(),
        1,
        new Numerics(Numerics.Level.QUICK, voxel),
        List.of());
  }

  /** In still air of 23 °C. */
  private Block block() {
    return new Block(
        MATERIALS.mould("aluminium-6061"),
        wall,
        Optional.empty(),
        start,
        23,
        9,
        2500,
        List.of(),
        List.of());
  }
}
