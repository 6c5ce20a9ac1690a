// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.base.Quantities;
import gelfront.mesh.Box;
import gelfront.mesh.MeshException;
import gelfront.mesh.check.MeshCheck;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.check.MeshReport;
import gelfront.mesh.check.PreparedMesh;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.mesh.io.RawMesh;
import gelfront.voxelize.UnionVolume;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What was found out about a mesh file.
 *
 * @param file name without folders
 * @param verdict ok, warning or refused
 * @param reasons for it, in words
 * @param report on the mesh as it is in the file; absent where it can't be read
 * @param prepared the mesh as it would be used; absent where it is refused
 */
record Inspection(
    String file,
    String verdict,
    List<String> reasons,
    Optional<MeshReport> report,
    Optional<PreparedMesh> prepared) {
  private static final double MM = 1e3;

  static Inspection of(Path path, Optional<LengthUnit> unit) {
    String file = String.valueOf(path.getFileName());
    RawMesh raw;
    try {
      raw = MeshFiles.load(path, unit);
    } catch (MeshException e) {
      return refused(file, e, Optional.empty());
    }
    try {
      PreparedMesh prepared = MeshRepair.prepare(raw.mesh(), MeshRepair.WELD);
      List<String> reasons = new ArrayList<>(raw.notes());
      reasons.addAll(prepared.report().reasons());
      reasons.addAll(prepared.repairs());
      return new Inspection(
          file,
          reasons.isEmpty() ? "ok" : "warning",
          List.copyOf(reasons),
          Optional.of(prepared.report()),
          Optional.of(prepared));
    } catch (MeshException e) {
      return refused(file, e, Optional.of(MeshCheck.inspect(raw.mesh())));
    }
  }

  private static Inspection refused(String file, MeshException e, Optional<MeshReport> report) {
    String why = String.valueOf(e.getMessage());
    String bare = why.startsWith(file + ": ") ? why.substring(file.length() + 2) : why;
    return new Inspection(file, "refused", List.of(bare), report, Optional.empty());
  }

  boolean usable() {
    return prepared.isPresent();
  }

  /** One line with file, reason and place. */
  String refusal() {
    String why = String.join("; ", reasons);
    return why.startsWith(file) || why.contains(file + ": ") ? why : file + ": " + why;
  }

  /**
   * Volume, area and closedness are those of the mesh as it would be used. Where shells overlap,
   * the volume is that of their union, found from sections, with its error; the area counts walls
   * inside others too.
   */
  ObjectNode json() {
    ObjectNode o = Json.object();
    o.put("file", file);
    o.put("verdict", verdict);
    ArrayNode list = o.putArray("reasons");
    reasons.forEach(list::add);
    if (report.isEmpty()) {
      return o;
    }
    MeshReport r = report.get();
    o.put("triangles", r.triangles());
    o.put("shells", r.shells().size());
    o.put("closed", usable() || r.closed());
    Optional<UnionVolume> union = union();
    Json.put(o, "volume_mm3", union.map(UnionVolume::m3).orElseGet(this::volume) * 1e9);
    Json.put(o, "volume_error_mm3", union.map(UnionVolume::error).orElse(0.0) * 1e9);
    Json.put(o, "area_mm2", area() * 1e6);
    o.put("area_is_upper_bound", union.isPresent());
    ObjectNode box = o.putObject("box");
    box.set("min_mm", Json.mm(box().min()));
    box.set("max_mm", Json.mm(box().max()));
    o.put("open_edges", r.openEdges());
    o.put("holes", r.holes());
    o.put("zero_area", r.zeroArea());
    o.put("duplicates", r.duplicates());
    o.put("overlaps", r.overlaps().size());
    ArrayNode winding = o.putArray("winding");
    r.shells().forEach(s -> winding.add(s.winding().name().toLowerCase(Locale.ROOT)));
    return o;
  }

  String words() {
    MeshReport r = report.orElseThrow();
    StringBuilder s = new StringBuilder();
    s.append(file).append(": ").append(verdict).append('\n');
    reasons.forEach(why -> s.append("  - ").append(why).append('\n'));
    var size = box().size();
    s.append(
        Quantities.say(
            "  %,d triangles, %d %s, closed%n",
            r.triangles(), r.shells().size(), r.shells().size() == 1 ? "shell" : "shells"));
    s.append(
        Quantities.say("  %.1f x %.1f x %.1f mm, ", size.x() * MM, size.y() * MM, size.z() * MM));
    s.append(union().map(this::united).orElseGet(this::measured));
    return s.toString();
  }

  private String measured() {
    return Quantities.say(
        "volume %.0f mm3 (%s), area %.0f mm2",
        volume() * 1e9, Quantities.ml(volume()), area() * 1e6);
  }

  private String united(UnionVolume u) {
    return Quantities.say(
        "volume %.0f mm3 within %.0f (%s; where shells overlap counted once), area at most %.0f"
            + " mm2",
        u.m3() * 1e9, Math.max(1, u.error() * 1e9), Quantities.ml(u.m3()), area() * 1e6);
  }

  /** What several shells fill together, where adding them up may count places twice. */
  private Optional<UnionVolume> union() {
    MeshReport r = report.orElseThrow();
    boolean unsure = !r.overlaps().isEmpty() || r.overlapsUnknown();
    return unsure ? prepared.map(p -> UnionVolume.of(p.mesh())) : Optional.empty();
  }

  private double volume() {
    return prepared.map(p -> p.mesh().volume()).orElseGet(() -> report.orElseThrow().volume());
  }

  private double area() {
    return prepared.map(p -> p.mesh().area()).orElseGet(() -> report.orElseThrow().area());
  }

  private Box box() {
    return prepared.map(p -> p.mesh().box()).orElseGet(() -> report.orElseThrow().box());
  }
}
