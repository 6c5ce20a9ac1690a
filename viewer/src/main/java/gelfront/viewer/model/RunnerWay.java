// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.setup.FeedSystem;
import java.util.List;

/**
 * The way of a further gate's runner to the sprue: out of the part, clear of it, over the sprue,
 * and down into it.
 *
 * @param part metres
 * @param at the gate's place on it, metres
 * @param direction away from the part, length one
 * @param runner its width, metres
 */
record RunnerWay(
    FeedSystem.Declared feed, TriangleMesh part, Vec3 at, Vec3 direction, double runner) {
  /** Metres of metal between runner and part: common practice, no source. */
  private static final double METAL = 3e-3;

  /** Cosine from which gate and sprue look along one line. */
  private static final double ALONG = 0.9;

  static RunnerWay of(FeedSystem.Declared feed, TriangleMesh part, FeedSystem.Branch b) {
    return new RunnerWay(feed, part, b.gate().at(), b.gate().direction(), b.runner().width());
  }

  /** Places that it leads through, metres. */
  List<Vec3> places() {
    Vec3 sprue = feed.inner().plus(feed.sprue().direction().times(0.5 * runner));
    double along = direction.dot(feed.sprue().direction());
    if (Math.abs(along) <= ALONG) {
      double level = level(direction);
      Vec3 over = at.plus(direction.times(level));
      return List.of(over, above(sprue, direction, level));
    }
    Vec3 out = at.plus(direction.times(out()));
    if (along > 0) {
      Vec3 beside = out.plus(direction.times(sprue.minus(out).dot(direction)));
      return beside.minus(at).dot(direction) >= out() ? List.of(beside) : List.of(out);
    }
    // On the far side of the part: round it, where it is least high.
    Vec3 side = side();
    double level = level(side);
    return List.of(out, out.plus(side.times(level)), above(sprue, side, level));
  }

  private Vec3 above(Vec3 sprue, Vec3 way, double level) {
    return sprue.plus(way.times(level - sprue.minus(at).dot(way)));
  }

  private double out() {
    return feed.gate().land() + 0.5 * runner;
  }

  /** Metres from the gate along a way, clear of all of the part. */
  private double level(Vec3 way) {
    double most = 0;
    for (int v = 0; v < part.vertexCount(); v++) {
      most = Math.max(most, part.vertex(v).minus(at).dot(way));
    }
    return Math.max(most + METAL + 0.5 * runner, out());
  }

  /** Across the gate's direction, where the part reaches least. */
  private Vec3 side() {
    Vec3 other = Math.abs(direction.z()) > ALONG ? new Vec3(1, 0, 0) : new Vec3(0, 0, 1);
    Vec3 first = direction.cross(other).unit();
    Vec3 second = direction.cross(first).unit();
    Vec3 best = first;
    for (Vec3 s : List.of(first.times(-1), second, second.times(-1))) {
      best = level(s) < level(best) ? s : best;
    }
    return best;
  }
}
