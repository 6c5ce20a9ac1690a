// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.material.MouldMaterial;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.Optional;

/** How the hot liquid gets to the part. */
public sealed interface FeedSystem {

  /**
   * Drawn by numbers and joined to the part in voxel space: gate land, then runner and reservoir if
   * any, then the sprue, one after the other along their directions. Each copy of the part has its
   * own gate, runner and reservoir; a straight piece of runner leads from their end to the sprue's
   * inner end where they don't end there.
   *
   * @param others further gates of the part, each with a runner of its own to the same sprue
   */
  record Declared(
      Gate gate,
      Optional<Runner> runner,
      Optional<Reservoir> reservoir,
      Sprue sprue,
      List<Branch> others)
      implements FeedSystem {
    public Declared {
      others = List.copyOf(others);
    }

    /** With one gate. */
    public Declared(
        Gate gate, Optional<Runner> runner, Optional<Reservoir> reservoir, Sprue sprue) {
      this(gate, runner, reservoir, sprue, List.of());
    }

    /** The sprue's end towards the part, metres. */
    public Vec3 inner() {
      double own = runner.map(Runner::length).orElse(0.0);
      double bulge = reservoir.map(Reservoir::length).orElse(0.0);
      double along = gate.land() + Math.max(own, bulge);
      return sprue.at().orElse(gate.at().plus(gate.direction().times(along)));
    }

    /** Metres: where the gate, or the narrowest of several, is narrowest. */
    public double narrowestGate() {
      return others.stream()
          .mapToDouble(b -> b.gate().section().narrowest())
          .reduce(gate.section().narrowest(), Math::min);
    }

    /** Metres: where the narrowest runner is narrowest; the gate's where there is none. */
    public double narrowestRunner() {
      double own = runner.map(r -> r.section().narrowest()).orElse(Double.POSITIVE_INFINITY);
      double all = others.stream().mapToDouble(b -> b.runner().narrowest()).reduce(own, Math::min);
      return Double.isFinite(all) ? all : narrowestGate();
    }

    /** m2 of the part's surface that its gates take. */
    public double opening() {
      return gate.section().area()
          + others.stream().mapToDouble(b -> b.gate().section().area()).sum();
    }

    /** With a tube on the sprue. */
    public Declared with(Extender tube) {
      Sprue s = sprue;
      return new Declared(
          gate,
          runner,
          reservoir,
          new Sprue(
              s.innerDiameter, s.mouthDiameter, s.length, s.direction, s.at, Optional.of(tube)),
          others);
    }
  }

  /**
   * A further gate of a part and its runner.
   *
   * @param runner its cross-section
   * @param way places that the runner leads through from the land's end to the sprue, metres, part
   *     coordinates; none: straight
   */
  record Branch(Gate gate, Section runner, List<Vec3> way) {
    public Branch {
      way = List.copyOf(way);
    }
  }

  /**
   * Already in the mesh.
   *
   * @param gates a point in the gate of each cavity, part coordinates; none: one cavity, behind the
   *     narrowest constriction proposed by the tool
   * @param mouth a point at the sprue's open end; absent: the tool proposes one
   */
  record InMesh(List<Vec3> gates, Optional<Vec3> mouth) implements FeedSystem {
    public InMesh {
      gates = List.copyOf(gates);
    }

    /** One cavity. */
    public InMesh(Optional<Vec3> gate, Optional<Vec3> mouth) {
      this(gate.stream().toList(), mouth);
    }
  }

  /**
   * @param at a point on the part's surface, metres, part coordinates
   * @param direction away from the part, along the land; length one
   * @param section of the land
   * @param land its length, metres
   */
  record Gate(Vec3 at, Vec3 direction, Section section, double land) {
    public Gate {
      direction = direction.unit();
      positive("land", land);
    }
  }

  /** A channel between gate land and sprue, continuing in the gate's direction. */
  record Runner(Section section, double length) {
    public Runner {
      positive("runner length", length);
    }
  }

  /** A bulge ahead of the gate: a cylinder across nothing, coaxial with the runner. */
  record Reservoir(double diameter, double length) {
    public Reservoir {
      positive("reservoir diameter", diameter);
      positive("reservoir length", length);
    }
  }

  /**
   * @param innerDiameter at the end towards the part, metres
   * @param mouthDiameter at the open end, metres
   * @param length metres
   * @param direction towards the open end, length one; most often the gate's
   * @param at centre of the end towards the part; absent: where the runner of the part ends
   * @param extender a tube on the block that goes on from there
   */
  record Sprue(
      double innerDiameter,
      double mouthDiameter,
      double length,
      Vec3 direction,
      Optional<Vec3> at,
      Optional<Extender> extender) {
    /** Without a tube on it. */
    public Sprue(
        double innerDiameter,
        double mouthDiameter,
        double length,
        Vec3 direction,
        Optional<Vec3> at) {
      this(innerDiameter, mouthDiameter, length, direction, at, Optional.empty());
    }

    /** Where the runner ends. */
    public Sprue(double innerDiameter, double mouthDiameter, double length, Vec3 direction) {
      this(innerDiameter, mouthDiameter, length, direction, Optional.empty());
    }

    /** Metres: least diameter, the tube's included. */
    public double narrowest() {
      double own = Math.min(innerDiameter, mouthDiameter);
      return extender.map(e -> Math.min(own, e.bore())).orElse(own);
    }

    public Sprue {
      direction = direction.unit();
      positive("sprue inner diameter", innerDiameter);
      positive("sprue mouth diameter", mouthDiameter);
      positive("sprue length", length);
    }
  }

  /**
   * A tube set on the block on top of the sprue.
   *
   * @param bore inner diameter, metres
   * @param height above the block, metres
   * @param wall its thickness, metres
   * @param material of the wall
   * @param startTemperature °C of the wall before the shot
   * @param airFilm W/m2 K on its outside
   */
  record Extender(
      double bore,
      double height,
      double wall,
      MouldMaterial material,
      double startTemperature,
      double airFilm) {
    public Extender {
      positive("extender bore", bore);
      positive("extender height", height);
      positive("extender wall", wall);
      if (!(airFilm >= 0)) {
        throw new IllegalArgumentException("an air film is not below 0: " + airFilm);
      }
    }
  }

  private static void positive(String what, double v) {
    if (!(v > 0) || Double.isInfinite(v)) {
      throw new IllegalArgumentException(what + " must be positive: " + v);
    }
  }
}
