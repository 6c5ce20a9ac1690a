// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import java.util.List;
import java.util.regex.Pattern;

/** What people most often do who write a line that can't be read. The first that fits is told. */
final class Slips {
  private record Slip(Pattern line, String hint) {}

  private static final List<Slip> SLIPS =
      List.of(
          slip(
              "[^\"'#]*=\\s*[-+]?[0-9]*,[0-9]+.*",
              "a decimal comma? Write a point, and the value with its unit in quotes, as in"
                  + " \"3.5 mm\""),
          slip(
              ".*[\u201c\u201d\u201e\u201f\u2018\u2019\u201a].*",
              "curly quotes: write straight ones, \""),
          slip(
              "[^\"'#]*=\\s*\"[^\"']*\\\\[^\"']*\".*",
              "write paths with /, or in single quotes, as in 'C:\\parts\\bait.stl'"),
          slip(
              "[^\"'#]*=\\s*[-+]?[0-9.]+(?:/[0-9]+)?\\s*[\\p{L}°%/\"].*",
              "a value with its unit goes in quotes, as in \"12 mm\""),
          slip("(?:[^\"#]*\"[^\"]*\")*[^\"#]*\"[^\"]*", "a quote is missing"),
          slip("\\s*[\\w.-]+\\s*:.*", "write = between a key and its value"),
          slip("[^#]*\\s//.*", "a remark begins with #"),
          slip(
              "\\s*[\\w.-]+\\s*", "a head goes in brackets, as in [gate]; a key has = and a value"),
          slip("[^\"'#]*=\\s*[A-Za-z].*", "a word goes in quotes, as in \"soft\""),
          slip(
              "\\s*[{<].*",
              "a case holds lines such as size = \"4 mm\" under heads such as [gate]"));

  private Slips() {}

  private static Slip slip(String line, String hint) {
    return new Slip(Pattern.compile(line), "; " + hint);
  }

  /** To be put behind what the line was told; empty where none fits. */
  static String hint(String line) {
    return SLIPS.stream()
        .filter(s -> s.line.matcher(line).matches())
        .map(Slip::hint)
        .findFirst()
        .orElse("");
  }
}
