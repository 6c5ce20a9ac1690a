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

/**
 * A declared feed system with another gate: the runner is never narrower than the gate, and
 * rectangular sections keep their proportions.
 *
 * @param gate its size, metres
 * @param sprue its diameter, metres
 */
record FeedChange(double gate, double sprue) {

  /**
   * @param base with a declared feed
   */
  List<Change> of(LoadedCase base) {
    FeedSystem.Declared feed = (FeedSystem.Declared) base.setup().feed();
    List<Change> all = new ArrayList<>();
    section(all, "gate", feed.gate().section(), gate);
    feed.runner()
        .filter(r -> r.section().width() < gate)
        .ifPresent(r -> section(all, "runner", r.section(), gate));
    double d = sprue;
    if (Math.abs(d - feed.sprue().innerDiameter()) > 1e-9) {
      all.add(Change.mm("sprue.diameter", d));
      boolean tapered = base.stated("sprue.taper", Dimension.ANGLE).isPresent();
      boolean stated = base.stated("sprue.mouth_diameter", Dimension.LENGTH).isPresent();
      if (!tapered && stated && feed.sprue().mouthDiameter() < d) {
        all.add(Change.mm("sprue.mouth_diameter", d));
      }
    }
    return all;
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
    lines.add(line("sprue, diameter at the mouth", s.mouthDiameter(), ""));
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
