package gelfront.feed;

import gelfront.grid.Cavity;
import java.util.Arrays;

/** Which cells flow and are joined to the sprue's mouth by cells that flow. */
final class Reach {
  private final Cavity cavity;
  private final int[] mouthCells;
  private final int[] queue;
  private final boolean[] joined;
  private boolean part;

  Reach(Cavity cavity) {
    this.cavity = cavity;
    Cavity.Walls walls = cavity.walls();
    mouthCells =
        java.util.stream.IntStream.range(0, walls.count())
            .filter(w -> walls.mouth()[w])
            .map(w -> walls.cell()[w])
            .distinct()
            .toArray();
    queue = new int[cavity.count()];
    joined = new boolean[cavity.count()];
  }

  /**
   * @param temperature °C per cell
   * @param empty cells that air is in; what flows beside them is joined, too
   * @return per cell; overwritten by the next call
   */
  boolean[] find(double[] temperature, double noFlow, boolean[] empty) {
    Arrays.fill(joined, false);
    part = false;
    int tail = 0;
    for (int c : mouthCells) {
      tail = empty[c] ? tail : visit(c, temperature, noFlow, tail);
    }
    tail = besideAir(temperature, noFlow, empty, tail);
    for (int head = 0; head < tail; head++) {
      int c = queue[head];
      for (int f = cavity.faces(c) - 1; f >= 0; f--) {
        int to = cavity.across(c, f);
        tail = empty[to] ? tail : visit(to, temperature, noFlow, tail);
      }
    }
    return joined;
  }

  private int besideAir(double[] temperature, double noFlow, boolean[] empty, int seeds) {
    int tail = seeds;
    for (int c = 0; c < empty.length; c++) {
      for (int f = empty[c] ? cavity.faces(c) - 1 : -1; f >= 0; f--) {
        int to = cavity.across(c, f);
        tail = empty[to] ? tail : visit(to, temperature, noFlow, tail);
      }
    }
    return tail;
  }

  private int visit(int c, double[] temperature, double noFlow, int tail) {
    if (joined[c] || !(temperature[c] > noFlow)) {
      return tail;
    }
    joined[c] = true;
    part |= cavity.region()[c] == Cavity.Region.PART.ordinal();
    queue[tail] = c;
    return tail + 1;
  }

  /** What the last search found; not to be modified. */
  boolean[] joined() {
    return joined;
  }

  /** Whether the last search reached the part. */
  boolean part() {
    return part;
  }
}
