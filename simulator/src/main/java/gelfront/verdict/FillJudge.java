// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.fill.FillRecord;
import gelfront.finding.Filled;
import gelfront.grid.Cavity;
import gelfront.material.ViscosityCurve;
import gelfront.mesh.Vec3;
import gelfront.setup.Case;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.GatePlace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** From what a shot left to what may not fill, trapped air and welds; no words yet. */
final class FillJudge {
  /** K above no-flow below which the front may stop another time: own judgement, no source. */
  private static final double MARGIN = 10;

  /** K above no-flow below which fronts that meet may leave a seam: own judgement, no source. */
  private static final double COOL = 25;

  /** m3 and m2 below which nobody sees it. */
  private static final double LEAST = 0.2e-9;

  private static final double LEAST_WELD = 1e-6;

  private static final int MOST_WELDS = 5;

  private final Case setup;
  private final CaseVoxels voxels;
  private final Cavity cavity;
  private final FillRecord fill;
  private final double[] volume;
  private final boolean[] air;

  private FillJudge(Case setup, CaseVoxels voxels, FillRecord fill) {
    this.setup = setup;
    this.voxels = voxels;
    this.fill = fill;
    cavity = voxels.model().cavity();
    volume = cavity.volumes();
    air = new boolean[volume.length];
  }

  static Filled judge(Case setup, CaseVoxels voxels, FillRecord fill) {
    return new FillJudge(setup, voxels, fill).judge();
  }

  private Filled judge() {
    List<Filled.TrappedAir> trapped = new TrappedAir(setup, voxels, fill, LEAST).list(this::mark);
    List<Filled.Cold> cold = cold();
    double unfilled =
        cold.stream().filter(c -> !c.reached()).mapToDouble(Filled.Cold::volume).sum();
    int coldest = coldest();
    double t = coldest < 0 ? setup.shot().temperature() : fill.arrival()[coldest];
    double margin = unfilled > 0 ? Math.min(0, t - noFlow()) : t - noFlow();
    double spare = unfilled > 0 || coldest < 0 ? 0 : spare(coldest);
    int last = last();
    double speed = speed();
    boolean mayNot = !cold.isEmpty();
    Vec3 coldestAt = coldest < 0 ? Vec3.ZERO : cavity.centre(coldest);
    Vec3 lastAt = last < 0 ? Vec3.ZERO : cavity.centre(last);
    return new Filled(
        true,
        mayNot,
        Filled.End.valueOf(fill.end().name()),
        "",
        fill.time(),
        fill.trace().most(fill.trace().pressure()),
        reynolds(speed),
        speed,
        t,
        coldestAt,
        margin,
        spare,
        lastAt,
        last < 0 ? 0 : fill.reached()[last],
        unfilled,
        cold,
        trapped,
        welds(),
        new FillCourse(voxels, fill).moments());
  }

  private void mark(int[] cells) {
    for (int c : cells) {
      air[c] = true;
    }
  }

  private double noFlow() {
    return setup.plastisol().noFlow();
  }

  private boolean isPart(int c) {
    return cavity.region()[c] == Cavity.Region.PART.ordinal();
  }

  private boolean reached(int c) {
    return Float.isFinite(fill.reached()[c]);
  }

  private int coldest() {
    int best = -1;
    for (int c = 0; c < volume.length; c++) {
      boolean colder = best < 0 || fill.arrival()[c] < fill.arrival()[best];
      best = isPart(c) && reached(c) && colder ? c : best;
    }
    return best;
  }

  private int last() {
    int best = -1;
    for (int c = 0; c < volume.length; c++) {
      boolean later = best < 0 || fill.reached()[c] > fill.reached()[best];
      best = isPart(c) && reached(c) && later ? c : best;
    }
    return best;
  }

  /** s that a front which cooled as it did on its way could have gone on for. */
  private double spare(int c) {
    double fell = setup.shot().temperature() - fill.arrival()[c];
    double margin = fill.arrival()[c] - noFlow();
    return fell > 0.5 ? margin * fill.reached()[c] / fell : Double.POSITIVE_INFINITY;
  }

  private boolean isCold(int c) {
    return isPart(c) && !air[c] && !(reached(c) && fill.arrival()[c] >= noFlow() + MARGIN);
  }

  private List<Filled.Cold> cold() {
    boolean[] seen = new boolean[volume.length];
    List<Filled.Cold> all = new ArrayList<>();
    for (int c = 0; c < volume.length; c++) {
      if (!seen[c] && isCold(c)) {
        Filled.Cold place = place(c, seen);
        if (place.volume() >= LEAST) {
          all.add(place);
        }
      }
    }
    all.sort(Comparator.comparingDouble((Filled.Cold p) -> -p.volume()));
    return all;
  }

  private Filled.Cold place(int seed, boolean[] seen) {
    List<Integer> queue = new ArrayList<>(List.of(seed));
    seen[seed] = true;
    boolean all = true;
    double sum = 0;
    double missing = 0;
    Vec3 middle = Vec3.ZERO;
    double margin = Double.POSITIVE_INFINITY;
    double spare = Double.POSITIVE_INFINITY;
    for (int head = 0; head < queue.size(); head++) {
      int c = queue.get(head);
      sum += volume[c];
      middle = middle.plus(cavity.centre(c).times(volume[c]));
      all &= reached(c);
      missing += reached(c) ? 0 : volume[c];
      if (reached(c)) {
        margin = Math.min(margin, fill.arrival()[c] - noFlow());
        spare = Math.min(spare, spare(c));
      }
      for (int f = cavity.faces(c) - 1; f >= 0; f--) {
        int to = cavity.across(c, f);
        if (!seen[to] && isCold(to)) {
          seen[to] = true;
          queue.add(to);
        }
      }
    }
    Vec3 at = middle.times(1 / sum);
    return all || missing < LEAST
        ? new Filled.Cold(at, sum, true, Double.isFinite(margin) ? margin : 0, finite(spare))
        : new Filled.Cold(at, missing, false, 0, 0);
  }

  private static double finite(double spare) {
    return Double.isFinite(spare) ? Math.max(0, spare) : 0;
  }

  /** m/s, mean in the narrowest gate if all get the same. */
  private double speed() {
    double rate = fill.held() / fill.time() / voxels.gates().size();
    double width = width();
    return rate / (0.25 * Math.PI * width * width);
  }

  private double width() {
    return voxels.gates().stream().mapToDouble(GatePlace::width).min().orElseThrow();
  }

  private double reynolds(double speed) {
    double t = setup.shot().temperature();
    double eta = Math.exp(ViscosityCurve.of(setup.plastisol()).logarithm(t));
    return setup.plastisol().densityHot() * speed * width() / eta;
  }

  private List<Filled.Weld> welds() {
    return fill.welds().stream()
        .filter(w -> w.area() >= LEAST_WELD && isPart(w.cells()[0]))
        .limit(MOST_WELDS)
        .map(w -> new Filled.Weld(middle(w.cells()), w.area(), w.coldest(), cool(w.coldest())))
        .sorted(Comparator.comparingDouble(Filled.Weld::temperature))
        .toList();
  }

  private boolean cool(double t) {
    return t < noFlow() + COOL;
  }

  private Vec3 middle(int[] cells) {
    Vec3 sum = Vec3.ZERO;
    for (int c : cells) {
      sum = sum.plus(cavity.centre(c));
    }
    return sum.times(1.0 / cells.length);
  }
}
