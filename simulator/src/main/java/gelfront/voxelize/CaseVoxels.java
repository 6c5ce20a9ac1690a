package gelfront.voxelize;

import gelfront.base.Progress;
import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
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
 * A case in voxels.
 *
 * @param model cavity and mould
 * @param surface part and feed system, closed and outward-wound, for pictures
 * @param gate middle of the gate, metres
 * @param gateWidth its narrowest width, metres
 * @param mouth the sprue's open end
 * @param report how well the voxels show the shape
 */
public record CaseVoxels(
    VoxelModel model,
    TriangleMesh surface,
    Vec3 gate,
    double gateWidth,
    Mouth mouth,
    VoxelReport report) {

  /**
   * @param part closed, outward-wound, metres; with the feed system in it where the case says so
   * @throws VoxelException if gate, mouth or resolution can't be had
   */
  public static CaseVoxels of(Case c, TriangleMesh part, Progress progress) {
    return c.feed() instanceof FeedSystem.Declared declared
        ? declared(c, declared, part, progress)
        : inMesh(c, (FeedSystem.InMesh) c.feed(), part, progress);
  }

  private static CaseVoxels declared(
      Case c, FeedSystem.Declared feed, TriangleMesh part, Progress progress) {
    FeedShapes shapes = FeedShapes.of(feed, part);
    List<Labelled> solids = new ArrayList<>();
    solids.add(new Labelled(Cavity.Region.PART, part));
    solids.addAll(shapes.solids());
    double width = narrowest(feed);
    TriangleMesh surface = solids.stream().map(Labelled::mesh).reduce(TriangleMesh::plus).get();
    double dx = Resolution.voxel(c.numerics(), width, volume(solids), volume(surface.box()));
    Filing filing = new Filing(c.growths(), solids);
    Cavity cavity = CavityBuilder.build(solids, dx, Optional.of(shapes.mouth()), filing, progress);
    double opening = feed.gate().section().area();
    return finish(
        c, cavity, surface, shapes.gateMiddle(), width, shapes.mouth(), part, opening, List.of());
  }

  private static double narrowest(FeedSystem.Declared feed) {
    double w = Math.min(feed.gate().section().narrowest(), feed.sprue().innerDiameter());
    w = Math.min(w, feed.sprue().mouthDiameter());
    return feed.runner().isPresent() ? Math.min(w, feed.runner().get().section().narrowest()) : w;
  }

  private static CaseVoxels inMesh(
      Case c, FeedSystem.InMesh feed, TriangleMesh part, Progress progress) {
    Mouth mouth = MouthFinder.find(part, feed.mouth());
    List<Labelled> solids = List.of(new Labelled(Cavity.Region.PART, part));
    double first = Math.max(0.5e-3, Math.cbrt(volume(part.box()) / 4e6));
    FeedFinder.Found rough =
        new FeedFinder(CavityBuilder.build(solids, first, Optional.of(mouth), progress))
            .find(feed.gate());
    double dx = Resolution.voxel(c.numerics(), rough.width(), volume(solids), volume(part.box()));
    Filing filing = new Filing(c.growths(), solids);
    Cavity whole = CavityBuilder.build(solids, dx, Optional.of(mouth), filing, progress);
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
    return finish(c, cavity, part, gate, found.width(), mouth, part, Double.NaN, List.of(note));
  }

  private static double volume(List<Labelled> solids) {
    return solids.stream().mapToDouble(s -> s.mesh().volume()).sum();
  }

  private static double volume(Box b) {
    return b.size().x() * b.size().y() * b.size().z();
  }

  private static CaseVoxels finish(
      Case c,
      Cavity cavity,
      TriangleMesh surface,
      Vec3 gate,
      double width,
      Mouth mouth,
      TriangleMesh part,
      double opening,
      List<String> notes) {
    if (volumeOf(cavity, true) == 0) {
      throw new VoxelException("no voxel lies inside the part: is its unit right?");
    }
    VoxelModel model = MouldBuilder.build(cavity, c.block(), blockBox(c, surface.box(), mouth));
    double dx = cavity.grid().spacing();
    boolean apart = !Double.isNaN(opening);
    VoxelReport report =
        new VoxelReport(
            dx,
            cavity.count(),
            model.mould().count(),
            volumeOf(cavity, apart) / part.volume() - 1,
            (areaOf(cavity, apart) + (apart ? opening : 0)) / part.area() - 1,
            width,
            width / dx,
            notes);
    return new CaseVoxels(model, surface, gate, width, mouth, report);
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
        sum += walls.cosine()[w];
      }
    }
    return sum * cavity.grid().spacing() * cavity.grid().spacing();
  }

  /** The stated outer box, or walls all round; flush with the mouth on the mouth's side. */
  private static Box blockBox(Case c, Box cavity, Mouth mouth) {
    Box b = c.block().outer().orElse(cavity.grown(c.block().wall()));
    double[] lo = {b.min().x(), b.min().y(), b.min().z()};
    double[] hi = {b.max().x(), b.max().y(), b.max().z()};
    double[] d = {mouth.direction().x(), mouth.direction().y(), mouth.direction().z()};
    double[] at = {mouth.centre().x(), mouth.centre().y(), mouth.centre().z()};
    int a =
        Math.abs(d[0]) >= Math.max(Math.abs(d[1]), Math.abs(d[2]))
            ? 0
            : Math.abs(d[1]) >= Math.abs(d[2]) ? 1 : 2;
    if (d[a] > 0) {
      hi[a] = at[a];
    } else {
      lo[a] = at[a];
    }
    Box box = new Box(new Vec3(lo[0], lo[1], lo[2]), new Vec3(hi[0], hi[1], hi[2]));
    double slack = 0.5e-3;
    if (!box.grown(slack).contains(cavity.min()) || !box.grown(slack).contains(cavity.max())) {
      throw new VoxelException(
          "the cavity sticks out of the block: cavity "
              + FeedShapes.mm(cavity.min())
              + " to "
              + FeedShapes.mm(cavity.max())
              + ", block "
              + FeedShapes.mm(box.min())
              + " to "
              + FeedShapes.mm(box.max()));
    }
    return box;
  }
}
