// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.mesh.Vec3;
import gelfront.viewer.model.Extent;
import gelfront.viewer.model.Look;
import gelfront.viewer.model.Mode;
import gelfront.viewer.model.Orbit;
import gelfront.viewer.model.Plane;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** The one look that picture, sliders and buttons share. The window's thread. */
final class Gaze {
  /** The size of a part before there is one, mm. */
  private static final Extent NOTHING = new Extent(new Vec3(-50, -20, -20), new Vec3(50, 20, 20));

  private final List<Consumer<Look>> watchers = new ArrayList<>();
  private final DoubleSupplier aspect;
  private final double fieldOfView;
  private Look look;
  private double scale = 1;
  private double shot = 1;
  private Optional<Plane> plane = Optional.empty();

  /** Where the eye was put by itself last. */
  private @Nullable Orbit put;

  /**
   * @param aspect width over height of one design's picture
   */
  Gaze(DoubleSupplier aspect, double fieldOfView) {
    this.aspect = aspect;
    this.fieldOfView = fieldOfView;
    look = Look.at(Orbit.round(NOTHING, fieldOfView, 1.5));
  }

  Look now() {
    return look;
  }

  /** s at the end of the time scale. */
  double scale() {
    return scale;
  }

  /** The same of what is looked at: of the shot itself, or of the freezing. */
  double end() {
    return look.mode() == Mode.FILL ? shot : scale;
  }

  /** s at the end of the shot's own time scale. */
  void shotTo(double end) {
    shot = Math.max(1e-3, end);
  }

  double fieldOfView() {
    return fieldOfView;
  }

  double aspect() {
    return aspect.getAsDouble();
  }

  void watch(Consumer<Look> watcher) {
    watchers.add(watcher);
  }

  /** Looks otherwise. */
  void change(UnaryOperator<Look> how) {
    look = how.apply(look);
    List.copyOf(watchers).forEach(w -> w.accept(look));
  }

  /** Another view; only those of the inside are cut open by themselves. */
  void choose(Mode mode) {
    boolean inside = mode.inside();
    boolean was = look.mode().inside();
    if (was) {
      plane = look.plane();
    }
    change(l -> (inside == was ? l : l.cut(inside ? plane : Optional.empty())).with(mode));
  }

  /**
   * Something else is shown.
   *
   * @param end s at the end of the time scale
   * @param from s before which late cells are hidden at first
   */
  void begin(Extent extent, Mode mode, double end, double from) {
    scale = Math.max(1e-3, end);
    plane = Optional.of(Plane.lengthwise(extent));
    Look fresh = Look.at(home(extent)).with(mode).exaggerated(look.exaggeration()).in(look.units());
    change(l -> mode.ofAResult() ? fresh.cut(plane).hidingBefore(from) : fresh);
  }

  /** The same is shown, in a box that may have changed: the eye stays where it is. */
  void keep(Extent extent) {
    boolean still = untouched();
    Orbit o = look.orbit();
    look = look.with(new Orbit(extent, o.target(), o.yaw(), o.pitch(), o.distance()));
    put = still ? look.orbit() : put;
    List.copyOf(watchers).forEach(w -> w.accept(look));
  }

  private Orbit home(Extent extent) {
    Orbit home = Orbit.round(extent, fieldOfView, aspect());
    put = home;
    return home;
  }

  /** Whether nobody has moved the eye since it was put where all is seen. */
  boolean untouched() {
    return look.orbit().equals(put);
  }

  /** The picture is larger or smaller: all is seen still, unless somebody moved the eye. */
  void resized() {
    if (untouched()) {
      goHome();
    }
  }

  void goHome() {
    change(l -> l.with(home(l.orbit().extent())));
  }

  /** s at the end of the time scale, where two results share one. */
  void scaleTo(double end) {
    scale = Math.max(1e-3, end);
  }
}
