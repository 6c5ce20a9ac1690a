// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import gelfront.answer.RunStore;
import gelfront.base.Units;
import gelfront.mesh.Vec3;
import gelfront.mesh.example.Examples;
import gelfront.result.StudyFolder;
import gelfront.result.StudyFolder.Identity;
import gelfront.setup.Change;
import gelfront.viewer.desk.Desk;
import gelfront.viewer.model.Mode;
import gelfront.viewer.work.Asking;
import gelfront.viewer.work.Help;
import gelfront.viewer.work.Runs;
import gelfront.viewer.work.Session;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import javax.swing.SwingUtilities;

/**
 * Pictures of every view, to be looked at: of the shipped example, and of a part that traps air.
 * Takes some minutes.
 */
final class Gallery {
  private final Desk desk;
  private final Screenshots shots;
  private final Session session;

  @SuppressWarnings("NullAway.Init") // set by fill, before any use
  private Path folder;

  Gallery(Desk desk, Screenshots shots, Session session) {
    this.desk = desk;
    this.shots = shots;
    this.session = session;
  }

  /** What helps takes minutes: a second gallery in that folder has the first one's outcomes. */
  static RunStore outcomes(Path into) throws ViewerException {
    Path kept = into.resolve("outcomes");
    try {
      return StudyFolder.open(kept, new Identity(Runs.version(), "gallery", "example"));
    } catch (IOException e) {
      throw cantWrite(kept, e);
    }
  }

  private static ViewerException cantWrite(Path file, Exception e) {
    return new ViewerException(
        ViewerException.OUTPUT, file + ": can't be written: " + e.getMessage(), e);
  }

  /** The folder is there. */
  void fill(Path into)
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    folder = into;
    take("1-start");
    step(desk.doings()::tour);
    while (session.project().isEmpty() && !shots.failed()) {
      Thread.sleep(50);
    }
    take("2-mould");
    coolant();
    step(
        () -> {
          desk.endTour();
          session.check();
        });
    while (session.freezing().isEmpty() && session.checking().isPresent() && !shots.failed()) {
      Thread.sleep(20);
    }
    Thread.sleep(1500);
    Screenshots.write(shots.take(), folder.resolve("3-freezing.png"));
    for (Mode m : Mode.values()) {
      if (m.ofAResult() && m != Mode.FILL) {
        take("4-wait", m);
      }
    }
    inches();
    compared();
    helps();
    sizes();
    trappedAir();
    dark();
  }

  /** Two channels beside the part. */
  private void coolant()
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    List<Change> drilled = List.of(channel(-14), channel(14));
    step(
        () -> {
          desk.endTour();
          session.change(drilled);
        });
    take("2-coolant");
    step(session::undo);
  }

  private static Change channel(int y) {
    Map<String, String> table = new LinkedHashMap<>();
    table.put("from", Change.place(new Vec3(-0.1, y * 1e-3, 0)));
    table.put("to", Change.place(new Vec3(0.2, y * 1e-3, 0)));
    table.put("diameter", Change.quantity(8, "mm"));
    table.put("film", "\"3000 W/m2K\"");
    table.put("temperature", Change.quantity(15, "degC"));
    return new Change.Add("block.channel", table);
  }

  private void compared()
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    step(
        () -> {
          session.keepForComparison();
          session.change(List.of(Change.mm("gate.size", 5e-3)));
          session.check();
        });
    take("5-two-designs");
    step(() -> session.compareWith(null));
  }

  /** As a shop reads it that thinks in inches and °F. */
  private void inches()
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    step(() -> desk.doings().units(new Units(true, true)));
    take("4-inches", Mode.OPEN);
    step(() -> desk.doings().units(Units.METRIC));
  }

  /** What can be done about the example, all of it calculated. */
  private void helps()
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    step(session::undo);
    answer("6-remedies", Help::remedies);
    answer("6-sizes", Help::sizes);
    answer("6-shots", Help::shots);
  }

  private void answer(String name, Asking asking)
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    shots.settle();
    step(() -> session.ask(asking));
    take(name);
  }

  /**
   * A part for which a gate can be found where it is, or elsewhere: the example's neck lets none
   * do.
   */
  private void sizes()
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    open(example("cone-body.stl", "cone-thick-end.toml"), "Cone, fed at the thick end");
    answer("6-sizes-found", Help::sizes);
    open(example("cone-body.stl", "cone-thin-end.toml"), "Cone, fed at the thin end");
    answer("6-sizes-elsewhere", Help::sizes);
  }

  private Path example(String mesh, String text) throws ViewerException {
    Path cases = folder.resolve("cases");
    try {
      Files.createDirectories(cases);
      for (String file : List.of(mesh, text)) {
        Files.write(cases.resolve(file), Examples.shipped(file));
      }
      return cases.resolve(text);
    } catch (IOException e) {
      throw cantWrite(cases, e);
    }
  }

  private void open(Path file, String name) throws InterruptedException, InvocationTargetException {
    step(() -> desk.open(file));
    while (!named(name) && !shots.failed()) {
      Thread.sleep(50);
    }
  }

  /** A mould by its own solids; in it air that can't leave, and how that is told from dents. */
  private void trappedAir()
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    open(blindFin(), "blind fin");
    take("7-own-mould");
    step(session::check);
    take("8-wait", Mode.FILL);
    step(() -> desk.look(l -> l.shotAt(1.6)));
    take("8-fill-on-its-way");
  }

  private Path blindFin() throws ViewerException {
    Path cases = folder.resolve("cases");
    try {
      return BlindFin.in(Files.createDirectories(cases));
    } catch (IOException e) {
      throw cantWrite(cases, e);
    }
  }

  private boolean named(String name) {
    return session.project().map(p -> p.now().setup().name().equals(name)).orElse(false);
  }

  private void dark()
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    step(() -> desk.dark(true));
    take("9-dark-fill");
    take("9-dark-wait", Mode.OPEN);
    take("9-dark-wait", Mode.SETUP);
  }

  private void take(String name, Mode mode)
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    shots.settle();
    step(() -> desk.choose(mode));
    take(name.replace("wait", mode.name().toLowerCase(Locale.ROOT)));
  }

  private void take(String name)
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    shots.settle();
    Screenshots.write(shots.take(), folder.resolve(name + ".png"));
  }

  private static void step(Runnable what) throws InterruptedException, InvocationTargetException {
    SwingUtilities.invokeAndWait(what);
  }
}
