// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.result.Fields.Snapshot;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;

/**
 * What the page's script draws from, as JSON of numbers and base64 alone. Millimetres, seconds, °C;
 * packed numbers little-endian.
 *
 * <pre>
 * size, origin, cell   box of coarse cells: number along x, y, z; lower corner; edge
 * runs                 first cell and length of each run of cells with plastisol, by turns
 * set                  half floats, one per such cell: set time
 * times, heat          moments, and temperature at each: half floats
 * min, span            box of the body;  points: 16-bit shares of it;  corners: 16-bit, 3 a triangle
 * along, up, through   the part's own axes
 * cut                  place of the first cut;  pockets: centres
 * gate, end            when the gate closes (or null) and where the time slider ends
 * flowing              percent of the plastisol that still flows at end (i / 100)^2, i = 0 .. 100
 * heatScale, setScale  low, high, step;  ramp: red, green, blue bytes
 * </pre>
 */
final class InsideData {
  private static final int MOST_CELLS = 100_000;
  private static final int MOST_TRIANGLES = 20_000;
  private static final int MOST_MOMENTS = 20;

  /** Half floats of all moments together: they are most of the page. */
  private static final int MOST_VALUES = 450_000;

  private static final int STEPS = 100;
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Scene scene;
  private final ObjectNode n = JSON.createObjectNode();

  private InsideData(Scene scene) {
    this.scene = scene;
  }

  static String of(Scene scene) {
    InsideData d = new InsideData(scene);
    d.volume();
    d.body();
    d.story();
    return d.n.toString();
  }

  private void volume() {
    CoarseFields c = CoarseFields.of(scene.run().fields(), MOST_CELLS);
    ArrayNode size = n.putArray("size");
    Arrays.stream(c.size()).forEach(size::add);
    place("origin", c.origin());
    n.put("cell", mm(c.spacing()));
    c.runs().forEach(n.putArray("runs")::add);
    n.put("set", halves(c.means(scene.finiteSetTime())));
    ArrayNode times = n.putArray("times");
    ArrayNode heat = n.putArray("heat");
    for (Snapshot s : chosen(scene.run().fields().snapshots(), MOST_VALUES / c.count())) {
      times.add(Math.round(s.time() * 1e3) / 1e3);
      heat.add(halves(c.means(s.temperature())));
    }
  }

  /** Evenly thinned; the first and the last are kept. */
  private static List<Snapshot> chosen(List<Snapshot> all, int most) {
    int keep = Math.min(all.size(), Math.max(2, Math.min(MOST_MOMENTS, most)));
    List<Snapshot> out = new ArrayList<>();
    for (int i = 0; i < keep; i++) {
      out.add(all.get(keep == 1 ? 0 : Math.round((float) i * (all.size() - 1) / (keep - 1))));
    }
    return out;
  }

  private void body() {
    TriangleMesh mesh = Decimate.atMost(scene.mesh().mesh(), MOST_TRIANGLES);
    Box box = mesh.box();
    Vec3 size = box.size();
    place("min", box.min());
    place("span", size);
    double[] min = {box.min().x(), box.min().y(), box.min().z()};
    double[] span = {size.x(), size.y(), size.z()};
    short[] points = new short[3 * mesh.vertexCount()];
    for (int i = 0; i < points.length; i++) {
      double share = (mesh.coordinate(i / 3, i % 3) - min[i % 3]) / Math.max(span[i % 3], 1e-9);
      points[i] = (short) Math.round(share * 65535);
    }
    short[] corners = new short[3 * mesh.triangleCount()];
    for (int c = 0; c < corners.length; c++) {
      corners[c] = (short) mesh.corner(c / 3, c % 3);
    }
    n.put("points", packed(points));
    n.put("corners", packed(corners));
  }

  private void story() {
    Findings f = scene.run().findings();
    direction("along", scene.axes().along());
    direction("up", scene.axes().up());
    direction("through", scene.axes().through());
    place("cut", scene.heart());
    ArrayNode pockets = n.putArray("pockets");
    for (Pocket p : f.pockets()) {
      add(pockets.addArray(), p.centre());
    }
    double end = scene.timeScale().high();
    if (f.gateSets() < end) {
      n.put("gate", f.gateSets());
    } else {
      n.putNull("gate");
    }
    n.put("end", end);
    flowing(end);
    scale("heatScale", scene.heatScale());
    scale("setScale", scene.timeScale());
    ByteBuffer ramp = ByteBuffer.allocate(3 * ColourRamp.STANDARD.size());
    for (int rgb : ColourRamp.STANDARD.table()) {
      ramp.put((byte) (rgb >> 16)).put((byte) (rgb >> 8)).put((byte) rgb);
    }
    n.put("ramp", base64(ramp));
  }

  private void flowing(double end) {
    float[] sorted = scene.run().fields().setTime().clone();
    Arrays.sort(sorted);
    ArrayNode out = n.putArray("flowing");
    int set = 0;
    for (int i = 0; i <= STEPS; i++) {
      double time = end * i * i / (STEPS * STEPS);
      while (set < sorted.length && sorted[set] <= time) {
        set++;
      }
      out.add(Math.round(1000.0 * (sorted.length - set) / sorted.length) / 10.0);
    }
  }

  private void scale(String key, Scale s) {
    n.putArray(key).add(s.low()).add(s.high()).add(s.step());
  }

  private void place(String key, Vec3 p) {
    add(n.putArray(key), p);
  }

  private static void add(ArrayNode to, Vec3 p) {
    to.add(mm(p.x())).add(mm(p.y())).add(mm(p.z()));
  }

  private void direction(String key, Vec3 p) {
    n.putArray(key).add(p.x()).add(p.y()).add(p.z());
  }

  private static double mm(double metres) {
    return Math.round(metres * 1e7) / 1e4;
  }

  private static String halves(float[] values) {
    short[] out = new short[values.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = HalfFloats.of(values[i]);
    }
    return packed(out);
  }

  private static String packed(short[] values) {
    ByteBuffer b = ByteBuffer.allocate(2 * values.length).order(ByteOrder.LITTLE_ENDIAN);
    b.asShortBuffer().put(values);
    return base64(b);
  }

  private static String base64(ByteBuffer b) {
    return StandardCharsets.US_ASCII.decode(Base64.getEncoder().encode(b.rewind())).toString();
  }
}
