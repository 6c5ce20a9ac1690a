// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.setup.FeedSystem;

/**
 * The wall of a tube that stands on the block over the sprue, as rings one on the other, each at
 * one temperature. Its liquid are cells of the cavity beyond the block.
 *
 * <pre>
 *   liquid to ring   1 / contact + ri ln(rm / ri) / k       per area of the bore, K m2/W
 *   ring to air      1 / h       + ro ln(ro / rm) / k       per area outside
 *   ring to ring     k pi (ro^2 - ri^2) / dz                W/K
 *   ring to block    pi (ro^2 - ri^2) / (1 / contact + dz / 2 k)</pre>
 *
 * <p>with rm = (ri + ro) / 2.
 */
final class TubeWall {
  /** Metres that a ring is high, about. */
  private static final double RING = 2e-3;

  private final FeedSystem.Extender tube;
  private final Mouth foot;
  private final double contact;
  private final Cavity cavity;
  private final Box block;
  private final int axis;
  private final boolean upper;
  private final int rings;

  /**
   * @param foot where it stands: the sprue's end on the block
   * @param contact W/m2 K between plastisol and wall, and wall and block
   * @param block outer faces, metres
   */
  TubeWall(FeedSystem.Extender tube, Mouth foot, double contact, Cavity cavity, Box block) {
    this.tube = tube;
    this.foot = foot;
    this.contact = contact;
    this.cavity = cavity;
    this.block = block;
    Vec3 v = foot.direction();
    double[] d = {v.x(), v.y(), v.z()};
    int most = Math.abs(d[0]) >= Math.abs(d[1]) ? 0 : 1;
    axis = Math.abs(d[most]) >= Math.abs(d[2]) ? most : 2;
    upper = d[axis] > 0;
    rings = (int) Math.max(1, Math.round(tube.height() / RING));
  }

  int rings() {
    return rings;
  }

  /** Axis across the block's face that it stands on. */
  int axis() {
    return axis;
  }

  /** Whether that face looks towards rising coordinates. */
  boolean upper() {
    return upper;
  }

  /** Whether a plastisol cell lies in the tube, beyond the block. */
  boolean holds(int cell) {
    return height(cell) > 0 && !block.contains(cavity.centre(cell));
  }

  /** Metres above the block. */
  private double height(int cell) {
    return cavity.centre(cell).minus(foot.centre()).dot(foot.direction());
  }

  /** Whether a wall link of the cavity leads into the tube's wall. */
  boolean behind(int link) {
    int face = cavity.walls().face()[link];
    boolean down = face / 2 == axis && (face % 2 == 1) != upper;
    return holds(cavity.walls().cell()[link]) && !down;
  }

  /** Ring that a wall link leads to, 0 at the foot. */
  int ring(int link) {
    double share = height(cavity.walls().cell()[link]) / tube.height();
    return (int) Math.max(0, Math.min(rings - 1, share * rings));
  }

  /** K/W from the true wall that a link meets into the ring. */
  double resistance(int link) {
    Cavity.Walls walls = cavity.walls();
    double area = walls.cosine()[link] * walls.edge()[link] * walls.edge()[link];
    double half = inner() * Math.log(middle() / inner()) / tube.material().conductivity();
    return (1 / contact + half) / area;
  }

  /** J/K of a ring. */
  double capacity() {
    return tube.material().volumetricHeat() * section() * ringHeight();
  }

  double startTemperature() {
    return tube.startTemperature();
  }

  /** W/K from a ring to the air; the top one's rim is left out. */
  double toAir() {
    double half = outer() * Math.log(outer() / middle()) / tube.material().conductivity();
    double area = 2 * Math.PI * outer() * ringHeight();
    return tube.airFilm() > 0 ? area / (1 / tube.airFilm() + half) : 0;
  }

  /** W/K between rings. */
  double upwards() {
    return tube.material().conductivity() * section() / ringHeight();
  }

  /** W/K from the lowest ring into the block. */
  double toBlock() {
    double half = 0.5 * ringHeight() / tube.material().conductivity();
    return section() / (1 / contact + half);
  }

  /** A place in the block's metal under the tube's wall, metres. */
  Vec3 under() {
    Vec3 d = foot.direction();
    Vec3 any = axis == 0 ? new Vec3(0, 1, 0) : new Vec3(1, 0, 0);
    Vec3 across = any.minus(d.times(any.dot(d))).unit();
    double r = Math.max(middle(), foot.radius() + 0.5 * tube.wall());
    return foot.centre().plus(across.times(r)).minus(d.times(0.1e-3));
  }

  private double section() {
    return Math.PI * (outer() * outer() - inner() * inner());
  }

  private double ringHeight() {
    return tube.height() / rings;
  }

  private double inner() {
    return 0.5 * tube.bore();
  }

  private double middle() {
    return inner() + 0.5 * tube.wall();
  }

  private double outer() {
    return inner() + tube.wall();
  }
}
