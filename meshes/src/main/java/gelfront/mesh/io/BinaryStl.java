// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Binary STL: 80 bytes of header, a count, then 50 bytes a triangle, little-endian (source as in
 * {@link AsciiStl}). A count that is too low with whole triangles behind it, and bytes behind the
 * last triangle, are taken for what sloppy programs write, and told; a count that is too high means
 * that something is missing.
 */
final class BinaryStl implements MeshReader {
  static final int HEAD = 84;
  static final int TRIANGLE = 50;

  @Override
  public boolean claims(byte[] content) {
    if (content.length < HEAD) {
      return false;
    }
    // A text file that happens to be long enough is text; a true count settles it for binary.
    return content.length - (long) HEAD == count(content) * TRIANGLE
        || !AsciiStl.looksLikeText(content);
  }

  private static long count(byte[] content) {
    return Integer.toUnsignedLong(
        ByteBuffer.wrap(content, 80, 4).order(ByteOrder.LITTLE_ENDIAN).getInt());
  }

  @Override
  public RawMesh read(byte[] content, Optional<LengthUnit> stated) {
    List<String> notes = new ArrayList<>();
    int count = triangles(content, notes);
    ByteBuffer b = ByteBuffer.wrap(content).order(ByteOrder.LITTLE_ENDIAN);
    MeshAssembler mesh = new MeshAssembler(MeshReader.metres(stated), count);
    for (int t = 0; t < count; t++) {
      int at = HEAD + t * TRIANGLE + 12;
      for (int c = 0; c < 3; c++, at += 12) {
        mesh.corner(
            finite(b.getFloat(at), t, at),
            finite(b.getFloat(at + 4), t, at + 4),
            finite(b.getFloat(at + 8), t, at + 8));
      }
    }
    return RawMesh.of(mesh.mesh(), notes);
  }

  /** How many triangles are read: never more than the file holds. */
  private static int triangles(byte[] content, List<String> notes) {
    long count = count(content);
    long body = (long) content.length - HEAD;
    long fits = body / TRIANGLE;
    long spare = body % TRIANGLE;
    if (fits == 0 && (count == 0 || spare == 0)) {
      throw new MeshException("no triangles in it");
    }
    if (count > fits || (spare != 0 && count == 0)) {
      throw new MeshException(
          String.format(
              Locale.ROOT,
              "byte 80: the header promises %d triangles, but the file holds %d and %d bytes more%s",
              count,
              fits,
              spare,
              fits < count ? ": it is cut short" : ""));
    }
    if (spare == 0 && count < fits) {
      notes.add(
          String.format(
              Locale.ROOT,
              "the header promises %d triangles, the file holds %d: all were taken",
              count,
              fits));
      return (int) fits;
    }
    if (body > count * TRIANGLE) {
      notes.add((body - count * TRIANGLE) + " bytes after the last triangle were not read");
    }
    return (int) count;
  }

  private static double finite(float f, int triangle, int at) {
    if (!Float.isFinite(f)) {
      throw new MeshException(
          "triangle " + (triangle + 1) + " (byte " + at + "): a coordinate is " + f);
    }
    return f;
  }
}
