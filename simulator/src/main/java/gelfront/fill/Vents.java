// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import gelfront.base.Quantities;
import gelfront.grid.Cavity;
import gelfront.grid.RectilinearGrid;
import gelfront.mesh.Vec3;
import gelfront.setup.Fill;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.PartingPlane;
import gelfront.voxelize.VoxelException;
import java.util.ArrayList;
import java.util.List;

/**
 * Where air leaves a cavity, and how easily: through the gap between the halves, and through
 * channels scratched for it.
 *
 * <pre>  C = w d^3 / (12 eta L)</pre>
 *
 * <p>Creeping flow between plates; eta of air at 100 °C, 2.2e-5 Pa s, from memory.
 */
public final class Vents {
  private static final double AIR = 2.2e-5;

  /** Metres that a stated vent may be off the cavity. */
  private static final double OFF = 2e-3;

  private static final double LEAST_LAND = 1e-3;

  /** Of a cell's edge, how near a plane must be to its face to be taken to lie in it. */
  private static final double AT_FACE = 1e-3;

  private Vents() {}

  /** m3/(Pa s) of a flat channel, metres. */
  public static double conductance(double width, double depth, double length) {
    return width * depth * depth * depth / (12 * AIR * length);
  }

  /** Metres that a channel of a depth must be wide to let so much through. */
  public static double width(double conductance, double depth, double length) {
    return conductance * 12 * AIR * length / (depth * depth * depth);
  }

  /**
   * m3/(Pa s) per plastisol cell.
   *
   * @throws VoxelException if a vent does not meet the part
   */
  public static double[] of(CaseVoxels voxels, Fill fill) {
    Cavity cavity = voxels.model().cavity();
    double[] vents = new double[cavity.count()];
    if (fill.partingGap() > 0) {
      parting(voxels, fill.partingGap(), vents);
    }
    for (int i = 0; i < fill.vents().size(); i++) {
      scratched(cavity, fill.vents().get(i), "fill.vent." + i + ".at", vents);
    }
    return vents;
  }

  private static void parting(CaseVoxels voxels, double gap, double[] vents) {
    Cavity cavity = voxels.model().cavity();
    Cavity.Walls walls = cavity.walls();
    int axis = PartingPlane.of(voxels).axis();
    double[] at = faceOf(voxels);
    double[] share = new double[cavity.count()];
    double[] above = new double[share.length];
    for (int c = 0; c < share.length; c++) {
      above[c] = at[voxels.cavities().of()[c]] - cavity.centre(c, axis);
      share[c] = share(Math.abs(above[c]) / cavity.edge(c) - 0.5);
    }
    alone(walls, axis, above, share);
    for (int w = 0; w < walls.count(); w++) {
      int c = walls.cell()[w];
      if (walls.face()[w] / 2 != axis && !walls.mouth()[w] && share[c] > 0) {
        double wide = share[c] * walls.edge()[w];
        vents[c] += conductance(wide, gap, land(voxels, c, walls.face()[w]));
      }
    }
  }

  /**
   * What a cell has of the gap along it: a half where the gap lies between it and the next.
   *
   * @param off how far the gap lies beyond the cell's face, edges; negative: within
   */
  private static double share(double off) {
    return off < -AT_FACE ? 1 : off <= AT_FACE ? 0.5 : 0;
  }

  /**
   * Where the cavity ends at the gap there is no next cell.
   *
   * @param above metres from each cell's middle up to the gap
   */
  private static void alone(Cavity.Walls walls, int axis, double[] above, double[] share) {
    for (int w = 0; w < walls.count(); w++) {
      int c = walls.cell()[w];
      boolean towards = walls.face()[w] % 2 == (above[c] > 0 ? 1 : 0);
      boolean ends = walls.face()[w] / 2 == axis && towards && share[c] > 0;
      share[c] = ends ? 1 : share[c];
    }
  }

  /**
   * Coordinate of the parting face along its axis, by cavity, from 0 for what they share: the plane
   * through the sprue, or where that misses a cavity its own widest section.
   */
  public static double[] faceOf(CaseVoxels voxels) {
    PartingPlane plane = PartingPlane.of(voxels);
    Cavity cavity = voxels.model().cavity();
    double[] at = new double[voxels.cavities().count() + 1];
    java.util.Arrays.fill(at, plane.coordinate());
    for (int k = 1; k < at.length; k++) {
      int one = k;
      double[] area = new double[cavity.grid().count(plane.axis())];
      boolean meets = false;
      for (int c = 0; c < cavity.count(); c++) {
        if (voxels.cavities().of()[c] == one) {
          area[cavity.position(c, plane.axis())] += cavity.cubeVolume(c);
          double off = cavity.centre(c, plane.axis()) - plane.coordinate();
          meets |= Math.abs(off) <= 0.5 * cavity.edge(c);
        }
      }
      at[k] = meets ? at[k] : widest(cavity, plane.axis(), area);
    }
    return at;
  }

  private static double widest(Cavity cavity, int axis, double[] area) {
    int best = 0;
    for (int i = 1; i < area.length; i++) {
      best = area[i] > area[best] ? i : best;
    }
    return cavity.grid().centre(axis, best);
  }

  /** Metres from a cell to the block's outside, through a face's direction. */
  public static double land(CaseVoxels voxels, int cell, int face) {
    RectilinearGrid grid = voxels.model().mould().grid();
    double own = voxels.model().cavity().centre(cell, face / 2);
    int end = face % 2 == 0 ? 0 : grid.count(face / 2);
    return Math.max(LEAST_LAND, Math.abs(grid.edge(face / 2, end) - own));
  }

  private static void scratched(Cavity cavity, Fill.Vent v, String key, double[] vents) {
    int nearest = cavity.nearest(v.at());
    double off = cavity.centre(nearest).distance(v.at()) - 0.87 * cavity.edge(nearest);
    if (off > OFF) {
      throw new VoxelException(
          key,
          Quantities.say(
              "the vent at %s doesn't meet the cavity: the nearest place of it is %s off",
              words(v.at()), Quantities.mm(off)));
    }
    if (cavity.region()[nearest] != Cavity.Region.PART.ordinal()) {
      throw new VoxelException(
          key,
          Quantities.say(
              "the vent at %s lies on the %s, where plastisol comes first: put it where the cavity"
                  + " fills last",
              words(v.at()),
              Cavity.Region.of(cavity.region()[nearest])
                  .name()
                  .toLowerCase(java.util.Locale.ROOT)));
    }
    List<Integer> cells = near(cavity, v, nearest);
    double each = conductance(v.width(), v.depth(), v.length()) / cells.size();
    cells.forEach(c -> vents[c] += each);
  }

  /** Cells round where a vent was stated, on both sides of a plane that it lies in alike. */
  private static List<Integer> near(Cavity cavity, Fill.Vent v, int nearest) {
    double off = cavity.centre(nearest).distance(v.at());
    double reach = off + Math.max(0.5 * v.width(), 2.1 * cavity.edge(nearest));
    List<Integer> cells = new ArrayList<>();
    for (int c = 0; c < cavity.count(); c++) {
      boolean part = cavity.region()[c] == Cavity.Region.PART.ordinal();
      if (part && cavity.centre(c).distance(v.at()) <= reach) {
        cells.add(c);
      }
    }
    return cells;
  }

  private static String words(Vec3 p) {
    return Quantities.say(
        "[%.1f, %.1f, %.1f] mm",
        Quantities.tenths(p.x()), Quantities.tenths(p.y()), Quantities.tenths(p.z()));
  }
}
