// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A file that is there whole or not at all: written beside its place, flushed, renamed. An earlier
 * one stays until then.
 */
public final class WholeFile {
  private static final Duration LEFT_OVER = Duration.ofMinutes(10);
  private static final Pattern PART = Pattern.compile("\\..+\\.part-[0-9a-f-]{36}");

  private WholeFile() {}

  /**
   * @param target its folder is created if it is not there
   * @return the target
   */
  public static Path write(Path target, String text) throws IOException {
    return write(target, text.getBytes(StandardCharsets.UTF_8));
  }

  /** As above. */
  public static Path write(Path target, byte[] content) throws IOException {
    Path place = target.toAbsolutePath();
    Files.createDirectories(place.getParent());
    Path part = place.resolveSibling("." + place.getFileName() + ".part-" + UUID.randomUUID());
    try {
      Files.write(part, content, StandardOpenOption.CREATE_NEW);
      try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
        channel.force(true);
      }
      move(part, place);
    } finally {
      Files.deleteIfExists(part);
    }
    return target;
  }

  /**
   * Removes files that a killed process had begun; one that lives is done with its file at once.
   */
  static void clear(Path folder) throws IOException {
    Instant old = Instant.now().minus(LEFT_OVER);
    try (Stream<Path> list = Files.list(folder)) {
      for (Path p : list.filter(p -> PART.matcher(p.getFileName().toString()).matches()).toList()) {
        if (Files.getLastModifiedTime(p).toInstant().isBefore(old)) {
          Files.deleteIfExists(p);
        }
      }
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
