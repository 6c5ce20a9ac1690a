// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

/** How cells of liquid are gathered in blocks: half widths, in lattice steps, from which on. */
public enum Gathering {
  /** Every cell is a block of its own, to see what blocks cost. */
  SINGLE(Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE),

  /** For liquid that creeps after its own contraction. */
  FEEDING(6, 8, 12),

  /**
   * For a shot: what it carries goes through many blocks, and coarse ones mix the chilled rim of a
   * tube of twelve cells into its middle, 7 K of the bulk.
   */
  SHOT(8, 10, 20);

  private final int two;
  private final int four;
  private final int eight;

  Gathering(int two, int four, int eight) {
    this.two = two;
    this.four = four;
    this.eight = eight;
  }

  /** Half width from which on blocks are 2^level lattice steps wide, level 1 to 3. */
  int from(int level) {
    return level == 1 ? two : level == 2 ? four : eight;
  }
}
