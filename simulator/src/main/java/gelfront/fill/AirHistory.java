package gelfront.fill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Since when each body of air has been cut off from the rest, and how large it was then. */
final class AirHistory {
  private final FillNet net;

  /** Per block: s, and m3 of the body that its air has belonged to since. */
  private final double[] since;

  private final double[] began;
  private int[] last;
  private int[] size = {};

  AirHistory(FillNet net) {
    this.net = net;
    since = new double[net.count()];
    began = new double[net.count()];
    last = new int[net.count()];
    Arrays.fill(began, Arrays.stream(net.volume).sum());
  }

  /** Takes the bodies as they are; one that has fallen apart starts anew in each part. */
  void look(Front front, Air air, double time) {
    int[] parts = new int[Math.max(1, size.length)];
    int[] of = new int[air.bodies()];
    Arrays.fill(of, -1);
    for (int b = 0; b < last.length; b++) {
      int k = air.body[b];
      if (k >= 0 && of[k] < 0) {
        of[k] = last[b];
        parts[last[b]]++;
      }
    }
    int[] now = new int[air.bodies()];
    for (int b = 0; b < last.length; b++) {
      int k = air.body[b];
      if (k >= 0) {
        if (parts[of[k]] > 1) {
          since[b] = time;
          began[b] = air.volume(k);
        }
        last[b] = k;
        now[k]++;
      }
    }
    size = now;
  }

  /** What is left at the end. */
  List<FillRecord.AirBody> left(Front front, Air air) {
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
