// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.fill.FillRecord;
import gelfront.finding.Filled;
import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import gelfront.voxelize.CaseVoxels;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** How a shot went: some moments evenly by volume, with where the front was. */
final class FillCourse {
  private static final int MOMENTS = 30;

  private final Cavity cavity;
  private final FillRecord fill;
  private final Vec3 mouth;
  private final List<Vec3> gates;

  FillCourse(CaseVoxels voxels, FillRecord fill) {
    this.fill = fill;
    cavity = voxels.model().cavity();
    mouth = voxels.mouth().centre();
    gates = voxels.gates().stream().map(g -> g.middle()).toList();
  }

  List<Filled.Moment> moments() {
    FillRecord.Trace t = fill.trace();
    int[] order = order();
    List<Filled.Moment> all = new ArrayList<>();
    Vec3 front = mouth;
    double farthest = -1;
    boolean inPart = false;
    int next = 0;
    for (int i : chosen(t.held())) {
      for (; next < order.length && fill.reached()[order[next]] <= t.time()[i]; next++) {
        int c = order[next];
        boolean part = cavity.region()[c] == Cavity.Region.PART.ordinal();
        double far = part ? fromGate(cavity.centre(c)) : cavity.centre(c).distance(mouth);
        boolean first = part && !inPart;
        if (first || (part == inPart && far > farthest)) {
          inPart = part;
          farthest = far;
          front = cavity.centre(c);
        }
      }
      all.add(new Filled.Moment(t.time()[i], t.held()[i], t.pressure()[i], t.gate()[i], front));
    }
    return all;
  }

  /** Cells by when they were reached; those never reached are left out. */
  private int[] order() {
    return IntStream.range(0, fill.reached().length)
        .filter(c -> Float.isFinite(fill.reached()[c]))
        .boxed()
        .sorted(Comparator.comparingDouble(c -> fill.reached()[c]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** Metres from the nearest gate. */
  private double fromGate(Vec3 at) {
    return gates.stream().mapToDouble(at::distance).min().orElse(0);
  }

  /** Steps after each of which another part of the liquid is in; first and last are among them. */
  private static int[] chosen(double[] held) {
    double all = held[held.length - 1];
    List<Integer> chosen = new ArrayList<>();
    double wanted = 0;
    for (int i = 0; i < held.length; i++) {
      if (held[i] >= wanted || i == held.length - 1) {
        chosen.add(i);
        wanted = held[i] + all / MOMENTS;
      }
    }
    return chosen.stream().mapToInt(Integer::intValue).toArray();
  }
}
