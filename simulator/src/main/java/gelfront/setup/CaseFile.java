// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Nearest;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Reads case files. */
public final class CaseFile {
  /** Some editors put one before the text. */
  static final String BYTE_ORDER_MARK = "\ufeff";

  /** Bytes; the longest cases people write are a hundredth of it. */
  private static final long LARGEST = 1 << 20;

  private static final String EXAMPLE = "{ length = \"mm\", temperature = \"degC\" }";

  private static final List<String> NAMES =
      Arrays.stream(Dimension.values()).map(CaseFile::name).toList();

  private CaseFile() {}

  /**
   * @throws CaseException with all mistakes of the file
   */
  public static LoadedCase read(Path file) {
    String name = String.valueOf(file.getFileName());
    return parse(name, text(file), folder(file));
  }

  /** Of a file that was read, and so isn't the root of a file system. */
  private static Path folder(Path file) {
    return Objects.requireNonNull(file.toAbsolutePath().getParent());
  }

  private static String text(Path file) {
    try {
      if (!Files.exists(file)) {
        throw unreadable(file, "there is no such file");
      }
      if (!Files.isRegularFile(file)) {
        throw unreadable(file, "is no ordinary file");
      }
      if (Files.size(file) > LARGEST) {
        throw unreadable(file, "is larger than 1 MiB: is it a case file?");
      }
      return Files.readString(file);
    } catch (MalformedInputException e) {
      throw unreadable(file, "can't be read as text: it is not UTF-8");
    } catch (IOException e) {
      throw unreadable(file, "can't be read: " + e.getMessage());
    }
  }

  private static CaseException unreadable(Path file, String why) {
    return new CaseException(file.toString(), List.of(new Mistake(0, 0, why)));
  }

  /**
   * @param name for messages
   * @param folder that paths in the text start from
   * @throws CaseException with all mistakes of the text
   */
  public static LoadedCase parse(String name, String text, Path folder) {
    TomlParseResult toml = toml(name, text);
    List<String> lines = text.lines().toList();
    List<Mistake> mistakes = syntax(toml, lines);
    if (!toml.errors().stream().allMatch(CaseFile::repeats)) {
      throw new CaseException(name, mistakes);
    }
    List<Statement> given = new ArrayList<>();
    QuantityReader reader = new QuantityReader(bareUnits(toml, mistakes));
    CaseTable root = CaseTable.whole(toml, reader, mistakes, given);
    List<Statement> assumed = new ArrayList<>();
    CaseAssembler assembler = new CaseAssembler(root, name, folder, assumed, mistakes::isEmpty);
    @Nullable Case setup = assembler.assemble();
    mistakes.removeIf(m -> misplaced(m, toml, lines));
    if (setup == null || !mistakes.isEmpty()) {
      mistakes.sort(Comparator.comparingInt(Mistake::line).thenComparingInt(Mistake::column));
      throw new CaseException(name, mistakes.stream().distinct().toList());
    }
    return new LoadedCase(name, setup, text, folder, assembler.materials(), given, assumed);
  }

  /** Knows the file's units of bare numbers. */
  static QuantityReader reader(String name, String text) {
    return new QuantityReader(bareUnits(toml(name, text), new ArrayList<>()));
  }

  static TomlParseResult toml(String name, String text) {
    try {
      return Toml.parse(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
    } catch (TomlParseError e) { // most it collects, a few it throws
      int line = e.position().line();
      throw new CaseException(
          name,
          List.of(new Mistake(line, e.position().column(), String.valueOf(e.getMessage()))),
          e);
    } catch (StackOverflowError e) {
      throw new CaseException(
          name, List.of(new Mistake(0, 0, "brackets are nested too deeply to be a case")), e);
    }
  }

  private static List<Mistake> syntax(TomlParseResult toml, List<String> lines) {
    List<Mistake> mistakes = new ArrayList<>();
    for (TomlParseError e : toml.errors()) {
      int line = e.position().line();
      String hint = line <= lines.size() && !repeats(e) ? Slips.hint(lines.get(line - 1)) : "";
      mistakes.add(new Mistake(line, e.position().column(), e.getMessage() + hint));
    }
    return mistakes;
  }

  /** Keys below a head that stands twice were taken for those of the head before it. */
  private static boolean misplaced(Mistake m, TomlParseResult toml, List<String> lines) {
    int line = Math.min(m.line(), lines.size());
    while (line > 0 && !lines.get(line - 1).strip().startsWith("[")) {
      line--;
    }
    int head = line;
    return head < m.line()
        && toml.errors().stream().anyMatch(e -> e.position().line() == head && repeats(e));
  }

  /** Whether all else of the file was understood: something is stated twice, no more. */
  private static boolean repeats(TomlParseError e) {
    return String.valueOf(e.getMessage()).contains("previously defined");
  }

  /** The file's own units of bare numbers; values without a unit of these have none to fall to. */
  private static Map<Dimension, String> bareUnits(TomlTable toml, List<Mistake> mistakes) {
    Map<Dimension, String> bare = new EnumMap<>(Dimension.class);
    if (!toml.contains(List.of("units"))) {
      return bare;
    }
    if (!(toml.get(List.of("units")) instanceof TomlTable units)) {
      mistakes.add(at(toml, "units", "units must be a table, for example " + EXAMPLE));
      return bare;
    }
    for (String key : units.keySet()) {
      Optional<Dimension> d = dimension(key);
      if (d.isEmpty()) {
        mistakes.add(
            at(
                units,
                key,
                "units: nothing is measured in \"" + key + "\"" + Nearest.question(key, NAMES)));
        continue;
      }
      String word = units.get(List.of(key)) instanceof String s ? s : "";
      if (!d.get().knows(word)) {
        mistakes.add(
            at(
                units,
                key,
                "units: " + key + " = \"" + word + "\" is none of " + d.get().unitNames()));
      }
      // a stand-in for a mistyped one, so that not every number of the file is a mistake
      bare.put(d.get(), d.get().knows(word) ? word : d.get().unitList().get(0));
    }
    return bare;
  }

  private static Optional<Dimension> dimension(String key) {
    return Arrays.stream(Dimension.values()).filter(d -> name(d).equals(key)).findFirst();
  }

  private static String name(Dimension d) {
    return d.name().toLowerCase(Locale.ROOT);
  }

  private static Mistake at(TomlTable table, String key, String message) {
    TomlPosition p = table.inputPositionOf(List.of(key));
    return new Mistake(p.line(), p.column(), message);
  }
}
