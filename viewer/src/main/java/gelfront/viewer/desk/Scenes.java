// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.base.Units;
import gelfront.finding.Pocket;
import gelfront.result.StoredRun;
import gelfront.setup.LoadedCase;
import gelfront.viewer.model.Colours;
import gelfront.viewer.model.Extent;
import gelfront.viewer.model.Mode;
import gelfront.viewer.model.ResultShown;
import gelfront.viewer.model.SetupShown;
import gelfront.viewer.model.ShotShown;
import gelfront.viewer.model.SkinMesh;
import gelfront.viewer.scene.Stage;
import gelfront.viewer.work.MouldShapes;
import gelfront.viewer.work.Opened;
import gelfront.viewer.work.Previews;
import gelfront.viewer.work.Project;
import gelfront.viewer.work.Quick;
import gelfront.viewer.work.Session;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/** Puts on the stage what the session holds. */
final class Scenes {
  private final Session session;
  private final Stage stage;
  private final Gaze gaze;
  private final Executor drawing;
  private final Executor ui;
  private final AtomicInteger newest = new AtomicInteger();

  /** Whether the eye has not yet been put where all of a newly opened part is seen. */
  private boolean homeless;

  /** Whether a check's freezing is shown. */
  private boolean live;

  private final MouldShapes moulds = new MouldShapes();
  private @Nullable SkinMesh skin;
  private @Nullable Project skinOf;

  Scenes(Session session, Stage stage, Gaze gaze, Executor drawing, Executor ui) {
    this.session = session;
    this.stage = stage;
    this.gaze = gaze;
    this.drawing = drawing;
    this.ui = ui;
    gaze.watch(stage::look);
  }

  /** Of the part that is open, made once. */
  private SkinMesh skin(Project p) {
    SkinMesh made = skin;
    if (made == null || skinOf != p) {
      made = SkinMesh.of(p.part());
      skin = made;
      skinOf = p;
    }
    return made;
  }

  /** Something else is open. */
  void opened() {
    stage.compareNothing();
    if (session.result().isPresent()) {
      result(true);
    } else if (session.opened().orElse(null) instanceof Opened.ABrokenMesh b) {
      SetupShown shown = SetupShown.broken(b.mesh(), List.of("This mesh can't be used yet"));
      gaze.begin(shown.extent(), Mode.SETUP, 1, 0);
      stage.show(shown, Colours.OPEN_EDGE);
    } else {
      session.project().ifPresent(p -> gaze.begin(Extent.of(p.part().box()), Mode.SETUP, 1, 0));
      homeless = true;
      setup();
    }
  }

  /**
   * The result.
   *
   * @param afresh whether it is looked at as if for the first time
   */
  void result(boolean afresh) {
    StoredRun run = session.result().orElseThrow();
    ResultShown shown = one();
    gaze.shotTo(shotEnd());
    if (gaze.now().mode() == Mode.FILL && !shown.filled()) {
      gaze.choose(Mode.OPEN);
    }
    if (afresh || live || gaze.now().mode() == Mode.SETUP) {
      live = false;
      double from = run.findings().pockets().stream().findFirst().map(Pocket::cutOff).orElse(0.0);
      gaze.begin(shown.extent(), Mode.OPEN, shown.scale(), from);
    } else {
      gaze.scaleTo(shown.scale());
      gaze.keep(shown.extent());
    }
    stage.show(shown);
  }

  /** The freezing as far as a check has come, unless something else is looked at. */
  void freezing() {
    boolean free = session.result().isEmpty() || session.stale();
    session
        .freezing()
        .filter(f -> free)
        .ifPresent(
            f -> {
              ResultShown shown = new ResultShown(f.run(), f.scale());
              if (!live) {
                live = true;
                gaze.begin(shown.extent(), Mode.OPEN, f.scale(), 0);
              }
              gaze.scaleTo(f.scale());
              gaze.change(l -> l.atTime(f.time()));
              stage.show(shown);
            });
  }

  /** A check is over; where it left nothing the part is shown again. */
  void frozen() {
    if (live) {
      live = false;
      if (session.result().isEmpty()) {
        gaze.choose(Mode.SETUP);
      }
    }
  }

  /** Both designs on one time scale. */
  void compared() {
    if (session.result().isEmpty() || session.other().isEmpty()) {
      stage.compareNothing();
      session.result().ifPresent(r -> stage.show(one()));
      gaze.goHome();
      return;
    }
    gaze.scaleTo(end());
    gaze.shotTo(shotEnd());
    if (live) {
      live = false;
      gaze.change(l -> l.atTime(Double.NaN));
    }
    pair();
    gaze.goHome();
  }

  private void pair() {
    String title = "Kept: " + said(session.other());
    stage.show(one());
    stage.compare(new ResultShown(session.other().orElseThrow(), end(), shotEnd(), title));
  }

  /** What stands in the picture is told anew, in other units. */
  void retell() {
    setup();
    boolean two = session.result().isPresent() && session.other().isPresent();
    if (two && gaze.now().mode().ofAResult()) {
      pair();
    }
  }

  private ResultShown one() {
    String title = session.other().isEmpty() ? "" : "This one: " + said(session.result());
    return new ResultShown(session.result().orElseThrow(), end(), shotEnd(), title);
  }

  /** The deepest dent, in words short enough for half of a picture. */
  private String said(Optional<StoredRun> run) {
    return run.map(StoredRun::findings)
        .map(
            f ->
                f.pockets().stream()
                    .flatMap(p -> p.dents().stream())
                    .findFirst()
                    .map(d -> "dent up to " + gaze.now().units().size(d.depthHigh()))
                    .orElse("no dent"))
        .orElse("");
  }

  private double end() {
    double one = session.result().map(Scenes::latest).orElse(1.0);
    return Math.max(one, session.other().map(Scenes::latest).orElse(0.0));
  }

  private double shotEnd() {
    double one = session.result().map(r -> ShotShown.end(r.fields())).orElse(0.0);
    return Math.max(one, session.other().map(r -> ShotShown.end(r.fields())).orElse(0.0));
  }

  private static double latest(StoredRun run) {
    return new ResultShown(run, 0).latest();
  }

  /** The eye changed between mould and result. */
  void follow(Mode mode) {
    if (mode == Mode.SETUP) {
      homeless |= gaze.untouched();
      setup();
    } else if (session.result().isPresent()) {
      boolean still = gaze.untouched();
      ResultShown shown = one();
      stage.show(shown);
      gaze.keep(shown.extent());
      if (still) {
        gaze.goHome();
      }
    }
  }

  /** The case has changed, or what is said beside its gate; the newest wins. */
  void setup() {
    if (session.project().isEmpty() || gaze.now().mode() != Mode.SETUP) {
      return;
    }
    int mine = newest.incrementAndGet();
    Project p = session.project().get();
    LoadedCase now = p.now();
    Quick.Verdict v = session.verdict();
    Units units = gaze.now().units();
    drawing.execute(
        () -> {
          if (mine != newest.get()) {
            return;
          }
          SetupShown shown = Previews.of(now, skin(p), p.part(), moulds, v.lines(units));
          int edge = v.findings().map(f -> Colours.of(f.severity())).orElse(Colours.UNJUDGED);
          stage.show(shown, edge);
          ui.execute(
              () -> {
                gaze.keep(shown.extent());
                if (homeless) {
                  homeless = false;
                  gaze.goHome();
                }
              });
        });
  }
}
