// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.mesh.TriangleMesh;
import gelfront.run.CaseRunner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * A word that changes with the program's code, whether its version does or not: what a study keeps
 * was calculated by this code and no other. Packages that no run's outcome depends on don't count.
 */
final class CodeWord {
  private static final int DIGITS = 10;

  private static final Set<String> NO_MATTER =
      Set.of("cli", "report", "timing", "live", "calibrate", "doubt");

  private CodeWord() {}

  /**
   * Version and digest, as {@code 0.1.0+3f29ab01c4}, of names and checksums: the same for classes
   * in a folder and in a jar.
   */
  static String of() {
    MessageDigest sha = sha();
    for (Class<?> one : List.of(CaseRunner.class, TriangleMesh.class)) {
      add(sha, place(one));
    }
    return Version.number() + "+" + HexFormat.of().formatHex(sha.digest()).substring(0, DIGITS);
  }

  private static MessageDigest sha() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Path place(Class<?> of) {
    try {
      return Path.of(of.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * @param place a folder of classes or a jar
   */
  static void add(MessageDigest sha, Path place) {
    try {
      if (Files.isDirectory(place)) {
        folder(sha, place);
      } else {
        jar(sha, place);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(place + ": the program's own classes can't be read", e);
    }
  }

  private static void folder(MessageDigest sha, Path place) throws IOException {
    List<Path> files;
    try (Stream<Path> walk = Files.walk(place)) {
      files = walk.filter(Files::isRegularFile).sorted().toList();
    }
    for (Path file : files) {
      String name = place.relativize(file).toString().replace('\\', '/');
      if (matters(name)) {
        CRC32 sum = new CRC32();
        sum.update(Files.readAllBytes(file));
        name(sha, name + " " + sum.getValue());
      }
    }
  }

  /** No entry is unpacked. */
  private static void jar(MessageDigest sha, Path place) throws IOException {
    try (ZipFile zip = new ZipFile(place.toFile())) {
      List<? extends ZipEntry> entries =
          zip.stream().sorted(java.util.Comparator.comparing(ZipEntry::getName)).toList();
      for (ZipEntry e : entries) {
        if (matters(e.getName())) {
          name(sha, e.getName() + " " + e.getCrc());
        }
      }
    }
  }

  private static void name(MessageDigest sha, String name) {
    sha.update(name.getBytes(StandardCharsets.UTF_8));
    sha.update((byte) 0);
  }

  /** Of ours, and of a package that runs go through. */
  static boolean matters(String name) {
    String[] parts = name.split("/", -1);
    return parts.length > 2 && parts[0].equals("gelfront") && !NO_MATTER.contains(parts[1]);
  }
}
