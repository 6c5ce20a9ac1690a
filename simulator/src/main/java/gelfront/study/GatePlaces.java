// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Thickness;
import gelfront.setup.Limits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Where a gate may go: at the thickest places, as far as possible on top. */
final class GatePlaces {
  private static final int SAMPLES = 2500;

  /** Share of a thick place's thickness within which a point on it counts as as good. */
  private static final double AS_THICK = 0.97;

  /** Share of the part's thickness that a gate at a thick place is wide: own judgement. */
  private static final double GATE_SHARE = 0.6;

  /** Of a way across the sprue, what is left where z runs along it. */
  private static final double ALONG = 0.1;

  private final List<Thickness.Sample> samples;

  private final TriangleMesh part;

  GatePlaces(TriangleMesh part) {
    this.part = part;
    samples = Thickness.of(part, SAMPLES);
  }

  /** Closed, outward-wound, metres. */
  TriangleMesh part() {
    return part;
  }

  /** Metres: the thickest ball that touches the surface within its own radius of a place. */
  double thickness(Vec3 at) {
    return samples.stream()
        .filter(s -> s.at().distance(at) <= 0.5 * s.thickness())
        .mapToDouble(Thickness.Sample::thickness)
        .max()
        .orElseGet(
            () ->
                samples.stream()
                    .min(Comparator.comparingDouble((Thickness.Sample s) -> s.at().distance(at)))
                    .map(Thickness.Sample::thickness)
                    .orElse(0.0));
  }

  /**
   * Metres: the widest gate that there is a part for at a place, which is no thinner than the gate
   * is wide somewhere within the gate's width.
   */
  double widestGate(Vec3 at) {
    return samples.stream()
        .mapToDouble(s -> s.at().distance(at) <= s.thickness() ? s.thickness() : 0)
        .max()
        .orElse(0);
  }

  /** Metres: a gate to begin with at a place, whole halves of a millimetre. */
  double proposedGate(Vec3 at) {
    return Math.max(0.5e-3, Math.round(GATE_SHARE * thickness(at) / 0.5e-3) * 0.5e-3);
  }

  /** The place on the part that is farthest from another. */
  Vec3 farthest(Vec3 from) {
    return samples.stream()
        .map(Thickness.Sample::at)
        .max(Comparator.comparingDouble(p -> p.distance(from)))
        .orElse(from);
  }

  double thickest() {
    return samples.stream().mapToDouble(Thickness.Sample::thickness).max().orElse(0);
  }

  /**
   * The thickest place, then the thickest of those at least 1.5 times its thickness away from it,
   * and so on; each at the point of it that looks aside most, away from it along the nearest axis
   * of the block: a sprue that leaves the block aslant has no face to end at.
   *
   * @param most places
   * @param sprue way out of it, length one
   */
  List<Limits.GatePlace> propose(int most, Vec3 sprue) {
    Vec3 aside = aside(sprue);
    List<Limits.GatePlace> found = new ArrayList<>();
    List<Thickness.Sample> left = new ArrayList<>(samples);
    while (found.size() < most && !left.isEmpty()) {
      Thickness.Sample thick =
          left.stream().max(Comparator.comparingDouble(Thickness.Sample::thickness)).get();
      Thickness.Sample top =
          left.stream()
              .filter(s -> s.thickness() >= AS_THICK * thick.thickness())
              .filter(s -> middle(s).distance(middle(thick)) < 0.5 * thick.thickness())
              .max(Comparator.comparingDouble(s -> s.outward().dot(aside)))
              .orElse(thick);
      found.add(new Limits.GatePlace(rounded(top.at()), alongAxis(top.outward())));
      left.removeIf(s -> middle(s).distance(middle(thick)) < 1.5 * thick.thickness());
    }
    return found;
  }

  /** Across the sprue, so that a runner leads there: upwards as drawn, or along y. */
  private static Vec3 aside(Vec3 sprue) {
    Vec3 z = new Vec3(0, 0, 1);
    Vec3 across = z.minus(sprue.times(sprue.dot(z)));
    return across.length() > ALONG ? across.unit() : new Vec3(0, 1, 0);
  }

  private static Vec3 alongAxis(Vec3 d) {
    return Stream.of(new Vec3(d.x(), 0, 0), new Vec3(0, d.y(), 0), new Vec3(0, 0, d.z()))
        .max(Comparator.comparingDouble(Vec3::length))
        .get()
        .unit();
  }

  private static Vec3 middle(Thickness.Sample s) {
    return s.at().minus(s.outward().times(0.5 * s.thickness()));
  }

  private static Vec3 rounded(Vec3 p) {
    return new Vec3(rounded(p.x()), rounded(p.y()), rounded(p.z()));
  }

  private static double rounded(double metres) {
    return Math.round(metres * 1e5) / 1e5;
  }
}
