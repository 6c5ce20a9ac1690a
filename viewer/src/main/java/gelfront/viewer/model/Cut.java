package gelfront.viewer.model;

import gelfront.mesh.Vec3;

/**
 * Which cells are left away to look inside.
 *
 * @param axis 0 for a plane across x, 1 across y, 2 across z
 * @param at mm, part coordinates, where the plane stands
 * @param keepAbove whether the side of higher coordinates stays
 */
public record Cut(int axis, double at, boolean keepAbove) {
  /** Leaves nothing away. */
  public static final Cut NONE = new Cut(0, Double.NEGATIVE_INFINITY, true);

  public Cut {
    if (axis < 0 || axis > 2) {
      throw new IllegalArgumentException("axis must be 0, 1 or 2, was " + axis);
    }
  }

  /** Lengthwise through the middle, the half towards the eye of {@link Orbit#round} away. */
  public static Cut lengthwise(Extent extent) {
    return extent.longAlongX()
        ? new Cut(1, extent.middle().y(), true)
        : new Cut(0, extent.middle().x(), false);
  }

  /**
   * @param place mm, part coordinates
   */
  boolean keeps(Vec3 place) {
    double c = axis == 0 ? place.x() : axis == 1 ? place.y() : place.z();
    return keepAbove ? c >= at : c <= at;
  }
}
