package gelfront.viewer;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The command line.
 *
 * @param result folder to open
 * @param screenshot file for a picture of the window, which then closes by itself
 */
record Arguments(Path result, Optional<Path> screenshot) {
  private static final String USAGE = "usage: gelfront view RESULT_FOLDER [--screenshot FILE.png]";

  static Arguments of(String... args) throws ViewerException {
    Path result = null;
    Path screenshot = null;
    for (int i = 0; i < args.length; i++) {
      if (args[i].equals("--screenshot") && i + 1 < args.length && screenshot == null) {
        screenshot = Path.of(args[++i]);
      } else if (!args[i].startsWith("-") && result == null) {
        result = Path.of(args[i]);
      } else {
        throw new ViewerException(ViewerException.USAGE, args[i] + ": " + USAGE, null);
      }
    }
    if (result == null) {
      throw new ViewerException(ViewerException.USAGE, USAGE, null);
    }
    return new Arguments(result, Optional.ofNullable(screenshot));
  }
}
