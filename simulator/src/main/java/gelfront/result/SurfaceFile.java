// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * {@code surface.stl}: binary STL in millimetres. Vertices that are the same three floats are one
 * vertex again when it is read; nothing else is welded, so a closed surface comes back closed and
 * an open one open.
 */
final class SurfaceFile {
  private static final double MM = 1e3;
  private static final int HEAD = 80;
  private static final int BYTES_PER_TRIANGLE = 50;

  private SurfaceFile() {}

  /** Writes and leaves {@code out} open. */
  static void write(TriangleMesh mesh, OutputStream out) throws IOException {
    int n = mesh.triangleCount();
    ByteBuffer bytes =
        ByteBuffer.allocate(HEAD + 4 + BYTES_PER_TRIANGLE * n).order(ByteOrder.LITTLE_ENDIAN);
    bytes.put("gelfront part and feed, millimetres".getBytes(StandardCharsets.US_ASCII));
    bytes.position(HEAD);
    bytes.putInt(n);
    for (int t = 0; t < n; t++) {
      put(normal(mesh, t), 1, bytes);
      for (int c = 0; c < 3; c++) {
        put(mesh.vertex(mesh.corner(t, c)), MM, bytes);
      }
      bytes.putShort((short) 0);
    }
    out.write(bytes.array());
  }

  private static Vec3 normal(TriangleMesh mesh, int t) {
    Vec3 a = mesh.vertex(mesh.corner(t, 0));
    Vec3 n = mesh.vertex(mesh.corner(t, 1)).minus(a).cross(mesh.vertex(mesh.corner(t, 2)).minus(a));
    return n.length() > 0 ? n.times(1 / n.length()) : Vec3.ZERO;
  }

  private static void put(Vec3 v, double scale, ByteBuffer bytes) {
    bytes.putFloat((float) (scale * v.x()));
    bytes.putFloat((float) (scale * v.y()));
    bytes.putFloat((float) (scale * v.z()));
  }

  /**
   * Reads what {@link #write} wrote.
   *
   * @throws EOFException if it ends before its last triangle
   * @throws ResultException if it holds more, or a coordinate that is no number
   */
  static TriangleMesh read(InputStream in) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(in.readAllBytes()).order(ByteOrder.LITTLE_ENDIAN);
    if (bytes.limit() < HEAD + 4) {
      throw new EOFException("no head");
    }
    long n = Integer.toUnsignedLong(bytes.getInt(HEAD));
    long told = HEAD + 4 + BYTES_PER_TRIANGLE * n;
    if (bytes.limit() < told) {
      throw new EOFException("holds fewer than its " + n + " triangles");
    }
    if (bytes.limit() > told) {
      throw new ResultException("damaged: more bytes than its " + n + " triangles need");
    }
    try {
      return weld(bytes, (int) n);
    } catch (IllegalArgumentException e) {
      throw new ResultException("damaged: " + e.getMessage(), e);
    }
  }

  private record Key(float x, float y, float z) {}

  private static TriangleMesh weld(ByteBuffer bytes, int n) {
    Map<Key, Integer> seen = new HashMap<>();
    double[] vertices = new double[9 * n];
    int[] corners = new int[3 * n];
    for (int c = 0; c < 3 * n; c++) {
      int at = HEAD + 4 + BYTES_PER_TRIANGLE * (c / 3) + 12 + 12 * (c % 3);
      Key key = new Key(bytes.getFloat(at), bytes.getFloat(at + 4), bytes.getFloat(at + 8));
      int next = seen.size();
      corners[c] = seen.computeIfAbsent(key, k -> next);
      if (corners[c] == next) {
        vertices[3 * next] = key.x() / MM;
        vertices[3 * next + 1] = key.y() / MM;
        vertices[3 * next + 2] = key.z() / MM;
      }
    }
    return new TriangleMesh(Arrays.copyOf(vertices, 3 * seen.size()), corners);
  }
}
