// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.grid.Cavity;
import gelfront.voxelize.CaseVoxels;
import java.util.stream.IntStream;

/** Which cavity each place belongs to, gates included. */
public final class Owners {
  private Owners() {}

  /**
   * @return number of its cavity per plastisol cell of part and gates, from 1; 0 for runner and
   *     sprue. A gate is its cavity's; one whose cavity is empty, the first's.
   */
  public static short[] of(CaseVoxels voxels) {
    Cavity cavity = voxels.model().cavity();
    short[] owner = voxels.cavities().of().clone();
    boolean[] filled = new boolean[voxels.cavities().count() + 1];
    for (short k : owner) {
      filled[k] = true;
    }
    short first =
        (short) IntStream.range(1, filled.length).filter(k -> filled[k]).findFirst().orElse(1);
    for (int c = 0; c < owner.length; c++) {
      if (cavity.region()[c] == Cavity.Region.GATE.ordinal()) {
        int k = voxels.gateNear(cavity.centre(c)).cavity();
        owner[c] = k < filled.length && filled[k] ? (short) k : first;
      }
    }
    return owner;
  }
}
