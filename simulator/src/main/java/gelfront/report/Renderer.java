// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.Arrays;

/**
 * Draws a closed mesh cut open by a plane, without a display: a z-buffer with 2 x 2 samples a
 * pixel. Faces behind the cut are counted along each ray, back faces up, front faces down: where
 * the count is above zero, the ray has met the cut inside a solid, and the cut face is seen there,
 * coloured by the paint; elsewhere the nearest face is seen as skin (grey). So solids may overlap,
 * as part, gate and sprue do. Needs faces that look outwards; where a surface is open or turned
 * inside out the wrong one of the two is drawn.
 */
final class Renderer {
  static final int SAMPLES = 2;

  private static final int BACKGROUND = 0xFBFAF6;
  private static final int EDGE = 0x2A2F33;
  private static final byte NOTHING = 0;
  private static final byte SKIN = 1;
  private static final byte FACE = 2;
  private static final double CREASE = 0.75;

  /** Samples by which an edge may miss a row that its triangle still touches by rounding. */
  private static final double REACH = 1e-6;

  private final ShownMesh mesh;
  private final View view;
  private final Cut cut;
  private final Paint paint;
  private final int w;
  private final int h;
  private final float[] depth;
  private final int[] nearest;

  /** Solids that the cut goes through at a sample. */
  private final byte[] inside;

  private final double[] plane = new double[3];
  private final Vec3 light;

  private Renderer(ShownMesh mesh, View view, Cut cut, Paint paint) {
    this.mesh = mesh;
    this.view = view;
    this.cut = cut;
    this.paint = paint;
    this.w = view.width() * SAMPLES;
    this.h = view.height() * SAMPLES;
    this.depth = new float[w * h];
    this.nearest = new int[w * h];
    this.inside = new byte[w * h];
    this.light =
        view.toward()
            .times(0.62)
            .plus(view.up().times(0.66))
            .minus(view.right().times(0.42))
            .unit();
  }

  /**
   * @return 0xRRGGBB, rows from the top
   */
  static int[] draw(ShownMesh mesh, View view, Cut cut, Paint paint) {
    Renderer r = new Renderer(mesh, view, cut, paint);
    r.findCutDepth();
    r.raster();
    return r.shade();
  }

  /** Depth of the cut plane is linear over the picture: a + b x + c y, or everywhere infinite. */
  private void findCutDepth() {
    double nt = cut.normal().dot(view.toward());
    double s = view.scale() * SAMPLES;
    double at = -cut.distance(view.centre());
    double nr = cut.normal().dot(view.right());
    double nu = cut.normal().dot(view.up());
    plane[1] = -nr / (nt * s);
    plane[2] = nu / (nt * s);
    plane[0] = at / nt - plane[1] * (w / 2.0) - plane[2] * (h / 2.0);
  }

  private double cutDepth(int x, int y) {
    return plane[0] + plane[1] * (x + 0.5) + plane[2] * (y + 0.5);
  }

  private void raster() {
    Arrays.fill(depth, Float.NEGATIVE_INFINITY);
    Arrays.fill(nearest, -1);
    TriangleMesh m = mesh.mesh();
    double[] seen = new double[3 * m.vertexCount()];
    for (int v = 0; v < m.vertexCount(); v++) {
      Vec3 p = m.vertex(v);
      seen[3 * v] = view.x(p) * SAMPLES;
      seen[3 * v + 1] = view.y(p) * SAMPLES;
      seen[3 * v + 2] = view.depth(p);
    }
    for (int t = 0; t < m.triangleCount(); t++) {
      rasterOne(t, seen, 3 * m.corner(t, 0), 3 * m.corner(t, 1), 3 * m.corner(t, 2));
    }
  }

  /**
   * Keeps, for every sample in the triangle and behind the cut, the nearer of it and what is there.
   *
   * @param seen x, y in samples and depth in metres of vertex 0, then of vertex 1, ...
   * @param a where in {@code seen} the corners begin
   */
  private void rasterOne(int t, double[] seen, int a, int b, int c) {
    double ax = seen[a];
    double ay = seen[a + 1];
    double bx = seen[b];
    double by = seen[b + 1];
    double cx = seen[c];
    double cy = seen[c + 1];
    double area = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
    int x0 = (int) Math.max(0, Math.floor(Math.min(ax, Math.min(bx, cx)) - 0.5));
    int x1 = (int) Math.min(w - 1.0, Math.ceil(Math.max(ax, Math.max(bx, cx)) - 0.5));
    int y0 = (int) Math.max(0, Math.floor(Math.min(ay, Math.min(by, cy)) - 0.5));
    int y1 = (int) Math.min(h - 1.0, Math.ceil(Math.max(ay, Math.max(by, cy)) - 0.5));
    if (Math.abs(area) < 1e-12 || x1 < x0 || y1 < y0) {
      return;
    }
    byte side = (byte) (area > 0 ? 1 : -1);
    double za = seen[a + 2];
    double zb = seen[b + 2] - za;
    double zc = seen[c + 2] - za;
    for (int y = y0; y <= y1; y++) {
      double sy = y + 0.5;
      int from = Math.max(x0, (int) Math.floor(leftmost(sy, ax, ay, bx, by, cx, cy)) - 1);
      int to = Math.min(x1, (int) Math.ceil(-leftmost(sy, -ax, ay, -bx, by, -cx, cy)));
      for (int x = from; x <= to; x++) {
        double sx = x + 0.5;
        double wb = ((cx - sx) * (ay - sy) - (ax - sx) * (cy - sy)) / area;
        double wc = ((ax - sx) * (by - sy) - (bx - sx) * (ay - sy)) / area;
        if (wb >= 0 && wc >= 0 && wb + wc <= 1) {
          float z = (float) (za + wb * zb + wc * zc);
          int at = y * w + x;
          if (z <= cutDepth(x, y)) {
            inside[at] += side;
            if (z > depth[at]) {
              depth[at] = z;
              nearest[at] = t;
            }
          }
        }
      }
    }
  }

  /**
   * Smallest x of a triangle's outline on a row, so that long slanting triangles cost what they
   * cover and not what their box does; the row's own test decides.
   */
  private static double leftmost(
      double y, double ax, double ay, double bx, double by, double cx, double cy) {
    return Math.min(
        onEdge(y, ax, ay, bx, by), Math.min(onEdge(y, bx, by, cx, cy), onEdge(y, cx, cy, ax, ay)));
  }

  /** Where an edge crosses a row; infinite where it doesn't. */
  private static double onEdge(double y, double ax, double ay, double bx, double by) {
    double low = Math.min(ay, by) - REACH;
    double high = Math.max(ay, by) + REACH;
    if (y < low || y > high) {
      return Double.POSITIVE_INFINITY;
    }
    if (Math.abs(by - ay) < REACH) {
      return Math.min(ax, bx);
    }
    return ax + Math.max(0, Math.min(1, (y - ay) / (by - ay))) * (bx - ax);
  }

  private int[] shade() {
    byte[] kind = new byte[w * h];
    int[] colour = new int[w * h];
    Arrays.fill(colour, BACKGROUND);
    Paint.Canvas canvas = new Paint.Canvas(w, h);
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        int at = y * w + x;
        int t = nearest[at];
        if (inside[at] > 0) {
          kind[at] = FACE;
          face(x, y, at, canvas);
          colour[at] = canvas.colour(at);
        } else if (t >= 0) {
          kind[at] = SKIN;
          colour[at] = skin(t, place(x, y, depth[at]));
        }
      }
    }
    canvas.drawLines(colour);
    outline(kind, colour);
    return averaged(colour);
  }

  private Vec3 place(int x, int y, double z) {
    double s = view.scale() * SAMPLES;
    return view.centre()
        .plus(view.right().times((x + 0.5 - w / 2.0) / s))
        .plus(view.up().times((h / 2.0 - y - 0.5) / s))
        .plus(view.toward().times(z));
  }

  /** As {@link #place} on the cut, without objects: most samples of most pictures come here. */
  private void face(int x, int y, int at, Paint.Canvas canvas) {
    double s = 1 / (view.scale() * SAMPLES);
    double r = (x + 0.5 - w / 2.0) * s;
    double u = (h / 2.0 - y - 0.5) * s;
    double z = cutDepth(x, y);
    Vec3 c = view.centre();
    Vec3 i = view.right();
    Vec3 j = view.up();
    Vec3 k = view.toward();
    paint.look(
        c.x() + r * i.x() + u * j.x() + z * k.x(),
        c.y() + r * i.y() + u * j.y() + z * k.y(),
        c.z() + r * i.z() + u * j.z() + z * k.z(),
        at,
        canvas);
  }

  private int skin(int t, Vec3 at) {
    Vec3 flat = mesh.faceNormal(t);
    Vec3 smooth = mesh.smoothNormal(t, at);
    Vec3 n = smooth.dot(flat) > CREASE ? smooth : flat;
    double lit = 0.40 + 0.52 * Math.max(0, n.dot(light)) + 0.06 * n.dot(view.toward());
    int g = (int) Math.round(Math.min(1, lit) * 232);
    return g << 16 | Math.min(255, g + 2) << 8 | Math.min(255, g + 1);
  }

  private static void outlineAt(int at, int other, byte[] kind, int[] colour) {
    if (kind[at] != kind[other]) {
      colour[kind[at] == NOTHING ? other : at] = EDGE;
    }
  }

  private void outline(byte[] kind, int[] colour) {
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        int at = y * w + x;
        if (x + 1 < w) {
          outlineAt(at, at + 1, kind, colour);
        }
        if (y + 1 < h) {
          outlineAt(at, at + w, kind, colour);
        }
      }
    }
  }

  private int[] averaged(int[] colour) {
    int[] out = new int[view.width() * view.height()];
    for (int y = 0; y < view.height(); y++) {
      for (int x = 0; x < view.width(); x++) {
        int at = SAMPLES * (y * w + x);
        out[y * view.width() + x] =
            mean(colour[at], colour[at + 1], colour[at + w], colour[at + w + 1]);
      }
    }
    return out;
  }

  private static int mean(int a, int b, int c, int d) {
    int rgb = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int sum = (a >> shift & 255) + (b >> shift & 255) + (c >> shift & 255) + (d >> shift & 255);
      rgb |= ((sum + 2) / 4) << shift;
    }
    return rgb;
  }
}
