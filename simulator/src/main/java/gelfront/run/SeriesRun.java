// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.answer.SeriesAnswer;
import gelfront.answer.ShotRow;
import gelfront.base.Progress;
import gelfront.base.Quantities;
import gelfront.base.Workers;
import gelfront.finding.Dent;
import gelfront.finding.Findings;
import gelfront.grid.MouldCells;
import gelfront.setup.Case;
import gelfront.voxelize.CaseVoxels;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Shots in a row until they repeat. The first ones are made one by one. From there the mould is
 * brought to where its temperature T before a shot would not change any more,
 *
 * <pre>  T(oo) = T(n) + (T(n+1) - T(n)) / (1 - r),  r = (T(n+1) - T(n)) / (T(n) - T(n-1))</pre>
 *
 * all of its cells by the same, and shots are made from there until one leaves the mould as it
 * found it: what is told of the settled shot was calculated, only the way there was cut short.
 */
public final class SeriesRun {
  /** K that a settled shot may be from the mould that it would settle in. */
  private static final double NEAR = 0.3;

  /** Shots to find the settled one. */
  private static final int TRIES = 6;

  /** Of the mould's distance, what the next shot keeps at most: nothing settles slower. */
  private static final double SLOWEST = 0.98;

  private final Case setup;
  private final CaseVoxels voxels;
  private final Workers workers;
  private final Progress progress;

  /**
   * @param voxels of this case; read only
   */
  public SeriesRun(Case setup, CaseVoxels voxels, Workers workers, Progress progress) {
    this.setup = setup;
    this.voxels = voxels;
    this.workers = workers;
    this.progress = progress;
  }

  /**
   * @param count shots that are made one by one, three at least
   * @throws gelfront.base.CancelledException if the watcher wants to stop
   */
  public SeriesAnswer run(int count) {
    if (count < 3) {
      throw new IllegalArgumentException("where a row settles is seen after three shots: " + count);
    }
    ShotsInARow row = new ShotsInARow(setup, voxels, workers);
    List<ShotRow> shots = new ArrayList<>();
    for (int k = 1; k <= count; k++) {
      shots.add(shot(row, setup, k, Quantities.say("shot %d of %d", k, count)));
    }
    Optional<ShotRow> settled = settled(row, setup, shots, "settling");
    double imbalance = row.moved().imbalance();
    Optional<ShotRow> fastest =
        setup.opensAt().isEmpty() ? settled : asSoonAsFirm(row.prepare(progress));
    return new SeriesAnswer(
        setup.name(),
        setup.numerics().level().name().toLowerCase(Locale.ROOT),
        setup.visibleDent(),
        setup.rhythm().idle(),
        setup.rhythm().open(),
        setup.opensAt().isEmpty() ? setup.opensAt() : setup.rhythm().cycle(),
        shots,
        settled,
        fastest,
        imbalance);
  }

  private Optional<ShotRow> asSoonAsFirm(double[] mould) {
    Case c = setup.openedWhenFirm();
    ShotsInARow row = new ShotsInARow(c, voxels, workers);
    System.arraycopy(mould, 0, row.prepare(progress), 0, mould.length);
    List<ShotRow> shots = new ArrayList<>();
    for (int k = 1; k <= 3; k++) {
      shots.add(shot(row, c, k, Quantities.say("fastest cycle, shot %d", k)));
    }
    return settled(row, c, shots, "fastest cycle");
  }

  private ShotRow shot(ShotsInARow row, Case c, int number, String which) {
    Progress told = (stage, f) -> progress.at(which, stage.equals("judging") ? 1 : f);
    double before = mean(row.prepare(told), true);
    row.shoot(told);
    Findings f = row.judged(told).judgement().findings();
    Optional<Dent> dent = f.pockets().stream().findFirst().map(p -> p.dents().get(0));
    double firmAt = row.firmAt();
    double opened = row.open(told);
    return new ShotRow(
        number,
        before,
        mean(row.mouldOpened(told), false),
        f.severity(),
        dent.map(Dent::depthLow).orElse(0.0),
        dent.map(Dent::depthHigh).orElse(0.0),
        f.gateSets(),
        firmAt,
        opened,
        opened + c.rhythm().idle());
  }

  /**
   * @param row after {@code shots}; modified
   * @return empty where six shots did not find it
   */
  private Optional<ShotRow> settled(ShotsInARow row, Case c, List<ShotRow> shots, String what) {
    int n = shots.size();
    double older = shots.get(n - 2).mouldBefore();
    double before = shots.get(n - 1).mouldBefore();
    double[] mould = row.prepare(progress);
    double now = mean(mould, true);
    double kept = kept(now - before, before - older);
    for (int k = 1; k <= TRIES; k++) {
      double target = before + (now - before) / (1 - kept);
      double shift = target - now;
      for (int i = 0; i < mould.length; i++) {
        mould[i] += shift;
      }
      ShotRow tried = shot(row, c, 0, Quantities.say("%s, %d", what, k));
      mould = row.prepare(progress);
      double after = mean(mould, true);
      if (Math.abs(after - target) / (1 - kept) <= NEAR) {
        return Optional.of(tried);
      }
      // Slope between two starts of the map from one shot's mould to the next one's.
      double apart = target - before;
      kept = Math.abs(apart) > NEAR ? kept(after - now, apart) : kept;
      before = target;
      now = after;
    }
    return Optional.empty();
  }

  private static double kept(double change, double apart) {
    double r = apart == 0 ? 0 : change / apart;
    return Math.max(0, Math.min(SLOWEST, r));
  }

  /** °C of the wall, or of the whole block by heat. */
  private double mean(double[] mould, boolean wall) {
    MouldCells cells = voxels.model().mould();
    double sum = 0;
    double weight = 0;
    if (wall) {
      for (int m : voxels.model().mouldCell()) {
        sum += m >= 0 ? mould[m] : 0;
        weight += m >= 0 ? 1 : 0;
      }
    } else {
      for (int i = 0; i < mould.length; i++) {
        sum += cells.capacity()[i] * mould[i];
        weight += cells.capacity()[i];
      }
    }
    return sum / weight;
  }
}
