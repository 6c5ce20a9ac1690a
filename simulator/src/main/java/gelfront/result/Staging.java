// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A folder in the making beside its target. {@link #commit} puts it in the target's place; closing
 * it uncommitted, or the end of the process by Ctrl-C, removes it and leaves the target as it was.
 * What a process leaves that is killed is cleared away by the next one ({@link Leftovers}).
 */
final class Staging implements AutoCloseable {
  private final Path target;
  private final Path folder;
  private final Path old;
  private final Path lock;
  private final @Nullable FileChannel held;
  private final Thread onExit = new Thread(this::discard, "gelfront-result-cleanup");
  private boolean discarded;

  /**
   * @param target absolute path of the folder to come; its parent is created if it is not there
   */
  Staging(Path target) throws IOException {
    this.target = target;
    Path parent = Files.createDirectories(target.getParent());
    Leftovers.clear(target);
    String head = "." + target.getFileName() + Leftovers.PART;
    this.lock = Files.createTempFile(parent, head, Leftovers.LOCK);
    String locked = lock.getFileName().toString();
    String name = locked.substring(0, locked.length() - Leftovers.LOCK.length());
    this.folder = parent.resolve(name);
    this.old = parent.resolve(name + Leftovers.OLD);
    this.held = lock(lock);
    Files.createDirectory(folder);
    Runtime.getRuntime().addShutdownHook(onExit);
  }

  /** Where to write. */
  Path folder() {
    return folder;
  }

  /** Null where this file system has no locks: what is left over there then stays. */
  private static @Nullable FileChannel lock(Path file) throws IOException {
    FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
    try {
      if (channel.tryLock() != null) {
        return channel;
      }
    } catch (IOException e) {
      // told by null
    }
    channel.close();
    return null;
  }

  /** Takes the target's place, or throws and leaves the target as it was. */
  synchronized void commit() throws IOException {
    if (discarded) {
      throw new IOException("stopped before the result was complete");
    }
    boolean replaces = Files.exists(target);
    if (replaces) {
      move(target, old);
    }
    try {
      move(folder, target);
    } catch (IOException e) {
      if (replaces) {
        move(old, target);
      }
      throw e;
    }
    if (replaces) {
      delete(old);
    }
  }

  @Override
  public void close() {
    discard();
    try {
      Runtime.getRuntime().removeShutdownHook(onExit);
    } catch (IllegalStateException e) {
      // The process is ending and the hook itself does the rest.
    }
  }

  private synchronized void discard() {
    discarded = true;
    try {
      delete(folder);
      if (held != null) {
        held.close();
      }
      Files.deleteIfExists(lock);
    } catch (IOException e) {
      // A file held open by somebody else (Windows): the next result written there clears it away.
    }
  }

  static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to);
    }
  }

  static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    List<Path> all;
    try (Stream<Path> walk = Files.walk(folder)) {
      all = walk.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path p : all) {
      Files.deleteIfExists(p);
    }
  }
}
