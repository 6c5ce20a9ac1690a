// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import gelfront.viewer.model.Mode;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The command line.
 *
 * @param file mesh, case or result to open; absent: nothing yet
 * @param screenshot file for a picture of the window, which then closes by itself
 * @param gallery folder for pictures of every view of the example, which then closes
 * @param mode what the picture is about; absent: what the window begins with
 * @param timing whether the picture is timed, instead
 */
record Arguments(
    Optional<Path> file,
    Optional<Path> screenshot,
    Optional<Path> gallery,
    Optional<Mode> mode,
    boolean timing) {
  private static final String MODES =
      Arrays.stream(Mode.values()).map(Arguments::word).collect(Collectors.joining("|"));

  private static final String USAGE =
      "usage: gelfront view [MESH|CASE|RESULT] [--screenshot FILE.png] [--show "
          + MODES
          + "] [--gallery FOLDER] [--timing]";

  static Arguments of(String... args) throws ViewerException {
    Path file = null;
    Path screenshot = null;
    Path gallery = null;
    Mode mode = null;
    boolean timing = false;
    for (int i = 0; i < args.length; i++) {
      if (args[i].equals("--screenshot") && i + 1 < args.length && screenshot == null) {
        screenshot = Path.of(args[++i]);
      } else if (args[i].equals("--gallery") && i + 1 < args.length && gallery == null) {
        gallery = Path.of(args[++i]);
      } else if (args[i].equals("--timing")) {
        timing = true;
      } else if (args[i].equals("--show") && i + 1 < args.length) {
        mode = mode(args[++i]);
      } else if (!args[i].startsWith("-") && file == null) {
        file = Path.of(args[i]);
      } else {
        throw new ViewerException(ViewerException.USAGE, args[i] + ": " + USAGE, null);
      }
    }
    return new Arguments(
        Optional.ofNullable(file),
        Optional.ofNullable(screenshot),
        Optional.ofNullable(gallery),
        Optional.ofNullable(mode),
        timing);
  }

  private static String word(Mode m) {
    return m.name().toLowerCase(Locale.ROOT);
  }

  private static Mode mode(String word) throws ViewerException {
    return Arrays.stream(Mode.values())
        .filter(m -> word(m).equals(word))
        .findFirst()
        .orElseThrow(() -> new ViewerException(ViewerException.USAGE, word + ": " + USAGE, null));
  }
}
