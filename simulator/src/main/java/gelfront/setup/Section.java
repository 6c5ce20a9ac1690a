// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

/**
 * Cross-section of a gate or runner, metres.
 *
 * @param kind its form
 * @param width across, in the parting plane; the diameter of a round or half-round one
 * @param height depth across the parting plane; equals width for a round, width / 2 for a
 *     half-round section
 */
public record Section(Kind kind, double width, double height) {
  /** Forms a cutter leaves. */
  public enum Kind {
    ROUND,
    /** A groove in one half of the mould only. */
    HALF_ROUND,
    RECTANGULAR
  }

  public Section {
    if (!(width > 0 && height > 0)) {
      throw new IllegalArgumentException("a section needs a positive width and height");
    }
  }

  public static Section round(double diameter) {
    return new Section(Kind.ROUND, diameter, diameter);
  }

  public static Section halfRound(double diameter) {
    return new Section(Kind.HALF_ROUND, diameter, diameter / 2);
  }

  /** m2. */
  public double area() {
    return switch (kind) {
      case ROUND -> Math.PI / 4 * width * width;
      case HALF_ROUND -> Math.PI / 8 * width * width;
      case RECTANGULAR -> width * height;
    };
  }

  /** The smaller of width and height, metres: what has to be resolved by voxels. */
  public double narrowest() {
    return Math.min(width, height);
  }
}
