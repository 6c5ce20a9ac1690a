// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Sizing;
import gelfront.base.Dimension;
import gelfront.setup.Change;
import gelfront.setup.FeedSystem;
import gelfront.setup.LoadedCase;
import gelfront.setup.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A declared feed system with another gate: the runner is never narrower than the gate, and
 * rectangular sections keep their proportions.
 *
 * @param gate its size, metres
 * @param sprue its diameter, metres
 * @param cutters that runner and mouth are rounded to as well; absent: not rounded
 */
record FeedChange(double gate, double sprue, Optional<Cutters> cutters) {
  /** Not rounded. */
  FeedChange(double gate, double sprue) {
    this(gate, sprue, Optional.empty());
  }

  /**
   * @param base with a declared feed
   */
  List<Change> of(LoadedCase base) {
    FeedSystem.Declared feed = (FeedSystem.Declared) base.setup().feed();
    List<Change> all = new ArrayList<>();
    section(all, "gate", feed.gate().section(), gate);
    feed.runner()
        .map(FeedSystem.Runner::section)
        .filter(r -> !same(runner(r.width()), r.width()))
        .ifPresent(r -> section(all, "runner", r, runner(r.width())));
    if (!same(sprue, feed.sprue().innerDiameter())) {
      all.add(Change.mm("sprue.diameter", sprue));
    }
    boolean tapered = base.stated("sprue.taper", Dimension.ANGLE).isPresent();
    boolean stated = base.stated("sprue.mouth_diameter", Dimension.LENGTH).isPresent();
    double now = feed.sprue().mouthDiameter();
    if (!tapered && stated && !same(mouth(base, now), now)) {
      all.add(Change.mm("sprue.mouth_diameter", mouth(base, now)));
    }
    return all;
  }

  private static boolean same(double a, double b) {
    return Math.abs(a - b) <= 1e-9;
  }

  private double runner(double now) {
    double wide = Math.max(now, gate);
    return cutters.map(c -> c.up(wide).size()).orElse(wide);
  }

  /** No narrower than the sprue; a wider mouth than is accepted only where it is so already. */
  private double mouth(LoadedCase base, double now) {
    double wide = Math.max(now, sprue);
    double most =
        Math.max(wide, base.setup().limits().sprueWidest().orElse(Double.POSITIVE_INFINITY));
    return cutters.flatMap(c -> c.within(sprue, wide, most)).map(Cutters.Size::size).orElse(wide);
  }

  private static void section(List<Change> all, String table, Section was, double size) {
    all.add(Change.mm(table + ".size", size));
    if (was.kind() == Section.Kind.RECTANGULAR) {
      all.add(Change.mm(table + ".height", was.height() * size / was.width()));
    }
  }

  /** What to cut for a feed. */
  static List<Sizing.SheetLine> sheet(FeedSystem.Declared feed) {
    List<Sizing.SheetLine> lines = new ArrayList<>();
    lines(lines, "gate", feed.gate().section());
    lines.add(line("land of the gate, length", feed.gate().land(), ""));
    feed.runner()
        .ifPresent(
            r -> {
              lines(lines, "runner", r.section());
              lines.add(line("runner, length", r.length(), "between land and sprue"));
            });
    feed.reservoir()
        .ifPresent(
            r -> {
              lines.add(line("reservoir, diameter", r.diameter(), ""));
              lines.add(line("reservoir, length", r.length(), ""));
            });
    FeedSystem.Sprue s = feed.sprue();
    lines.add(
        line("sprue, diameter at the gate", s.innerDiameter(), "half of it deep in each half"));
    boolean cone = s.mouthDiameter() > s.innerDiameter() + 1e-9;
    lines.add(
        line(
            "sprue, diameter at the mouth", s.mouthDiameter(), cone ? "where its taper ends" : ""));
    lines.add(line("sprue, length", s.length(), "to the block's face"));
    s.extender()
        .ifPresent(e -> lines.add(line("tube on the block, bore", e.bore(), "as in the case")));
    return lines;
  }

  private static void lines(List<Sizing.SheetLine> lines, String name, Section s) {
    switch (s.kind()) {
      case ROUND -> {
        lines.add(line(name + ", diameter", s.width(), "round: ball cutter of this diameter"));
        lines.add(line(name + ", depth in each half", s.width() / 2, ""));
      }
      case HALF_ROUND -> {
        lines.add(line(name + ", width", s.width(), "half-round: ball cutter of this diameter"));
        lines.add(line(name + ", depth in the one half", s.width() / 2, "none in the other"));
      }
      default -> {
        lines.add(line(name + ", width", s.width(), "rectangular"));
        lines.add(line(name + ", depth in each half", s.height() / 2, "or twice this in one half"));
      }
    }
  }

  private static Sizing.SheetLine line(String name, double metres, String note) {
    return new Sizing.SheetLine(name, metres, note);
  }
}
