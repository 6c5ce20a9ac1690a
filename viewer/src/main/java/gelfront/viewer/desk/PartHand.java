package gelfront.viewer.desk;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.mesh.Vec3;
import gelfront.result.FieldProbe;
import gelfront.result.StoredRun;
import gelfront.setup.Change;
import gelfront.setup.FeedSystem;
import gelfront.viewer.model.GateDrag;
import gelfront.viewer.model.Look;
import gelfront.viewer.model.Mode;
import gelfront.viewer.model.Picker;
import gelfront.viewer.model.Ray;
import gelfront.viewer.model.Reading;
import gelfront.viewer.model.Units;
import gelfront.viewer.work.Session;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** What clicks and drags on the part do: place, move and size the gate; read a result. */
final class PartHand implements PictureControls.Hand {
  private final Session session;
  private final Gaze gaze;
  private final Supplier<Units> units;
  private final Consumer<String> read;
  private Optional<Picker> part = Optional.empty();
  private Optional<Picker> surface = Optional.empty();
  private Optional<GateDrag> drag = Optional.empty();
  private boolean first;

  /**
   * @param read is told what a clicked place says
   */
  PartHand(Session session, Gaze gaze, Supplier<Units> units, Consumer<String> read) {
    this.session = session;
    this.gaze = gaze;
    this.units = units;
    this.read = read;
  }

  /** Something else is open. */
  void follow() {
    part = session.project().map(p -> new Picker(p.part()));
    surface = session.result().map(r -> new Picker(r.surface()));
    drag = Optional.empty();
  }

  @Override
  public boolean takes(Ray ray, double mmPerPixel) {
    drag =
        gaze.now().mode() != Mode.SETUP
            ? Optional.empty()
            : gate().flatMap(g -> GateDrag.at(g, part.get(), ray, mmPerPixel));
    first = true;
    return drag.isPresent();
  }

  private Optional<FeedSystem.Gate> gate() {
    return session
        .project()
        .filter(p -> p.now().setup().feed() instanceof FeedSystem.Declared)
        .map(p -> ((FeedSystem.Declared) p.now().setup().feed()).gate());
  }

  @Override
  public void drags(Ray ray) {
    List<Change> changes = drag.get().to(ray, part.get());
    if (!changes.isEmpty()) {
      Optional<String> wrong = first ? session.change(changes) : session.goOn(changes);
      wrong.ifPresent(session::complain);
      first = first && wrong.isPresent();
    }
  }

  @Override
  public void lets() {
    drag = Optional.empty();
  }

  @Override
  public void clicks(Ray ray) {
    if (gaze.now().mode() == Mode.SETUP) {
      part.flatMap(p -> p.first(ray)).ifPresent(this::placeGate);
    } else {
      session.result().ifPresent(r -> readAt(ray, r));
    }
  }

  private void placeGate(Picker.Hit hit) {
    if (gate().isEmpty()) {
      session.complain("The gate is part of this mesh: it can't be put elsewhere here.");
      return;
    }
    session.change(GateDrag.moved(hit)).ifPresent(session::complain);
  }

  private void readAt(Ray ray, StoredRun run) {
    Look l = gaze.now();
    Optional<Vec3> place = Reading.place(ray, l.plane(), surface, run);
    gaze.change(now -> now.marking(place));
    read.accept(
        place
            .flatMap(p -> new FieldProbe(run.fields()).at(p.times(1e-3)).map(r -> says(p, r)))
            .orElse(" "));
  }

  private String says(Vec3 p, FieldProbe.Reading r) {
    double t = gaze.now().time();
    String at =
        Double.isNaN(t) || r.times().length == 0
            ? ""
            : units.get().said(Dimension.TEMPERATURE, Reading.at(r.times(), r.temperatures(), t))
                + Quantities.say(" at %.1f s, ", t);
    String sets =
        Double.isInfinite(r.setTime())
            ? "never sets"
            : Quantities.say("sets at %.1f s", r.setTime());
    String pocket = r.pocket() > 0 ? ", in pocket " + r.pocket() : "";
    return Quantities.say("(%.1f, %.1f, %.1f) mm: ", p.x(), p.y(), p.z())
        + at
        + sets
        + Quantities.say(", cut off at %.1f s", r.cutOff())
        + pocket;
  }
}
