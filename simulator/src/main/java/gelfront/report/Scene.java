// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.finding.Pocket;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.result.Fields;
import gelfront.result.Fields.Snapshot;
import gelfront.result.StoredRun;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** A run made ready for drawing: mesh thinned, fields dense, scales chosen. */
final class Scene {
  private static final int MOST_TRIANGLES = 60_000;

  private final StoredRun run;
  private final ShownMesh mesh;
  private final Box box;
  private final Axes axes;
  private final Volume volume;
  private final float[] setTime;
  private final float[] late;
  private final float[] fieldSet;
  private final Scale timeScale;
  private final Scale heatScale;

  Scene(StoredRun run) {
    Fields f = run.fields();
    if (f.cells().length == 0) {
      throw new IllegalArgumentException("a run without a single cell of plastisol");
    }
    this.run = run;
    this.mesh = new ShownMesh(Decimate.atMost(run.surface(), MOST_TRIANGLES));
    this.box = run.surface().box();
    this.axes = Axes.of(box);
    this.volume = Volume.of(f.origin(), f.spacing(), new int[] {f.nx(), f.ny(), f.nz()}, f.cells());
    this.fieldSet = finite(f);
    this.setTime = volume.spread(fieldSet);
    this.late = lateness();
    this.timeScale = Scale.exact(0, max(fieldSet), 7);
    this.heatScale = heatScale(f);
  }

  /** Set times, where never replaced by the last moment that is known of. */
  private static float[] finite(Fields f) {
    float last = 0;
    for (Snapshot s : f.snapshots()) {
      last = Math.max(last, (float) s.time());
    }
    for (float t : f.setTime()) {
      last = Float.isInfinite(t) ? last : Math.max(last, t);
    }
    float[] out = f.setTime().clone();
    for (int i = 0; i < out.length; i++) {
      out[i] = Math.min(out[i], last);
    }
    return out;
  }

  /**
   * Seconds that a pocket's cells set after the pocket was cut off. Cells round a pocket carry the
   * same figure, below zero, and those beyond the wall what a place that sets at once has, so that
   * the contour at zero runs smoothly between the cells.
   */
  private float[] lateness() {
    Map<Integer, Double> cutOff = new HashMap<>();
    for (Pocket p : run.findings().pockets()) {
      cutOff.put(p.number(), p.cutOff());
    }
    int[] near = volume.numberHereOrBeside(run.fields().pocket());
    float[] out = new float[near.length];
    float[] atOnce = new float[near.length];
    for (int i = 0; i < out.length; i++) {
      float at = cutOff.getOrDefault(near[i], 1.0).floatValue();
      float after = fieldSet[i] - at;
      boolean inside = run.fields().pocket()[i] != 0;
      out[i] = inside ? Math.max(after, 1e-3f) : Math.min(near[i] == 0 ? -1 : after, -1e-3f);
      atOnce[i] = -Math.max(at, 1e-3f);
    }
    float[] dense = volume.spread(out);
    volume.copyRings(volume.spread(atOnce), dense);
    return dense;
  }

  private static Scale heatScale(Fields f) {
    float low = Float.POSITIVE_INFINITY;
    float high = Float.NEGATIVE_INFINITY;
    for (Snapshot s : f.snapshots()) {
      for (float t : s.temperature()) {
        low = Math.min(low, t);
        high = Math.max(high, t);
      }
    }
    return high >= low ? Scale.exact(low, high, 6) : Scale.exact(0, 1, 5);
  }

  private static float max(float[] values) {
    float m = 0;
    for (float v : values) {
      m = Math.max(m, v);
    }
    return m;
  }

  /** s; from the first place that is filled to the last. */
  Scale fillScale() {
    return Scale.exact(0, max(finiteFill()), 7);
  }

  /** When the front came, dense in {@link #volume}; the last moment where it never did. */
  float[] fillTime() {
    return volume.spread(finiteFill());
  }

  private float[] finiteFill() {
    float[] out = run.fields().reached().clone();
    float last = 0;
    for (float t : out) {
      last = Float.isInfinite(t) ? last : Math.max(last, t);
    }
    for (int i = 0; i < out.length; i++) {
      out[i] = Math.min(out[i], last);
    }
    return out;
  }

  /** Dense in {@link #volume}: above zero where no liquid came. */
  float[] airLeft() {
    float[] air = run.fields().reached().clone();
    for (int i = 0; i < air.length; i++) {
      air[i] = Float.isInfinite(air[i]) ? 1 : -1;
    }
    float[] beyond = volume.spread(air);
    float[] none = beyond.clone();
    Arrays.fill(none, -1);
    volume.copyRings(none, beyond);
    return beyond;
  }

  StoredRun run() {
    return run;
  }

  ShownMesh mesh() {
    return mesh;
  }

  Box box() {
    return box;
  }

  Axes axes() {
    return axes;
  }

  Volume volume() {
    return volume;
  }

  /** Dense in {@link #volume}. */
  float[] setTime() {
    return setTime;
  }

  /** One per cell of the run, s; the last known moment where it never set. */
  float[] finiteSetTime() {
    return fieldSet;
  }

  /** Dense in {@link #volume}; above zero in pockets. */
  float[] late() {
    return late;
  }

  Scale timeScale() {
    return timeScale;
  }

  Scale heatScale() {
    return heatScale;
  }

  /** Dense in {@link #volume}: above zero where it still flows at {@code time}. */
  float[] flowing(double time) {
    float[] out = setTime.clone();
    for (int i = 0; i < out.length; i++) {
      out[i] -= (float) time;
    }
    float[] beyond = new float[out.length];
    Arrays.fill(beyond, -(float) Math.max(time, 1e-3));
    volume.copyRings(beyond, out);
    return out;
  }

  /** Where a lengthwise cut shows most: the deepest pocket, or else what sets last. */
  Vec3 heart() {
    if (!run.findings().pockets().isEmpty()) {
      return run.findings().pockets().get(0).centre();
    }
    int last = 0;
    for (int i = 0; i < fieldSet.length; i++) {
      last = fieldSet[i] > fieldSet[last] ? i : last;
    }
    return run.fields().centre(run.fields().cells()[last]);
  }

  /** The lengthwise cut that shows most of the outline. */
  Cut lengthwise() {
    return new Cut(heart(), axes.through());
  }
}
