package gelfront.cli;

import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.setup.StarterCase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** start MESH. */
@Command(
    name = "start",
    mixinStandardHelpOptions = true,
    description = "Write a commented first case for a mesh: gate guessed at its thick end.")
final class StartCommand implements Callable<Integer> {
  @Parameters(paramLabel = "MESH", description = "STL file")
  private Path mesh;

  @Option(names = "--unit", description = "mm, cm, m or inch; default: guessed")
  private String unit;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "CASE",
      description = "case file; default: beside the mesh")
  private Path to;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    Optional<LengthUnit> stated = InspectCommand.Units.of(unit);
    LengthUnit used = stated.isPresent() ? stated.get() : guess();
    TriangleMesh part = MeshFiles.read(mesh, Optional.of(used));
    part = MeshRepair.prepare(part, MeshRepair.WELD).mesh();
    String name = String.valueOf(mesh.getFileName()).replaceFirst("\\.[^.]*$", "");
    Path file = to != null ? to : mesh.resolveSibling(name + ".toml");
    if (Files.exists(file)) {
      throw new InputException(file + " is there already; move it or choose another with -o");
    }
    ThickEnd end = ThickEnd.of(part);
    Path folder = file.toAbsolutePath().getParent();
    String relative = folder.relativize(mesh.toAbsolutePath()).toString().replace('\\', '/');
    String text =
        StarterCase.text(
            name,
            relative,
            used.name().toLowerCase(Locale.ROOT),
            end.place(),
            end.direction(),
            Math.max(2e-3, Math.min(5e-3, 0.4 * end.thickness())),
            Math.max(8e-3, Math.min(12e-3, end.thickness())));
    Files.writeString(file, text, StandardOpenOption.CREATE_NEW);
    spec.commandLine()
        .getOut()
        .println("Wrote " + file + ". Look it through, then: gelfront check " + file);
    return ExitCodes.OK;
  }

  /** Millimetres where that makes a part of it, inches where only that does. */
  private LengthUnit guess() {
    Box box = MeshFiles.read(mesh, Optional.of(LengthUnit.MM)).box();
    double longest = Math.max(box.size().x(), Math.max(box.size().y(), box.size().z()));
    if (longest >= 12e-3) {
      return LengthUnit.MM;
    }
    return longest >= 0.5e-3 ? LengthUnit.INCH : LengthUnit.M;
  }

  /**
   * The end of the longest axis where the part is thicker.
   *
   * @param place on the surface, metres
   * @param direction away from the part
   * @param thickness of that half, metres
   */
  private record ThickEnd(Vec3 place, Vec3 direction, double thickness) {
    static ThickEnd of(TriangleMesh part) {
      Box box = part.box();
      double[] size = {box.size().x(), box.size().y(), box.size().z()};
      int axis = size[0] >= size[1] && size[0] >= size[2] ? 0 : size[1] >= size[2] ? 1 : 2;
      double low = spread(part, axis, true);
      double high = spread(part, axis, false);
      boolean upper = high > low;
      Vec3 direction =
          new Vec3(axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0).times(upper ? 1 : -1);
      return new ThickEnd(tip(part, direction), direction, Math.max(low, high));
    }

    /** Mean distance of a half's corners from the long axis, doubled. */
    private static double spread(TriangleMesh part, int axis, boolean lower) {
      Box box = part.box();
      double[] c = {box.centre().x(), box.centre().y(), box.centre().z()};
      double sum = 0;
      int n = 0;
      for (int v = 0; v < part.vertexCount(); v++) {
        if (part.coordinate(v, axis) < c[axis] == lower) {
          double a = part.coordinate(v, (axis + 1) % 3) - c[(axis + 1) % 3];
          double b = part.coordinate(v, (axis + 2) % 3) - c[(axis + 2) % 3];
          sum += Math.hypot(a, b);
          n++;
        }
      }
      return n == 0 ? 0 : 2 * sum / n;
    }

    /** The middle of what lies within a tenth of a millimetre of the end. */
    private static Vec3 tip(TriangleMesh part, Vec3 direction) {
      double farthest = Double.NEGATIVE_INFINITY;
      for (int v = 0; v < part.vertexCount(); v++) {
        farthest = Math.max(farthest, part.vertex(v).dot(direction));
      }
      Vec3 sum = Vec3.ZERO;
      int n = 0;
      for (int v = 0; v < part.vertexCount(); v++) {
        if (part.vertex(v).dot(direction) > farthest - 1e-4) {
          sum = sum.plus(part.vertex(v));
          n++;
        }
      }
      return sum.times(1.0 / n);
    }
  }
}
