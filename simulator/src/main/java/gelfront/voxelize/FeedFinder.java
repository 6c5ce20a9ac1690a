// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Basins;
import gelfront.grid.Cavity;
import gelfront.grid.MergeTree;
import gelfront.grid.MouthSteps;
import gelfront.grid.WallDistance;
import gelfront.mesh.Vec3;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Tells parts from feed system where both are one mesh: cuts the cavity across its gates.
 *
 * <p>The narrowest constriction is found as a cut-off is: filled by width instead of set time, the
 * largest body that only a narrower place joins to the mouth is the part, and that place the gate.
 */
final class FeedFinder {
  /** Share of the part's volume from which a body may be another cavity. */
  private static final double AS_LARGE = 0.5;

  /** Cosine to the way straight across within which a wall lies opposite. */
  private static final double OPPOSITE = 0.9;

  /** Times that a gate's middle is looked for, from the last one found. */
  private static final int TURNS = 3;

  private final Cavity cavity;
  private final WallDistance walls;

  /** Cells from the mouth. */
  private final int[] steps;

  /** Bodies behind narrower places, largest first; empty where gates are marked. */
  private List<Basins.Basin> bodies = List.of();

  FeedFinder(Cavity cavity) {
    this.cavity = cavity;
    this.walls = WallDistance.of(cavity);
    this.steps = MouthSteps.of(cavity);
    if (Arrays.stream(steps).noneMatch(s -> s == 0)) {
      throw new VoxelException(
          "feed.mouth", "no open end of the sprue was found; state the mouth's place");
    }
  }

  /**
   * @param gates of each cavity
   * @param region per plastisol cell; length n
   * @param unmarked middles of bodies as large as a part that were taken for feed system
   */
  record Found(List<GatePlace> gates, byte[] region, List<Vec3> unmarked) {
    /** Of the narrowest gate, metres. */
    double width() {
      return gates.stream().mapToDouble(GatePlace::width).min().orElseThrow();
    }
  }

  /**
   * @param marked a point in each gate; none: the narrowest constriction is the only one
   * @throws VoxelException if there is no mouth or nothing narrower than its surroundings
   */
  Found find(List<Vec3> marked) {
    List<Integer> cells =
        marked.isEmpty() ? List.of(narrowest()) : marked.stream().map(this::nearest).toList();
    List<Cut> cuts = new ArrayList<>();
    for (int cell : cells) {
      cuts.add(cut(cell, cuts.size() + 1));
    }
    byte[] region = new byte[cavity.count()];
    flood(cuts, region);
    return new Found(cuts.stream().map(Cut::gate).toList(), region, unmarked(region));
  }

  /**
   * A plane across a gate.
   *
   * @param axis from the mouth's side to the part's, length one
   */
  private record Cut(GatePlace gate, Vec3 axis) {
    boolean between(Vec3 p, Vec3 q) {
      Vec3 at = gate.middle();
      return q.distance(at) < 1.2 * gate.width()
          && q.minus(at).dot(axis) > 0
          && p.minus(at).dot(axis) <= 0;
    }

    boolean holds(Vec3 p) {
      return p.distance(gate.middle()) < gate.width();
    }
  }

  private Cut cut(int cell, int number) {
    GatePlace gate = new GatePlace(cavity.centre(cell), 0, number);
    for (int turn = 0; turn < TURNS; turn++) {
      gate = centred(gate);
    }
    return new Cut(gate, inwards(cell, gate.middle(), 1.5 * gate.width()));
  }

  /**
   * Moved half way between the wall nearest to its middle and the one across. The middle of a cell
   * is off a gate's axis by up to half its diagonal: twice the way from there to the nearest wall
   * made a gate of 4 mm 3.3 mm wide.
   */
  private GatePlace centred(GatePlace gate) {
    Vec3 middle = gate.middle();
    Vec3 wall = wall(middle, w -> true).orElseThrow();
    Vec3 away = wall.times(-1).unit();
    double beyond =
        wall(middle, to -> to.dot(away) > OPPOSITE * to.length())
            .map(Vec3::length)
            .orElse(wall.length());
    return new GatePlace(
        middle.plus(wall.unit().times(0.5 * (wall.length() - beyond))),
        wall.length() + beyond,
        gate.cavity());
  }

  /** Way to the nearest wall from a place, of those that lie as wanted. */
  private Optional<Vec3> wall(Vec3 from, Predicate<Vec3> wanted) {
    return IntStream.range(0, cavity.walls().count())
        .filter(w -> !cavity.walls().mouth()[w])
        .mapToObj(cavity::wallPoint)
        .map(p -> new Vec3(p[0], p[1], p[2]).minus(from))
        .filter(wanted)
        .min(Comparator.comparingDouble(Vec3::length));
  }

  private int nearest(Vec3 p) {
    int best = cavity.nearest(p);
    if (cavity.centre(best).distance(p) > 3e-3) {
      throw new VoxelException(
          "feed.gate", "the gate stated at " + FeedShapes.mm(p) + " lies outside the cavity");
    }
    return deepest(best);
  }

  /** Climbs to the middle of the section: the deepest cell within the width of the place. */
  private int deepest(int from) {
    Vec3 at = cavity.centre(from);
    double reach = Math.max(2 * cavity.grid().spacing(), 1.2 * walls.distance(from));
    int best = from;
    for (int c = 0; c < cavity.count(); c++) {
      if (walls.distance(c) > walls.distance(best)
          && steps[c] == steps[from]
          && cavity.centre(c).distance(at) < reach) {
        best = c;
      }
    }
    return best;
  }

  private int narrowest() {
    float[] width = new float[cavity.count()];
    for (int c = 0; c < width.length; c++) {
      width[c] = walls.distance(c);
    }
    bodies = MergeTree.of(cavity, width, cavity.grid().spacing(), 0.15, 20).basins();
    if (bodies.isEmpty()) {
      throw new VoxelException(
          "feed",
          "no constriction between the pour opening and the part was found; state the gate's place");
    }
    return bodies.get(0).saddle();
  }

  /** Where gates are proposed there is one cavity: others as large must not pass for a runner. */
  private List<Vec3> unmarked(byte[] region) {
    return bodies.stream()
        .filter(b -> b.cells().length >= AS_LARGE * bodies.get(0).cells().length)
        .map(b -> b.peaks().get(0).cell())
        .filter(c -> region[c] != Cavity.Region.PART.ordinal())
        .map(c -> cavity.centre(c))
        .toList();
  }

  /** Everything on the mouth's side of all cuts becomes feed system. */
  private void flood(List<Cut> cuts, byte[] region) {
    ArrayDeque<Integer> queue = new ArrayDeque<>();
    boolean[] seen = new boolean[cavity.count()];
    for (int c = 0; c < steps.length; c++) {
      if (steps[c] == 0) {
        seen[c] = true;
        queue.add(c);
      }
    }
    while (!queue.isEmpty()) {
      int c = queue.remove();
      Vec3 p = cavity.centre(c);
      boolean land = cuts.stream().anyMatch(g -> g.holds(p));
      region[c] = (byte) (land ? Cavity.Region.GATE : Cavity.Region.SPRUE).ordinal();
      for (int f = 0; f < cavity.faces(c); f++) {
        int j = cavity.across(c, f);
        Vec3 q = cavity.centre(j);
        if (!seen[j] && cuts.stream().noneMatch(g -> g.between(p, q))) {
          seen[j] = true;
          queue.add(j);
        }
      }
    }
  }

  /** From the mouth's side to the part's, through the gate. */
  private Vec3 inwards(int gate, Vec3 at, double reach) {
    Vec3 near = Vec3.ZERO;
    Vec3 far = Vec3.ZERO;
    int nearCount = 0;
    int farCount = 0;
    for (int c = 0; c < cavity.count(); c++) {
      Vec3 d = cavity.centre(c).minus(at);
      if (d.length() < reach && steps[c] != steps[gate]) {
        if (steps[c] < steps[gate]) {
          near = near.plus(d);
          nearCount++;
        } else {
          far = far.plus(d);
          farCount++;
        }
      }
    }
    if (nearCount == 0 || farCount == 0) {
      throw new VoxelException("feed.gate", "the gate at " + FeedShapes.mm(at) + " leads nowhere");
    }
    return far.times(1.0 / farCount).minus(near.times(1.0 / nearCount)).unit();
  }
}
