// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import com.jme3.asset.AssetManager;
import com.jme3.material.Material;
import com.jme3.math.Vector4f;
import com.jme3.renderer.queue.RenderQueue.Bucket;
import com.jme3.scene.Geometry;
import com.jme3.scene.Mesh;
import com.jme3.scene.Node;
import com.jme3.scene.Spatial.CullHint;
import com.jme3.texture.Texture;
import gelfront.finding.Filled;
import gelfront.finding.Pocket;
import gelfront.mesh.Vec3;
import gelfront.viewer.model.CellFaces;
import gelfront.viewer.model.Colours;
import gelfront.viewer.model.Extent;
import gelfront.viewer.model.Look;
import gelfront.viewer.model.Mode;
import gelfront.viewer.model.ResultShown;
import gelfront.viewer.model.ShotShown;
import gelfront.viewer.model.SkinMesh;
import gelfront.viewer.model.VolumeTexels;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jspecify.annotations.Nullable;

/** A result in all its views. Made once a view; sliders and planes only change numbers. */
final class ResultExhibit implements Exhibit {
  private final ResultShown shown;
  private final Paints paints;
  private final Axes axes;
  private final Node node = new Node("result");
  private final Node skin = new Node("skin");
  private final Node outline = new Node("outline");
  private final Node blocks = new Node("cells");
  private final Node spots = new Node("thick spots");
  private final Node pockets = new Node("pockets");
  private final Node dents = new Node("dents");
  private final Node cut = new Node("cut");
  private final Node shot = new Node("shot");
  private final Node shotCut = new Node("shot cut");
  private final Set<Mode> begun = EnumSet.noneOf(Mode.class);

  /** Views that can be seen. */
  private final Set<Mode> ready = ConcurrentHashMap.newKeySet();

  /** What was made and is to be put into the scene on the engine's thread. */
  private final Queue<Runnable> pending = new ConcurrentLinkedQueue<>();

  private final Texture times = Paints.palette(Colours.times());
  private final List<Geometry> outer = new ArrayList<>();
  private final List<Geometry> inner = new ArrayList<>();

  // made by prepare, before anything is shown
  @SuppressWarnings("NullAway.Init")
  private Paints.Filling filling;

  @SuppressWarnings("NullAway.Init")
  private Material skinPaint;

  @SuppressWarnings("NullAway.Init")
  private Material blockPaint;

  @SuppressWarnings("NullAway.Init")
  private Material dentPaint;

  @SuppressWarnings("NullAway.Init")
  private Material shotPaint;

  @SuppressWarnings("NullAway.Init")
  private CutFace cap;

  @SuppressWarnings("NullAway.Init")
  private CutFace shotCap;

  private @Nullable SkinMesh fine;
  private double shotEnd = 1;
  private final List<Material> cutOpen = new CopyOnWriteArrayList<>();

  ResultExhibit(ResultShown shown, AssetManager assets) {
    this.shown = shown;
    this.paints = new Paints(assets);
    this.axes = new Axes(shown.extent(), paints.plain(0xFFFFFF));
    for (Node n : List.of(skin, outline, blocks, spots, pockets, dents, cut, shot, shotCut)) {
      n.setCullHint(CullHint.Always);
    }
  }

  @Override
  public Node node() {
    return node;
  }

  @Override
  public Extent extent() {
    return shown.extent();
  }

  @Override
  public void prepare(Look look) {
    Mode mode = mode(look);
    if (!begun.add(mode)) {
      return;
    }
    if (cap == null) {
      frame();
    }
    switch (mode) {
      case CELLS -> cells();
      case SKIN -> spots();
      case POCKETS -> bodies();
      case DENTS -> dents();
      case FILL -> shot();
      default -> {}
    }
    ready.add(mode);
  }

  private void put(Node parent, Geometry g) {
    pending.add(() -> parent.attachChild(g));
  }

  /** What all views share: outline and cut face. */
  private void frame() {
    filling = new Paints.Filling(shown.texels(), times, Colours.LIQUID);
    cap = new CutFace(paints, filling, shown.extent());
    put(cut, cap.geometry());
    Mesh surface = Meshes.skin(shown.surface());
    skinPaint = openable(filling.into(paints.skin(Colours.PART)));
    put(skin, made("surface", surface, skinPaint));
    Geometry glass = made("outline", surface, paints.glass());
    glass.setQueueBucket(Bucket.Transparent);
    put(outline, glass);
  }

  private void cells() {
    CellFaces faces = shown.cells();
    blockPaint = openable(paints.cells(times));
    for (int b = 0; b < CellFaces.BINS; b++) {
      outer.add(bin(faces.outer(b)));
      inner.add(bin(faces.inner(b)));
    }
  }

  private Geometry bin(CellFaces.Bin bin) {
    Geometry g = made("cells", Meshes.cells(bin), blockPaint);
    g.setCullHint(CullHint.Always);
    if (bin.count() > 0) {
      put(blocks, g);
    }
    return g;
  }

  private SkinMesh fine() {
    if (fine == null) {
      fine = shown.skin();
    }
    return fine;
  }

  private void spots() {
    float[] share = fine().corners(shown.thickSpots());
    Mesh mesh = Meshes.skin(fine(), share, new float[share.length]);
    put(spots, made("thick spots", mesh, openable(filling.into(paints.skin(Colours.PART, times)))));
  }

  private void dents() {
    float[] share = fine().corners(shown.dentShares());
    float[] deep = fine().corners(shown.dentDepths());
    dentPaint = openable(paints.skin(Colours.PART, Paints.palette(Colours.dents())));
    put(dents, made("dents", Meshes.skin(fine(), share, deep), dentPaint));
  }

  private void shot() {
    ShotShown s = shown.shot();
    VolumeTexels v = VolumeTexels.of(s.grid(), s.scale());
    Paints.Filling air = new Paints.Filling(v, times, Colours.AIR);
    shotCap = new CutFace(paints, air, shown.extent());
    put(shotCut, shotCap.geometry());
    float[] share = fine().corners(s.onSkin(shown.run().dents().mesh()));
    shotPaint = openable(air.into(paints.skin(Colours.AIR, times)));
    put(shot, made("shot", Meshes.skin(fine(), share, new float[share.length]), shotPaint));
    shotEnd = s.scale();
  }

  private void bodies() {
    shown
        .pockets()
        .forEach(
            (number, mesh) -> {
              if (mesh.triangleCount() > 0) {
                Mesh body = Meshes.skin(SkinMesh.of(mesh));
                Material m = openable(paints.skin(Colours.pocket(number)));
                put(pockets, made("pocket " + number, body, m));
              }
            });
  }

  private Material openable(Material m) {
    cutOpen.add(m);
    return m;
  }

  private static Geometry made(String name, Mesh mesh, Material m) {
    Geometry g = new Geometry(name, mesh);
    g.setMaterial(m);
    return g;
  }

  @Override
  public void apply(Look look, Labels labels) {
    Mode mode = mode(look);
    if (!ready.contains(mode)) {
      return;
    }
    attach();
    Vector4f plane = Meshes.vector(look.plane());
    cutOpen.forEach(m -> m.setVector4("Plane", plane));
    see(skin, mode == Mode.OPEN);
    see(outline, mode != Mode.OPEN);
    see(blocks, mode == Mode.CELLS);
    see(spots, mode == Mode.SKIN);
    see(pockets, mode == Mode.POCKETS);
    see(dents, mode == Mode.DENTS);
    boolean open = look.plane().isPresent();
    see(cut, open && mode.showsTimes() && mode != Mode.FILL);
    see(shot, mode == Mode.FILL);
    see(shotCut, open && mode == Mode.FILL);
    look.plane().ifPresent(cap::place);
    float front = mode == Mode.OPEN ? share(look.time()) : -1;
    cap.time(front);
    cap.endsAtASkin(mode == Mode.OPEN);
    skinPaint.setFloat("Time", front);
    cap.from(mode == Mode.CELLS ? look.from() / shown.scale() : -1);
    if (mode == Mode.FILL) {
      fillTo(look);
    }
    if (mode == Mode.CELLS) {
      hideBefore((float) (look.from() / shown.scale()));
    }
    if (mode == Mode.DENTS) {
      dentPaint.setFloat("Deeper", (float) look.exaggeration());
    }
    label(look, labels);
  }

  /** What never comes is air at the end, too. */
  private void fillTo(Look look) {
    double at = Double.isNaN(look.shot()) ? 1 : look.shot() / shotEnd;
    double share = Math.min(at, ShotShown.never());
    look.plane().ifPresent(shotCap::place);
    shotCap.time(share);
    shotPaint.setFloat("Time", (float) share);
  }

  private Mode mode(Look look) {
    boolean can = look.mode() == Mode.FILL ? shown.filled() : look.mode().ofAResult();
    return can ? look.mode() : Mode.OPEN;
  }

  private void attach() {
    for (Runnable r = pending.poll(); r != null; r = pending.poll()) {
      r.run();
    }
    if (node.getQuantity() == 0) {
      for (Node n : List.of(skin, outline, blocks, spots, pockets, dents, cut, shot, shotCut)) {
        node.attachChild(n);
      }
      node.attachChild(axes.lines());
    }
  }

  private static void see(Node n, boolean seen) {
    n.setCullHint(seen ? CullHint.Dynamic : CullHint.Always);
  }

  private float share(double time) {
    return Double.isNaN(time) ? -1 : (float) (time / shown.scale());
  }

  private void hideBefore(float from) {
    blockPaint.setFloat("From", from);
    int bin = CellFaces.bin(from);
    for (int b = 0; b < CellFaces.BINS; b++) {
      outer.get(b).setCullHint(b >= bin ? CullHint.Dynamic : CullHint.Always);
      inner.get(b).setCullHint(b == bin && from > 0 ? CullHint.Dynamic : CullHint.Always);
    }
  }

  private void label(Look look, Labels labels) {
    labels.clear();
    axes.show(look.units(), labels);
    if (!shown.title().isEmpty()) {
      labels.title(shown.title());
    }
    if (mode(look) == Mode.FILL) {
      shown.run().findings().filled().air().forEach(a -> air(a, look, labels));
    } else {
      shown.run().findings().pockets().forEach(p -> pocket(p, look, labels));
    }
    Optional<Vec3> mark = look.mark();
    mark.ifPresent(m -> labels.onPlate(List.of("here"), m, Colours.MARK));
  }

  private void pocket(Pocket p, Look look, Labels labels) {
    String number = Integer.toString(p.number());
    String words = look.pocket() == p.number() ? "Pocket " + number : number;
    mark(words, p.centre().times(1e3), Colours.pocket(p.number()), look, labels);
  }

  private void air(Filled.TrappedAir a, Look look, Labels labels) {
    String letter = a.letter();
    String words = look.pocket() == -a.number() ? "Air " + letter : letter;
    mark(words, a.place().times(1e3), Colours.AIR, look, labels);
  }

  /** Not where much of the part between has been cut away. */
  private void mark(String words, Vec3 at, int rgb, Look look, Labels labels) {
    double off = -0.25 * shown.extent().radius();
    if (look.plane().map(c -> c.above(at) > off).orElse(true)) {
      labels.onPlate(List.of(words), at, rgb);
    }
  }
}
