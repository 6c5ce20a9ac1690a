// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.base.Units;
import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.check.MeshCheck;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.check.PreparedMesh;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.report.FindingsJson;
import gelfront.result.ResultFolder;
import gelfront.result.StoredRun;
import gelfront.setup.CaseException;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import gelfront.setup.PartShape;
import gelfront.setup.StarterGuess;
import gelfront.viewer.store.Recovery;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Opens meshes, cases and results by what they are. Slow: never on the window's thread. */
public final class Opener {
  private Opener() {}

  public static Opened open(Path path) {
    return open(path, Optional.empty());
  }

  /**
   * @param unit of a mesh, where the user has said it
   */
  public static Opened open(Path path, Optional<LengthUnit> unit) {
    try {
      if (!Files.exists(path)) {
        return new Opened.Nothing(path, "there is no such file");
      }
      if (Files.isDirectory(path)) {
        return result(path);
      }
      String name = path.getFileName().toString().toLowerCase(Locale.ROOT);
      if (name.equals("run.json") || name.equals("report.html")) {
        return result(folder(path));
      }
      return name.endsWith(".toml") ? aCase(path) : mesh(path, unit);
    } catch (IOException | RuntimeException | OutOfMemoryError e) {
      return new Opened.Nothing(path, words(e));
    }
  }

  /** That a file lies in. */
  private static Path folder(Path file) {
    return Objects.requireNonNull(file.toAbsolutePath().getParent());
  }

  private static String words(Throwable e) {
    if (e instanceof OutOfMemoryError) {
      return "is too large for the memory";
    }
    boolean said = e instanceof IOException || e.getClass().getName().startsWith("gelfront.");
    return said && e.getMessage() != null ? e.getMessage() : "a fault in the program: " + e;
  }

  private static Opened result(Path folder) throws IOException {
    StoredRun run = ResultFolder.read(folder);
    @Nullable Path beside = folder.toAbsolutePath().getParent();
    return new Opened.AResult(
        folder,
        run,
        project(run, beside == null ? folder : beside),
        FindingsJson.voxels(folder, run.findings().visibleDepth()));
  }

  /** A result's own case, if its mesh can be found from the folder beside it. */
  private static Optional<Project> project(StoredRun run, Path from) {
    try {
      LoadedCase loaded = CaseFile.parse("case.toml", run.caseText(), from);
      TriangleMesh part = PartLoader.load(loaded.setup().part()).mesh();
      return Optional.of(new Project(loaded, part, Optional.empty(), run.caseText()));
    } catch (CaseException | MeshException e) {
      return Optional.empty();
    }
  }

  private static Opened aCase(Path file) {
    LoadedCase loaded = CaseFile.read(file);
    try {
      PreparedMesh part = PartLoader.load(loaded.setup().part());
      Project project = new Project(loaded, part.mesh(), Optional.of(file), loaded.text());
      return new Opened.ACase(project, Optional.empty(), part.repairs());
    } catch (MeshException e) {
      return loaded.setup().part() instanceof PartShape.Meshes m
          ? broken(m.files().get(0), MeshFiles.read(m.files().get(0), m.unit()), e)
          : new Opened.Nothing(file, String.valueOf(e.getMessage()));
    }
  }

  /** A case of that name beside the mesh is opened with it; else a first one is guessed. */
  private static Opened mesh(Path file, Optional<LengthUnit> unit) {
    Path beside = file.resolveSibling(stem(file) + ".toml");
    if (unit.isEmpty() && Files.isRegularFile(beside)) {
      return aCase(beside);
    }
    StarterGuess.Unit sized = StarterGuess.unit(file, unit);
    PreparedMesh part;
    try {
      part = MeshRepair.prepare(sized.mesh(), MeshRepair.WELD);
    } catch (MeshException e) {
      return broken(file, sized.mesh(), e);
    }
    StarterGuess guess = StarterGuess.of(part.mesh());
    String text = guess.text(stem(file), file.getFileName().toString(), sized.unit());
    Path folder = folder(file);
    LoadedCase loaded = CaseFile.parse(stem(file) + ".toml", text, folder);
    List<String> notes = new ArrayList<>(part.repairs());
    notes.add("Guessed " + guess.words() + ": look it over.");
    Project project = new Project(loaded, part.mesh(), Optional.empty(), "");
    return new Opened.ACase(project, Optional.of(sized), notes);
  }

  /** A case that was changed and not saved. */
  static Opened recovered(Recovery.Edits edits) {
    String name = edits.file().map(f -> f.getFileName().toString()).orElse("recovered.toml");
    Path shown = edits.file().orElse(edits.folder());
    try {
      LoadedCase loaded = CaseFile.parse(name, edits.text(), edits.folder());
      TriangleMesh part = PartLoader.load(loaded.setup().part()).mesh();
      Project project = new Project(loaded, part, edits.file(), "");
      return new Opened.ACase(project, Optional.empty(), List.of());
    } catch (RuntimeException e) {
      return new Opened.Nothing(shown, words(e));
    }
  }

  private static Opened broken(Path file, TriangleMesh mesh, MeshException e) {
    String first = String.valueOf(e.getMessage());
    List<String> why = new ArrayList<>(List.of(first));
    MeshCheck.inspect(mesh).reasons().stream().filter(r -> !first.contains(r)).forEach(why::add);
    return new Opened.ABrokenMesh(file, mesh, why);
  }

  static String stem(Path file) {
    return String.valueOf(file.getFileName()).replaceFirst("\\.[^.]*$", "");
  }

  /** "85.0 x 21.9 x 20.2 mm": what a file would be in a unit. */
  public static String size(TriangleMesh mesh, LengthUnit read, LengthUnit as, Units units) {
    Vec3 s = mesh.box().size().times(as.metres() / read.metres());
    return units.lengths("%s x %s x %s", 1, s.x(), s.y(), s.z());
  }
}
