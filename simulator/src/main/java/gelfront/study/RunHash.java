// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.material.ViscosityCurve;
import gelfront.mesh.TriangleMesh;
import gelfront.setup.Case;
import java.lang.reflect.RecordComponent;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * SHA-256 over all that a run depends on: the program's version, the part's mesh as it was read,
 * and every field of the case but names, paths, warnings and limits, which no run depends on.
 * Records are walked field by field, so that a field that is added to one counts at once.
 */
final class RunHash {
  /** Fields of {@link Case} that change no run. */
  private static final Set<String> NO_MATTER = Set.of("name", "part", "warnings", "limits");

  private final MessageDigest digest;

  private RunHash() {
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Hexadecimal digits. */
  static String of(TriangleMesh mesh) {
    RunHash h = new RunHash();
    ByteBuffer b = ByteBuffer.allocate(24);
    for (int v = 0; v < mesh.vertexCount(); v++) {
      b.clear();
      for (int axis = 0; axis < 3; axis++) {
        b.putDouble(mesh.coordinate(v, axis));
      }
      h.digest.update(b.flip());
    }
    for (int t = 0; t < mesh.triangleCount(); t++) {
      b.clear();
      for (int c = 0; c < 3; c++) {
        b.putInt(mesh.corner(t, c));
      }
      h.digest.update(b.flip());
    }
    return h.hex();
  }

  /**
   * @param version of the program
   * @param part hash of its mesh
   * @return hexadecimal digits
   */
  static String of(String version, String part, Case c) {
    RunHash h = new RunHash();
    h.add(version);
    h.add(part);
    for (RecordComponent f : Case.class.getRecordComponents()) {
      if (!NO_MATTER.contains(f.getName())) {
        h.field(f, c);
      }
    }
    return h.hex();
  }

  private String hex() {
    return HexFormat.of().formatHex(digest.digest());
  }

  private void add(String word) {
    byte[] bytes = word.getBytes(StandardCharsets.UTF_8);
    digest.update(ByteBuffer.allocate(4).putInt(bytes.length).flip());
    digest.update(bytes);
  }

  private void field(RecordComponent f, Object of) {
    add(f.getName());
    try {
      value(f.getAccessor().invoke(of));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("a field of a case can't be read: " + f, e);
    }
  }

  private void value(Object v) {
    if (v instanceof Double || v instanceof Integer || v instanceof Boolean || v instanceof Enum) {
      add(v.toString()); // a double's text is exact
    } else if (v instanceof String s) {
      add(s);
    } else if (v instanceof Path) {
      add("a file"); // its content counts, which stands beside it
    } else if (v instanceof OptionalDouble o) {
      add(o.toString());
    } else if (v instanceof Optional<?> o) {
      add(o.isPresent() ? "is" : "none");
      o.ifPresent(this::value);
    } else if (v instanceof List<?> l) {
      add("list " + l.size());
      l.forEach(this::value);
    } else if (v instanceof ViscosityCurve curve) {
      add(java.util.Arrays.deepToString(curve.points()));
    } else {
      record(v);
    }
  }

  private void record(Object v) {
    if (v == null || !v.getClass().isRecord()) {
      throw new IllegalStateException("a case holds what can't be hashed: " + v);
    }
    add(v.getClass().getSimpleName());
    for (RecordComponent f : v.getClass().getRecordComponents()) {
      field(f, v);
    }
  }
}
