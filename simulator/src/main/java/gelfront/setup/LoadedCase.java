package gelfront.setup;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.tomlj.TomlInvalidTypeException;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;

/**
 * A case and the file it came from.
 *
 * @param file name, for messages
 * @param setup checked, in SI
 * @param text of the file
 * @param folder that the file's paths start from
 * @param given what the file states
 * @param assumed what was filled in
 */
public record LoadedCase(
    String file,
    Case setup,
    String text,
    Path folder,
    List<Statement> given,
    List<Statement> assumed) {
  public LoadedCase {
    given = List.copyOf(given);
    assumed = List.copyOf(assumed);
  }

  /** The same calculated otherwise. */
  public LoadedCase with(Numerics numerics) {
    return new LoadedCase(file, setup.with(numerics), text, folder, given, assumed);
  }

  /**
   * A message with file, line and column of what it is about.
   *
   * @param key with its tables, as {@code gate.at}; where the file doesn't state it, its table's
   *     place is told, or none
   */
  public String told(String key, String message) {
    TomlParseResult toml = CaseFile.toml(file, text);
    List<String> path = Arrays.asList(key.split("\\.", -1));
    for (int n = path.size(); n > 0; n--) {
      TomlPosition at = position(toml, path.subList(0, n));
      if (at != null) {
        return new Mistake(at.line(), at.column(), message).in(file);
      }
    }
    return new Mistake(0, 0, message).in(file);
  }

  private static TomlPosition position(TomlParseResult toml, List<String> path) {
    try {
      return toml.inputPositionOf(path);
    } catch (TomlInvalidTypeException e) { // an array of tables on the way: its place will do
      return null;
    }
  }
}
