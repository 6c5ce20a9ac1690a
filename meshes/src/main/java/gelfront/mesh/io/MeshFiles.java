// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.Box;
import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads and writes mesh files. */
public final class MeshFiles {
  private static final List<MeshReader> READERS =
      List.of(new ThreeMf(), new Ply(), new BinaryStl(), new AsciiStl(), new Obj());

  /** Longest side, metres, between which a part's unit needs no asking. */
  private static final double SMALLEST = 5e-3;

  private static final double LARGEST = 1;

  /** Longer than this, metres, no stated unit makes sense, and volumes soon overflow. */
  private static final double ABSURD = 100;

  /** Step between numbers, in lengths of the part, from which it is told. */
  private static final double COARSE = 1e-5;

  /** Bytes of a file; five million triangles as text take 1.3 GiB. */
  static final int MOST_BYTES = Integer.MAX_VALUE - 64;

  /** Bytes that files which tell no size may have. */
  private static final int UNSIZED = 1 << 20;

  private MeshFiles() {}

  /**
   * @param unit of the file; absent: its own, else millimetres, if the size is plausible for a part
   * @throws MeshException with file, reason and place
   */
  public static TriangleMesh read(Path file, Optional<LengthUnit> unit) {
    return load(file, unit).mesh();
  }

  /** As {@link #read}, with notes on what in the file was odd and how it was taken. */
  public static RawMesh load(Path file, Optional<LengthUnit> unit) {
    return load(file, unit, unit.isEmpty());
  }

  /** As {@link #load}, of whatever size: for whoever is to find out the unit. */
  public static RawMesh unsized(Path file) {
    return load(file, Optional.empty(), false);
  }

  private static RawMesh load(Path file, Optional<LengthUnit> unit, boolean sized) {
    String name = printable(String.valueOf(file.getFileName()));
    byte[] content = content(file, name);
    try {
      RawMesh raw = reader(content).read(content, unit);
      double longest = longest(raw.mesh().box());
      if (sized) {
        checkSize(longest, raw.own());
      }
      if (longest > ABSURD) {
        throw new MeshException(
            String.format(Locale.ROOT, "the part would be %.4g m long", longest));
      }
      return withPlace(raw, longest);
    } catch (MeshException e) {
      throw e.in(name);
    } catch (OutOfMemoryError e) {
      throw new MeshException(name + ": " + noRoom(content.length));
    }
  }

  /** Far from the origin single precision, which most files have, leaves few digits. */
  private static RawMesh withPlace(RawMesh raw, double longest) {
    Box box = raw.mesh().box();
    double far = Math.max(largest(box.min()), largest(box.max()));
    double step = Math.ulp((float) far);
    if (step < COARSE * longest) {
      return raw;
    }
    List<String> notes = new ArrayList<>(raw.notes());
    notes.add(
        String.format(
            Locale.ROOT,
            "the part lies %.3g m from the origin, where numbers of single precision are %.2g mm"
                + " apart: draw it nearer",
            far,
            step * 1e3));
    return new RawMesh(raw.mesh(), raw.own(), notes);
  }

  private static double largest(Vec3 p) {
    return Math.max(Math.abs(p.x()), Math.max(Math.abs(p.y()), Math.abs(p.z())));
  }

  private static MeshReader reader(byte[] content) {
    if (content.length > 1 && (content[0] & content[1] & 0xFF) >= 0xFE) {
      throw new MeshException("text of 16 bits a letter: save it as plain text or binary");
    }
    Optional<String> other = OtherKinds.of(content);
    if (other.isPresent()) {
      throw new MeshException(other.get());
    }
    return READERS.stream()
        .filter(r -> r.claims(content))
        .findFirst()
        .orElseThrow(
            () -> new MeshException("not an STL, 3MF, OBJ or PLY file, neither binary nor text"));
  }

  private static byte[] content(Path file, String name) {
    if (!Files.exists(file)) {
      throw new MeshException(printable(file.toString()) + ": there is no such file");
    }
    if (!Files.isRegularFile(file)) {
      throw new MeshException(printable(file.toString()) + ": is not a file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      long size = Files.size(file);
      if (size > MOST_BYTES) {
        throw new MeshException(name + ": " + (size >> 20) + " MiB are more than a mesh file has");
      }
      // What is read never grows beyond what was set aside, whatever the file does meanwhile.
      byte[] content = new byte[size > 0 ? (int) size : UNSIZED];
      int n = in.readNBytes(content, 0, content.length);
      if (n == 0) {
        throw new MeshException(name + ": the file is empty");
      }
      return n == content.length ? content : Arrays.copyOf(content, n);
    } catch (IOException e) {
      throw new MeshException(printable(file.toString()) + ": can't be read: " + e.getMessage());
    } catch (OutOfMemoryError e) {
      throw new MeshException(name + ": " + noRoom(0));
    }
  }

  private static String noRoom(long size) {
    return String.format(
        Locale.ROOT,
        "needs more memory than Java may use (%d MiB%s): start it with"
            + " GELFRONT_JAVA_OPTS=-Xmx and more",
        Runtime.getRuntime().maxMemory() >> 20,
        size == 0 ? "" : ", the file itself " + (size >> 20));
  }

  /** A name for a message: without anything that a terminal might obey. */
  private static String printable(String name) {
    return name.replaceAll("[\\p{Cc}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]", "\ufffd");
  }

  private static double longest(Box box) {
    Vec3 s = box.size();
    return Math.max(s.x(), Math.max(s.y(), s.z()));
  }

  private static void checkSize(double longest, Optional<LengthUnit> own) {
    if (longest >= SMALLEST && longest <= LARGEST) {
      return;
    }
    String taken =
        own.map(u -> "by the unit that the file states, " + u.word() + ",")
            .orElse("taken as millimetres");
    String how =
        longest < SMALLEST
            ? String.format(
                Locale.ROOT,
                "only %.3g mm long; it looks like %s",
                longest * 1e3,
                longest < 0.5e-3 ? "metres" : "inches")
            : String.format(
                Locale.ROOT,
                "%.4g mm long, more than a metre; it looks like another unit",
                longest * 1e3);
    throw new MeshException(
        taken
            + " the part would be "
            + how
            + ": "
            + (own.isEmpty()
                ? "state the unit (mm, cm, m or inch)"
                : "if that is right, state the unit too"));
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
