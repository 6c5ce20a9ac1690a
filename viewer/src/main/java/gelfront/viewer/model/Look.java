// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.base.Units;
import gelfront.mesh.Vec3;
import java.util.Optional;

/**
 * How the picture is looked at; the same for both where two designs stand side by side.
 *
 * @param mode what is shown
 * @param orbit from where
 * @param plane where it is cut open; absent: whole
 * @param time s at which the freezing stands; NaN: all of it at once, by set times
 * @param shot s at which the shot itself stands in {@link Mode#FILL}; NaN: all of it at once
 * @param from s; cells that set earlier are hidden in {@link Mode#CELLS}
 * @param exaggeration times that dents are drawn as deep
 * @param pocket number of the chosen pocket, 0 for none; below 0: that of the chosen trapped air
 * @param mark mm, the place that is read; absent: none
 * @param units of words in the picture
 */
public record Look(
    Mode mode,
    Orbit orbit,
    Optional<Plane> plane,
    double time,
    double shot,
    double from,
    double exaggeration,
    int pocket,
    Optional<Vec3> mark,
    Units units) {

  /** The set-up of a part of that size. */
  public static Look at(Orbit orbit) {
    return new Look(
        Mode.SETUP,
        orbit,
        Optional.empty(),
        Double.NaN,
        Double.NaN,
        0,
        5,
        0,
        Optional.empty(),
        Units.METRIC);
  }

  public Look with(Mode other) {
    return new Look(other, orbit, plane, time, shot, from, exaggeration, pocket, mark, units);
  }

  public Look with(Orbit other) {
    return new Look(mode, other, plane, time, shot, from, exaggeration, pocket, mark, units);
  }

  public Look cut(Optional<Plane> other) {
    return new Look(mode, orbit, other, time, shot, from, exaggeration, pocket, mark, units);
  }

  public Look atTime(double seconds) {
    return new Look(mode, orbit, plane, seconds, shot, from, exaggeration, pocket, mark, units);
  }

  public Look shotAt(double seconds) {
    return new Look(mode, orbit, plane, time, seconds, from, exaggeration, pocket, mark, units);
  }

  public Look hidingBefore(double seconds) {
    return new Look(mode, orbit, plane, time, shot, seconds, exaggeration, pocket, mark, units);
  }

  public Look exaggerated(double times) {
    return new Look(mode, orbit, plane, time, shot, from, times, pocket, mark, units);
  }

  public Look choosing(int number) {
    return new Look(mode, orbit, plane, time, shot, from, exaggeration, number, mark, units);
  }

  public Look marking(Optional<Vec3> place) {
    return new Look(mode, orbit, plane, time, shot, from, exaggeration, pocket, place, units);
  }

  public Look in(Units other) {
    return new Look(mode, orbit, plane, time, shot, from, exaggeration, pocket, mark, other);
  }
}
