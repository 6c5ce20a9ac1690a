// SPDX-License-Identifier: Apache-2.0
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
 * system, copies, filings and numerics, and on nothing else.
 *
 * @param cavity cells of part and feed
 * @param surface part and feed system, closed and outward-wound
 * @param part the part and its copies alone, or with the feed system where that is in the mesh
 * @param cavities which of them a cell belongs to
 * @param gates of each cavity, in the cavities' order
 * @param width narrowest of the feed system, metres
 * @param mouth the sprue's open end
 * @param atBlock the sprue's end on the block's face: the same, or the foot of a tube
 * @param opening area of the parts' surface that gates take, m2; absent: the feed system is in the
 *     part's mesh
 * @param notes on what was found, in words
 */
record CaseShape(
    Cavity cavity,
    TriangleMesh surface,
    TriangleMesh part,
    Cavities cavities,
    List<GatePlace> gates,
    double width,
    Mouth mouth,
    Mouth atBlock,
    Optional<Double> opening,
    List<String> notes) {

  /** Of a unit vector across an axis, at most. */
  private static final double ALONG = 1e-9;

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
    List<TriangleMesh> parts = new ArrayList<>();
    parts.add(kept.mesh());
    c.copies().forEach(p -> parts.add(p.of(kept.mesh())));
    FeedShapes shapes = FeedShapes.of(feed, parts, c.copies());
    List<Labelled> solids = new ArrayList<>();
    parts.forEach(p -> solids.add(new Labelled(Cavity.Region.PART, p)));
    solids.addAll(shapes.solids());
    TriangleMesh surface = solids.stream().map(Labelled::mesh).reduce(TriangleMesh::plus).get();
    double narrowest = narrowest(feed);
    Resolution fine =
        Resolution.of(
            c.numerics(),
            narrowest,
            volume(solids),
            volume(surface.box()),
            width(parts.get(0), shapes.mouth()));
    Filing filing = new Filing(c.growths(), solids);
    Optional<Mouth> mouth = Optional.of(shapes.mouth());
    Closer closer = fine.closer(shapes.channels());
    Cavity cavity =
        CavityBuilder.build(solids, kept, fine.voxel(), closer, mouth, filing, progress);
    return new CaseShape(
        cavity,
        surface,
        parts.stream().reduce(TriangleMesh::plus).get(),
        Cavities.within(cavity, parts, progress),
        shapes.gates(),
        narrowest,
        shapes.mouth(),
        shapes.atBlock(),
        Optional.of(parts.size() * feed.opening()),
        List.of());
  }

  private static double narrowest(FeedSystem.Declared feed) {
    double w = Math.min(feed.narrowestGate(), feed.sprue().narrowest());
    return Math.min(w, feed.narrowestRunner());
  }

  private static CaseShape inMesh(
      Case c, FeedSystem.InMesh feed, PartCrossings kept, Progress progress) {
    TriangleMesh part = kept.mesh();
    Mouth mouth = MouthFinder.find(part, feed.mouth());
    Optional<Mouth> open = Optional.of(mouth);
    List<Labelled> solids = List.of(new Labelled(Cavity.Region.PART, part));
    double first = Math.max(0.5e-3, Math.cbrt(volume(part.box()) / 4e6));
    FeedFinder.Found rough =
        new FeedFinder(
                CavityBuilder.build(solids, kept, first, Closer.NONE, open, Filing.NONE, progress))
            .find(feed.gates());
    Resolution fine =
        Resolution.of(
            c.numerics(), rough.width(), volume(solids), volume(part.box()), width(part, mouth));
    Filing filing = new Filing(c.growths(), solids);
    Closer closer = fine.closer(rough.gates().stream().map(CaseShape::channel).toList());
    Cavity whole = CavityBuilder.build(solids, kept, fine.voxel(), closer, open, filing, progress);
    FeedFinder.Found found = new FeedFinder(whole).find(feed.gates());
    Cavity cavity = whole.with(found.region());
    List<Vec3> middles = found.gates().stream().map(GatePlace::middle).toList();
    return new CaseShape(
        cavity,
        part,
        part,
        Cavities.behind(cavity, middles),
        found.gates(),
        found.width(),
        mouth,
        mouth,
        Optional.empty(),
        notes(found, !feed.gates().isEmpty(), mouth));
  }

  /** A land about as long as it is wide, and as much again. */
  private static Resolution.Channel channel(GatePlace gate) {
    Box middle = new Box(gate.middle(), gate.middle());
    return new Resolution.Channel(middle.grown(gate.width()), gate.width());
  }

  private static List<String> notes(FeedFinder.Found found, boolean marked, Mouth mouth) {
    List<String> notes = new ArrayList<>();
    found.gates().forEach(g -> notes.add(note(g, marked, mouth)));
    for (Vec3 p : found.unmarked()) {
      notes.add(
          "the body round "
              + FeedShapes.mm(p)
              + " is as large as a part, but was taken for feed system: if it is another cavity, mark"
              + " each gate");
    }
    return notes;
  }

  private static String note(GatePlace gate, boolean marked, Mouth mouth) {
    return String.format(
        Locale.ROOT,
        "gate %s at %s, %.2f mm wide; pour opening at %s",
        marked ? "as marked" : "taken at the narrowest constriction,",
        FeedShapes.mm(gate.middle()),
        gate.width() * 1e3,
        FeedShapes.mm(mouth.centre()));
  }

  /** Least width across the mouth's axis, metres. */
  private static double width(TriangleMesh part, Mouth mouth) {
    Vec3 size = part.box().size();
    Vec3 out = mouth.direction();
    double x = Math.abs(out.x()) < ALONG ? size.x() : Double.POSITIVE_INFINITY;
    double y = Math.abs(out.y()) < ALONG ? size.y() : Double.POSITIVE_INFINITY;
    double z = Math.abs(out.z()) < ALONG ? size.z() : Double.POSITIVE_INFINITY;
    return Math.min(x, Math.min(y, z));
  }

  private static double volume(List<Labelled> solids) {
    return solids.stream().mapToDouble(s -> s.mesh().volume()).sum();
  }

  private static double volume(Box b) {
    return b.size().x() * b.size().y() * b.size().z();
  }
}
