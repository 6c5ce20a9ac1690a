// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.grid.Basins;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Cuts pockets that reach through the feed system into several cavities into one for each. */
final class CavityPockets {
  private CavityPockets() {}

  /**
   * @param owner number of its cavity per plastisol cell, 0 for what they share
   * @param count cavities
   * @param set s per plastisol cell
   */
  static Basins split(Basins all, short[] owner, int count, float[] set) {
    if (count == 1) {
      return all;
    }
    List<Basins.Basin> split = new ArrayList<>();
    for (Basins.Basin b : all.basins()) {
      int[] numbers =
          Arrays.stream(b.cells()).map(c -> owner[c]).filter(k -> k > 0).distinct().toArray();
      if (numbers.length < 2) {
        split.add(b);
      } else {
        Arrays.stream(numbers).sorted().forEach(k -> split.add(only(b, k, owner, set)));
      }
    }
    return new Basins(all.level(), split);
  }

  private static Basins.Basin only(Basins.Basin b, int number, short[] owner, float[] set) {
    int[] mine =
        IntStream.range(0, b.cells().length).filter(i -> owner[b.cells()[i]] == number).toArray();
    int[] cells = Arrays.stream(mine).map(i -> b.cells()[i]).toArray();
    int[] peaks =
        IntStream.range(0, b.peaks().size())
            .filter(p -> owner[b.peaks().get(p).cell()] == number)
            .toArray();
    int[] fresh = new int[b.peaks().size()];
    for (int i = 0; i < peaks.length; i++) {
      fresh[peaks[i]] = i;
    }
    List<Basins.Peak> own = new ArrayList<>();
    for (int p : peaks) {
      own.add(b.peaks().get(p));
    }
    int last = latest(cells, set);
    if (own.isEmpty()) {
      own.add(new Basins.Peak(last, set[last], b.level(), b.saddle()));
    }
    int[] peak = Arrays.stream(mine).map(i -> fresh[b.peak()[i]]).toArray();
    return new Basins.Basin(cells, peak, b.level(), b.saddle(), own);
  }

  private static int latest(int[] cells, float[] set) {
    int last = cells[0];
    for (int c : cells) {
      last = set[c] > set[last] ? c : last;
    }
    return last;
  }
}
