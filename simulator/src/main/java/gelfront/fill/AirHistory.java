// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Since when each body of air has been cut off, from other air or from its last vent, and how large
 * it was then. One that was a mere film then, one or two blocks thick, is none: it isn't followed,
 * and is let out.
 */
final class AirHistory {
  private final FillNet net;

  /** Per block: s, and m3 of the body that its air has belonged to since. */
  private final double[] since;

  private final double[] began;

  /** Per block: whether its body was vented when last seen. */
  private final boolean[] vented;

  private final int[] last;
  private int bodies = 1;

  AirHistory(FillNet net) {
    this.net = net;
    since = new double[net.count()];
    began = new double[net.count()];
    last = new int[net.count()];
    vented = new boolean[net.count()];
    Arrays.fill(began, Arrays.stream(net.volume).sum());
    Arrays.fill(vented, true);
  }

  /**
   * Takes the bodies as they are; one that has fallen apart starts anew in each part.
   *
   * @param air gets to know its films
   */
  void look(Front front, Air air, double time) {
    int[] of = new int[air.bodies()];
    int[] one = new int[air.bodies()];
    boolean[] film = new boolean[air.bodies()];
    Arrays.fill(of, -1);
    Arrays.fill(film, true);
    int[] parts = new int[bodies];
    for (int b = 0; b < last.length; b++) {
      int k = air.body[b];
      if (k >= 0) {
        if (of[k] < 0) {
          of[k] = last[b];
          one[k] = b;
          parts[last[b]]++;
        }
        film[k] &= near(front, b);
      }
    }
    boolean[] born = new boolean[air.bodies()];
    for (int k = 0; k < born.length; k++) {
      boolean sealed = vented[one[k]] && !(air.conductance(k) > 0);
      born[k] = parts[of[k]] > 1 || sealed;
    }
    for (int b = 0; b < last.length; b++) {
      int k = air.body[b];
      if (k >= 0) {
        if (born[k]) {
          since[b] = time;
          began[b] = air.volume(k);
          air.letOut(b, film[k]);
        }
        last[b] = k;
        vented[b] = air.conductance(k) > 0;
      }
    }
    bodies = air.bodies();
  }

  /** Whether a full block is beside a block or beside that one. */
  private boolean near(Front front, int b) {
    boolean near = front.beside(b);
    for (int i = net.graph.start()[b]; !near && i < net.graph.start()[b + 1]; i++) {
      near = front.beside(net.graph.other()[i]);
    }
    return near;
  }

  /** What is left at the end. */
  List<FillRecord.AirBody> left(Air air) {
    List<FillRecord.AirBody> bodies = new ArrayList<>();
    for (int k = 0; k < air.bodies(); k++) {
      List<Integer> cells = new ArrayList<>();
      int one = -1;
      for (int b = 0; b < last.length; b++) {
        if (air.body[b] == k) {
          one = b;
          for (int i = net.first[b]; i < net.first[b + 1]; i++) {
            cells.add(net.cells[i]);
          }
        }
      }
      bodies.add(
          new FillRecord.AirBody(
              cells.stream().mapToInt(Integer::intValue).toArray(),
              air.volume(k),
              began[one],
              since[one],
              air.pressure(k),
              air.conductance(k)));
    }
    return bodies;
  }
}
