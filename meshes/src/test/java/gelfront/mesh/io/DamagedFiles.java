// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** Makes damaged mesh files from good ones, each with what must come of it. */
final class DamagedFiles {
  /**
   * What must come of a file.
   *
   * @param volume m3 that it must give; NaN: it must be refused
   * @param words that the refusal, or what is told, must hold; empty: of a file with a volume,
   *     nothing may be told
   * @param orRefused whether a refusal, whatever its words, is as right
   * @param within relative, of the volume
   */
  record Expected(double volume, String words, boolean orRefused, double within) {
    /** Of the volume: what single precision and a few digits of text leave. */
    private static final double ROUNDING = 2e-6;

    static Expected refused(String words) {
      return new Expected(Double.NaN, words, true, ROUNDING);
    }

    static Expected silent(double volume) {
      return new Expected(volume, "", false, ROUNDING);
    }

    static Expected told(double volume, String words) {
      return new Expected(volume, words, false, ROUNDING);
    }

    static Expected rightOrRefused(double volume) {
      return new Expected(volume, "", true, ROUNDING);
    }

    boolean mustBeRefused() {
      return Double.isNaN(volume);
    }
  }

  /** One file. */
  record Damaged(String name, byte[] content, Expected expected) {}

  private final List<Damaged> all = new ArrayList<>();

  private DamagedFiles() {}

  /** The good ones, closed and of one shell each. */
  static Map<String, TriangleMesh> good() {
    Map<String, TriangleMesh> good = new LinkedHashMap<>();
    good.put("box", Solids.box(Vec3.ZERO, new Vec3(20e-3, 10e-3, 5e-3)));
    good.put("ball", Solids.sphere(new Vec3(2e-3, -3e-3, 1e-3), 12e-3, 8));
    good.put("ring", Solids.torus(15e-3, 5e-3, 8));
    return good;
  }

  static List<Damaged> all() {
    DamagedFiles made = new DamagedFiles();
    for (Map.Entry<String, TriangleMesh> e : good().entrySet()) {
      made.triangles(e.getKey(), e.getValue());
      made.bodies(e.getKey(), e.getValue());
      made.sheets(e.getKey(), e.getValue());
      made.sizes(e.getKey(), e.getValue());
      made.cuts(e.getKey(), e.getValue());
    }
    return made.all;
  }

  /** Damage to the triangles, in every format. */
  private void triangles(String name, TriangleMesh m) {
    double v = m.volume();
    int n = m.triangleCount();
    for (int t = 0; t < n; t += Math.max(1, n / 7)) {
      String at = name + ", triangle " + t + " ";
      int[] c = m.copyTriangles();
      formats(at + "dropped", with(m, without(c, t)), Expected.refused("not closed"));
      formats(at + "turned", with(m, turned(c, t)), Expected.told(v, "turned round"));
      formats(at + "twice", with(m, twice(c, t, false)), Expected.told(v, "repeated triangles"));
      formats(at + "there and back", with(m, twice(c, t, true)), Expected.told(v, "repeated"));
      formats(at + "made empty", with(m, emptied(c, t)), Expected.refused("not closed"));
      formats(
          at + "with an empty one",
          with(m, plus(c, c[3 * t], c[3 * t], c[3 * t + 1])),
          Expected.told(v, "empty or repeated"));
      formats(
          at + "and " + (t + 1) % n + " dropped",
          with(m, without(without(c, Math.max(t, (t + 1) % n)), Math.min(t, (t + 1) % n))),
          Expected.refused("not closed"));
    }
    int[] all = m.copyTriangles();
    for (int t = 0; t < n; t++) {
      all = turned(all, t);
    }
    formats(name + " inside out", with(m, all), Expected.told(v, "inside out"));
  }

  /** Several bodies in one file. */
  private void bodies(String name, TriangleMesh m) {
    double v = m.volume();
    Vec3 c = m.box().centre();
    TriangleMesh half = moved(m, p -> c.plus(p.minus(c).times(0.1)).plus(inner(name)));
    TriangleMesh far = moved(m, p -> p.plus(new Vec3(0, 0, 60e-3)));
    TriangleMesh near = moved(m, p -> p.plus(new Vec3(3.1e-3, 2.3e-3, 1.7e-3)));
    formats(name + " and one apart", m.plus(far), Expected.silent(2 * v));
    formats(name + " and one across", m.plus(near), Expected.told(2 * v, "overlaps"));
    formats(name + " and itself again", m.plus(m), Expected.told(v, "repeated triangles"));
    formats(name + " with one in it", m.plus(half), Expected.told(1.001 * v, "in one another"));
    formats(
        name + " with a void", m.plus(insideOut(half)), Expected.told(0.999 * v, "in one another"));
    formats(
        name + " and a part of one",
        m.plus(with(far, without(far.copyTriangles(), 0))),
        Expected.refused("not closed"));
    formats(
        name + " and a flat piece",
        m.plus(moved(far, p -> new Vec3(p.x(), p.y(), 0.07))),
        Expected.refused("volume"));
  }

  /** A place inside the good one, from its centre. */
  private static Vec3 inner(String name) {
    return name.equals("ring") ? new Vec3(0.1e-3, 15e-3, 0.1e-3) : new Vec3(1e-4, 2e-4, 1e-4);
  }

  /** Surfaces without thickness: in one plane, level or aslant, and the side that faces along x. */
  private void sheets(String name, TriangleMesh m) {
    formats(
        name + " pressed flat",
        moved(m, p -> new Vec3(1e-3, p.y(), p.z())),
        Expected.refused("flat sheet"));
    formats(
        name + " pressed flat, aslant",
        moved(m, p -> new Vec3(0.3 * p.y() - 0.7 * p.z(), p.y(), p.z())),
        Expected.refused("flat sheet"));
    formats(
        name + ", one side, bent",
        moved(side(m), p -> p.plus(new Vec3(10 * p.y() * p.z(), 0, 0))),
        Expected.refused("single skin"));
  }

  private static TriangleMesh side(TriangleMesh m) {
    return with(
        m,
        IntStream.range(0, m.triangleCount())
            .filter(t -> facesAlongX(m, t))
            .flatMap(t -> IntStream.range(0, 3).map(c -> m.corner(t, c)))
            .toArray());
  }

  private static boolean facesAlongX(TriangleMesh m, int t) {
    Vec3 a = m.vertex(m.corner(t, 0));
    Vec3 n = m.vertex(m.corner(t, 1)).minus(a).cross(m.vertex(m.corner(t, 2)).minus(a));
    return n.x() > 1e-6 * n.length();
  }

  /** Units, huge, tiny, and numbers that aren't. */
  private void sizes(String name, TriangleMesh m) {
    for (double slip : new double[] {1 / 25.4, 1e-3, 0.1, 1e-6}) {
      formats(
          name + " times " + slip,
          moved(m, p -> p.times(slip)),
          Expected.refused("state the unit"));
    }
    for (double slip : new double[] {1e3, 1e6}) {
      formats(
          name + " times " + slip,
          moved(m, p -> p.times(slip)),
          Expected.refused("state the unit"));
    }
    formats(name + " times ten", moved(m, p -> p.times(10)), Expected.silent(1e3 * m.volume()));
    Vec3 far = new Vec3(50, 50, 50);
    formats(
        name + " far away",
        moved(m, p -> p.plus(far)),
        new Expected(m.volume(), "from the origin", false, 1e-3));
    double[] v = m.copyVertices();
    v[4] = 1e27;
    formats(
        name + " with a huge coordinate",
        new TriangleMesh(v, m.copyTriangles()),
        Expected.refused(""));
    for (String word : List.of("NaN", "Infinity", "-Infinity", "1e999", "1,5", "", "0x", "--1")) {
      words(name, m, word);
    }
  }

  /** A number of each text replaced by a word. */
  private void words(String name, TriangleMesh m, String word) {
    for (Map.Entry<String, byte[]> e : MeshTexts.all(m).entrySet()) {
      String text = new String(e.getValue(), java.nio.charset.StandardCharsets.ISO_8859_1);
      String start =
          e.getKey().equals("text.stl") ? "vertex " : e.getKey().equals("text.obj") ? "v " : "";
      if (!start.isEmpty()) {
        int at = text.indexOf(start, text.length() / 4) + start.length();
        int end = text.indexOf(' ', at);
        add(
            e.getKey() + ", " + name + " with \"" + word + "\" for a number",
            text.substring(0, at) + word + text.substring(end),
            Expected.refused("line "));
      }
    }
    String box = "<object id=\"1\">" + MeshTexts.mesh(m) + "</object>";
    int at = box.indexOf("x=\"", box.length() / 4) + 3;
    String bad = box.substring(0, at) + word + box.substring(box.indexOf('"', at));
    add(
        "packed.3mf, " + name + " with \"" + word + "\" for a number",
        MeshTexts.zip(
            "_rels/.rels",
            MeshTexts.RELATIONS,
            "3D/3dmodel.model",
            MeshTexts.model("", bad, "<item objectid=\"1\"/>")),
        Expected.refused("is no number"));
  }

  /**
   * Each format cut wherever something begins (of larger ones at every seventh such place), and
   * with what doesn't belong there behind it.
   */
  private void cuts(String name, TriangleMesh m) {
    for (Map.Entry<String, byte[]> e : MeshTexts.all(m).entrySet()) {
      byte[] whole = e.getValue();
      int step = m.triangleCount() > 20 ? 7 : 1;
      List<Integer> places = List.copyOf(offsets(e.getKey(), whole));
      for (int i = 0; i < places.size(); i += step) {
        int at = places.get(i);
        add(
            e.getKey() + ", " + name + " cut at byte " + at,
            Arrays.copyOf(whole, at),
            at < 0.75 * whole.length ? Expected.refused("") : Expected.rightOrRefused(m.volume()));
      }
    }
    byte[] stl = MeshTexts.binaryStl(m);
    for (int more : new int[] {1, 49, 51, 4096}) {
      add(
          "binary.stl, " + name + " and " + more + " bytes",
          Arrays.copyOf(stl, stl.length + more),
          Expected.told(m.volume(), "after the last triangle"));
    }
    add(
        "binary.stl, " + name + " and 50 zeros",
        Arrays.copyOf(stl, stl.length + 50),
        Expected.told(m.volume(), "all were taken"));
    byte[] binary = MeshTexts.ply(m, "binary_big_endian");
    add(
        "big.ply, " + name + " and 9 bytes",
        Arrays.copyOf(binary, binary.length + 9),
        Expected.told(m.volume(), "9 bytes after the last element"));
  }

  /** Where something begins: every field of a binary file, every word of a text. */
  private static Set<Integer> offsets(String format, byte[] whole) {
    TreeSet<Integer> at = new TreeSet<>(List.of(0, 1, 2, whole.length - 1));
    switch (format) {
      case "binary.stl" -> {
        at.addAll(List.of(40, 79, 80, 83));
        IntStream.iterate(84, i -> i < whole.length, i -> i + 50)
            .forEach(t -> IntStream.rangeClosed(0, 12).forEach(f -> at.add(t + 4 * f)));
      }
      case "packed.3mf" ->
          IntStream.iterate(0, i -> i < whole.length - 100, i -> i + whole.length / 40)
              .forEach(at::add);
      default -> {
        for (int i = 1; i < whole.length; i++) {
          if (whole[i - 1] <= ' ' && whole[i] > ' ') {
            at.add(i);
          }
        }
      }
    }
    at.removeIf(i -> i >= whole.length);
    return at;
  }

  private void formats(String name, TriangleMesh m, Expected expected) {
    MeshTexts.all(m).forEach((format, content) -> add(format + ", " + name, content, expected));
  }

  private void add(String name, String text, Expected expected) {
    add(name, text.getBytes(java.nio.charset.StandardCharsets.ISO_8859_1), expected);
  }

  private void add(String name, byte[] content, Expected expected) {
    all.add(new Damaged(name, content, expected));
  }

  private static TriangleMesh with(TriangleMesh m, int[] corners) {
    return new TriangleMesh(m.copyVertices(), corners);
  }

  private static TriangleMesh moved(TriangleMesh m, UnaryOperator<Vec3> how) {
    double[] v = new double[3 * m.vertexCount()];
    for (int i = 0; i < m.vertexCount(); i++) {
      Vec3 p = how.apply(m.vertex(i));
      v[3 * i] = p.x();
      v[3 * i + 1] = p.y();
      v[3 * i + 2] = p.z();
    }
    return new TriangleMesh(v, m.copyTriangles());
  }

  private static TriangleMesh insideOut(TriangleMesh m) {
    int[] c = m.copyTriangles();
    for (int t = 0; t < m.triangleCount(); t++) {
      c = turned(c, t);
    }
    return with(m, c);
  }

  private static int[] without(int[] c, int t) {
    int[] out = Arrays.copyOf(c, c.length - 3);
    System.arraycopy(c, 3 * t + 3, out, 3 * t, c.length - 3 * t - 3);
    return out;
  }

  private static int[] turned(int[] c, int t) {
    int[] out = c.clone();
    out[3 * t] = c[3 * t + 1];
    out[3 * t + 1] = c[3 * t];
    return out;
  }

  private static int[] emptied(int[] c, int t) {
    int[] out = c.clone();
    out[3 * t] = c[3 * t + 1];
    return out;
  }

  private static int[] twice(int[] c, int t, boolean back) {
    return back
        ? plus(c, c[3 * t + 1], c[3 * t], c[3 * t + 2])
        : plus(c, c[3 * t], c[3 * t + 1], c[3 * t + 2]);
  }

  private static int[] plus(int[] c, int i, int j, int k) {
    int[] out = Arrays.copyOf(c, c.length + 3);
    out[c.length] = i;
    out[c.length + 1] = j;
    out[c.length + 2] = k;
    return out;
  }
}
