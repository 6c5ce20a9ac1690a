// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The tables [[part.copy]]: further cavities of the same shape in the same block. */
final class CopyReader {
  private static final double FULL_TURN = 2 * Math.PI + 1e-9;

  private static final Vec3 Z = new Vec3(0, 0, 1);

  private final CaseTable root;
  private final Optional<Vec3> up;
  private final List<Statement> assumed;

  /**
   * @param up which way is up, where it is stated, length one
   * @param assumed collects what is filled in
   */
  CopyReader(CaseTable root, Optional<Vec3> up, List<Statement> assumed) {
    this.root = root;
    this.up = up;
    this.assumed = assumed;
  }

  /** Where the copies lie, the part itself not counted. */
  List<Placement> read() {
    List<CaseTable> tables = root.sub("part").list("copy");
    if (!tables.isEmpty() && root.has("feed")) {
      tables
          .get(0)
          .mistake(
              "",
              "copies are fed by declared gates: with [feed] in_mesh = true, draw all cavities and"
                  + " their runner in the mesh and mark each gate");
    }
    List<Placement> copies = new ArrayList<>();
    for (CaseTable t : tables) {
      Placement p = read(t);
      if (copies.contains(p)) {
        t.mistake("", "this copy lies where another one does");
      }
      copies.add(p);
    }
    return copies;
  }

  private Placement read(CaseTable t) {
    Optional<Vec3> shift = t.place("shift");
    OptionalDouble turn = t.quantity("turn", Dimension.ANGLE, -FULL_TURN, FULL_TURN);
    Optional<Vec3> mirror = t.direction("mirror");
    Optional<Vec3> axis = t.direction("axis");
    Vec3 about = about(t);
    contradict(t);
    Placement p = Placement.shifted(Vec3.ZERO);
    if (turn.isPresent()) {
      p = Placement.turned(turn.getAsDouble(), axis.or(() -> up).orElse(Z), about);
    } else if (mirror.isPresent()) {
      p = Placement.mirrored(mirror.get(), about);
    }
    return p.then(shift.orElse(Vec3.ZERO));
  }

  private Vec3 about(CaseTable t) {
    if (!t.has("about") && (t.has("turn") || t.has("mirror"))) {
      assumed.add(new Statement(t.label() + ": about", "(0, 0, 0)", "the origin"));
    }
    if (!t.has("axis") && t.has("turn")) {
      assumed.add(
          new Statement(
              t.label() + ": axis", up.isPresent() ? "up" : "z", "turned in the parting plane"));
    }
    return t.place("about").orElse(Vec3.ZERO);
  }

  private static void contradict(CaseTable t) {
    if (!t.has("shift") && !t.has("turn") && !t.has("mirror")) {
      t.mistake(
          "",
          "[[part.copy]] needs shift, turn or mirror, for example"
              + " shift = [\"0 mm\", \"20 mm\", \"0 mm\"]");
    }
    if (t.has("turn") && t.has("mirror")) {
      t.mistake("mirror", "[[part.copy]] has both turn and mirror: keep one");
    }
    if (t.has("axis") && !t.has("turn")) {
      t.mistake("axis", "an axis goes with turn = \"180 deg\"");
    }
    if (t.has("about") && !t.has("turn") && !t.has("mirror")) {
      t.mistake("about", "about goes with turn or mirror");
    }
  }
}
