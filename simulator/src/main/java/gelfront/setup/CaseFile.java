package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Nearest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Reads case files. */
public final class CaseFile {
  /** Some editors put one before the text. */
  private static final String BYTE_ORDER_MARK = "\ufeff";

  private static final Pattern COMMA = Pattern.compile("[^\"'#]*=\\s*[-+]?[0-9]*,[0-9]+.*");
  private static final Pattern NO_QUOTES =
      Pattern.compile("[^\"'#]*=\\s*[-+]?[0-9.]+(?:/[0-9]+)?\\s*[\\p{L}°%/\"].*");

  private static final String EXAMPLE = "{ length = \"mm\", temperature = \"degC\" }";

  private static final List<String> NAMES =
      Arrays.stream(Dimension.values()).map(CaseFile::name).toList();

  private CaseFile() {}

  /**
   * @throws CaseException with all mistakes of the file
   */
  public static LoadedCase read(Path file) {
    String name = String.valueOf(file.getFileName());
    String text;
    try {
      text = Files.readString(file);
    } catch (IOException e) {
      String why = Files.exists(file) ? "can't be read as text" : "there is no such file";
      throw new CaseException(file.toString(), List.of(new Mistake(0, 0, why)));
    }
    Path folder = file.toAbsolutePath().getParent();
    return parse(name, text, folder);
  }

  /**
   * @param name for messages
   * @param folder that paths in the text start from
   * @throws CaseException with all mistakes of the text
   */
  public static LoadedCase parse(String name, String text, Path folder) {
    TomlParseResult toml = Toml.parse(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
    List<Mistake> mistakes = new ArrayList<>();
    List<String> lines = text.lines().toList();
    for (TomlParseError e : toml.errors()) {
      int line = e.position().line();
      String hint = line <= lines.size() ? hint(lines.get(line - 1)) : "";
      mistakes.add(new Mistake(line, e.position().column(), e.getMessage() + hint));
    }
    if (!mistakes.isEmpty()) {
      throw new CaseException(name, mistakes);
    }
    List<Statement> given = new ArrayList<>();
    CaseTable root = new CaseTable("", toml, null, bareUnits(toml, mistakes), mistakes, given);
    List<Statement> assumed = new ArrayList<>();
    Case setup = new CaseAssembler(root, name, folder, assumed, mistakes::isEmpty).assemble();
    if (!mistakes.isEmpty()) {
      mistakes.sort(Comparator.comparingInt(Mistake::line).thenComparingInt(Mistake::column));
      throw new CaseException(name, mistakes.stream().distinct().toList());
    }
    return new LoadedCase(setup, text, folder, given, assumed);
  }

  /** What people most often do who write such a line. */
  private static String hint(String line) {
    if (COMMA.matcher(line).matches()) {
      return "; a decimal comma? Write a point, and the value with its unit in quotes, as in"
          + " \"3.5 mm\"";
    }
    return NO_QUOTES.matcher(line).matches()
        ? "; a value with its unit goes in quotes, as in \"12 mm\""
        : "";
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
