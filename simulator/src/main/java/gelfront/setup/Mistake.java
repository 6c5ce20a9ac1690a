// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

/**
 * One thing wrong with a case file.
 *
 * @param line from 1; 0 where it concerns the whole file
 * @param column from 1
 * @param message what is wrong and what would be right
 */
public record Mistake(int line, int column, String message) {
  /** Nobody reads on beyond this. */
  private static final int LONGEST = 400;

  /** What a file says goes to terminals: no control characters, and not endlessly. */
  public Mistake {
    message = message.replaceAll("[\\p{Cc}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]", "\ufffd");
    if (message.length() > LONGEST) {
      message = message.substring(0, LONGEST) + "...";
    }
  }

  /** "bait.toml:12:8: ..." */
  public String in(String file) {
    return line == 0 ? file + ": " + message : file + ":" + line + ":" + column + ": " + message;
  }
}
