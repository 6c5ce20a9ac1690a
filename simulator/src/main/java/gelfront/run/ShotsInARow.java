// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.feed.FeedClock;
import gelfront.heat.EmptyMould;
import gelfront.setup.Case;
import gelfront.setup.Rhythm;
import gelfront.state.HeatLedger;
import gelfront.verdict.Judge;
import gelfront.verdict.ShotRecord;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.OpenMould;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One shot after another into the same mould. Each begins full of fresh plastisol in the mould as
 * the one before left it: opened by the clock or when all of the shot is firm, the part taken out
 * with its heat, the halves apart in the air ({@link OpenMould}), then closed and empty, no heat
 * passing through the air in the cavity.
 */
public final class ShotsInARow {
  private final Case setup;
  private final CaseVoxels voxels;
  private final Workers workers;
  private final HeatLedger moved = new HeatLedger();
  private double[] mould;
  private @Nullable OneShot shot;

  /**
   * @param voxels of this case; read only
   */
  public ShotsInARow(Case setup, CaseVoxels voxels, Workers workers) {
    this.setup = setup;
    this.voxels = voxels;
    this.workers = workers;
    mould = voxels.model().mould().startTemperature().clone();
  }

  /** Fills the mould and lets the shot cool until all of it is firm. */
  public void shoot(Progress progress) {
    shoot(progress, Watch.NOBODY);
  }

  /** As above, watched. */
  public void shoot(Progress progress, Watch watch) {
    prepare(progress);
    OneShot next = new OneShot(setup, voxels, workers, mould);
    shot = next;
    next.run(progress, watch.over(voxels));
  }

  private OneShot inMould() {
    return Objects.requireNonNull(shot, "there is no shot in the mould");
  }

  /** What the shot in the mould comes to. */
  public CaseRunner.Outcome judged(Progress progress) {
    OneShot shot = inMould();
    ShotRecord record = shot.record();
    Judge.Judgement judgement = Judge.judge(setup, voxels, record, progress);
    return new CaseRunner.Outcome(
        voxels, record, judgement, shot.state(), shot.steps(), shot.finished(), shot.times());
  }

  /** What the flow's stages took in the shot in the mould; empty: no flow. */
  public Optional<FeedClock> flowClock() {
    return inMould().flowClock();
  }

  /** s that calculating the shot itself took; 0: it wasn't calculated. */
  public double fillSeconds() {
    return inMould().fillSeconds();
  }

  /** s after its start at which all of the shot in the mould was firm. */
  public double firmAt() {
    return inMould().firmAt();
  }

  /**
   * Opens the mould; what was judged before goes on to that moment.
   *
   * @return s after the shot's start
   */
  public double open(Progress progress) {
    return inMould().opened(progress).time();
  }

  /** °C per mould cell as it is opened; read only. */
  double[] mouldOpened(Progress progress) {
    return inMould().opened(progress).mould();
  }

  /**
   * Takes out the part, if one is in the mould, and lets the empty mould cool until the next shot.
   *
   * @return °C per mould cell then; the next shot starts from what is in here
   */
  public double[] prepare(Progress progress) {
    if (shot != null) {
      OneShot.Opened opened = shot.opened(progress);
      moved.add(opened.ledger());
      mould = opened.mould();
      Rhythm r = setup.rhythm();
      new EmptyMould(OpenMould.of(voxels, setup.block())).cool(mould, r.open(), moved);
      new EmptyMould(voxels.model().mould()).cool(mould, r.idle() - r.open(), moved);
      shot = null;
    }
    return mould;
  }

  /** J moved by all shots that were taken out, and between them. */
  public HeatLedger moved() {
    return moved;
  }
}
