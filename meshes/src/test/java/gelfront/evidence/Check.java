// SPDX-License-Identifier: Apache-2.0
package gelfront.evidence;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A check against the outside: asserts, and leaves the same as a line for the validation report in
 * {@code target/checks}, so that what is asserted and what is reported can't differ.
 *
 * <pre>
 *   Check.of("square duct, flow", "Shah and London 1978").expected(exact).got(q).within(0.01);
 * </pre>
 *
 * <p>Several pairs under one name give one line with the worst of them; pairs with an {@link #at}
 * are drawn, too. Lines of one test class with one name overwrite each other. What common practice
 * says is {@link #told}: reported, since nobody bends the tool to it.
 */
public final class Check {
  /** Bounds below this are of digits, which are then shown. */
  private static final double DIGITS = 1e-4;

  private final String area;
  private final String name;
  private final String source;
  private final List<Pair> pairs = new ArrayList<>();
  private double at = Double.NaN;
  private double expected = Double.NaN;
  private Optional<String[]> axes = Optional.empty();
  private String figures = "";

  /** NaN as {@code expected} or {@code got}: only how far they lie apart is known. */
  private record Pair(double at, double expected, double got, double error) {}

  private Check(String area, String name, String source) {
    this.area = area;
    this.name = name;
    this.source = source;
  }

  /**
   * @param name what is checked, unlike any other in its class
   * @param source where what is expected comes from
   */
  public static Check of(String name, String source) {
    Class<?> caller =
        StackWalker.getInstance(StackWalker.Option.RETAIN_CLASS_REFERENCE).getCallerClass();
    if (name.isBlank() || source.isBlank()) {
      throw new IllegalArgumentException("a check needs a name and a source");
    }
    return new Check(caller.getSimpleName(), name, source);
  }

  /** Place or time of the next pair, for a drawing. */
  public Check at(double x) {
    at = x;
    return this;
  }

  public Check expected(double value) {
    expected = value;
    return this;
  }

  /** Ends a pair. */
  public Check got(double value) {
    if (Double.isNaN(expected)) {
      throw new IllegalStateException("what is expected comes first");
    }
    pairs.add(new Pair(at, expected, value, value - expected));
    at = Double.NaN;
    expected = Double.NaN;
    return this;
  }

  /** A pair of which only the error is known, as a share of what is expected. */
  public Check error(double share) {
    pairs.add(new Pair(Double.NaN, Double.NaN, Double.NaN, share));
    return this;
  }

  /** Draws the pairs. */
  public Check plot(String x, String y) {
    axes = Optional.of(new String[] {x, y});
    return this;
  }

  /**
   * Figures of an earlier run, read by this test and not made by it.
   *
   * @param file of this module's data
   * @param how what makes it anew
   */
  public Check stored(String file, String how) {
    figures = file + ", " + how;
    return this;
  }

  /** Words against words, where nothing is off by a share: asserts nothing. */
  public void told(String says, String found, String verdict) {
    leave(says, found, "", "", 1, verdict);
  }

  /** Asserts that each is off by no more than a share of what was expected of it. */
  public void within(double share) {
    judge(share, Double.NaN);
  }

  /** Asserts that each is off by no more than a share of a stated span, in its unit. */
  public void within(double share, double span) {
    judge(share, span);
  }

  private void judge(double bound, double span) {
    if (pairs.isEmpty()) {
      throw new IllegalStateException("nothing was checked: " + name);
    }
    Pair worst = pairs.get(0);
    for (Pair p : pairs) {
      boolean last = Double.isNaN(off(worst, span)) || off(p, span) <= off(worst, span);
      worst = last ? worst : p; // what is no number is worst of all
    }
    double off = off(worst, span);
    boolean holds = off <= bound;
    int digits = 0 < bound && bound < DIGITS ? 10 : 5;
    leave(
        number(worst.expected(), digits),
        number(worst.got(), digits),
        percent(off) + (Double.isNaN(span) ? "" : " of " + number(span, 5)),
        percent(bound),
        pairs.size(),
        holds ? "holds" : "FAILS");
    assertTrue(
        holds,
        String.format(
            Locale.ROOT,
            "%s: expected %.7g, got %.7g: off by %.4g %%, %.4g %% allowed (%s)",
            name,
            worst.expected(),
            worst.got(),
            100 * off,
            100 * bound,
            source));
  }

  private static double off(Pair p, double span) {
    double of =
        Double.isNaN(span) ? (Double.isNaN(p.expected()) ? 1 : Math.abs(p.expected())) : span;
    return Math.abs(p.error()) / of;
  }

  private void leave(
      String expect, String found, String off, String bound, int count, String verdict) {
    String file = (area + " " + name).replaceAll("[^A-Za-z0-9]+", "-").toLowerCase(Locale.ROOT);
    String drawing = axes.isPresent() ? file + ".svg" : "";
    String line =
        String.join(
            "\t",
            area,
            name,
            source,
            expect,
            found,
            off,
            bound,
            String.valueOf(count),
            verdict,
            drawing,
            figures);
    try {
      Path folder = Files.createDirectories(Path.of("target", "checks"));
      Files.writeString(folder.resolve(file + ".tsv"), line + "\n");
      if (axes.isPresent()) {
        Files.writeString(folder.resolve(drawing), drawn(axes.get()[0], axes.get()[1]));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String number(double v, int digits) {
    return Double.isNaN(v) ? "" : String.format(Locale.ROOT, "%." + digits + "g", v);
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.2g %%", 100 * share);
  }

  private String drawn(String x, String y) {
    CheckPlot plot = new CheckPlot(name, x, y);
    pairs.forEach(p -> plot.add(p.at(), p.expected(), p.got()));
    return plot.svg();
  }
}
