// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a killed process left beside a result folder. Whoever writes a result holds a lock on a file
 * beside it, which ends with the process however it ends: what belongs to a lock that nobody holds
 * is left over. An earlier result that was moved aside and not yet replaced goes back to its place.
 */
final class Leftovers {
  static final String PART = ".part-";
  static final String LOCK = ".lock";
  static final String OLD = ".old";

  private Leftovers() {}

  /**
   * Puts an earlier result back that a killed process had moved aside.
   *
   * @param target absolute path of the result folder
   */
  static void restore(Path target) {
    if (!Files.exists(target)) {
      each(target, false);
    }
  }

  /** As {@link #restore}, and removes what else killed processes left there. */
  static void clear(Path target) {
    each(target, true);
  }

  private static void each(Path target, boolean delete) {
    for (Path lock : locks(target)) {
      try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.WRITE);
          FileLock held = channel.tryLock()) {
        if (held != null) {
          settle(target, lock, delete);
        }
      } catch (IOException | OverlappingFileLockException e) {
        // Somebody is writing there, or nothing may be changed: it stays as it is.
      }
    }
  }

  private static void settle(Path target, Path lock, boolean delete) throws IOException {
    String name = lock.getFileName().toString();
    Path part = lock.resolveSibling(name.substring(0, name.length() - LOCK.length()));
    Path old = part.resolveSibling(part.getFileName() + OLD);
    if (Files.exists(old) && !Files.exists(target)) {
      Staging.move(old, target);
    }
    if (delete) {
      Staging.delete(old);
      Staging.delete(part);
      Files.deleteIfExists(lock);
    }
  }

  private static List<Path> locks(Path target) {
    Path parent = target.getParent();
    if (parent == null || !Files.isDirectory(parent)) {
      return List.of();
    }
    String head = "." + target.getFileName() + PART;
    try (Stream<Path> list = Files.list(parent)) {
      return list.filter(p -> p.getFileName().toString().startsWith(head))
          .filter(p -> p.getFileName().toString().endsWith(LOCK))
          .sorted()
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }
}
