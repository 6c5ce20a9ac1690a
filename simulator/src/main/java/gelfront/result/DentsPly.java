// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import gelfront.mesh.TriangleMesh;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * {@code dents.ply}: the part with its dents as colour and values, binary little-endian PLY 1.0 in
 * millimetres (Turk, The PLY Polygon File Format, 1994). Vertices lie where the cavity is; the
 * depth tells how far they are pulled in.
 */
final class DentsPly {
  static final String FILE = "dents.ply";

  private static final double MM = 1e3;
  private static final int VERTEX = 6 * 4 + 3;
  private static final int FACE = 1 + 3 * 4;
  private static final String HEAD =
      """
      ply
      format binary_little_endian 1.0
      comment gelfront: millimetres; depth inwards, even shrinkage taken off
      element vertex %d
      property float x
      property float y
      property float z
      property uchar red
      property uchar green
      property uchar blue
      property float depth_mm
      property float depth_low_mm
      property float depth_high_mm
      element face %d
      property list uchar int vertex_indices
      end_header
      """;

  private DentsPly() {}

  /** Writes and leaves {@code out} open. */
  static void write(DentSurface s, double visible, OutputStream out) throws IOException {
    TriangleMesh m = s.mesh();
    int n = m.vertexCount();
    out.write(
        String.format(Locale.ROOT, HEAD, n, m.triangleCount()).getBytes(StandardCharsets.US_ASCII));
    ByteBuffer b = ByteBuffer.allocate(VERTEX * n + FACE * m.triangleCount());
    b.order(ByteOrder.LITTLE_ENDIAN);
    for (int v = 0; v < n; v++) {
      for (int a = 0; a < 3; a++) {
        b.putFloat((float) (MM * m.coordinate(v, a)));
      }
      int rgb = DentColour.of(s.depth()[v], visible);
      b.put((byte) (rgb >> 16)).put((byte) (rgb >> 8)).put((byte) rgb);
      b.putFloat((float) (MM * s.depth()[v]));
      b.putFloat((float) (MM * s.low()[v]));
      b.putFloat((float) (MM * s.high()[v]));
    }
    for (int t = 0; t < m.triangleCount(); t++) {
      b.put((byte) 3).putInt(m.corner(t, 0)).putInt(m.corner(t, 1)).putInt(m.corner(t, 2));
    }
    out.write(b.array());
  }

  /**
   * Reads what {@link #write} wrote; depths come back to the float's precision.
   *
   * @throws ResultException if it is another file
   */
  static DentSurface read(InputStream in) throws IOException {
    byte[] all = in.readAllBytes();
    String text = new String(all, 0, Math.min(all.length, 1000), StandardCharsets.US_ASCII);
    int end = text.indexOf("end_header\n") + "end_header\n".length();
    if (!text.startsWith("ply\n") || end < "end_header\n".length()) {
      throw new EOFException("no head");
    }
    int n = count(text, "vertex");
    int m = count(text, "face");
    String head = String.format(Locale.ROOT, HEAD, n, m);
    if (!text.startsWith(head)) {
      throw new ResultException("damaged: not the head that gelfront writes");
    }
    if (all.length - end != (long) VERTEX * n + (long) FACE * m) {
      throw new EOFException("its " + n + " vertices and " + m + " faces don't fill it");
    }
    try {
      return body(ByteBuffer.wrap(all, end, all.length - end), n, m);
    } catch (IllegalArgumentException e) {
      throw new ResultException("damaged: " + e.getMessage(), e);
    }
  }

  private static int count(String head, String element) throws IOException {
    String at = "element " + element + " ";
    String rest = head.substring(head.indexOf(at) + at.length());
    try {
      return Integer.parseInt(rest.substring(0, Math.max(0, rest.indexOf('\n'))));
    } catch (NumberFormatException e) {
      throw new ResultException("damaged: no number of " + element + " elements", e);
    }
  }

  private static DentSurface body(ByteBuffer b, int n, int m) {
    b.order(ByteOrder.LITTLE_ENDIAN);
    double[] vertices = new double[3 * n];
    float[] depth = new float[n];
    float[] low = new float[n];
    float[] high = new float[n];
    for (int v = 0; v < n; v++) {
      for (int a = 0; a < 3; a++) {
        vertices[3 * v + a] = b.getFloat() / MM;
      }
      b.position(b.position() + 3);
      depth[v] = (float) (b.getFloat() / MM);
      low[v] = (float) (b.getFloat() / MM);
      high[v] = (float) (b.getFloat() / MM);
    }
    int[] corners = new int[3 * m];
    for (int t = 0; t < m; t++) {
      b.get();
      for (int c = 0; c < 3; c++) {
        corners[3 * t + c] = b.getInt();
      }
    }
    return new DentSurface(new TriangleMesh(vertices, corners), depth, low, high);
  }
}
