// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.base.Units;
import gelfront.mesh.example.Examples;
import gelfront.mesh.io.LengthUnit;
import gelfront.setup.PartShape;
import gelfront.viewer.scene.Stage;
import gelfront.viewer.store.Recovery;
import gelfront.viewer.store.Remembered;
import gelfront.viewer.work.Opened;
import gelfront.viewer.work.Project;
import gelfront.viewer.work.Session;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.dnd.DnDConstants;
import java.awt.dnd.DropTarget;
import java.awt.dnd.DropTargetAdapter;
import java.awt.dnd.DropTargetDropEvent;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.TransferHandler;

/** What the head's buttons, drops and keys do: files, settings, sharing. */
public final class Doings implements ActionBar.Doing {
  private static final String EXAMPLE = "two-bulbs-neck";

  private final Session session;
  private final Stage stage;
  private final Remembered remembered;
  private final Desk desk;
  private final Recovery recovery = new Recovery(Remembered.folder());

  Doings(Session session, Stage stage, Remembered remembered, Desk desk) {
    this.session = session;
    this.stage = stage;
    this.remembered = remembered;
    this.desk = desk;
  }

  @Override
  public void open() {
    JFileChooser chooser = chooser("Open an STL, a case (.toml) or a result folder");
    chooser.setFileSelectionMode(JFileChooser.FILES_AND_DIRECTORIES);
    if (chooser.showOpenDialog(desk.frame()) == JFileChooser.APPROVE_OPTION) {
      session.open(chooser.getSelectedFile().toPath());
    }
  }

  private JFileChooser chooser(String title) {
    File where =
        remembered.recent().stream()
            .findFirst()
            .map(Path::getParent)
            .map(Path::toFile)
            .orElse(null);
    JFileChooser chooser = new JFileChooser(where);
    chooser.setDialogTitle(title);
    return chooser;
  }

  /** The mesh that is open, in another unit. */
  void openAs(LengthUnit unit) {
    source().ifPresent(p -> session.open(p, Optional.of(unit)));
  }

  private Optional<Path> source() {
    if (session.project().isPresent()
        && session.project().get().now().setup().part() instanceof PartShape.Meshes m) {
      return Optional.of(m.files().get(0));
    }
    return Optional.empty();
  }

  /** What is open now is among the recent ones next time. */
  void remember() {
    Opened o = session.opened().orElseThrow();
    if (o instanceof Opened.AResult r) {
      remembered.opened(r.folder());
    } else if (o instanceof Opened.ACase c) {
      c.project().file().or(this::source).ifPresent(remembered::opened);
    }
  }

  /** Copies the example into the user's own folder and opens it. */
  void example() {
    Path folder = Remembered.folder().resolve("example");
    try {
      Files.createDirectories(folder);
      for (String file : List.of(EXAMPLE + ".stl", EXAMPLE + ".toml")) {
        if (!Files.exists(folder.resolve(file))) {
          Files.write(folder.resolve(file), Examples.shipped(file));
        }
      }
      session.open(folder.resolve(EXAMPLE + ".toml"));
    } catch (IOException e) {
      session.complain(folder + ": can't be written: " + e.getMessage());
    }
  }

  @Override
  public void save() {
    Optional<Project> project = session.project();
    if (project.isEmpty()) {
      return;
    }
    Optional<Path> to = project.get().file().or(this::askWhere);
    to.ifPresent(this::saveTo);
  }

  private Optional<Path> askWhere() {
    JFileChooser chooser = chooser("Save the case");
    Project p = session.project().orElseThrow();
    File proposed = p.now().folder().resolve(p.now().setup().name() + ".toml").toFile();
    chooser.setSelectedFile(proposed);
    return chooser.showSaveDialog(desk.frame()) == JFileChooser.APPROVE_OPTION
        ? Optional.of(chooser.getSelectedFile().toPath())
        : Optional.empty();
  }

  private void saveTo(Path file) {
    try {
      session.save(file);
      remembered.opened(file);
      session.say("Saved " + file + ".");
    } catch (IOException e) {
      session.complain(file + ": can't be written: " + e.getMessage());
    }
  }

  @Override
  public void share(JButton from) {
    JPopupMenu menu = desk.sharing().menu();
    menu.show(from, from.getWidth() - menu.getPreferredSize().width, from.getHeight());
  }

  @Override
  public void settings(JButton from) {
    JPopupMenu menu = new JPopupMenu();
    Units u = remembered.units();
    menu.add(check("Lengths in inches", u.inch(), on -> units(new Units(on, u.fahrenheit()))));
    menu.add(check("Temperatures in °F", u.fahrenheit(), on -> units(new Units(u.inch(), on))));
    menu.addSeparator();
    menu.add(check("Dark", remembered.dark(), this::dark));
    menu.addSeparator();
    menu.add(item("Tour", this::tour));
    menu.show(from, from.getWidth() - menu.getPreferredSize().width, from.getHeight());
  }

  private interface Switched {
    void to(boolean on);
  }

  private static JCheckBoxMenuItem check(String label, boolean on, Switched switched) {
    JCheckBoxMenuItem item = new JCheckBoxMenuItem(label, on);
    item.setName(label);
    item.addActionListener(e -> switched.to(item.isSelected()));
    return item;
  }

  private static JMenuItem item(String label, Runnable pressed) {
    JMenuItem item = new JMenuItem(label);
    item.setName(label);
    item.addActionListener(e -> pressed.run());
    return item;
  }

  /** The tour is about the example, unless something is open already. */
  public void tour() {
    if (session.opened().isEmpty()) {
      example();
    }
    desk.tour();
  }

  @Override
  public void compare(JButton from) {
    JPopupMenu menu = new JPopupMenu();
    JMenuItem keep = item("Keep this result beside the next one", session::keepForComparison);
    keep.setEnabled(session.result().isPresent());
    JMenuItem other = item("Open a result beside this one", this::openBeside);
    other.setEnabled(session.result().isPresent());
    JMenuItem one = item("One design again", () -> session.compareWith(null));
    one.setEnabled(session.other().isPresent());
    menu.add(keep);
    menu.add(other);
    menu.add(one);
    menu.show(from, 0, from.getHeight());
  }

  private void openBeside() {
    JFileChooser chooser = chooser("Open a result folder beside this one");
    chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
    if (chooser.showOpenDialog(desk.frame()) == JFileChooser.APPROVE_OPTION) {
      session.openBeside(chooser.getSelectedFile().toPath());
    }
  }

  /** What is in no file yet survives a kill. */
  void keepEdits() {
    Optional<Project> p = session.project().filter(Project::unsaved);
    if (p.isEmpty()) {
      recovery.clear();
      return;
    }
    var now = p.get().now();
    recovery.keep(new Recovery.Edits(now.text(), now.folder(), p.get().file()));
  }

  /** Goes on with edits of a window that was killed. */
  public void recover() {
    recovery.lost().ifPresent(session::recover);
  }

  /** The window closes of itself: nothing is to be recovered. */
  public void closes() {
    recovery.clear();
  }

  /** Tells all in these units from now on. */
  public void units(Units u) {
    remembered.units(u);
    desk.units(u);
  }

  private void dark(boolean dark) {
    remembered.dark(dark);
    Theme.set(dark);
  }

  /** Files dropped on the window are opened. */
  void takeDrops(JFrame frame) {
    frame.setTransferHandler(
        new TransferHandler() {
          private static final long serialVersionUID = 1;

          @Override
          public boolean canImport(TransferSupport s) {
            return s.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
          }

          @Override
          public boolean importData(TransferSupport s) {
            return taken(s.getTransferable());
          }
        });
    // The heavy canvas gets drops of its own.
    new DropTarget(
        stage.canvas(),
        new DropTargetAdapter() {
          @Override
          public void drop(DropTargetDropEvent e) {
            e.acceptDrop(DnDConstants.ACTION_COPY);
            e.dropComplete(taken(e.getTransferable()));
          }
        });
  }

  private boolean taken(Transferable t) {
    try {
      Object data = t.getTransferData(DataFlavor.javaFileListFlavor);
      if (data instanceof List<?> files && !files.isEmpty() && files.get(0) instanceof File f) {
        session.open(f.toPath());
        return true;
      }
    } catch (UnsupportedFlavorException | IOException e) {
      session.complain("What was dropped is no file.");
    }
    return false;
  }
}
