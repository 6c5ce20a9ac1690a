// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.TriangleMesh;
import gelfront.result.StoredRun;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A result, and what each view of it takes; made when it is first asked for, off the threads of
 * window and engine. For one thread at a time.
 */
public final class ResultShown {
  /** Cells that are drawn as blocks at most. */
  private static final int BLOCKS = 110_000;

  private final StoredRun run;
  private final Extent extent;
  private final double latest;
  private final double scale;
  private final double shotScale;
  private final String title;
  private @Nullable CellGrid grid;

  /**
   * @param scale s at the end of the time scale: that of the longer run where two are compared
   * @throws IllegalArgumentException if no cell is in it
   */
  public ResultShown(StoredRun run, double scale) {
    this(run, scale, 0, "");
  }

  /**
   * As above, with words at its head.
   *
   * @param shotScale s at the end of the shot's own time scale, at least
   * @param title which of two it is; empty: there is one alone
   */
  public ResultShown(StoredRun run, double scale, double shotScale, String title) {
    this.shotScale = shotScale;
    this.title = title;
    this.run = run;
    this.extent = Extent.of(run.fields());
    this.latest = LateSlider.of(run.fields()).latest();
    this.scale = Math.max(1e-3, Math.max(scale, latest));
  }

  public StoredRun run() {
    return run;
  }

  /** Which of two it is; empty: there is one alone. */
  public String title() {
    return title;
  }

  public Extent extent() {
    return extent;
  }

  /** s at which its last cell sets. */
  public double latest() {
    return latest;
  }

  /** s at the end of the time scale. */
  public double scale() {
    return scale;
  }

  private CellGrid grid() {
    if (grid == null) {
      grid = CellGrid.of(run.fields(), scale, VolumeTexels.MOST, false, 3);
    }
    return grid;
  }

  /** Whether the shot itself was calculated. */
  public boolean filled() {
    return run.fields().filled();
  }

  /** The shot itself, where it was calculated. */
  public ShotShown shot() {
    return ShotShown.of(run.fields(), shotScale);
  }

  public VolumeTexels texels() {
    return VolumeTexels.of(grid(), scale);
  }

  public CellFaces cells() {
    return CellFaces.of(CellGrid.of(run.fields(), scale, BLOCKS, true, 0), scale);
  }

  /** Part and feed. */
  public SkinMesh surface() {
    return SkinMesh.of(run.surface());
  }

  /** The part alone, fine enough to be coloured. */
  public SkinMesh skin() {
    return SkinMesh.of(run.dents().mesh());
  }

  /** Share of the time scale, one a vertex of the skin. */
  public float[] thickSpots() {
    return ThickSpots.of(run.dents().mesh(), grid(), scale);
  }

  /** Shares of {@link Colours#DEEPEST} times the visible depth, one a vertex of the skin. */
  public float[] dentShares() {
    double end = Colours.DEEPEST * run.findings().visibleDepth();
    float[] out = run.dents().depth().clone();
    for (int v = 0; v < out.length; v++) {
      out[v] = (float) Math.min(1, out[v] / end);
    }
    return out;
  }

  /** mm inwards, one a vertex of the skin. */
  public float[] dentDepths() {
    float[] out = run.dents().depth().clone();
    for (int v = 0; v < out.length; v++) {
      out[v] *= 1e3f;
    }
    return out;
  }

  /** Bodies by pocket number, metres. */
  public Map<Integer, TriangleMesh> pockets() {
    Map<Integer, TriangleMesh> all = new LinkedHashMap<>();
    run.findings().pockets().forEach(p -> all.put(p.number(), Blob.of(run.fields(), p.number())));
    return all;
  }
}
