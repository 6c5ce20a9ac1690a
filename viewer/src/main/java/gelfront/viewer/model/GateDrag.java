package gelfront.viewer.model;

import gelfront.mesh.Vec3;
import gelfront.setup.Change;
import gelfront.setup.FeedSystem;
import java.util.List;
import java.util.Optional;

/**
 * A drag that moves the gate over the part, or its rim.
 *
 * @param gate as it was when it was taken hold of
 * @param rim whether its size is dragged
 */
public record GateDrag(FeedSystem.Gate gate, boolean rim) {
  /** Of the gate's width: radius of the ring that marks it. */
  public static final double RING = 0.75;

  /** Shares of the gate's width from its middle: inside, it is moved; beyond, sized. */
  private static final double INSIDE = 0.45;

  private static final double REACH = 1.1;

  /** Pixels within which a small gate is still taken hold of. */
  private static final double FINGER = 9;

  /** A direction that is nearly along an axis is meant to be: cosine of 12 degrees. */
  private static final double NEARLY = Math.cos(Math.toRadians(12));

  private static final double LEAST = 0.5e-3;
  private static final double MOST = 20e-3;

  /** What a press there takes hold of; nothing: the gate is elsewhere. */
  public static Optional<GateDrag> at(
      FeedSystem.Gate gate, Picker part, Ray ray, double mmPerPixel) {
    Optional<Picker.Hit> hit = part.first(ray);
    if (hit.isEmpty()) {
      return Optional.empty();
    }
    double off = hit.get().place().distance(gate.at().times(1e3));
    double width = 1e3 * gate.section().width();
    double inside = Math.max(INSIDE * width, FINGER * mmPerPixel);
    double reach = Math.max(REACH * width, inside + FINGER * mmPerPixel);
    return off > reach ? Optional.empty() : Optional.of(new GateDrag(gate, off > inside));
  }

  /** What the case says where the mouse is now; empty where it is off the part. */
  public List<Change> to(Ray ray, Picker part) {
    if (!rim) {
      return part.first(ray).map(GateDrag::moved).orElse(List.of());
    }
    Vec3 middle = gate.at().times(1e3);
    double d = ray.to(new Plane(middle, gate.direction()));
    if (Double.isNaN(d) || d <= 0) {
      return List.of();
    }
    double width = 1e-3 * ray.at(d).distance(middle) / RING;
    double tenths = Math.round(Math.max(LEAST, Math.min(MOST, width)) * 1e4) * 1e-4;
    return List.of(Change.mm("gate.size", tenths));
  }

  /** A gate on that place; the sprue goes with it. */
  public static List<Change> moved(Picker.Hit hit) {
    return List.of(
        new Change.Set("gate.at", Change.place(rounded(hit.place()))),
        new Change.Set("gate.direction", Change.direction(squared(hit.outward()))),
        new Change.Remove("sprue.at"),
        new Change.Remove("sprue.direction"));
  }

  /** Metres, to a hundredth of a millimetre. */
  private static Vec3 rounded(Vec3 mm) {
    return new Vec3(rounded(mm.x()), rounded(mm.y()), rounded(mm.z()));
  }

  private static double rounded(double mm) {
    return Math.round(100 * mm) * 1e-5;
  }

  private static Vec3 squared(Vec3 d) {
    for (Vec3 axis : List.of(new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1))) {
      double along = d.dot(axis);
      if (Math.abs(along) > NEARLY) {
        return axis.times(Math.signum(along));
      }
    }
    return d;
  }
}
