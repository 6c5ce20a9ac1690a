package gelfront.setup;

import java.nio.file.Path;
import java.util.List;

/**
 * A case and the file it came from.
 *
 * @param setup checked, in SI
 * @param text of the file
 * @param folder that the file's paths start from
 * @param given what the file states
 * @param assumed what was filled in
 */
public record LoadedCase(
    Case setup, String text, Path folder, List<Statement> given, List<Statement> assumed) {
  public LoadedCase {
    given = List.copyOf(given);
    assumed = List.copyOf(assumed);
  }

  /** The same calculated otherwise. */
  public LoadedCase with(Numerics numerics) {
    return new LoadedCase(setup.with(numerics), text, folder, given, assumed);
  }
}
