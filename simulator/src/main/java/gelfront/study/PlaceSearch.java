// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.answer.Sizing;
import gelfront.finding.Constriction;
import gelfront.finding.Opening;
import gelfront.setup.FeedSystem;
import gelfront.setup.LoadedCase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The search for the smallest gate at one place, at level quick: the present gate and one of the
 * part's thickness first; where that doesn't do the widest that is accepted, since dents may grow
 * again with a gate that heats the part; a wider sprue where that is to blame; sizes between one
 * that leaves a dent and a wider one that leaves an oval as the clock opens the mould; then a
 * bracket round the smallest that does.
 */
final class PlaceSearch {
  /** Metres between a size that does and one that doesn't: no cutter tells less apart. */
  static final double TOLERANCE = 0.25e-3;

  /** Metres that sizes are whole multiples of. */
  static final double STEP = 0.1e-3;

  /** Share of the visible depth that levels differ by as a rule. */
  static final double CLOSE = 0.15;

  /** Share of the visible depth within which two gates' dents are the same: own judgement. */
  static final double SAME = 0.05;

  /** Gate widths that a sprue is wide at least, or it would set first: own judgement. */
  private static final double SPRUE = 1.25;

  private final LoadedCase base;
  private final boolean moved;
  private final double visible;
  private final double least;
  private final double proposed;
  private final double widest;
  private final double widestSprue;
  private final List<Sizing.Point> points = new ArrayList<>();
  private Bracket bracket = new Bracket(TOLERANCE, STEP);
  private double sprue;
  private boolean sprueWidened;
  private int left;

  /**
   * @param base the case with its gate at the place
   * @param moved whether the place isn't the case's own: its gate's size means nothing there
   * @param sizes of gates
   * @param widestSprue metres
   * @param runs at most
   */
  PlaceSearch(LoadedCase base, boolean moved, Sizes sizes, double widestSprue, int runs) {
    this.base = base;
    this.moved = moved;
    this.visible = base.setup().visibleDent();
    this.least = sizes.least();
    this.widest = sizes.widest();
    this.proposed = Math.max(least, Math.min(widest, sizes.proposed()));
    this.widestSprue = widestSprue;
    this.left = runs;
    this.sprue = feed().sprue().innerDiameter();
  }

  /**
   * Of gates that may be tried at a place, metres.
   *
   * @param least thinnest
   * @param proposed to begin with
   * @param widest above the least
   */
  record Sizes(double least, double proposed, double widest) {}

  private FeedSystem.Declared feed() {
    return (FeedSystem.Declared) base.setup().feed();
  }

  /** Metres: the gate as the case has it. */
  double present() {
    return feed().gate().section().width();
  }

  /** Sprue's diameter that is searched with where the gate allows it, metres. */
  double sprue() {
    return sprue;
  }

  /** Metres: the sprue beside a gate, wider than it as far as that is accepted. */
  double sprueFor(double gate) {
    return sprueFor(gate, sprue);
  }

  private double sprueFor(double gate, double diameter) {
    return sprueFor(gate, diameter, widestSprue);
  }

  /**
   * Metres: the sprue beside a gate.
   *
   * @param diameter at least
   * @param widest that is accepted, but never narrower than the gate
   */
  static double sprueFor(double gate, double diameter, double widest) {
    return Math.max(diameter, Math.min(whole(SPRUE * gate), Math.max(widest, gate)));
  }

  boolean sprueWidened() {
    return sprueWidened;
  }

  List<Sizing.Point> points() {
    return points.stream().sorted(Comparator.comparingDouble(Sizing.Point::gate)).toList();
  }

  /** Metres: the smallest gate that does; NaN: none of those that were run. */
  double does() {
    return bracket.does();
  }

  /** Metres: the largest below it that doesn't; NaN: none. */
  double tooSmall() {
    return bracket.tooSmall();
  }

  /** What the widest gate leaves; absent where it wasn't run or failed. */
  Optional<RunOutcome> atWidest() {
    return points.stream()
        .filter(p -> p.gate() >= widest - 1e-9 && p.sprue() >= sprue - 1e-9)
        .findFirst()
        .flatMap(p -> p.ran().outcome());
  }

  double widest() {
    return widest;
  }

  /** The run that left the least, where none did; absent: none gave a result. */
  Optional<Sizing.Point> best() {
    return points.stream()
        .filter(p -> p.ran().outcome().isPresent())
        .min(Comparator.comparingDouble(p -> p.ran().outcome().get().defect()));
  }

  /**
   * Metres, rising: gates so close that level normal must tell; empty where some gate does. Without
   * those that leave no less than a thinner one that a neck limits.
   */
  List<Double> close() {
    List<Sizing.Point> close = points().stream().filter(this::isClose).toList();
    return Double.isNaN(does())
        ? close.stream()
            .filter(p -> close.stream().noneMatch(q -> limits(q, p)))
            .map(Sizing.Point::gate)
            .distinct()
            .toList()
        : List.of();
  }

  /** Whether a neck makes a gate as good as a wider one. */
  private boolean limits(Sizing.Point thin, Sizing.Point wide) {
    return thin.gate() < wide.gate() - 1e-9
        && thin.ran().outcome().flatMap(NeckSearch::blamed).isPresent()
        && excess(thin.ran()) <= excess(wide.ran()) + SAME * visible;
  }

  private boolean isClose(Sizing.Point p) {
    return p.ran().outcome().filter(o -> o.defect() < (1 + CLOSE) * visible).isPresent();
  }

  /** Metres: the widest gate that was run and is thinner than any of these; absent: none. */
  OptionalDouble belowClose() {
    double thinnest = close().stream().findFirst().orElse(Double.NaN);
    return points.stream().mapToDouble(Sizing.Point::gate).filter(g -> g < thinnest - 1e-9).max();
  }

  /** Metres by which a run's dent or oval is too much to go unseen; NaN: no result. */
  double excess(Ran ran) {
    return ran.outcome().map(o -> o.defect() - visible).orElse(Double.NaN);
  }

  /**
   * Gates to run next, metres; none: the search is over.
   *
   * @param most at once
   */
  List<Double> next(int most) {
    int n = Math.min(most, left);
    if (n < 1) {
      return List.of();
    }
    TreeSet<Double> wanted = new TreeSet<>(wanted(n));
    wanted.removeIf(this::known);
    return wanted.stream().limit(n).toList();
  }

  private List<Double> wanted(int n) {
    if (points.isEmpty()) {
      double now = Math.max(least, Math.min(widest, present()));
      double more = Math.max(proposed, whole(0.5 * (now + widest)));
      return moved || n == 1 ? List.of(proposed) : List.of(now, Math.min(widest, more));
    }
    if (Double.isNaN(does())) {
      return !known(widest) || widerSprueHelps() ? List.of(widest) : betweenDentAndOval();
    }
    if (Double.isNaN(tooSmall())) {
      return does() <= least + 1e-9
          ? List.of()
          : List.of(whole(Math.max(least, 0.5 * does())), least).subList(0, Math.min(2, n));
    }
    return bracket.next(n);
  }

  private List<Double> betweenDentAndOval() {
    OptionalDouble middle = new DentOrOval(visible, TOLERANCE).between(points());
    return middle.isPresent() ? List.of(whole(middle.getAsDouble())) : List.of();
  }

  /**
   * The opening of the mould that keeps gates from doing: that of the best run, or of the widest
   * gate; the one that takes longer to be mended. Absent: some gate does, or no oval is seen.
   */
  Optional<Opening> openedTooEarly() {
    Optional<RunOutcome> closest = best().flatMap(p -> p.ran().outcome());
    return Stream.of(closest, atWidest())
        .flatMap(Optional::stream)
        .filter(o -> Double.isNaN(does()) && o.goesOval(visible))
        .map(RunOutcome::opening)
        .max(Comparator.comparingDouble(Opening::shutUntil));
  }

  /** A wider sprue is taken once, where the widest gate shows that the sprue closes first. */
  private boolean widerSprueHelps() {
    boolean toBlame =
        atWidest()
            .flatMap(RunOutcome::blamed)
            .filter(
                c -> c.kind() == Constriction.Kind.SPRUE || c.kind() == Constriction.Kind.DRY_SPRUE)
            .isPresent();
    if (!toBlame || sprueWidened || widestSprue <= sprueFor(widest) + STEP) {
      return false;
    }
    sprueWidened = true;
    sprue = widestSprue;
    bracket = new Bracket(TOLERANCE, STEP);
    return true;
  }

  private boolean known(double gate) {
    return points.stream()
        .anyMatch(p -> Math.abs(p.gate() - gate) < 0.5 * STEP && p.sprue() >= sprue - 1e-9);
  }

  /** Up to a whole multiple of the step. */
  private static double whole(double size) {
    return Math.ceil(size / STEP - 1e-6) * STEP;
  }

  Job job(double gate) {
    return job(gate, sprue);
  }

  /**
   * @throws IllegalArgumentException in words, if there can't be such a feed
   */
  Job job(double gate, double sprueDiameter) {
    return job(new FeedChange(gate, sprueFor(gate, sprueDiameter)));
  }

  /**
   * Just as it is stated.
   *
   * @throws IllegalArgumentException in words, if there can't be such a feed
   */
  Job job(FeedChange feed) {
    String label =
        "gate " + Cutters.plainMm(feed.gate()) + ", sprue " + Cutters.plainMm(feed.sprue());
    return Job.of(label, base, feed.of(base));
  }

  void know(double gate, Ran ran) {
    left--;
    points.add(new Sizing.Point(gate, sprueFor(gate), "quick", ran));
    bracket.know(gate, excess(ran));
  }

  /** A run of the answer with a narrower sprue. */
  void knowSprue(double gate, double narrower, Ran ran) {
    left--;
    points.add(new Sizing.Point(gate, sprueFor(gate, narrower), "quick", ran));
    if (ran.outcome().filter(o -> o.clean(visible)).isPresent()) {
      sprue = narrower;
    }
  }

  int left() {
    return left;
  }

  LoadedCase base() {
    return base;
  }
}
