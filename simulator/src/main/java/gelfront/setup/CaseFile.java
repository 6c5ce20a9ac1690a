package gelfront.setup;

import gelfront.base.Dimension;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;

/** Reads case files. */
public final class CaseFile {
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
    TomlParseResult toml = Toml.parse(text);
    List<Mistake> mistakes = new ArrayList<>();
    toml.errors()
        .forEach(
            e ->
                mistakes.add(
                    new Mistake(e.position().line(), e.position().column(), e.getMessage())));
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

  /** The file's own units of bare numbers; values without a unit of these have none to fall to. */
  private static Map<Dimension, String> bareUnits(TomlTable toml, List<Mistake> mistakes) {
    Map<Dimension, String> bare = new EnumMap<>(Dimension.class);
    if (!(toml.get("units") instanceof TomlTable units)) {
      return bare;
    }
    for (String key : units.keySet()) {
      String word = units.get(List.of(key)) instanceof String s ? s : "";
      try {
        Dimension d = Dimension.valueOf(key.toUpperCase(java.util.Locale.ROOT));
        d.toSi(1, word);
        bare.put(d, word);
      } catch (IllegalArgumentException e) {
        var p = units.inputPositionOf(List.of(key));
        mistakes.add(
            new Mistake(
                p.line(),
                p.column(),
                "units: "
                    + key
                    + " = \""
                    + word
                    + "\" is no unit known; length, temperature, time"
                    + " and so on, each with its unit"));
      }
    }
    return bare;
  }
}
