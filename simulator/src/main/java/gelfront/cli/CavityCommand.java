// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.base.Quantities;
import gelfront.cli.ProbeCommand.Places;
import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.check.MeshParts;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.check.PreparedMesh;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.mesh.io.RawMesh;
import gelfront.mesh.mould.CavityFinder;
import gelfront.mesh.mould.MouldCavity;
import gelfront.mesh.mould.MouldCavity.Opening;
import gelfront.setup.Change;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** From a mould's parts to the part that is poured in it. */
@Command(
    name = "cavity",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Finds what is poured in a mould that is given as the solids of its parts, put together as"
          + " for pouring; says what it took for pour opening, vents and cavity, and writes the"
          + " cavity as STL with a first case beside it, whose mould are the parts themselves: what they leave out of their box is air.",
      "Hollows that don't belong to the cavity, as holes of dowels and bolts, are left out."
    })
final class CavityCommand implements Callable<Integer> {
  private static final double MM = 1e-3;

  /** Samples along the longest side where none are stated. */
  private static final int FINE = 200;

  private final Console console;

  @Parameters(
      paramLabel = "SOLID",
      arity = "1..*",
      description = "STL, 3MF, OBJ or PLY files of the mould's parts; one may hold several.")
  private List<Path> files;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      defaultValue = "cavity.stl",
      description = "The STL to write, a case beside it; left out: ${DEFAULT-VALUE}.")
  @SuppressWarnings("NullAway.Init") // has a default
  private Path target;

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      converter = InspectCommand.UnitWord.class,
      description = "mm, cm, m or inch. Left out: mm, if the size is plausible.")
  private @Nullable LengthUnit unit;

  @Option(
      names = "--voxel-mm",
      paramLabel = "MM",
      description = "Spacing of samples. Left out: a 200th of the mould's longest side.")
  private @Nullable Double voxelMm;

  @Option(
      names = "--slit-mm",
      paramLabel = "MM",
      defaultValue = "0.2",
      description = "Gaps between parts that count as closed; left out: ${DEFAULT-VALUE}.")
  private double slitMm;

  @Option(
      names = "--pour",
      paramLabel = "x,y,z",
      parameterConsumer = Places.class,
      description =
          "Where the mould is poured, mm. Left out: the widest opening of the largest" + " hollow.")
  private List<Vec3> pour = new ArrayList<>();

  @Mixin private Answers answers;

  CavityCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    List<String> told = new ArrayList<>();
    List<TriangleMesh> solids = solids(told);
    MouldCavity cavity;
    try {
      cavity = CavityFinder.find(solids, spacing(solids), slitMm * MM, pour.stream().findFirst());
    } catch (MeshException | IllegalArgumentException e) {
      throw new InputFailure(String.valueOf(e.getMessage()), e);
    }
    Path caseFile = write(cavity);
    if (answers.json()) {
      printJson(cavity);
    } else {
      if (!answers.quiet()) {
        told.forEach(t -> console.out().println("Mind: " + t));
      }
      print(cavity, solids.size(), caseFile);
    }
    return ExitCode.OK;
  }

  private List<TriangleMesh> solids(List<String> told) {
    List<TriangleMesh> solids = new ArrayList<>();
    for (Path file : files) {
      String name = String.valueOf(file.getFileName());
      RawMesh raw = MeshFiles.load(file, Optional.ofNullable(unit));
      try {
        PreparedMesh one = MeshRepair.prepare(raw.mesh(), MeshRepair.WELD);
        raw.notes().forEach(n -> told.add(name + ": " + n));
        one.repairs().forEach(n -> told.add(name + ": " + n));
        solids.addAll(MeshParts.of(one.mesh()));
      } catch (MeshException e) {
        throw e.in(name);
      }
    }
    return solids;
  }

  private double spacing(List<TriangleMesh> solids) {
    if (voxelMm != null) {
      return voxelMm * MM;
    }
    double longest = 0;
    for (TriangleMesh m : solids) {
      Vec3 s = m.box().size();
      longest = Math.max(longest, Math.max(s.x(), Math.max(s.y(), s.z())));
    }
    return longest / FINE;
  }

  private Path write(MouldCavity cavity) {
    String stl = String.valueOf(target.getFileName());
    Path caseFile = target.resolveSibling(stl.replaceFirst("\\.[^.]*$", "") + ".toml");
    try {
      try (OutputStream out = Files.newOutputStream(target, StandardOpenOption.CREATE_NEW)) {
        MeshFiles.writeStl(cavity.mesh(), out, LengthUnit.MM);
      }
      Files.write(
          caseFile,
          caseText(cavity, stl, solidsKeys()).getBytes(StandardCharsets.UTF_8),
          StandardOpenOption.CREATE_NEW);
    } catch (FileAlreadyExistsException e) {
      throw new OutputFailure(
          e.getFile() + ": is there already and is not overwritten; name another file with -o", e);
    } catch (IOException e) {
      throw new OutputFailure(target + ": can't be written: " + e.getMessage(), e);
    }
    return caseFile;
  }

  /** The parts' files as the case's folder sees them, and their unit where it was stated. */
  private String solidsKeys() {
    Path folder = target.toAbsolutePath().normalize().getParent();
    List<String> names = new ArrayList<>();
    for (Path file : files) {
      Path whole = file.toAbsolutePath().normalize();
      names.add(Change.text(String.valueOf(seenFrom(folder, whole))));
    }
    String keys = "mesh = [" + String.join(", ", names) + "]";
    return unit == null ? keys : keys + "\nunit = \"" + unit.word() + "\"";
  }

  /** A path from a folder to a file, where there is one. */
  private static Path seenFrom(@Nullable Path folder, Path file) {
    return folder != null && Objects.equals(file.getRoot(), folder.getRoot())
        ? folder.relativize(file)
        : file;
  }

  private static String caseText(MouldCavity c, String stl, String solids) {
    return """
        # The cavity that gelfront found in the mould's parts. Look at the mesh first.
        name = "Cavity of the mould"

        [part]
        mesh = %s
        unit = "mm"

        [feed]
        in_mesh = true
        mouth = %s    # the pour opening that was found
        # gate = ["0 mm", "0 mm", "0 mm"]    # somewhere in the gate; left out, one is proposed

        [block]    # the box round the mould's parts; outside these is air
        material = "aluminium-6061"
        %s
        box_min = %s
        box_max = %s

        [plastisol]
        grade = "soft"

        [shot]
        temperature = "165 degC"
        hold_time = "8 s"

        [numerics]
        level = "normal"
        """
        .formatted(
            Change.text(stl),
            place(c.pour().centre()),
            solids,
            place(c.mould().min()),
            place(c.mould().max()));
  }

  private static String place(Vec3 p) {
    return String.format(
        Locale.ROOT, "[\"%.4f mm\", \"%.4f mm\", \"%.4f mm\"]", p.x() / MM, p.y() / MM, p.z() / MM);
  }

  private void print(MouldCavity c, int solids, Path caseFile) {
    Vec3 s = c.mould().size();
    say(
        "Mould: %d solids, %.1f x %.1f x %.1f mm together.",
        solids, s.x() / MM, s.y() / MM, s.z() / MM);
    console.out().println("Pour opening: " + words(c.pour()));
    c.vents().forEach(v -> console.out().println("Vent or other opening: " + words(v)));
    if (!c.leftOut().isEmpty()) {
      double all = c.leftOut().stream().mapToDouble(v -> v).sum();
      say(
          "Left out: %d hollows of %.0f mm3 together, not joined to the cavity: holes of dowels or"
              + " bolts?",
          c.leftOut().size(), all * 1e9);
    }
    console
        .out()
        .println("Cavity with its channel and vents: " + Quantities.ml(c.mesh().volume()) + ".");
    console.out().println("Written: " + target + " and, to begin with, " + caseFile);
  }

  private void say(String format, Object... values) {
    console.out().println(Quantities.say(format, values));
  }

  private static String words(Opening o) {
    return Quantities.say(
        "on side %s at (%.1f, %.1f, %.1f) mm, %.1f mm2, as wide as a bore of %.1f mm",
        o.side(),
        o.centre().x() / MM,
        o.centre().y() / MM,
        o.centre().z() / MM,
        o.area() * 1e6,
        o.diameter() / MM);
  }

  private void printJson(MouldCavity c) {
    ObjectNode o = Json.object();
    o.put("cavity_mm3", c.mesh().volume() * 1e9);
    o.put("pour_side", c.pour().side());
    o.put("pour_mm2", c.pour().area() * 1e6);
    o.put("vents", c.vents().size());
    o.put("left_out", c.leftOut().size());
    console.out().println(Json.text(o));
  }
}
