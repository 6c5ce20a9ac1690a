// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import java.util.Arrays;

/** How many cells each cell is away from the sprue's open end, by the shortest way. */
public final class MouthSteps {
  private MouthSteps() {}

  /**
   * @return per plastisol cell, 0 at the open end; Integer.MAX_VALUE where no way leads there
   */
  public static int[] of(Cavity cavity) {
    int[] steps = new int[cavity.count()];
    int[] queue = new int[steps.length];
    int end = 0;
    boolean[] mouth = MergeTree.mouthCells(cavity);
    Arrays.fill(steps, Integer.MAX_VALUE);
    for (int c = 0; c < steps.length; c++) {
      if (mouth[c]) {
        steps[c] = 0;
        queue[end++] = c;
      }
    }
    for (int at = 0; at < end; at++) {
      int c = queue[at];
      for (int f = cavity.faces(c) - 1; f >= 0; f--) {
        int j = cavity.across(c, f);
        if (steps[j] == Integer.MAX_VALUE) {
          steps[j] = steps[c] + 1;
          queue[end++] = j;
        }
      }
    }
    return steps;
  }
}
