// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Block;
import gelfront.setup.Case;
import gelfront.setup.FeedSystem;
import gelfront.setup.LoadedCase;
import gelfront.viewer.model.CoolantTubes;
import gelfront.viewer.model.Extent;
import gelfront.viewer.model.Gates;
import gelfront.viewer.model.MeshFaults;
import gelfront.viewer.model.MouldShown;
import gelfront.viewer.model.SetupShown;
import gelfront.viewer.model.SkinMesh;
import gelfront.voxelize.FeedSolids;
import gelfront.voxelize.VoxelException;
import java.util.List;
import java.util.Optional;

/** What a case looks like before it is calculated. */
public final class Previews {
  private static final MeshFaults NONE = new MeshFaults(new float[0], new float[0]);

  /**
   * The block is seen, too, but a small part in a large one stays large enough to be clicked on.
   */
  private static final double GROWN = 1.4;

  private Previews() {}

  /**
   * @param skin of the part, made once
   * @param part metres
   * @param moulds read before
   * @param says words beside the gate
   */
  public static SetupShown of(
      LoadedCase loaded, SkinMesh skin, TriangleMesh part, MouldShapes moulds, List<String> says) {
    Case c = loaded.setup();
    Optional<TriangleMesh> feed = feed(c, part);
    Box cavity = part.box();
    for (var copy : c.copies()) {
      cavity = cavity.union(copy.of(part).box());
    }
    cavity = feed.map(TriangleMesh::box).map(cavity::union).orElse(cavity);
    MouldShown block = mould(c, cavity, moulds);
    Extent seen = Extent.of(cavity).towards(block.extent(), GROWN);
    return new SetupShown(
        skin,
        seen,
        feed.map(SkinMesh::of),
        Optional.of(block),
        CoolantTubes.of(c.block().channels(), block.extent()),
        NONE,
        gates(loaded),
        says);
  }

  /** Its own solids, or a box. */
  private static MouldShown mould(Case c, Box cavity, MouldShapes moulds) {
    Optional<MouldShown> own = c.block().mesh().flatMap(moulds::of);
    Box box = block(c, cavity);
    return own.orElseGet(() -> MouldShown.of(Solids.box(box.min(), box.max())));
  }

  private static Optional<TriangleMesh> feed(Case c, TriangleMesh part) {
    if (!(c.feed() instanceof FeedSystem.Declared d)) {
      return Optional.empty();
    }
    try {
      return Optional.of(FeedSolids.of(c, d, part));
    } catch (VoxelException e) { // told beside the gate by the quick verdict
      return Optional.empty();
    }
  }

  private static List<SetupShown.Gate> gates(LoadedCase loaded) {
    return Gates.of(loaded).stream()
        .map(g -> new SetupShown.Gate(g.at().times(1e3), g.direction(), 1e3 * g.section().width()))
        .toList();
  }

  /** As stated, or walls all round, flush with the sprue's open end. */
  private static Box block(Case c, Box cavity) {
    Block b = c.block();
    Box all = b.outer().orElse(cavity.grown(b.wall()));
    if (b.outer().isPresent() || !(c.feed() instanceof FeedSystem.Declared d)) {
      return all;
    }
    Vec3 to = d.sprue().direction();
    double[] low = {all.min().x(), all.min().y(), all.min().z()};
    double[] high = {all.max().x(), all.max().y(), all.max().z()};
    double[] way = {to.x(), to.y(), to.z()};
    double[] end = {cavity.max().x(), cavity.max().y(), cavity.max().z()};
    double[] start = {cavity.min().x(), cavity.min().y(), cavity.min().z()};
    int most = 0;
    for (int a = 1; a < 3; a++) {
      most = Math.abs(way[a]) > Math.abs(way[most]) ? a : most;
    }
    if (way[most] > 0) {
      high[most] = end[most];
    } else {
      low[most] = start[most];
    }
    return new Box(new Vec3(low[0], low[1], low[2]), new Vec3(high[0], high[1], high[2]));
  }
}
