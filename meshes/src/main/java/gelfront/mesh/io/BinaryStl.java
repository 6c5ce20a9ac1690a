package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Locale;

/** Binary STL: 80 bytes of header, a count, then 50 bytes a triangle, little-endian. */
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
  public TriangleMesh read(byte[] content, double metres) {
    long count = count(content);
    long body = (long) content.length - HEAD;
    long fits = body / TRIANGLE;
    if (count == 0 && fits == 0) {
      throw new MeshException("no triangles in it");
    }
    if (count != fits || body != count * TRIANGLE) {
      throw new MeshException(
          String.format(
              Locale.ROOT,
              "byte 80: the header promises %d triangles, but the file holds %d and %d bytes more%s",
              count,
              fits,
              body % TRIANGLE,
              fits < count ? ": it is cut short" : ""));
    }
    ByteBuffer b = ByteBuffer.wrap(content).order(ByteOrder.LITTLE_ENDIAN);
    MeshAssembler mesh = new MeshAssembler(metres, (int) count);
    for (int t = 0; t < count; t++) {
      int at = HEAD + t * TRIANGLE + 12;
      for (int c = 0; c < 3; c++, at += 12) {
        mesh.corner(
            finite(b.getFloat(at), t, at),
            finite(b.getFloat(at + 4), t, at + 4),
            finite(b.getFloat(at + 8), t, at + 8));
      }
    }
    return mesh.mesh();
  }

  private static double finite(float f, int triangle, int at) {
    if (!Float.isFinite(f)) {
      throw new MeshException(
          "triangle " + (triangle + 1) + " (byte " + at + "): a coordinate is " + f);
    }
    return f;
  }
}
