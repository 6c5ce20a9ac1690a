// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import com.jme3.asset.AssetManager;
import com.jme3.material.Material;
import com.jme3.renderer.queue.RenderQueue.Bucket;
import com.jme3.scene.Geometry;
import com.jme3.scene.Mesh;
import com.jme3.scene.Node;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.viewer.model.Colours;
import gelfront.viewer.model.Extent;
import gelfront.viewer.model.GateDrag;
import gelfront.viewer.model.Look;
import gelfront.viewer.model.MouldShown;
import gelfront.viewer.model.SetupShown;
import gelfront.viewer.model.SkinMesh;
import java.util.List;

/** A part with gate, runner, sprue and block before it is calculated; faults drawn on it. */
final class SetupExhibit implements Exhibit {
  private final SetupShown shown;
  private final Paints paints;
  private final Axes axes;
  private final Node node = new Node("set-up");
  private final int edge;
  private boolean ready;

  /**
   * @param edge 0xRRGGBB of the bar beside the words
   */
  SetupExhibit(SetupShown shown, AssetManager assets, int edge) {
    this.shown = shown;
    this.paints = new Paints(assets);
    this.edge = edge;
    this.axes = new Axes(shown.extent(), paints.plain(0xFFFFFF));
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
    if (ready) {
      return;
    }
    ready = true;
    add("part", Meshes.skin(shown.part()), paints.skin(Colours.PART));
    shown.feed().ifPresent(f -> add("feed", Meshes.skin(f), paints.skin(Colours.FEED)));
    shown.gates().forEach(this::ring);
    shown.channels().forEach(this::channel);
    shown.block().ifPresent(this::block);
    lines("open", shown.faults().open(), Colours.OPEN_EDGE);
    lines("flipped", shown.faults().flipped(), Colours.FLIPPED);
    node.attachChild(axes.lines());
  }

  private void ring(SetupShown.Gate g) {
    double r = 1e-3 * GateDrag.RING * g.size();
    Vec3 at = g.at().times(1e-3);
    Vec3 half = g.direction().times(0.12 * r);
    var disc = Solids.cylinder(at.minus(half), at.plus(half), r, r, 48);
    add("gate", Meshes.skin(SkinMesh.of(disc)), paints.skin(Colours.GATE));
  }

  private void block(MouldShown b) {
    Geometry g = add("block", Meshes.skin(b.skin()), paints.clear(Colours.BLOCK, 0.10f));
    g.setQueueBucket(Bucket.Transparent);
    lines("block edges", b.edges(), Colours.BLOCK);
  }

  private void channel(SkinMesh tube) {
    Geometry g = add("channel", Meshes.skin(tube), paints.clear(Colours.COOLANT, 0.45f));
    g.setQueueBucket(Bucket.Transparent);
  }

  private void lines(String name, float[] ends, int rgb) {
    if (ends.length > 0) {
      Material m = paints.plain(rgb);
      m.getAdditionalRenderState().setLineWidth(2);
      add(name, Meshes.lines(ends), m);
    }
  }

  private Geometry add(String name, Mesh mesh, Material m) {
    Geometry g = new Geometry(name, mesh);
    g.setMaterial(m);
    node.attachChild(g);
    return g;
  }

  @Override
  public void apply(Look look, Labels labels) {
    labels.clear();
    axes.show(look.units(), labels);
    List<SetupShown.Gate> gates = shown.gates();
    if (!shown.says().isEmpty()) {
      Vec3 at = gates.isEmpty() ? shown.extent().middle() : gates.get(0).at();
      labels.onPlate(shown.says(), at, edge);
    }
    for (int n = 1; n < gates.size(); n++) {
      labels.onPlate(List.of("gate " + (n + 1)), gates.get(n).at(), Colours.GATE);
    }
  }
}
