// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.mesh.TriangleMesh;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.viewer.model.History;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A case that is being worked on: every step of it, its part's mesh, and the file it belongs to.
 * What is changed is the file's text, so comments and order stay. For the window's thread.
 */
public final class Project {
  private final TriangleMesh part;
  private final History<LoadedCase> history;
  private Optional<Path> file;
  private String saved;

  /**
   * @param part closed, outward-wound, metres
   * @param file that it is saved to; absent: it has none yet
   * @param saved text of that file; empty where there is none
   */
  public Project(LoadedCase start, TriangleMesh part, Optional<Path> file, String saved) {
    this.part = part;
    this.history = new History<>(start);
    this.file = file;
    this.saved = saved;
  }

  public LoadedCase now() {
    return history.now();
  }

  public TriangleMesh part() {
    return part;
  }

  public Optional<Path> file() {
    return file;
  }

  /** Whether the file doesn't hold what is here. */
  public boolean unsaved() {
    return !now().text().equals(saved);
  }

  /** The text is in that file now. */
  public void saved(Path where) {
    file = Optional.of(where);
    saved = now().text();
  }

  /**
   * One step that can be undone.
   *
   * @throws gelfront.setup.CaseException with what is wrong with the changed case
   * @throws IllegalArgumentException where the text can't be changed so
   */
  public void change(List<Change> changes) {
    history.add(now().with(changes));
  }

  /** The same step goes on, as in a drag: the next {@link #change} begins another. */
  public void goOn(List<Change> changes) {
    history.replace(now().with(changes));
  }

  /** Another text of the same part, as a remedy proposes it. */
  public void become(LoadedCase other) {
    history.add(other);
  }

  public boolean canUndo() {
    return history.canUndo();
  }

  public boolean canRedo() {
    return history.canRedo();
  }

  public void undo() {
    history.undo();
  }

  public void redo() {
    history.redo();
  }
}
