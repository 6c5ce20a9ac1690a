// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

import java.util.List;

/**
 * Something to mind, as a result keeps it: words and the figures in them, so that they can be told
 * in any units later on.
 *
 * @param where file, line and column of what it is about; empty where it isn't about one key
 * @param words with "{}" in place of each figure
 * @param figures in their order
 */
public record Caution(String where, String words, List<Figure> figures) implements Told {
  private static final String PLACE = "{}";

  public Caution {
    figures = List.copyOf(figures);
    if (pieces(words).length != figures.size() + 1) {
      throw new IllegalArgumentException(figures.size() + " figures for: " + words);
    }
  }

  /** About no key of the case file. */
  public static Caution of(String words, Figure... figures) {
    return new Caution("", words, List.of(figures));
  }

  /** The same about a place in a file. */
  public Caution at(String place) {
    return new Caution(place, words, figures);
  }

  @Override
  public String in(Units units) {
    String[] pieces = pieces(words);
    StringBuilder told = new StringBuilder(where.isEmpty() ? "" : where + ": ").append(pieces[0]);
    for (int i = 0; i < figures.size(); i++) {
      told.append(figures.get(i).in(units)).append(pieces[i + 1]);
    }
    return told.toString();
  }

  private static String[] pieces(String words) {
    return words.split(java.util.regex.Pattern.quote(PLACE), -1);
  }

  /** What a figure is of. */
  public enum Kind {
    /** °C, told to the degree. */
    TEMPERATURE,
    /** x, y and z in metres. */
    POINT
  }

  /**
   * @param kind of figure
   * @param si its numbers, as the kind says
   */
  public record Figure(Kind kind, List<Double> si) {
    public Figure {
      si = List.copyOf(si);
      if (si.size() != (kind == Kind.POINT ? 3 : 1)) {
        throw new IllegalArgumentException(kind + " of " + si);
      }
    }

    /** °C. */
    public static Figure temperature(double celsius) {
      return new Figure(Kind.TEMPERATURE, List.of(celsius));
    }

    /** Metres. */
    public static Figure point(double x, double y, double z) {
      return new Figure(Kind.POINT, List.of(x, y, z));
    }

    String in(Units units) {
      return switch (kind) {
        case TEMPERATURE -> units.temperature(si.get(0));
        case POINT -> units.lengths("(%s, %s, %s)", 1, si.get(0), si.get(1), si.get(2));
      };
    }
  }
}
