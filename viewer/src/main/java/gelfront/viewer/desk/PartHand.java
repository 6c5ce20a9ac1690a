// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.mesh.Vec3;
import gelfront.result.FieldProbe;
import gelfront.result.StoredRun;
import gelfront.setup.Change;
import gelfront.setup.FeedSystem;
import gelfront.viewer.model.GateDrag;
import gelfront.viewer.model.Gates;
import gelfront.viewer.model.Look;
import gelfront.viewer.model.Mode;
import gelfront.viewer.model.Picker;
import gelfront.viewer.model.Ray;
import gelfront.viewer.model.Reading;
import gelfront.viewer.work.Project;
import gelfront.viewer.work.Session;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;

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

  /** Whether the next click puts another gate. */
  private boolean adding;

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
    adding = false;
  }

  @Override
  public boolean takes(Ray ray, double mmPerPixel) {
    drag = gaze.now().mode() != Mode.SETUP ? Optional.empty() : held(ray, mmPerPixel);
    first = true;
    return drag.isPresent();
  }

  private Optional<GateDrag> held(Ray ray, double mmPerPixel) {
    return session
        .project()
        .flatMap(p -> GateDrag.at(Gates.of(p.now()), part.get(), ray, mmPerPixel));
  }

  private boolean declared() {
    return session.project().map(p -> !Gates.of(p.now()).isEmpty()).orElse(false);
  }

  /** Waits for a click on the part, where another gate goes; asked again it waits no more. */
  void adds() {
    adding = !adding;
    session.say(adding ? "Click on the part where the other gate goes." : "");
  }

  @Override
  public void drags(Ray ray) {
    Project p = session.project().orElseThrow();
    List<Change> changes = drag.get().to(ray, part.get(), p.now(), p.part());
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
    if (!declared()) {
      session.complain("The gate is part of this mesh: it can't be put elsewhere here.");
    } else if (adding) {
      addGate(hit);
    } else {
      Project p = session.project().orElseThrow();
      change(Gates.moved(p.now(), p.part(), 0, hit));
    }
  }

  private void addGate(Picker.Hit hit) {
    adding = false;
    session.say("");
    Project p = session.project().orElseThrow();
    FeedSystem.Declared feed = (FeedSystem.Declared) p.now().setup().feed();
    change(Gates.added(feed, p.part(), hit));
  }

  private void change(List<Change> changes) {
    session.change(changes).ifPresent(session::complain);
  }

  @Override
  public void asks(Ray ray, double mmPerPixel, MouseEvent e) {
    Optional<Picker.Hit> hit =
        gaze.now().mode() == Mode.SETUP && declared()
            ? part.flatMap(p -> p.first(ray))
            : Optional.empty();
    if (hit.isEmpty()) {
      return;
    }
    JPopupMenu menu = new JPopupMenu();
    int gate = held(ray, mmPerPixel).map(GateDrag::number).orElse(0);
    if (gate > 0) {
      String which = "Remove gate " + (gate + 1);
      item(menu, "remove here", which, () -> change(Gates.removed(gate)));
    }
    item(menu, "gate here", "Put the gate here", () -> moveHere(hit.get()));
    item(menu, "another here", "Put another gate here", () -> addGate(hit.get()));
    menu.show(e.getComponent(), e.getX(), e.getY());
  }

  private void moveHere(Picker.Hit hit) {
    adding = false;
    placeGate(hit);
  }

  private static void item(JPopupMenu menu, String name, String words, Runnable chosen) {
    JMenuItem item = new JMenuItem(words);
    item.setName(name);
    item.addActionListener(a -> chosen.run());
    menu.add(item);
  }

  private void readAt(Ray ray, StoredRun run) {
    Look l = gaze.now();
    Optional<Vec3> place = Reading.place(ray, l.plane(), surface, run);
    gaze.change(now -> now.marking(place));
    read.accept(
        place
            .flatMap(p -> new FieldProbe(run.fields()).at(p.times(1e-3)).map(r -> says(p, r, run)))
            .orElse(" "));
  }

  private String says(Vec3 p, FieldProbe.Reading r, StoredRun run) {
    Units u = units.get();
    String here = u.lengths("(%s, %s, %s)", 1, 1e-3 * p.x(), 1e-3 * p.y(), 1e-3 * p.z()) + ": ";
    String came = gaze.now().mode() == Mode.FILL ? Reading.came(run.fields(), p, u) : "";
    if (!came.isEmpty()) {
      return here + came;
    }
    double t = gaze.now().time();
    String at =
        Double.isNaN(t) || r.times().length == 0
            ? ""
            : u.temperature(Reading.at(r.times(), r.temperatures(), t))
                + Quantities.say(" at %.1f s, ", t);
    String sets =
        Double.isInfinite(r.setTime())
            ? "never sets"
            : Quantities.say("sets at %.1f s", r.setTime());
    String pocket = r.pocket() > 0 ? ", in pocket " + r.pocket() : "";
    return here + at + sets + Quantities.say(", cut off at %.1f s", r.cutOff()) + pocket;
  }
}
