// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The tables [[another_gate]]: further gates of the same part. */
final class BranchReader {
  private final List<CaseTable> tables;
  private final List<Statement> assumed;

  /**
   * @param assumed collects what is filled in
   */
  BranchReader(CaseTable root, List<Statement> assumed) {
    this.tables = root.list("another_gate");
    this.assumed = assumed;
  }

  /** Those without mistakes. */
  List<FeedSystem.Branch> read() {
    List<FeedSystem.Branch> all = new ArrayList<>();
    tables.forEach(t -> read(t).ifPresent(all::add));
    return all;
  }

  private Optional<FeedSystem.Branch> read(CaseTable t) {
    need(t, "[[another_gate]]");
    Optional<Vec3> at = t.place("at");
    Optional<Vec3> direction = t.direction("direction");
    Section section = SectionReader.read(t, t.label(), assumed);
    double land = t.need("land", Dimension.LENGTH, 0.2e-3, 0.1);
    OptionalDouble stated = t.quantity("runner", Dimension.LENGTH, 0.3e-3, 0.05);
    List<Vec3> way = t.places("way");
    double width = stated.orElse(2 * section.width());
    if (stated.isEmpty()) {
      String size = Quantities.mm(width);
      assumed.add(new Statement(t.label() + ": runner", size, "twice as wide as the gate"));
    }
    if (at.isEmpty() || direction.isEmpty() || !(land > 0) || !(width > 0)) {
      return Optional.empty();
    }
    FeedSystem.Gate gate = new FeedSystem.Gate(at.get(), direction.get(), section, land);
    return Optional.of(new FeedSystem.Branch(gate, runner(section, width), way));
  }

  private static Section runner(Section gate, double width) {
    return switch (gate.kind()) {
      case ROUND -> Section.round(width);
      case HALF_ROUND -> Section.halfRound(width);
      case RECTANGULAR -> new Section(gate.kind(), width, gate.height() * width / gate.width());
    };
  }

  /** Notes where a gate has no place or no direction. */
  static void need(CaseTable gate, String table) {
    need(gate, table, "at", "[\"0 mm\", \"0 mm\", \"0 mm\"], a point on the part");
    need(gate, table, "direction", "[-1, 0, 0], away from the part");
  }

  private static void need(CaseTable t, String table, String key, String example) {
    if (!t.has(key)) {
      t.mistake("", table + " needs " + key + ", for example " + key + " = " + example);
    }
  }
}
