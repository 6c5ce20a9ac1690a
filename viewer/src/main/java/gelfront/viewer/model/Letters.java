// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

/** A, B, ... of trapped air, as in the report: numbers are those of dents' pockets. */
public final class Letters {
  private static final int ALPHABET = 26;

  private Letters() {}

  /**
   * @param number from 1
   */
  public static String of(int number) {
    return number <= ALPHABET
        ? String.valueOf((char) ('A' + number - 1))
        : "A" + (number - ALPHABET);
  }
}
