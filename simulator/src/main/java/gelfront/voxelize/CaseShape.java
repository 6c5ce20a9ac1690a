package gelfront.voxelize;

import gelfront.base.Progress;
import gelfront.grid.Cavity;
import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.setup.Case;
import gelfront.setup.FeedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Part and feed system in voxels, without the block. Depends on the part, on the case's feed
 * system, filings and numerics, and on nothing else.
 *
 * @param cavity cells of part and feed
 * @param surface part and feed system, closed and outward-wound
 * @param part the part alone, or with the feed system in it where the case says so
 * @param gate middle of the gate, metres
 * @param width the gate's narrowest, metres
 * @param mouth the sprue's open end
 * @param opening area of the part's surface that the gate takes, m2; absent: the feed system is in
 *     the part's mesh
 * @param notes on what was found, in words
 */
record CaseShape(
    Cavity cavity,
    TriangleMesh surface,
    TriangleMesh part,
    Vec3 gate,
    double width,
    Mouth mouth,
    Optional<Double> opening,
    List<String> notes) {

  /**
   * @param kept of the part, closed and outward-wound, metres
   * @throws VoxelException if gate, mouth or resolution can't be had
   */
  static CaseShape of(Case c, PartCrossings kept, Progress progress) {
    return c.feed() instanceof FeedSystem.Declared declared
        ? declared(c, declared, kept, progress)
        : inMesh(c, (FeedSystem.InMesh) c.feed(), kept, progress);
  }

  private static CaseShape declared(
      Case c, FeedSystem.Declared feed, PartCrossings kept, Progress progress) {
    TriangleMesh part = kept.mesh();
    FeedShapes shapes = FeedShapes.of(feed, part);
    List<Labelled> solids = new ArrayList<>();
    solids.add(new Labelled(Cavity.Region.PART, part));
    solids.addAll(shapes.solids());
    double width = narrowest(feed);
    TriangleMesh surface = solids.stream().map(Labelled::mesh).reduce(TriangleMesh::plus).get();
    double dx = Resolution.voxel(c.numerics(), width, volume(solids), volume(surface.box()));
    Filing filing = new Filing(c.growths(), solids);
    Mouth mouth = shapes.mouth();
    Cavity cavity = CavityBuilder.build(solids, kept, dx, Optional.of(mouth), filing, progress);
    Optional<Double> opening = Optional.of(feed.gate().section().area());
    return new CaseShape(
        cavity, surface, part, shapes.gateMiddle(), width, mouth, opening, List.of());
  }

  private static double narrowest(FeedSystem.Declared feed) {
    double w = Math.min(feed.gate().section().narrowest(), feed.sprue().innerDiameter());
    w = Math.min(w, feed.sprue().mouthDiameter());
    return feed.runner().isPresent() ? Math.min(w, feed.runner().get().section().narrowest()) : w;
  }

  private static CaseShape inMesh(
      Case c, FeedSystem.InMesh feed, PartCrossings kept, Progress progress) {
    TriangleMesh part = kept.mesh();
    Mouth mouth = MouthFinder.find(part, feed.mouth());
    Optional<Mouth> open = Optional.of(mouth);
    List<Labelled> solids = List.of(new Labelled(Cavity.Region.PART, part));
    double first = Math.max(0.5e-3, Math.cbrt(volume(part.box()) / 4e6));
    FeedFinder.Found rough =
        new FeedFinder(CavityBuilder.build(solids, kept, first, open, Filing.NONE, progress))
            .find(feed.gate());
    double dx = Resolution.voxel(c.numerics(), rough.width(), volume(solids), volume(part.box()));
    Filing filing = new Filing(c.growths(), solids);
    Cavity whole = CavityBuilder.build(solids, kept, dx, open, filing, progress);
    FeedFinder.Found found = new FeedFinder(whole).find(feed.gate());
    Cavity cavity =
        new Cavity(whole.grid(), whole.cells(), whole.neighbours(), found.region(), whole.walls());
    Vec3 gate = whole.grid().centre(whole.cells()[found.gate()]);
    String note =
        String.format(
            Locale.ROOT,
            "gate %s at %s, %.2f mm wide; pour opening at %s",
            feed.gate().isPresent() ? "as marked" : "taken at the narrowest constriction,",
            FeedShapes.mm(gate),
            found.width() * 1e3,
            FeedShapes.mm(mouth.centre()));
    return new CaseShape(
        cavity, part, part, gate, found.width(), mouth, Optional.empty(), List.of(note));
  }

  private static double volume(List<Labelled> solids) {
    return solids.stream().mapToDouble(s -> s.mesh().volume()).sum();
  }

  private static double volume(Box b) {
    return b.size().x() * b.size().y() * b.size().z();
  }
}
