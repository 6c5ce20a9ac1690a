// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.base.Progress;
import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.setup.Case;
import gelfront.setup.FeedSystem;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A case in voxels.
 *
 * @param model cavity and mould
 * @param surface part and feed system, closed and outward-wound, for pictures
 * @param part the part and its copies alone; with the feed system where that is in the mesh
 * @param cavities which of the cavities a plastisol cell belongs to
 * @param gates of each cavity, in the cavities' order
 * @param mouth the sprue's open end
 * @param report how well the voxels show the shape
 */
public record CaseVoxels(
    VoxelModel model,
    TriangleMesh surface,
    TriangleMesh part,
    Cavities cavities,
    List<GatePlace> gates,
    Mouth mouth,
    VoxelReport report) {

  /**
   * @param part closed, outward-wound, metres; with the feed system in it where the case says so
   * @throws VoxelException if gate, mouth or resolution can't be had
   */
  public static CaseVoxels of(Case c, TriangleMesh part, Progress progress) {
    return in(c, CaseShape.of(c, new PartCrossings(part), progress), progress);
  }

  /** Puts the block round the shape. */
  static CaseVoxels in(Case c, CaseShape shape, Progress progress) {
    Cavity cavity = shape.cavity();
    if (volumeOf(cavity, true) == 0) {
      throw new VoxelException("part.unit", "no voxel lies inside the part: is its unit right?");
    }
    progress.check("cutting the mould into cells", 0);
    String mouth = c.feed() instanceof FeedSystem.Declared ? "sprue.length" : "feed.mouth";
    double dx = cavity.grid().spacing();
    Optional<FeedSystem.Extender> tube =
        c.feed() instanceof FeedSystem.Declared d ? d.sprue().extender() : Optional.empty();
    Box inside =
        tube.isPresent()
            ? BlockBox.below(shape.surface().box(), shape.atBlock())
            : shape.surface().box();
    Box box = BlockBox.of(c.block(), inside, shape.atBlock(), dx, mouth);
    Optional<MouldSolids> solids =
        MouldSolids.of(c.block(), shape.surface(), inside, box, progress);
    Bores.check(c.block().channels(), cavity, box);
    VoxelModel model = MouldBuilder.build(cavity, c.block(), box, tube, shape.atBlock(), solids);
    progress.check("cutting the mould into cells", 1);
    return new CaseVoxels(
        model,
        shape.surface(),
        shape.part(),
        shape.cavities(),
        shape.gates(),
        shape.mouth(),
        report(shape, model));
  }

  /** The gate nearest to a place. */
  public GatePlace gateNear(Vec3 p) {
    return gates.stream()
        .min(Comparator.comparingDouble((GatePlace g) -> g.middle().distance(p)))
        .orElseThrow();
  }

  private static VoxelReport report(CaseShape shape, VoxelModel model) {
    Cavity cavity = shape.cavity();
    double smallest = cavity.smallEdge();
    boolean apart = shape.opening().isPresent();
    return new VoxelReport(
        cavity.grid().spacing(),
        smallest,
        cavity.count(),
        model.mould().count(),
        volumeOf(cavity, apart) / shape.part().volume() - 1,
        (areaOf(cavity, apart) + shape.opening().orElse(0.0)) / shape.part().area() - 1,
        shape.width(),
        shape.width() / smallest,
        shape.notes());
  }

  private static double volumeOf(Cavity cavity, boolean partOnly) {
    double sum = 0;
    double[] volume = cavity.volumes();
    for (int c = 0; c < volume.length; c++) {
      boolean counts = !partOnly || cavity.region()[c] == Cavity.Region.PART.ordinal();
      sum += counts ? volume[c] : 0;
    }
    return sum;
  }

  /** A true wall of area dA meets |n_d| dA / dx^2 faces along axis d; the squares add up to one. */
  private static double areaOf(Cavity cavity, boolean partOnly) {
    double sum = 0;
    Cavity.Walls walls = cavity.walls();
    for (int w = 0; w < walls.count(); w++) {
      if (!partOnly || cavity.region()[walls.cell()[w]] == Cavity.Region.PART.ordinal()) {
        double share = walls.edge()[w] / cavity.grid().spacing();
        sum += walls.cosine()[w] * share * share;
      }
    }
    return sum * cavity.grid().spacing() * cavity.grid().spacing();
  }
}
