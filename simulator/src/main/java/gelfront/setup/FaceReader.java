// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.material.MaterialTable;
import gelfront.material.Ranged;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The tables [[block.face]]: outer faces that are cooled otherwise than the rest. */
final class FaceReader {
  private static final double COLDEST = -30;
  private static final double HOTTEST = 60;

  /** W/m2 K, boiling water included. */
  private static final double MOST = 20_000;

  /** °C, from the tap: common practice, no source. */
  private static final double WATER = 15;

  /** What else than air a face meets on the block's outside. */
  private static final List<String> COOLANTS = List.of("still-air", "fan", "water", "bench");

  private final Optional<Vec3> up;
  private final double air;
  private final MaterialTable materials;
  private final List<Statement> assumed;
  private final Map<Side, String> named = new HashMap<>();

  /**
   * @param up which way is up, length one; empty: that is not known yet
   * @param air °C round the block
   * @param assumed collects what is filled in
   */
  FaceReader(Optional<Vec3> up, double air, MaterialTable materials, List<Statement> assumed) {
    this.up = up;
    this.air = air;
    this.materials = materials;
    this.assumed = assumed;
  }

  List<Block.Face> read(List<CaseTable> tables) {
    List<Block.Face> faces = new ArrayList<>();
    for (CaseTable t : tables) {
      Optional<Side> side = side(t);
      Optional<String> coolant = t.choice("cooled_by", COOLANTS);
      OptionalDouble film = film(t, coolant);
      double temperature = temperature(t, coolant);
      if (side.isPresent() && film.isPresent()) {
        faces.add(new Block.Face(side.get(), film.getAsDouble(), temperature));
      }
    }
    return faces;
  }

  private Optional<Side> side(CaseTable t) {
    if (!t.has("side")) {
      t.mistake("", "[[block.face]] needs side, one of " + String.join(", ", Side.names()));
    }
    return t.choice("side", Side.names()).flatMap(name -> side(t, name));
  }

  private Optional<Side> side(CaseTable t, String name) {
    Optional<Side> side = Side.of(name).or(() -> up.flatMap(way -> Side.of(name, way)));
    if (side.isEmpty()) {
      String why = up.isEmpty() ? "up is not stated" : "up is between two faces";
      t.mistake("side", why + ", so no one is the " + name + ": write \"+z\"");
      return side;
    }
    String before = named.putIfAbsent(side.get(), name);
    if (before == null) {
      return side;
    }
    String same = before.equals(name) ? "" : ", which is \"" + before + "\" here,";
    t.mistake("side", "the face \"" + name + "\"" + same + " is stated twice: keep one");
    return Optional.empty();
  }

  private OptionalDouble film(CaseTable t, Optional<String> coolant) {
    OptionalDouble stated = t.quantity("film", Dimension.FILM, 0, MOST);
    if (t.has("film") == t.has("cooled_by")) {
      t.mistake(
          t.has("film") ? "film" : "",
          t.has("film")
              ? "[[block.face]] has both film and cooled_by: keep one"
              : "[[block.face]] needs cooled_by, one of "
                  + String.join(", ", COOLANTS)
                  + ", or film = \"500 W/m2K\"");
    }
    return coolant.isPresent() ? OptionalDouble.of(known(t, coolant.get())) : stated;
  }

  private double known(CaseTable t, String coolant) {
    Ranged film = materials.film(coolant);
    assumed.add(
        new Statement(
            t.label() + ": film, " + coolant,
            Quantities.say("%.0f W/m2 K (%.0f to %.0f)", film.typical(), film.low(), film.high()),
            film.source()));
    return film.typical();
  }

  private double temperature(CaseTable t, Optional<String> coolant) {
    boolean water = coolant.filter("water"::equals).isPresent();
    double otherwise = water ? WATER : air;
    if (!t.has("temperature")) {
      assumed.add(
          new Statement(
              t.label() + ": temperature",
              Quantities.say("%.0f °C", otherwise),
              water ? "tap water; common practice, no source" : "the air's"));
    }
    return t.quantity("temperature", Dimension.TEMPERATURE, COLDEST, HOTTEST).orElse(otherwise);
  }
}
