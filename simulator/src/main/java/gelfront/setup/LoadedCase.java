// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.material.MaterialTable;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.tomlj.TomlArray;
import org.tomlj.TomlInvalidTypeException;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * A case and the file it came from.
 *
 * @param file name, for messages
 * @param setup checked, in SI
 * @param text of the file
 * @param folder that the file's paths start from
 * @param materials that it may name
 * @param given what the file states
 * @param assumed what was filled in
 */
public record LoadedCase(
    String file,
    Case setup,
    String text,
    Path folder,
    MaterialTable materials,
    List<Statement> given,
    List<Statement> assumed) {
  public LoadedCase {
    given = List.copyOf(given);
    assumed = List.copyOf(assumed);
  }

  /** The same calculated otherwise. */
  public LoadedCase with(Numerics numerics) {
    return new LoadedCase(file, setup.with(numerics), text, folder, materials, given, assumed);
  }

  /**
   * The same with something stated otherwise, as if it stood so in the file; how it is calculated
   * stays as it was.
   *
   * @throws CaseException with all mistakes of the changed case
   * @throws IllegalArgumentException where the file is written in a way that can't be changed
   */
  public LoadedCase with(List<Change> changes) {
    LoadedCase read = CaseFile.parse(file, CaseText.with(text, changes), folder);
    return setup.numerics().flow() ? read : read.with(read.setup.numerics().withoutFlow());
  }

  /**
   * What the file states under a key.
   *
   * @param key with its table, as {@code gate.size}
   * @param dimension of its value
   * @return SI; absent where it isn't stated, or is no such quantity
   */
  public OptionalDouble stated(String key, Dimension dimension) {
    Object raw = CaseFile.toml(file, text).get(Arrays.asList(key.split("\\.", -1)));
    if (raw == null) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(CaseFile.reader(file, text).si(raw, dimension));
    } catch (IllegalArgumentException e) {
      return OptionalDouble.empty();
    }
  }

  /** Whether the file has a key, or a table, of that name. */
  public boolean states(String key) {
    return CaseFile.toml(file, text).contains(Arrays.asList(key.split("\\.", -1)));
  }

  /** A word that the file states under a key; absent where it states none. */
  public Optional<String> word(String key) {
    Object raw = CaseFile.toml(file, text).get(Arrays.asList(key.split("\\.", -1)));
    return raw instanceof String word ? Optional.of(word) : Optional.empty();
  }

  /**
   * A message with file, line and column of what it is about.
   *
   * @param key with its tables, as {@code gate.at}, in an array of tables with the number from 0
   *     on, as {@code fill.vent.0.at}; where the file doesn't state it, its table's place is told,
   *     or none
   */
  public String told(String key, String message) {
    return new Mistake(0, 0, message).in(where(key));
  }

  /** The place alone, as {@code bait.toml:12:8}. */
  public String where(String key) {
    TomlParseResult toml = CaseFile.toml(file, text);
    List<String> path = Arrays.asList(key.split("\\.", -1));
    for (int n = path.size(); n > 0; n--) {
      TomlPosition at = position(toml, path, 0, n);
      if (at != null) {
        return file + ":" + at.line() + ":" + at.column();
      }
    }
    return file;
  }

  private static @Nullable TomlPosition position(
      TomlTable table, List<String> path, int from, int to) {
    for (int n = from + 1; n + 1 < to; n++) {
      if (path.get(n).matches("\\d+") && table.get(path.subList(from, n)) instanceof TomlArray a) {
        int at = Integer.parseInt(path.get(n));
        return at < a.size() ? position(a.getTable(at), path, n + 1, to) : null;
      }
    }
    try {
      return table.inputPositionOf(path.subList(from, to));
    } catch (TomlInvalidTypeException e) { // an array of tables on the way: its place will do
      return null;
    }
  }
}
