// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.setup.Change;
import gelfront.setup.FeedSystem;
import gelfront.setup.LoadedCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A drag that moves a gate over the part, or its rim.
 *
 * @param gate as it was when it was taken hold of
 * @param number of it, as {@link Gates} counts
 * @param rim whether its size is dragged
 */
public record GateDrag(FeedSystem.Gate gate, int number, boolean rim) {
  /** Of the gate's width: radius of the ring that marks it. */
  public static final double RING = 0.75;

  /** Shares of the gate's width from its middle: inside, it is moved; beyond, sized. */
  private static final double INSIDE = 0.45;

  private static final double REACH = 1.1;

  /** Pixels within which a small gate is still taken hold of. */
  private static final double FINGER = 9;

  private static final double LEAST = 0.5e-3;
  private static final double MOST = 20e-3;

  /** What a press there takes hold of, the nearest of several; nothing: no gate is there. */
  public static Optional<GateDrag> at(
      List<FeedSystem.Gate> gates, Picker part, Ray ray, double mmPerPixel) {
    Optional<Picker.Hit> hit = part.first(ray);
    Optional<GateDrag> found = Optional.empty();
    double nearest = Double.POSITIVE_INFINITY;
    for (int n = 0; n < gates.size() && hit.isPresent(); n++) {
      FeedSystem.Gate gate = gates.get(n);
      double off = hit.get().place().distance(gate.at().times(1e3));
      double width = 1e3 * gate.section().width();
      double inside = Math.max(INSIDE * width, FINGER * mmPerPixel);
      double reach = Math.max(REACH * width, inside + FINGER * mmPerPixel);
      if (off <= reach && off < nearest) {
        nearest = off;
        found = Optional.of(new GateDrag(gate, n, off > inside));
      }
    }
    return found;
  }

  /**
   * What the case says where the mouse is now; empty where it is off the part.
   *
   * @param mesh of the part, metres
   */
  public List<Change> to(Ray ray, Picker part, LoadedCase loaded, TriangleMesh mesh) {
    return rim
        ? sized(ray)
        : part.first(ray).map(h -> Gates.moved(loaded, mesh, number, h)).orElse(List.of());
  }

  private List<Change> sized(Ray ray) {
    Vec3 middle = gate.at().times(1e3);
    double d = ray.to(new Plane(middle, gate.direction()));
    if (Double.isNaN(d) || d <= 0) {
      return List.of();
    }
    double width = 1e-3 * ray.at(d).distance(middle) / RING;
    double tenths = Math.round(Math.max(LEAST, Math.min(MOST, width)) * 1e4) * 1e-4;
    return List.of(Change.mm(Gates.table(number) + ".size", tenths));
  }

  /** The first gate on that place; the sprue goes with it. */
  static List<Change> moved(Picker.Hit hit) {
    List<Change> all = new ArrayList<>(placed("gate", hit));
    all.add(new Change.Remove("sprue.at"));
    all.add(new Change.Remove("sprue.direction"));
    return all;
  }

  static List<Change> placed(String table, Picker.Hit hit) {
    return List.of(
        new Change.Set(table + ".at", Change.place(place(hit))),
        new Change.Set(table + ".direction", Change.direction(direction(hit))));
  }

  /** Metres. */
  static Vec3 place(Picker.Hit hit) {
    return rounded(hit.place());
  }

  /**
   * Away from the part, along the axis that is nearest to its normal: a sprue that leaves the block
   * askew ends at none of its faces. Others can be stated in the case.
   */
  static Vec3 direction(Picker.Hit hit) {
    return squared(hit.outward());
  }

  /** Metres, to a hundredth of a millimetre. */
  static Vec3 rounded(Vec3 mm) {
    return new Vec3(rounded(mm.x()), rounded(mm.y()), rounded(mm.z()));
  }

  private static double rounded(double mm) {
    return Math.round(100 * mm) * 1e-5;
  }

  private static Vec3 squared(Vec3 d) {
    double x = Math.abs(d.x());
    double y = Math.abs(d.y());
    double z = Math.abs(d.z());
    if (x >= y && x >= z) {
      return new Vec3(Math.signum(d.x()), 0, 0);
    }
    return y >= z ? new Vec3(0, Math.signum(d.y()), 0) : new Vec3(0, 0, Math.signum(d.z()));
  }
}
