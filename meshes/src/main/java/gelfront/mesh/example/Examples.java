// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.example;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.mesh.shape.Loft;
import gelfront.mesh.shape.Solids;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The example parts: made here, and as they are shipped. */
public final class Examples {
  private Examples() {}

  /** Name without ending to mesh, in a fixed order. */
  public static Map<String, TriangleMesh> all() {
    Map<String, TriangleMesh> all = new LinkedHashMap<>();
    all.put("straight-stick", stick());
    all.put(
        "bulb-thin-nose",
        body(
            row(0, 4),
            row(6, 5),
            row(35, 5),
            row(55, 14),
            row(65, 16),
            row(78, 13),
            row(88, 6),
            row(90, 3)));
    all.put("two-bulbs-neck", twoBulbs());
    all.put("finned-body", finned());
    all.put(
        "cone-body",
        body(
            row(0, 3.2),
            row(4, 4),
            row(30, 7.6),
            row(60, 12.6),
            row(74, 15),
            row(79, 12),
            row(80, 9)));
    all.put("two-bulbs-with-feed", withFeed());
    all.put("gate-ladder", gateLadder());
    return all;
  }

  /** The unit a file is written in. */
  public static LengthUnit unit(String name) {
    return name.equals("straight-stick") ? LengthUnit.INCH : LengthUnit.MM;
  }

  /**
   * A mesh or a case as it is shipped.
   *
   * @param file as {@code cone-body.stl}
   * @throws FileNotFoundException if none has that name
   */
  public static byte[] shipped(String file) throws IOException {
    try (InputStream in = Examples.class.getResourceAsStream("/gelfront/examples/" + file)) {
      if (in == null) {
        throw new FileNotFoundException(file + " is not among the examples");
      }
      return in.readAllBytes();
    }
  }

  /** Writes all of them into a folder that exists. */
  public static void write(Path folder) throws IOException {
    for (Map.Entry<String, TriangleMesh> e : all().entrySet()) {
      try (OutputStream out = Files.newOutputStream(folder.resolve(e.getKey() + ".stl"))) {
        MeshFiles.writeStl(e.getValue(), out, unit(e.getKey()));
      }
    }
  }

  private static double[] row(double xMm, double thickMm) {
    return new double[] {xMm * 1e-3, thickMm * 1e-3, thickMm * 1e-3};
  }

  private static TriangleMesh body(double[]... rows) {
    double[] x = new double[rows.length];
    double[] w = new double[rows.length];
    double[] h = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      x[i] = rows[i][0];
      w[i] = rows[i][1];
      h[i] = rows[i][2];
    }
    return Loft.of(x, w, h);
  }

  private static TriangleMesh stick() {
    double inch = 0.0254e3;
    return body(
        row(0, 0.28 * inch),
        row(0.06 * inch, 0.38 * inch),
        row(0.12 * inch, 0.4 * inch),
        row(3.78 * inch, 0.4 * inch),
        row(3.84 * inch, 0.38 * inch),
        row(3.9 * inch, 0.28 * inch));
  }

  private static TriangleMesh twoBulbs() {
    return body(
        row(0, 5),
        row(10, 9),
        row(34, 14),
        row(52, 7),
        row(60, 5),
        row(68, 7),
        row(80, 11),
        row(95, 6),
        row(100, 2));
  }

  private static TriangleMesh finned() {
    TriangleMesh body =
        body(
            new double[] {0, 5e-3, 4e-3},
            new double[] {12e-3, 13e-3, 9e-3},
            new double[] {35e-3, 16e-3, 11e-3},
            new double[] {60e-3, 9e-3, 7e-3},
            new double[] {85e-3, 4e-3, 4e-3});
    return body.plus(fin(1)).plus(fin(-1));
  }

  /** Root inside the body, tip outside; 1.6 mm thick. */
  private static TriangleMesh fin(int side) {
    List<double[]> outline =
        List.of(
            new double[] {-0.8e-3, -9e-3},
            new double[] {0.8e-3, -9e-3},
            new double[] {0.8e-3, 9e-3},
            new double[] {-0.8e-3, 9e-3});
    return Solids.prism(
        outline,
        new Vec3(38e-3, side * 3e-3, 0),
        new Vec3(38e-3, side * 18e-3, 0),
        new Vec3(1, 0, 0));
  }

  /** Five bulbs alike on one runner, each behind a wider gate; overlapping shells. */
  private static TriangleMesh gateLadder() {
    double[] gates = {2e-3, 2.5e-3, 3e-3, 4e-3, 5e-3};
    Vec3 middle = new Vec3(-4e-3, 0, 0);
    TriangleMesh all =
        Solids.cylinder(new Vec3(-6e-3, 0, 0), new Vec3(-34e-3, 0, 0), 5e-3, 5e-3, 72);
    Vec3 half = new Vec3(0, 45e-3, 0);
    all = all.plus(Solids.cylinder(middle.minus(half), middle.plus(half), 4e-3, 4e-3, 72));
    for (int i = 0; i < gates.length; i++) {
      double y = (i - 2) * 20e-3;
      Vec3 in = new Vec3(-2e-3, y, 0);
      all = all.plus(Solids.cylinder(in, new Vec3(4e-3, y, 0), gates[i] / 2, gates[i] / 2, 72));
      Vec3 nose = new Vec3(2e-3, y, 0);
      Vec3 tail = new Vec3(32e-3, y, 0);
      all = all.plus(Solids.cylinder(nose, new Vec3(0.01002, y, 0), 3e-3, 7.5e-3, 72));
      all = all.plus(Solids.cylinder(new Vec3(10e-3, y, 0), tail, 7.5e-3, 2e-3, 72));
    }
    return all;
  }

  private static TriangleMesh withFeed() {
    Vec3 mouth = new Vec3(-31e-3, 0, 0);
    TriangleMesh gate =
        Solids.cylinder(new Vec3(1e-3, 0, 0), new Vec3(-4e-3, 0, 0), 1.5e-3, 1.5e-3, 72);
    TriangleMesh sprue = Solids.cylinder(new Vec3(-3e-3, 0, 0), mouth, 5e-3, 5e-3, 72);
    return twoBulbs().plus(gate).plus(sprue);
  }
}
