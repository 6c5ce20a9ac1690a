// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.store;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.Properties;

/**
 * Edits that are in no file yet, written after each change, so that a kill loses nothing. One slot
 * a window; taken over by the next window once its own one is gone.
 */
public final class Recovery {
  private final Path folder;
  private final Path own;

  /**
   * What a window that ended unexpectedly was at.
   *
   * @param text of the case
   * @param folder that its paths start from
   * @param file that it is to be saved to; absent: none yet
   */
  public record Edits(String text, Path folder, Optional<Path> file) {}

  /**
   * @param folder of the user's own; need not exist
   */
  public Recovery(Path folder) {
    this.folder = folder;
    this.own = folder.resolve("edits-" + ProcessHandle.current().pid() + ".properties");
  }

  /** Keeps edits until {@link #clear}. What can't be written is not kept. */
  public void keep(Edits edits) {
    Properties p = new Properties();
    p.setProperty("text", edits.text());
    p.setProperty("folder", edits.folder().toString());
    edits.file().ifPresent(f -> p.setProperty("file", f.toString()));
    try {
      Files.createDirectories(folder);
      Path next = folder.resolve(own.getFileName() + ".new");
      try (Writer out = Files.newBufferedWriter(next)) {
        p.store(out, null);
      }
      Files.move(next, own, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      clear();
    }
  }

  /** Nothing is unsaved any more. */
  public void clear() {
    try {
      Files.deleteIfExists(own);
    } catch (IOException e) {
      own.toFile().deleteOnExit();
    }
  }

  /** Edits of a window whose process is gone; they are handed out once. */
  public Optional<Edits> lost() {
    try (var list = Files.newDirectoryStream(folder, "edits-*.properties")) {
      for (Path p : list) {
        if (!alive(p)) {
          Optional<Edits> edits = read(p);
          Files.delete(p);
          if (edits.isPresent()) {
            return edits;
          }
        }
      }
    } catch (IOException e) { // no folder: nothing was lost
      return Optional.empty();
    }
    return Optional.empty();
  }

  private static boolean alive(Path p) {
    String pid = p.getFileName().toString().replaceAll("\\D", "");
    try {
      return ProcessHandle.of(Long.parseLong(pid)).map(ProcessHandle::isAlive).orElse(false);
    } catch (NumberFormatException e) {
      return false;
    }
  }

  private static Optional<Edits> read(Path p) {
    Properties v = new Properties();
    try (Reader in = Files.newBufferedReader(p)) {
      v.load(in);
    } catch (IOException | IllegalArgumentException e) {
      return Optional.empty();
    }
    String text = v.getProperty("text");
    String folder = v.getProperty("folder");
    return text == null || folder == null
        ? Optional.empty()
        : Optional.of(
            new Edits(
                text, Path.of(folder), Optional.ofNullable(v.getProperty("file")).map(Path::of)));
  }
}
