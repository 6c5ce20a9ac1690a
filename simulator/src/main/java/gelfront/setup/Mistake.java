package gelfront.setup;

/**
 * One thing wrong with a case file.
 *
 * @param line from 1; 0 where it concerns the whole file
 * @param column from 1
 * @param message what is wrong and what would be right
 */
public record Mistake(int line, int column, String message) {
  /** "bait.toml:12:8: ..." */
  public String in(String file) {
    return line == 0 ? file + ": " + message : file + ":" + line + ":" + column + ": " + message;
  }
}
