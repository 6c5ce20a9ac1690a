// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.mesh.MeshException;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.check.PreparedMesh;
import gelfront.mesh.io.LengthUnit;
import gelfront.setup.StarterGuess;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a first case file for a mesh. */
@Command(
    name = "start",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Writes a commented case file for a mesh. Unit, thick end and pour opening are guessed and"
            + " nothing is asked; look them over before you believe a result.")
final class StartCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "MESH", description = "An STL, 3MF, OBJ or PLY file.")
  private Path mesh;

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      converter = InspectCommand.UnitWord.class,
      description = "mm, cm, m or inch; left out: guessed.")
  private @Nullable LengthUnit unit;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "The case file; left out: beside the mesh, named after it.")
  private @Nullable Path file;

  @Mixin private Answers answers;

  StartCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    StarterGuess.Unit sized = StarterGuess.unit(mesh, Optional.ofNullable(unit));
    PreparedMesh prepared;
    try {
      prepared = MeshRepair.prepare(sized.mesh(), MeshRepair.WELD);
    } catch (MeshException e) {
      throw e.in(String.valueOf(mesh.getFileName()));
    }
    String name = String.valueOf(mesh.getFileName()).replaceFirst("\\.[^.]*$", "");
    Path target = file == null ? mesh.resolveSibling(name + ".toml") : file;
    StarterGuess guess = StarterGuess.of(prepared.mesh());
    write(target, guess.text(name, meshSeenFrom(target), sized.unit()));
    if (answers.json()) {
      var o = Json.object();
      o.put("case", target.toString());
      o.put("unit", sized.word());
      o.put("feed_in_mesh", guess.mouth().isPresent());
      o.set("gate_mm", Json.mm(guess.gate()));
      console.out().println(Json.text(o));
    } else {
      say(target, guess, sized);
    }
    return ExitCode.OK;
  }

  private void say(Path target, StarterGuess guess, StarterGuess.Unit sized) {
    console.out().println("Wrote " + target);
    if (!answers.quiet()) {
      console.out().println("Guessed: " + guess.words() + "; unit " + sized.word() + ".");
      console.out().println("Look it over, then: gelfront check " + target);
    }
  }

  /** The mesh's path as the case file has to state it. */
  private String meshSeenFrom(Path target) {
    @Nullable Path folder = target.toAbsolutePath().normalize().getParent();
    Path from = mesh.toAbsolutePath().normalize();
    try {
      return (folder == null ? from : folder.relativize(from)).toString().replace('\\', '/');
    } catch (IllegalArgumentException e) {
      return from.toString().replace('\\', '/');
    }
  }

  private static void write(Path target, String text) {
    try {
      Files.writeString(target, text, StandardOpenOption.CREATE_NEW);
    } catch (FileAlreadyExistsException e) {
      throw new OutputFailure(
          target + ": is there already and is not overwritten; name another file with -o", e);
    } catch (IOException e) {
      throw new OutputFailure(target + ": can't be written: " + e.getMessage(), e);
    }
  }
}
