// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.report.Artifacts;
import gelfront.report.Beside;
import gelfront.report.HtmlReport;
import gelfront.result.ResultFolder;
import gelfront.result.StoredRun;
import gelfront.viewer.model.Orbit;
import gelfront.viewer.scene.Stage;
import gelfront.viewer.work.Session;
import java.awt.Component;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import javax.swing.JFileChooser;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.SwingUtilities;

/** Pictures, pictures all round, the report, the whole result. */
final class Sharing {
  /** Pictures of a whole turn. */
  static final int ALL_ROUND = 36;

  private final Session session;
  private final Stage stage;
  private final Gaze gaze;
  private final Executor writing;
  private final Component parent;

  Sharing(Session session, Stage stage, Gaze gaze, Executor writing, Component parent) {
    this.session = session;
    this.stage = stage;
    this.gaze = gaze;
    this.writing = writing;
    this.parent = parent;
  }

  JPopupMenu menu() {
    JPopupMenu menu = new JPopupMenu();
    add(menu, "Picture", () -> asked("picture.png", false).ifPresent(this::picture));
    add(menu, "Pictures all round", () -> asked("all-round", true).ifPresent(this::allRound));
    if (session.result().isPresent()) {
      StoredRun run = session.result().get();
      add(menu, "Report", () -> asked("report.html", false).ifPresent(f -> report(run, f)));
      String folder = run.name() + "-result";
      add(menu, "Result folder", () -> asked(folder, true).ifPresent(f -> result(run, f)));
    }
    return menu;
  }

  private static void add(JPopupMenu menu, String label, Runnable pressed) {
    JMenuItem item = new JMenuItem(label);
    item.setName("share " + label);
    item.addActionListener(e -> pressed.run());
    menu.add(item);
  }

  private Optional<Path> asked(String proposed, boolean folder) {
    JFileChooser chooser = new JFileChooser();
    chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), proposed));
    chooser.setFileSelectionMode(folder ? JFileChooser.DIRECTORIES_ONLY : JFileChooser.FILES_ONLY);
    return chooser.showSaveDialog(parent) == JFileChooser.APPROVE_OPTION
        ? Optional.of(chooser.getSelectedFile().toPath())
        : Optional.empty();
  }

  /** What is written, where an I/O error is said in the strip. */
  private interface Writing {
    void to(Path file) throws IOException;
  }

  private void write(Path file, Writing what) {
    writing.execute(
        () -> {
          try {
            what.to(file);
            SwingUtilities.invokeLater(() -> session.say("Written: " + file));
          } catch (IOException e) {
            SwingUtilities.invokeLater(
                () -> session.complain(file + ": can't be written: " + e.getMessage()));
          }
        });
  }

  private void picture(Path file) {
    var unused = stage.picture().thenAccept(p -> write(file, f -> PngFile.write(p, f)));
  }

  /** What is known beside the run, on the window's thread. */
  private Beside beside() {
    return new Beside(Optional.empty(), session.voxels());
  }

  private void report(StoredRun run, Path file) {
    Beside beside = beside();
    write(
        file,
        f -> {
          try (var out = Files.newOutputStream(f)) {
            new HtmlReport(beside).write(run, out);
          }
        });
  }

  private void result(StoredRun run, Path folder) {
    Beside beside = beside();
    write(folder, f -> ResultFolder.write(f, run, Artifacts.all(beside)));
  }

  /** A turn about the upright, from where it is looked at. */
  void allRound(Path folder) {
    next(folder, 0, gaze.now().orbit());
  }

  private void next(Path folder, int i, Orbit start) {
    if (i == ALL_ROUND) {
      gaze.change(l -> l.with(start));
      session.say("Written: " + ALL_ROUND + " pictures in " + folder);
      return;
    }
    gaze.change(l -> l.with(start.turned(2 * Math.PI * i / ALL_ROUND, 0)));
    var unused =
        stage
            .picture()
            .thenAccept(
                p -> {
                  write(
                      folder.resolve(String.format(java.util.Locale.ROOT, "%02d.png", i)),
                      f -> {
                        Files.createDirectories(folder);
                        PngFile.write(p, f);
                      });
                  SwingUtilities.invokeLater(() -> next(folder, i + 1, start));
                });
  }
}
