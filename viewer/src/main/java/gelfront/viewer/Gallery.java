// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import gelfront.setup.Change;
import gelfront.viewer.desk.Desk;
import gelfront.viewer.model.Mode;
import gelfront.viewer.work.Help;
import gelfront.viewer.work.Session;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import javax.swing.SwingUtilities;

/** Pictures of every view, of the shipped example, to be looked at. Takes some minutes. */
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

  /** Makes the folder if it isn't there. */
  void fill(Path into)
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    folder = into;
    try {
      Files.createDirectories(into);
    } catch (IOException e) {
      throw new ViewerException(
          ViewerException.OUTPUT, into + ": can't be made: " + e.getMessage(), e);
    }
    take("1-start");
    step(desk.doings()::tour);
    while (session.project().isEmpty() && !shots.failed()) {
      Thread.sleep(50);
    }
    take("2-mould");
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
    compared();
    filling();
    step(() -> session.ask(Help::remedies));
    take("6-helps");
    step(() -> desk.dark(true));
    take("7-dark");
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

  /** The shot itself, and how it is told from dents. */
  private void filling()
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    step(
        () -> {
          session.change(List.of(new Change.Set("fill.on", "true")));
          session.check();
        });
    take("4-wait", Mode.FILL);
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
