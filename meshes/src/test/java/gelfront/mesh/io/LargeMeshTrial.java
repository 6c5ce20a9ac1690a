// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.check.PreparedMesh;
import gelfront.mesh.shape.Solids;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A process of its own: writes a ring of many triangles, or reads, checks and repairs it. */
final class LargeMeshTrial {
  private LargeMeshTrial() {}

  /**
   * @param args write or read, the file, number of segments; reading leaves one line beside the
   *     file: triangles, relative error of the volume, seconds, peak heap in MiB
   */
  public static void main(String[] args) throws IOException {
    Path file = Path.of(args[1]);
    int segments = Integer.parseInt(args[2]);
    if (args[0].equals("write")) {
      write(Solids.torus(25e-3, 8e-3, segments), file);
      return;
    }
    long start = System.nanoTime();
    RawMesh raw = MeshFiles.load(file, Optional.empty());
    PreparedMesh mesh = MeshRepair.prepare(raw.mesh(), MeshRepair.WELD);
    double seconds = 1e-9 * (System.nanoTime() - start);
    double volume = 2 * Math.PI * Math.PI * 25e-3 * 8e-3 * 8e-3;
    Files.writeString(
        Path.of(file + ".told"),
        String.format(
            Locale.ROOT,
            "%d %.2e %.1f %d",
            mesh.mesh().triangleCount(),
            Math.abs(mesh.mesh().volume() / volume - 1),
            seconds,
            peak() >> 20));
  }

  private static long peak() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(p -> p.getType() == MemoryType.HEAP)
        .map(MemoryPoolMXBean::getPeakUsage)
        .mapToLong(java.lang.management.MemoryUsage::getUsed)
        .sum();
  }

  private static void write(TriangleMesh m, Path file) throws IOException {
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16)) {
      switch (file.getFileName().toString()) {
        case "binary.stl" -> MeshFiles.writeStl(m, out, LengthUnit.MM);
        case "text.stl" -> textStl(m, new PrintStream(out, false, StandardCharsets.US_ASCII));
        case "text.obj" -> obj(m, new PrintStream(out, false, StandardCharsets.US_ASCII));
        case "text.ply" -> ply(m, new PrintStream(out, false, StandardCharsets.US_ASCII));
        default -> threeMf(m, out);
      }
    }
  }

  private static float at(TriangleMesh m, int v, int axis) {
    return (float) (1e3 * m.coordinate(v, axis));
  }

  private static void textStl(TriangleMesh m, PrintStream out) {
    out.println("solid ring");
    for (int t = 0; t < m.triangleCount(); t++) {
      out.println("facet normal 0.000000e+00 0.000000e+00 1.000000e+00\nouter loop");
      for (int c = 0; c < 3; c++) {
        int v = m.corner(t, c);
        out.println("vertex " + at(m, v, 0) + " " + at(m, v, 1) + " " + at(m, v, 2));
      }
      out.println("endloop\nendfacet");
    }
    out.println("endsolid ring");
    out.flush();
  }

  private static void obj(TriangleMesh m, PrintStream out) {
    for (int v = 0; v < m.vertexCount(); v++) {
      out.println("v " + at(m, v, 0) + " " + at(m, v, 1) + " " + at(m, v, 2));
    }
    for (int t = 0; t < m.triangleCount(); t++) {
      out.println(
          "f " + (m.corner(t, 0) + 1) + " " + (m.corner(t, 1) + 1) + " " + (m.corner(t, 2) + 1));
    }
    out.flush();
  }

  private static void ply(TriangleMesh m, PrintStream out) {
    out.print("ply\nformat ascii 1.0\nelement vertex " + m.vertexCount());
    out.print("\nproperty float x\nproperty float y\nproperty float z\nelement face ");
    out.print(m.triangleCount() + "\nproperty list uchar int vertex_indices\nend_header\n");
    for (int v = 0; v < m.vertexCount(); v++) {
      out.println(at(m, v, 0) + " " + at(m, v, 1) + " " + at(m, v, 2));
    }
    for (int t = 0; t < m.triangleCount(); t++) {
      out.println("3 " + m.corner(t, 0) + " " + m.corner(t, 1) + " " + m.corner(t, 2));
    }
    out.flush();
  }

  private static void threeMf(TriangleMesh m, OutputStream to) throws IOException {
    try (ZipOutputStream zip = new ZipOutputStream(to)) {
      zip.putNextEntry(new ZipEntry("_rels/.rels"));
      zip.write(MeshTexts.bytes(MeshTexts.RELATIONS));
      zip.putNextEntry(new ZipEntry("3D/3dmodel.model"));
      PrintStream out = new PrintStream(zip, false, StandardCharsets.UTF_8);
      out.print("<model unit=\"millimeter\" " + MeshTexts.CORE + "><resources><object id=\"1\">");
      out.print("<mesh><vertices>");
      for (int v = 0; v < m.vertexCount(); v++) {
        out.print("<vertex x=\"" + at(m, v, 0) + "\" y=\"" + at(m, v, 1));
        out.println("\" z=\"" + at(m, v, 2) + "\"/>");
      }
      out.print("</vertices><triangles>");
      for (int t = 0; t < m.triangleCount(); t++) {
        out.print("<triangle v1=\"" + m.corner(t, 0) + "\" v2=\"" + m.corner(t, 1));
        out.println("\" v3=\"" + m.corner(t, 2) + "\"/>");
      }
      out.print("</triangles></mesh></object></resources><build><item objectid=\"1\"/></build>");
      out.print("</model>");
      out.flush();
      zip.closeEntry();
    }
  }
}
