// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.mesh.MeshException;
import gelfront.mesh.io.LengthUnit;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Looks a mesh file over. */
@Command(
    name = "inspect",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Looks a mesh over: can it be used, and if not, what is wrong where. Ends with 3 where it"
            + " is refused.")
final class InspectCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "MESH", description = "An STL, 3MF, OBJ or PLY file.")
  private Path mesh;

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      converter = UnitWord.class,
      description = "mm, cm, m or inch. Left out: mm, if the size is plausible for a part.")
  private @Nullable LengthUnit unit;

  @Mixin private Answers answers;

  InspectCommand(Console console) {
    this.console = console;
  }

  /** A unit as people write it. */
  static final class UnitWord implements ITypeConverter<LengthUnit> {
    @Override
    public LengthUnit convert(String word) {
      return switch (word.toLowerCase(Locale.ROOT)) {
        case "mm" -> LengthUnit.MM;
        case "cm" -> LengthUnit.CM;
        case "m" -> LengthUnit.M;
        case "inch", "in", "inches" -> LengthUnit.INCH;
        case "foot", "feet" -> LengthUnit.FOOT;
        case "micron", "microns" -> LengthUnit.MICRON;
        default -> throw new TypeConversionException("\"" + word + "\" is not mm, cm, m or inch");
      };
    }
  }

  @Override
  public Integer call() {
    Inspection found = Inspection.of(mesh, Optional.ofNullable(unit));
    if (answers.json()) {
      console.out().println(Json.text(found.json()));
      return found.usable() ? ExitCode.OK : ExitCode.INPUT;
    }
    if (!found.usable()) {
      throw new MeshException(found.refusal());
    }
    console.out().println(answers.quiet() ? found.verdict() : found.words());
    return ExitCode.OK;
  }
}
