// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Caution;
import gelfront.material.Plastisol;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Everything a run needs to know, checked, in SI units and °C.
 *
 * @param name for titles
 * @param part where the shape comes from
 * @param copies of it in the same block, each with a gate of its own
 * @param feed gate, runner, sprue
 * @param growths metal filed away
 * @param block the mould
 * @param plastisol what is injected
 * @param shot the recipe
 * @param fill how the shot itself is calculated
 * @param up which way is up while the part cools, length one; empty: where the mouth looks
 * @param clampingForce N that holds the halves together
 * @param cavities that are fed by one shot: those in the block, or more on the same runner that the
 *     case leaves out
 * @param numerics how finely
 * @param rhythm shots in a row, and which of them is looked at
 * @param visibleDent metres from which a dent is seen and felt
 * @param limits of what a study may propose; no run depends on them
 * @param warnings for the report: what is allowed but dangerous or odd
 */
public record Case(
    String name,
    PartShape part,
    List<Placement> copies,
    FeedSystem feed,
    List<Growth> growths,
    Block block,
    Plastisol plastisol,
    Shot shot,
    Fill fill,
    Optional<Vec3> up,
    OptionalDouble clampingForce,
    int cavities,
    Numerics numerics,
    Rhythm rhythm,
    double visibleDent,
    Limits limits,
    List<Caution> warnings) {
  /** Metres from which a dent on a soft part is seen and felt: own judgement, no source. */
  public static final double VISIBLE = 0.2e-3;

  /** The first shot, into a cavity that starts full; dents are seen from {@link #VISIBLE} on. */
  public Case(
      String name,
      PartShape part,
      List<Placement> copies,
      FeedSystem feed,
      List<Growth> growths,
      Block block,
      Plastisol plastisol,
      Shot shot,
      Optional<Vec3> up,
      OptionalDouble clampingForce,
      int cavities,
      Numerics numerics,
      List<Caution> warnings) {
    this(
        name,
        part,
        copies,
        feed,
        growths,
        block,
        plastisol,
        shot,
        Fill.OFF,
        up,
        clampingForce,
        cavities,
        numerics,
        Rhythm.SINGLE,
        VISIBLE,
        Limits.NONE,
        warnings);
  }

  public Case {
    copies = List.copyOf(copies);
    growths = List.copyOf(growths);
    warnings = List.copyOf(warnings);
    up = up.map(Vec3::unit);
    int drawn = drawn(feed, copies);
    if (!(visibleDent > 0)) {
      throw new IllegalArgumentException("a dent that is seen has a depth: " + visibleDent);
    }
    if (cavities < 1 || (drawn > 1 && cavities != drawn)) {
      throw new IllegalArgumentException("cavities: " + cavities + ", in the block " + drawn);
    }
  }

  /**
   * Which way is up while the part cools, length one.
   *
   * @param mouth where it looks, length one
   */
  public Vec3 up(Vec3 mouth) {
    return up.orElse(mouth);
  }

  /** Cavities that lie in the block. */
  public int drawn() {
    return drawn(feed, copies);
  }

  static int drawn(@Nullable FeedSystem feed, List<Placement> copies) {
    int gates = feed instanceof FeedSystem.InMesh m ? m.gates().size() : 1;
    return Math.max(1, gates) + copies.size();
  }

  /** The same calculated otherwise. */
  public Case with(Numerics other) {
    return with(shot, fill, other, rhythm);
  }

  /** The same case in another row of shots. */
  public Case with(Rhythm other) {
    return with(shot, fill, numerics, other);
  }

  /** The same with the shot itself calculated otherwise. */
  public Case with(Fill other) {
    return with(shot, other, numerics, rhythm);
  }

  /** The same with another recipe. */
  public Case with(Shot other) {
    return with(other, fill, numerics, rhythm);
  }

  private Case with(Shot otherShot, Fill otherFill, Numerics otherNumerics, Rhythm otherRhythm) {
    return new Case(
        name,
        part,
        copies,
        feed,
        growths,
        block,
        plastisol,
        otherShot,
        otherFill,
        up,
        clampingForce,
        cavities,
        otherNumerics,
        otherRhythm,
        visibleDent,
        limits,
        warnings);
  }

  /** s after a shot's start at which the mould is opened; absent: when all of it is firm. */
  public OptionalDouble opensAt() {
    return shot.openAt().isPresent() ? shot.openAt() : rhythm.opensAt();
  }

  /** The same, opened as soon as all of the shot is firm, whatever the clock says. */
  public Case openedWhenFirm() {
    return with(shot.openedWhenFirm(), fill, numerics, rhythm.asSoonAsFirm());
  }
}
