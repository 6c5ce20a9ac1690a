// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.mesh.io.LengthUnit;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/** The mesh files of the [block] table. */
final class MouldMeshReader {
  private final CaseTable table;
  private final Path folder;

  /**
   * @param folder that mesh files are looked for in
   */
  MouldMeshReader(CaseTable table, Path folder) {
    this.table = table;
    this.folder = folder;
  }

  /** Absent where none is stated, or not all of them can be had. */
  Optional<MouldMesh> read() {
    Optional<LengthUnit> unit = PartReader.unit(table);
    if (!table.has("mesh")) {
      if (table.has("unit")) {
        table.mistake("unit", "unit belongs to a mesh of the block, and there is none");
      }
      return Optional.empty();
    }
    List<Path> files = PartReader.paths(table, folder);
    if (files.isEmpty() || !files.stream().allMatch(Files::isRegularFile)) {
      return Optional.empty();
    }
    try {
      return Optional.of(new MouldMesh(files, unit, hash(files)));
    } catch (IOException e) {
      table.mistake("mesh", "can't be read: " + e.getMessage());
      return Optional.empty();
    }
  }

  /** Hexadecimal digits: a run depends on what the files hold, not on their names. */
  private static String hash(List<Path> files) throws IOException {
    MessageDigest digest;
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
    for (Path file : files) {
      try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
        in.transferTo(java.io.OutputStream.nullOutputStream());
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }
}
