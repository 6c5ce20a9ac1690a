// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.answer.Remedies;
import gelfront.base.Units;
import gelfront.report.RemediesFiles;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A line of the table of remedies as a maker would say it. */
public final class RemedySaid {
  private RemedySaid() {}

  /** What it is, as the head of a line. */
  public static String head(Remedies.Line l, Units units) {
    return capital(l.what().in(units));
  }

  /** What comes of it: dent, opening, trimming. */
  public static String facts(Remedies r, Remedies.Line l, Units units) {
    return facts(RemediesFiles.cells(r, l, units), r.level());
  }

  /**
   * @param cells as {@link RemediesFiles#HEADS} names them
   * @param level at which it was tried, in a word
   */
  static String facts(List<String> cells, String level) {
    if (cells.get(3).isEmpty()) {
      return "No result: " + cells.get(6) + ".";
    }
    boolean confirmed = !cells.get(2).isEmpty();
    List<String> said = new ArrayList<>();
    said.add("dent " + (confirmed ? cells.get(2) : cells.get(1) + " at level " + level));
    said.add(changed(cells.get(3), "opens %s later", "opens %s sooner", "opens as soon as before"));
    said.add(changed(cells.get(4), "%s more to trim", "%s less to trim", ""));
    said.removeIf(String::isEmpty);
    return so(cells.get(6)) + ": " + String.join(", ", said) + ".";
  }

  private static String so(String words) {
    return capital(words.startsWith("cures") ? words.replaceFirst("cures", "cures it") : words);
  }

  /** "+9 s", "-2 s" or "same". */
  private static String changed(String by, String more, String less, String same) {
    if (by.equals("same")) {
      return same;
    }
    return String.format(Locale.ROOT, by.startsWith("-") ? less : more, by.substring(1));
  }

  /** The same, as a line begins. */
  public static String capital(String words) {
    return words.isEmpty()
        ? ""
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
