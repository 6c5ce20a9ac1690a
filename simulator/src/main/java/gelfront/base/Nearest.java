// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that somebody who mistyped one most likely meant. */
public final class Nearest {
  private Nearest() {}

  /**
   * The known word that takes the fewest edits (Levenshtein's distance, 1966), or one that begins
   * with what was written; none where nothing is near.
   */
  public static Optional<String> to(String word, Collection<String> known) {
    String w = word.toLowerCase(Locale.ROOT);
    Optional<String> longer =
        known.stream().filter(k -> w.length() >= 2 && k.startsWith(w)).findFirst();
    return longer.or(
        () ->
            known.stream()
                .min(Comparator.comparingInt(k -> edits(w, k)))
                .filter(k -> edits(w, k) <= Math.max(1, Math.max(w.length(), k.length()) / 2)));
  }

  /** "; did you mean "x"?" or nothing. */
  public static String question(String word, Collection<String> known) {
    return to(word, known).map(k -> "; did you mean \"" + k + "\"?").orElse("");
  }

  private static int edits(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
