// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.mesh.io.LengthUnit;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The [part] table: meshes or caliper rows. */
final class PartReader {
  private static final double METRE = 1;

  private static final Map<String, LengthUnit> UNITS = units();

  private final CaseTable root;
  private final Path folder;

  /**
   * @param folder that mesh files are looked for in
   */
  PartReader(CaseTable root, Path folder) {
    this.root = root;
    this.folder = folder;
  }

  private static Map<String, LengthUnit> units() {
    Map<String, LengthUnit> u = new LinkedHashMap<>();
    u.put("mm", LengthUnit.MM);
    u.put("cm", LengthUnit.CM);
    u.put("m", LengthUnit.M);
    u.put("inch", LengthUnit.INCH);
    u.put("in", LengthUnit.INCH);
    u.put("foot", LengthUnit.FOOT);
    u.put("micron", LengthUnit.MICRON);
    return u;
  }

  /** The shape; null where mistakes were found. */
  @Nullable PartShape read() {
    CaseTable t = root.sub("part");
    if (!t.present()) {
      root.mistake("", "the case needs a [part] with mesh = \"file.stl\" or [[part.caliper]] rows");
      return null;
    }
    if (t.has("mesh") == t.has("caliper")) {
      t.mistake(
          t.has("mesh") ? "mesh" : "",
          t.has("mesh")
              ? "[part] has both mesh and caliper rows: keep one"
              : "[part] needs mesh = \"file.stl\" or [[part.caliper]] rows");
    }
    Optional<LengthUnit> unit = unit(t);
    if (t.has("caliper")) {
      if (t.has("unit")) {
        t.mistake("unit", "unit belongs to a mesh; caliper rows have theirs with each value");
      }
      return calipers(t, t.list("caliper"));
    }
    return new PartShape.Meshes(paths(t, folder), unit);
  }

  /** The unit of a table's mesh. */
  static Optional<LengthUnit> unit(CaseTable t) {
    return t.choice("unit", List.copyOf(UNITS.keySet())).map(UNITS::get);
  }

  /** A table's mesh files, with a mistake for each that isn't there. */
  static List<Path> paths(CaseTable t, Path folder) {
    List<String> files = t.texts("mesh");
    List<Path> paths = new ArrayList<>();
    if (files.isEmpty() && t.has("mesh")) {
      t.mistake("mesh", "mesh needs one file name at least, in quotes");
    }
    for (String f : files) {
      try {
        Path p = folder.resolve(f);
        if (!Files.isRegularFile(p)) {
          t.mistake("mesh", "there is no file \"" + f + "\" in " + folder);
        }
        paths.add(p);
      } catch (InvalidPathException e) {
        t.mistake("mesh", "\"" + f + "\" can't be the name of a file");
      }
    }
    return paths;
  }

  private static PartShape calipers(CaseTable t, List<CaseTable> tables) {
    List<PartShape.Row> rows = new ArrayList<>();
    double last = Double.NEGATIVE_INFINITY;
    for (CaseTable row : tables) {
      double d = row.need("distance", Dimension.LENGTH, 0, METRE);
      double w = row.need("width", Dimension.LENGTH, 1e-4, METRE);
      double h = row.need("height", Dimension.LENGTH, 1e-4, METRE);
      if (d <= last) {
        row.mistake("distance", "caliper rows go from the nose to the tail: distances must rise");
      }
      last = d;
      rows.add(new PartShape.Row(d, w, h));
    }
    if (rows.size() < 2) {
      t.mistake("caliper", "two caliper rows are needed at least");
    }
    return new PartShape.Calipers(List.copyOf(rows));
  }
}
