package gelfront.mesh.io;

import gelfront.mesh.Box;
import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads and writes mesh files. */
public final class MeshFiles {
  private static final List<MeshReader> READERS = List.of(new BinaryStl(), new AsciiStl());

  /** Longest side, metres, between which a part's unit needs no asking. */
  private static final double SMALLEST = 5e-3;

  private static final double LARGEST = 1;

  /** Longer than this, metres, no stated unit makes sense, and volumes soon overflow. */
  private static final double ABSURD = 100;

  private MeshFiles() {}

  /**
   * @param unit of the file; absent: millimetres, if the size is plausible for a part
   * @throws MeshException with file, reason and place
   */
  public static TriangleMesh read(Path file, Optional<LengthUnit> unit) {
    String name = String.valueOf(file.getFileName());
    byte[] content = content(file, name);
    try {
      MeshReader reader =
          READERS.stream()
              .filter(r -> r.claims(content))
              .findFirst()
              .orElseThrow(() -> new MeshException("not an STL file, neither binary nor text"));
      TriangleMesh mesh = reader.read(content, unit.orElse(LengthUnit.MM).metres());
      double longest = longest(mesh.box());
      if (unit.isEmpty()) {
        checkSize(longest);
      }
      if (longest > ABSURD) {
        throw new MeshException(
            String.format(Locale.ROOT, "the part would be %.4g m long", longest));
      }
      return mesh;
    } catch (MeshException e) {
      throw e.in(name);
    }
  }

  private static byte[] content(Path file, String name) {
    if (!Files.exists(file)) {
      throw new MeshException(file + ": there is no such file");
    }
    if (!Files.isRegularFile(file)) {
      throw new MeshException(file + ": is not a file");
    }
    try {
      byte[] content = Files.readAllBytes(file);
      if (content.length == 0) {
        throw new MeshException(name + ": the file is empty");
      }
      return content;
    } catch (IOException e) {
      throw new MeshException(file + ": can't be read: " + e.getMessage());
    }
  }

  private static double longest(Box box) {
    Vec3 s = box.size();
    return Math.max(s.x(), Math.max(s.y(), s.z()));
  }

  private static void checkSize(double longest) {
    if (longest < SMALLEST) {
      throw new MeshException(
          String.format(
              Locale.ROOT,
              "taken as millimetres the part would be only %.3g mm long; it looks like %s: state the"
                  + " unit (mm, cm, m or inch)",
              longest * 1e3,
              longest < 0.5e-3 ? "metres" : "inches"));
    }
    if (longest > LARGEST) {
      throw new MeshException(
          String.format(
              Locale.ROOT,
              "taken as millimetres the part would be %.4g mm long, more than a metre; it looks like"
                  + " another unit: state the unit (mm, cm, m or inch)",
              longest * 1e3));
    }
  }

  /** Writes binary STL. */
  public static void writeStl(TriangleMesh mesh, OutputStream to, LengthUnit unit)
      throws IOException {
    OutputStream out = new BufferedOutputStream(to, 1 << 16);
    ByteBuffer b = ByteBuffer.allocate(BinaryStl.HEAD).order(ByteOrder.LITTLE_ENDIAN);
    b.put(
        "binary STL, one unit is one "
            .concat(unit.name())
            .getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    b.putInt(80, mesh.triangleCount());
    out.write(b.array());
    for (int t = 0; t < mesh.triangleCount(); t++) {
      ByteBuffer tri = ByteBuffer.allocate(BinaryStl.TRIANGLE).order(ByteOrder.LITTLE_ENDIAN);
      put(tri, normal(mesh, t), 1);
      for (int c = 0; c < 3; c++) {
        put(tri, mesh.vertex(mesh.corner(t, c)), unit.metres());
      }
      out.write(tri.array());
    }
    out.flush();
  }

  private static Vec3 normal(TriangleMesh m, int t) {
    Vec3 a = m.vertex(m.corner(t, 0));
    Vec3 n = m.vertex(m.corner(t, 1)).minus(a).cross(m.vertex(m.corner(t, 2)).minus(a));
    return n.length() > 0 ? n.unit() : Vec3.ZERO;
  }

  private static void put(ByteBuffer b, Vec3 v, double metres) {
    b.putFloat((float) (v.x() / metres));
    b.putFloat((float) (v.y() / metres));
    b.putFloat((float) (v.z() / metres));
  }
}
