// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Remedies;
import gelfront.answer.Remedies.Effort;
import gelfront.answer.RunOutcome;
import gelfront.base.Told;
import gelfront.finding.Constriction;
import gelfront.mesh.Vec3;
import gelfront.setup.Case;
import gelfront.setup.Change;
import gelfront.setup.FeedSystem;
import gelfront.setup.LoadedCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a maker can do about a case's dent or oval, least effort first, and what can't be done on
 * it. Sizes of the steps: common practice, no source.
 */
final class RemedyShelf {
  private final LoadedCase base;
  private final Optional<RunOutcome> before;
  private final List<Remedy> found = new ArrayList<>();
  private final List<Remedies.Left> left = new ArrayList<>();

  private RemedyShelf(LoadedCase base, Optional<RunOutcome> before) {
    this.base = base;
    this.before = before;
  }

  /**
   * @param before the case as it is; absent where it gave no result
   * @param places where the part is thick
   */
  static RemedyShelf of(LoadedCase base, Optional<RunOutcome> before, GatePlaces places) {
    RemedyShelf shelf = new RemedyShelf(base, before);
    new RecipeRemedies(shelf).fill();
    if (base.setup().feed() instanceof FeedSystem.Declared d) {
      new DrawnFeedRemedies(shelf, d, places).fill();
    } else {
      new FilingRemedies(shelf).gate();
    }
    new FilingRemedies(shelf).neck();
    return shelf;
  }

  List<Remedy> remedies() {
    return List.copyOf(found);
  }

  /** What can't be done on this design, and why. */
  List<Remedies.Left> notRun() {
    return List.copyOf(left);
  }

  void add(Remedy r) {
    found.add(r);
  }

  void add(Effort e, String knob, String what, String caution, List<Change> changes) {
    add(e, knob, Told.of(what), caution, changes);
  }

  void add(Effort e, String knob, Told what, String caution, List<Change> changes) {
    add(new Remedy(e, knob, what, changes, caution, false));
  }

  /** One with which thin places fill worse. */
  void addColder(String knob, Told what, String caution, Change change) {
    add(new Remedy(Effort.RECIPE, knob, what, List.of(change), caution, true));
  }

  void leave(String what, String why) {
    leave(Told.of(what), why);
  }

  void leave(Told what, String why) {
    left.add(new Remedies.Left(what, why));
  }

  LoadedCase base() {
    return base;
  }

  Case setup() {
    return base.setup();
  }

  Optional<RunOutcome> before() {
    return before;
  }

  /** The gate that closed, as the run saw it. */
  Optional<Constriction> closedGate() {
    return before.flatMap(RunOutcome::blamed).filter(c -> c.kind() == Constriction.Kind.GATE);
  }

  /** Stated, or seen by the run; absent where neither tells. */
  Optional<Vec3> gatePlace() {
    if (setup().feed() instanceof FeedSystem.Declared d) {
      return Optional.of(d.gate().at());
    }
    List<Vec3> stated = ((FeedSystem.InMesh) setup().feed()).gates();
    return stated.isEmpty() ? closedGate().map(Constriction::place) : Optional.of(stated.get(0));
  }

  /** Metres; where nothing tells, 3 mm. */
  double gateWidth() {
    return setup().feed() instanceof FeedSystem.Declared d
        ? d.gate().section().width()
        : closedGate().map(Constriction::width).orElse(3e-3);
  }
}
