// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The commands that the README shows, as their users would have to write them. */
final class ReadmeCommands {
  private static final Pattern FENCED = Pattern.compile("```.*?```", Pattern.DOTALL);
  private static final Pattern INDENTED =
      Pattern.compile("^ {4}(\\./(?:gelfront|mvnw)\\b.*)$", Pattern.MULTILINE);
  private static final Pattern INLINE =
      Pattern.compile("`((?:\\./|path/to/)?(?:gelfront|mvnw|view) [^`\n]+)`");
  private static final Pattern ROW = Pattern.compile("^\\| (`[^|]+`) \\|", Pattern.MULTILINE);
  private static final Pattern CODE = Pattern.compile("`([^`]+)`");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  private ReadmeCommands() {}

  /** Of the indented blocks and in the text, without launcher and comments, each once. */
  static List<String> shown(String readme) {
    String text = FENCED.matcher(readme).replaceAll("");
    List<String> all = new ArrayList<>();
    for (Pattern p : List.of(INDENTED, INLINE)) {
      for (Matcher m = p.matcher(text); m.find(); ) {
        all.add(bare(m.group(1).replaceFirst("\\s+#.*", "").strip()));
      }
    }
    return all.stream().distinct().toList();
  }

  /** Without the launcher. */
  private static String bare(String command) {
    return command.replaceFirst("^(\\./|path/to/)?(gelfront )?", "");
  }

  /** First column of the table of commands, with what may be left out. */
  static List<String> table(String readme) {
    int from = readme.indexOf("\n| command |");
    String table = readme.substring(from, readme.indexOf("\n\n", from));
    List<String> all = new ArrayList<>();
    for (Matcher row = ROW.matcher(table); row.find(); ) {
      for (Matcher code = CODE.matcher(row.group(1)); code.find(); ) {
        all.add(code.group(1));
      }
    }
    return all;
  }

  /** Words as a shell takes them, without launcher, brackets and three dots. */
  static List<String> words(String command) {
    String plain = bare(command).replaceAll("[\\[\\]]|\\.\\.\\.", " ");
    List<String> all = new ArrayList<>();
    for (Matcher m = WORD.matcher(plain); m.find(); ) {
      all.add(m.group(1) == null ? m.group(2) : m.group(1));
    }
    return all;
  }
}
