// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.grid.Cavity;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

final class BlocksTest {
  private static boolean[] all(Cavity cavity) {
    boolean[] flowing = new boolean[cavity.count()];
    Arrays.fill(flowing, true);
    return flowing;
  }

  private static Blocks blocks(Cavity cavity, boolean[] flowing) {
    CellFaces faces = new CellFaces(cavity);
    return new Blocks(
        cavity, faces, flowing, new HalfWidth(cavity, faces).of(flowing), Gathering.FEEDING);
  }

  /** Square corners and ends stay fine, so the wide tube is a round one in a square. */
  @Test
  void aNarrowTubeKeepsItsCellsAndAWideOneIsGathered() {
    Cavity narrow = Tube.of(40, 8);
    Cavity wide = Tube.of(120, 40);
    boolean[] round = all(wide);
    int cells = 0;
    for (int c = 0; c < round.length; c++) {
      int y = 2 * wide.grid().position(c, 1) - 39;
      int z = 2 * wide.grid().position(c, 2) - 39;
      round[c] = y * y + z * z < 40 * 40;
      cells += round[c] ? 1 : 0;
    }
    int blocks = blocks(wide, round).count();

    assertEquals(narrow.count(), blocks(narrow, all(narrow)).count());
    assertTrue(blocks < cells / 5, blocks + " of " + cells);
  }

  /** Two pools side by side, a wall of set plastisol between them. */
  @Test
  void aBlockNeverReachesThroughAWall() {
    Cavity wide = Tube.of(64, 48);
    boolean[] flowing = all(wide);
    for (int c = 0; c < flowing.length; c++) {
      flowing[c] = wide.grid().position(c, 1) != 22;
    }
    Blocks b = blocks(wide, flowing);
    int[] side = new int[b.count()];
    for (int c = 0; c < flowing.length; c++) {
      if (flowing[c]) {
        int here = wide.grid().position(c, 1) < 22 ? 1 : 2;
        assertTrue(side[b.of[c]] == 0 || side[b.of[c]] == here);
        side[b.of[c]] = here;
      }
    }
  }

  /** Half the tube's width in its middle; towards corners, where no such ball reaches, less. */
  @Test
  void halfTheWidthIsThatOfTheLargestBall() {
    Cavity tube = Tube.of(60, 20);
    short[] width = new HalfWidth(tube, new CellFaces(tube)).of(all(tube));
    for (int c = 0; c < width.length; c++) {
      int y = Math.abs(2 * tube.grid().position(c, 1) - 19);
      int z = Math.abs(2 * tube.grid().position(c, 2) - 19);
      int x = tube.grid().position(c, 0);
      if (x > 12 && x < 47 && y < 9 && z < 9) {
        assertEquals(10, width[c], 1);
      }
    }
  }
}
