// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.finding.Pocket;
import gelfront.mesh.Vec3;
import gelfront.result.Fields;
import gelfront.result.Fields.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** The report's pictures of the part. */
final class Pictures {
  private static final double YAW = 0.26;
  private static final double PITCH = 0.36;
  private static final int MARGIN = 24;

  /** Pixels above and below the part for labels. */
  private static final int LABELS = 96;

  private final Scene scene;

  Pictures(Scene scene) {
    this.scene = scene;
  }

  /**
   * @param png the picture
   * @param view where things are in it
   */
  record Picture(byte[] png, View view) {}

  /** Cut open lengthwise, coloured by set time, with room above and below for labels. */
  Picture cutOpen() {
    return draw(fitted(scene), scene.lengthwise(), setTimes(scene.timeScale()));
  }

  /**
   * The same, to be held against others.
   *
   * @param time that colours stand for
   * @param size pixels a metre, width and height, as of {@link #common}
   */
  Picture cutOpen(Scale time, View size) {
    View own = fitted(scene);
    View view =
        new View(
            own.centre(),
            own.right(),
            own.up(),
            own.toward(),
            size.scale(),
            size.width(),
            size.height());
    return draw(view, scene.lengthwise(), setTimes(time));
  }

  /** Cut open lengthwise, coloured by when the front came; air that is left within white lines. */
  Picture filling() {
    Paint paint =
        new Paint(
            scene.volume(),
            scene.fillTime(),
            scene.airLeft(),
            scene.fillScale(),
            ColourRamp.STANDARD);
    return draw(fitted(scene), scene.lengthwise(), paint);
  }

  /** A scale and a size of picture that all scenes fit in. */
  static View common(List<Scene> scenes) {
    View least = fitted(scenes.get(0));
    int height = 0;
    for (Scene s : scenes) {
      View own = fitted(s);
      least = own.scale() < least.scale() ? own : least;
      height = Math.max(height, own.height());
    }
    return new View(
        least.centre(),
        least.right(),
        least.up(),
        least.toward(),
        least.scale(),
        least.width(),
        height);
  }

  private static View fitted(Scene scene) {
    return View.turned(scene.axes(), YAW, PITCH)
        .fitted(scene.mesh().mesh(), 1280, 600, MARGIN, LABELS);
  }

  private Paint setTimes(Scale time) {
    return new Paint(scene.volume(), scene.setTime(), scene.late(), time, ColourRamp.STANDARD);
  }

  private Picture draw(View view, Cut cut, Paint paint) {
    int[] rgb = Renderer.draw(scene.mesh(), view, cut, paint);
    return new Picture(Png.encode(rgb, view.width(), view.height()), view);
  }

  /** Cut across at the pocket's centre, seen from the sprue's or the other side at a slant. */
  Picture across(Pocket pocket) {
    View view =
        View.turned(scene.axes(), 0.92, 0.38)
            .round(pocket.centre(), 1.25 * sectionRadius(pocket.centre()), 480, 380);
    return draw(view, new Cut(pocket.centre(), scene.axes().along()), setTimes(scene.timeScale()));
  }

  /** How far the part's section there reaches from the place, metres. */
  private double sectionRadius(Vec3 place) {
    Fields f = scene.run().fields();
    Vec3 along = scene.axes().along();
    double r = 2 * f.spacing();
    for (int c : f.cells()) {
      Vec3 d = f.centre(c).minus(place);
      if (Math.abs(d.dot(along)) < f.spacing()) {
        r = Math.max(r, d.length());
      }
    }
    return r;
  }

  /**
   * @param time s
   */
  record Moment(double time, Picture picture) {}

  /** The lengthwise cut coloured by temperature at up to four moments, early to late. */
  List<Moment> moments() {
    List<Snapshot> all = scene.run().fields().snapshots();
    View v = View.turned(scene.axes(), YAW, PITCH).fitted(scene.mesh().mesh(), 560, 260, 10, 0);
    List<Moment> out = new ArrayList<>();
    for (int i : chosen(all)) {
      Snapshot s = all.get(i);
      Paint paint =
          new Paint(
              scene.volume(),
              scene.volume().spread(s.temperature()),
              scene.flowing(s.time()),
              scene.heatScale(),
              ColourRamp.STANDARD);
      out.add(new Moment(s.time(), draw(v, scene.lengthwise(), paint)));
    }
    return out;
  }

  /** Snapshots nearest to four moments that run from the gate's setting to the part's, by ratio. */
  private SortedSet<Integer> chosen(List<Snapshot> all) {
    SortedSet<Integer> out = new TreeSet<>();
    if (all.isEmpty()) {
      return out;
    }
    double end = Math.min(scene.run().findings().partSets(), all.get(all.size() - 1).time());
    double start = Math.min(scene.run().findings().gateSets(), end);
    start = Math.max(start, 0.02 * end);
    for (int i = 0; i < 4; i++) {
      double want = start * Math.pow(0.9 * end / start, i / 3.0);
      out.add(nearest(all, want));
    }
    return out;
  }

  private static int nearest(List<Snapshot> all, double time) {
    int best = 0;
    for (int i = 1; i < all.size(); i++) {
      if (Math.abs(all.get(i).time() - time) < Math.abs(all.get(best).time() - time)) {
        best = i;
      }
    }
    return best;
  }
}
