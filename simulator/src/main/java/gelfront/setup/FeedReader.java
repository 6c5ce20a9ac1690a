// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/** The tables [feed] or [gate], [runner], [reservoir] and [sprue]. */
final class FeedReader {
  private final CaseTable root;
  private final List<Statement> assumed;
  private final BooleanSupplier sound;

  /**
   * @param assumed collects what is filled in
   * @param sound whether no mistake has been found so far
   */
  FeedReader(CaseTable root, List<Statement> assumed, BooleanSupplier sound) {
    this.root = root;
    this.assumed = assumed;
    this.sound = sound;
  }

  /** The feed system; null where mistakes were found. */
  @Nullable FeedSystem read() {
    CaseTable feed = root.sub("feed");
    CaseTable gate = root.sub("gate");
    if (feed.present() && gate.present()) {
      feed.mistake("", "both [feed] (gate in the mesh) and [gate] (declared): keep one");
    }
    if (feed.present()) {
      if (!feed.flag("in_mesh")) {
        feed.mistake("", "[feed] needs in_mesh = true; a declared gate goes into [gate]");
      }
      for (String declared : List.of("runner", "reservoir", "another_gate", "sprue", "extender")) {
        if (root.has(declared)) {
          root.mistake(
              declared,
              "both [feed] (all of it in the mesh) and [" + declared + "] (declared): keep one");
        }
      }
      return new FeedSystem.InMesh(feed.places("gate"), feed.place("mouth"));
    }
    if (!gate.present()) {
      root.mistake("", "the case needs a [gate] and a [sprue], or [feed] in_mesh = true");
      return null;
    }
    return declared(gate, root.sub("sprue"));
  }

  private @Nullable FeedSystem declared(CaseTable gate, CaseTable sprue) {
    Optional<Vec3> at = gate.place("at");
    Optional<Vec3> direction = gate.direction("direction");
    BranchReader.need(gate, "[gate]");
    Section section = SectionReader.read(gate, "gate", assumed);
    double land = gate.need("land", Dimension.LENGTH, 0.2e-3, 0.1);
    Optional<FeedSystem.Runner> runner = runner(root.sub("runner"));
    Optional<FeedSystem.Reservoir> reservoir = reservoir(root.sub("reservoir"));
    List<FeedSystem.Branch> others = new BranchReader(root, assumed).read();
    if (!sprue.present()) {
      root.mistake("", "the case needs a [sprue] with diameter and length");
    }
    double diameter = sprue.need("diameter", Dimension.LENGTH, 1e-3, 0.1);
    double length = sprue.need("length", Dimension.LENGTH, 1e-3, 0.5);
    double mouth = mouth(sprue, diameter, length);
    Optional<Vec3> towards = sprue.direction("direction");
    Optional<Vec3> inner = sprue.place("at");
    if (!sound.getAsBoolean()) {
      return null;
    }
    return new FeedSystem.Declared(
        new FeedSystem.Gate(at.get(), direction.get(), section, land),
        runner,
        reservoir,
        new FeedSystem.Sprue(diameter, mouth, length, towards.orElse(direction.get()), inner),
        others);
  }

  private double mouth(CaseTable sprue, double inner, double length) {
    OptionalDouble stated = sprue.quantity("mouth_diameter", Dimension.LENGTH, 1e-3, 0.1);
    OptionalDouble taper = sprue.quantity("taper", Dimension.ANGLE, 0, 0.6);
    if (stated.isPresent() && taper.isPresent()) {
      sprue.mistake("taper", "[sprue] has both mouth_diameter and taper: keep one");
    }
    if (stated.isEmpty() && taper.isEmpty()) {
      assumed.add(
          new Statement("sprue: mouth diameter", Quantities.mm(inner), "the sprue's diameter"));
    }
    double opening = taper.isPresent() ? 2 * length * Math.tan(taper.getAsDouble() / 2) : 0;
    return stated.orElse(inner + opening);
  }

  private Optional<FeedSystem.Runner> runner(CaseTable t) {
    if (!t.present()) {
      return Optional.empty();
    }
    double length = t.need("length", Dimension.LENGTH, 0.5e-3, 0.5);
    Section section = SectionReader.read(t, "runner", assumed);
    return length > 0 ? Optional.of(new FeedSystem.Runner(section, length)) : Optional.empty();
  }

  private static Optional<FeedSystem.Reservoir> reservoir(CaseTable t) {
    if (!t.present()) {
      return Optional.empty();
    }
    double d = t.need("diameter", Dimension.LENGTH, 1e-3, 0.1);
    double l = t.need("length", Dimension.LENGTH, 1e-3, 0.1);
    return d > 0 && l > 0 ? Optional.of(new FeedSystem.Reservoir(d, l)) : Optional.empty();
  }
}
