// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.material.MouldMaterial;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * The mould block.
 *
 * @param material of the block
 * @param wall metres of material round the cavity on each side (the side of the sprue mouth ends
 *     flush with the mouth); used if {@code outer} is absent
 * @param outer the block's outer box in part coordinates
 * @param startTemperature °C before the shot
 * @param airTemperature °C round the block
 * @param airFilm W/m2 K on the outer faces, radiation included
 * @param contactConductance W/m2 K between plastisol and mould, pressed on
 * @param warmSpots places that start warmer or cooler than the rest
 * @param inserts places of another material; later ones win
 * @param faces outer faces that lose heat otherwise than to the air, each side once at most
 * @param shrunkOff W/m2 K that is left of the contact where the skin has left the wall
 * @param mesh solids of the mould itself: what lies outside them is air, not metal; absent: all of
 *     the box is metal
 * @param channels drilled for a coolant
 */
public record Block(
    MouldMaterial material,
    double wall,
    Optional<Box> outer,
    double startTemperature,
    double airTemperature,
    double airFilm,
    double contactConductance,
    List<WarmSpot> warmSpots,
    List<Insert> inserts,
    List<Face> faces,
    double shrunkOff,
    Optional<MouldMesh> mesh,
    List<Channel> channels) {
  public Block {
    channels = List.copyOf(channels);
    warmSpots = List.copyOf(warmSpots);
    inserts = List.copyOf(inserts);
    faces = List.copyOf(faces);
    if (faces.stream().map(Face::side).distinct().count() < faces.size()) {
      throw new IllegalArgumentException("a face of the block is stated twice");
    }
    if (!(wall > 0) || !(airFilm >= 0) || !(contactConductance > 0)) {
      throw new IllegalArgumentException(
          "wall and contact must be positive, the air film not less than 0");
    }
    if (!(shrunkOff > 0) || shrunkOff > contactConductance) {
      throw new IllegalArgumentException("shrunk off, there is less contact than pressed on");
    }
  }

  /** A block in the air on all sides; plastisol stays in contact. */
  public Block(
      MouldMaterial material,
      double wall,
      Optional<Box> outer,
      double startTemperature,
      double airTemperature,
      double airFilm,
      double contactConductance,
      List<WarmSpot> warmSpots,
      List<Insert> inserts) {
    this(
        material,
        wall,
        outer,
        startTemperature,
        airTemperature,
        airFilm,
        contactConductance,
        warmSpots,
        inserts,
        List.of(),
        contactConductance,
        Optional.empty(),
        List.of());
  }

  /** What a side of the block loses its heat to: as stated, or the air. */
  public Face face(Side side) {
    return faces.stream()
        .filter(f -> f.side().equals(side))
        .findFirst()
        .orElse(new Face(side, airFilm, airTemperature));
  }

  /**
   * What an outer face loses its heat to.
   *
   * @param film W/m2 K, radiation included; 0 insulates
   * @param temperature °C of the air, water or bench there
   */
  public record Face(Side side, double film, double temperature) {
    public Face {
      if (!(film >= 0) || !Double.isFinite(temperature)) {
        throw new IllegalArgumentException("a face needs a film not less than 0, and °C");
      }
    }
  }

  /**
   * A straight round hole with a coolant in it.
   *
   * @param from middle of one end, metres; it may lie outside the block
   * @param to middle of the other
   * @param diameter metres
   * @param film W/m2 K on its wall; 0 insulates
   * @param temperature °C of the coolant, its mean along the channel
   */
  public record Channel(Vec3 from, Vec3 to, double diameter, double film, double temperature) {
    public Channel {
      if (!(diameter > 0) || !(film >= 0) || !Double.isFinite(temperature) || from.equals(to)) {
        throw new IllegalArgumentException(
            "a channel needs a length, a diameter, a film not less than 0, and °C");
      }
    }

    /** Metres from its axis, beyond its ends from those. */
    public double distance(Vec3 p) {
      Vec3 way = to.minus(from);
      double along = p.minus(from).dot(way) / way.dot(way);
      return p.distance(from.plus(way.times(Math.max(0, Math.min(1, along)))));
    }
  }

  /** A region of the block. */
  public sealed interface Region {
    boolean contains(Vec3 p);

    /** Round it, metres. */
    Box box();

    /** Metres. */
    record Cuboid(Box box) implements Region {
      @Override
      public boolean contains(Vec3 p) {
        return box.contains(p);
      }
    }

    /** Metres. */
    record Ball(Vec3 centre, double radius) implements Region {
      @Override
      public boolean contains(Vec3 p) {
        return p.distance(centre) <= radius;
      }

      @Override
      public Box box() {
        return new Box(centre, centre).grown(radius);
      }
    }
  }

  /** Starts at another temperature, °C. */
  public record WarmSpot(Region region, double temperature) {}

  /** Is made of something else. */
  public record Insert(Region region, MouldMaterial material) {}
}
