// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Remedies.Effort;
import gelfront.base.Told;
import gelfront.finding.Constriction;
import gelfront.mesh.Vec3;
import gelfront.setup.Change;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What can be done to the mould's metal round a place that closed, in any kind of design. */
final class FilingRemedies {
  private static final double[] GATES = {0.5e-3, 1e-3, 1.5e-3, 2e-3};

  /** Widths of what closed within which metal is filed off round its middle. */
  private static final double REACH = 1.5;

  private final RemedyShelf shelf;

  FilingRemedies(RemedyShelf shelf) {
    this.shelf = shelf;
  }

  /** A gate that is part of the mesh. */
  void gate() {
    Optional<Constriction> gate = shelf.closedGate();
    if (gate.isEmpty()) {
      shelf.leave("a wider gate", "the gate is part of the mesh, and it isn't what closed");
    } else {
      double widest = shelf.setup().limits().gateWidest().orElse(Double.POSITIVE_INFINITY);
      for (double more : GATES) {
        Told what = u -> "the gate filed " + u.length(more, 1) + " wider";
        if (gate.get().width() + more > widest + 1e-9) {
          shelf.leave(what, "wider than [limits] accepts");
          continue;
        }
        String caution = "File all round, a little at a time; what is filed off doesn't come back.";
        filed(Effort.FILE_WORK, "gate", gate.get(), more, what, caution);
      }
    }
    String why = "gate and sprue are part of the mesh: draw it so";
    shelf.leave("sprue wider or longer, a tube on it", why);
    shelf.leave("the gate elsewhere, a second one, a reservoir", why);
    bush();
  }

  /** Where a neck is to blame. */
  void neck() {
    Optional<Constriction> neck = shelf.before().flatMap(NeckSearch::blamed);
    if (neck.isPresent()) {
      Vec3 at = neck.get().place();
      Told what = u -> "the neck at " + SizeWords.at(u, at) + " " + u.plain(1e-3) + " thicker";
      filed(Effort.REDESIGN, "neck", neck.get(), 1e-3, what, "It changes the part.");
    }
  }

  /** One that keeps the gate's heat in, where the gate is known: metal changes little. */
  void bush() {
    if (shelf.gatePlace().isEmpty()) {
      return;
    }
    Map<String, String> bush = new LinkedHashMap<>();
    bush.put("centre", Change.place(shelf.gatePlace().get()));
    bush.put("radius", Change.quantity((shelf.gateWidth() + 3e-3) * 1e3, "mm"));
    bush.put("material", "\"ptfe\"");
    shelf.add(
        Effort.FILE_WORK,
        "bush",
        "a PTFE bush round the gate",
        "It keeps the gate hot for longer. Fit it tight: a gap fills with plastisol. PTFE stands 260 °C;"
            + " a torch makes poisonous fumes of it.",
        List.of(new Change.Add("block.insert", bush)));
  }

  private void filed(
      Effort effort, String knob, Constriction c, double more, Told what, String caution) {
    Map<String, String> filing = new LinkedHashMap<>();
    filing.put("at", Change.place(c.place()));
    filing.put("reach", Change.quantity(REACH * c.width() * 1e3, "mm"));
    filing.put("depth", Change.quantity(0.5 * more * 1e3, "mm"));
    shelf.add(effort, knob, what, caution, List.of(new Change.Add("filing", filing)));
  }
}
