// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.grid.Cavity;
import gelfront.grid.WallDistance;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WallDistanceTest {
  private static final double RADIUS = 6e-3;

  private final Cavity ball =
      CavityBuilder.build(
          List.of(new Labelled(Cavity.Region.PART, Solids.sphere(Vec3.ZERO, RADIUS, 96))),
          0.5e-3,
          Optional.empty(),
          Progress.NONE);

  private final WallDistance walls = WallDistance.of(ball);

  /** To the nearest of the points where links meet the wall, not to the wall: seen 2.5 % more. */
  @Test
  void inABallItIsWhatTheRadiusLeaves() {
    double off = 0;
    double all = 0;
    for (int c = 0; c < ball.count(); c++) {
      double exact = RADIUS - ball.centre(c).length();
      off += Math.abs(walls.distance(c) - exact);
      all += exact;
    }
    assertEquals(0, off / all, 0.03);
  }

  @Test
  void noNeighbourKnowsANearerWall() {
    for (int c = 0; c < ball.count(); c++) {
      for (int f = 0; f < ball.faces(c); f++) {
        double theirs = away(c, walls.nearestWall(ball.across(c, f)));
        assertTrue(walls.distance(c) <= theirs + 1e-9, "cell " + c);
      }
      assertEquals(walls.distance(c), away(c, walls.nearestWall(c)), 1e-9);
    }
  }

  private double away(int cell, int wall) {
    double[] p = ball.wallPoint(wall);
    return ball.centre(cell).distance(new Vec3(p[0], p[1], p[2]));
  }
}
