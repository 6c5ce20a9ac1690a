// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Quantities;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.mesh.io.RawMesh;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a first case for a mesh starts from, guessed from its cross-sections.
 *
 * @param mouth middle of the pour opening, where gate and sprue seem to be in the mesh
 * @param gate where mouth is present: middle of the narrowest section behind it; else a point on
 *     the thicker end, to put a gate at
 * @param direction out of the part at the gate, length one
 * @param gateSize metres
 * @param sprueSize metres
 */
public record StarterGuess(
    Optional<Vec3> mouth, Vec3 gate, Vec3 direction, double gateSize, double sprueSize) {
  /** Share of the mouth's area below which a section counts as a gate: 0.6 of its diameter. */
  private static final double GATE_SHARE = 0.36;

  /** By how much the area has to rise behind a gate for a part to begin: 1.4 times as thick. */
  private static final double PART_RISE = 2;

  /** Sections whose areas differ by less belong to the same land. */
  private static final double ALIKE = 1.02;

  /** How far in from an end, in stations, its thickness is taken: 2 % of the length. */
  private static final int NEAR_END = SectionProfile.STATIONS / 50;

  /** Longest sides of parts that hand injection makes, metres. */
  private static final double SHORT = 15e-3;

  private static final double LONG = 0.5;

  /** m3 of the box round a part: no hand injector fills more; own judgement. */
  private static final double ROOMY = 1e-3;

  /**
   * A unit that makes a plausible part.
   *
   * @param mesh in metres, as it is in the file
   */
  public record Unit(LengthUnit unit, TriangleMesh mesh) {
    /** As a case file states it. */
    public String word() {
      return unit.word();
    }
  }

  /**
   * The stated unit; else millimetres where they make a plausible part, else inches, centimetres or
   * metres.
   *
   * @throws gelfront.mesh.MeshException if the file can't be read or no unit makes sense
   */
  public static Unit unit(Path file, Optional<LengthUnit> stated) {
    if (stated.isPresent()) {
      return new Unit(stated.get(), MeshFiles.read(file, stated));
    }
    RawMesh raw = MeshFiles.unsized(file);
    if (raw.own().isPresent()) {
      return new Unit(raw.own().get(), raw.mesh());
    }
    TriangleMesh mm = raw.mesh();
    Vec3 s = mm.box().size();
    double longest = Math.max(s.x(), Math.max(s.y(), s.z())) / LengthUnit.MM.metres();
    for (LengthUnit u : List.of(LengthUnit.MM, LengthUnit.INCH, LengthUnit.CM, LengthUnit.M)) {
      double metres = longest * u.metres();
      double box = s.x() * s.y() * s.z() * Math.pow(u.metres() / LengthUnit.MM.metres(), 3);
      if (metres >= SHORT && metres <= LONG && box <= ROOMY) {
        return new Unit(u, u == LengthUnit.MM ? mm : MeshFiles.read(file, Optional.of(u)));
      }
    }
    return new Unit(LengthUnit.MM, MeshFiles.read(file, Optional.empty()));
  }

  /**
   * @param mesh closed, wound outwards, metres
   */
  public static StarterGuess of(TriangleMesh mesh) {
    SectionProfile p = SectionProfile.of(mesh);
    for (boolean high : new boolean[] {false, true}) {
      int gate = gateBehind(p, high);
      if (gate >= 0) {
        return new StarterGuess(
            Optional.of(rounded(p.end(high))),
            rounded(p.centre(gate)),
            p.outwards(high),
            p.diameter(gate),
            p.diameter(station(0, high)));
      }
    }
    return atThickEnd(p);
  }

  /** To a micrometre, without minus signs before zeros. */
  private static Vec3 rounded(Vec3 p) {
    return new Vec3(rounded(p.x()), rounded(p.y()), rounded(p.z()));
  }

  private static double rounded(double metres) {
    return Math.round(metres * 1e6) * 1e-6;
  }

  private static int station(int fromEnd, boolean high) {
    return high ? SectionProfile.STATIONS - 1 - fromEnd : fromEnd;
  }

  /** The narrowest section between an open end and a part; negative if that end is none. */
  private static int gateBehind(SectionProfile p, boolean high) {
    double mouth = p.area(station(0, high));
    int narrowest = station(0, high);
    for (int i = 1; i < SectionProfile.STATIONS; i++) {
      int s = station(i, high);
      if (p.area(s) < p.area(narrowest)) {
        narrowest = s;
      }
      boolean narrow = p.area(narrowest) < GATE_SHARE * mouth;
      if (narrow && p.area(s) > PART_RISE * p.area(narrowest)) {
        return middleOfLand(p, narrowest);
      }
      if (p.area(s) > PART_RISE * mouth) {
        return -1; // thick already: this end belongs to the part
      }
    }
    return -1;
  }

  /** A land is as narrow all along: its middle is meant, not the end that rounding picks. */
  private static int middleOfLand(SectionProfile p, int narrowest) {
    int low = narrowest;
    int high = narrowest;
    while (low > 0 && p.area(low - 1) < ALIKE * p.area(narrowest)) {
      low--;
    }
    while (high + 1 < SectionProfile.STATIONS && p.area(high + 1) < ALIKE * p.area(narrowest)) {
      high++;
    }
    return (low + high) / 2;
  }

  private static StarterGuess atThickEnd(SectionProfile p) {
    int thickest = 0;
    for (int s = 1; s < SectionProfile.STATIONS; s++) {
      if (p.area(s) > p.area(thickest)) {
        thickest = s;
      }
    }
    boolean high = thickest >= SectionProfile.STATIONS / 2;
    double end = p.diameter(station(NEAR_END, high));
    double gate = Math.min(Math.min(6e-3, end), Math.max(2.5e-3, 0.4 * p.diameter(thickest)));
    return new StarterGuess(
        Optional.empty(),
        rounded(p.end(high)),
        p.outwards(high),
        Math.max(1e-3, 0.5e-3 * Math.floor(gate / 0.5e-3)),
        Math.max(8e-3, 1e-3 * Math.ceil(1.6 * gate / 1e-3)));
  }

  /** The guess in words. */
  public String words() {
    return mouth.isPresent()
        ? "gate and sprue are part of the mesh, pour opening at "
            + mm(mouth.get())
            + ", gate ("
            + Quantities.mm(gateSize)
            + ") at "
            + mm(gate)
        : "a gate of " + Quantities.mm(gateSize) + " at the thicker end, at " + mm(gate);
  }

  private static String mm(Vec3 p) {
    return Quantities.say("(%.1f, %.1f, %.1f) mm", p.x() * 1e3, p.y() * 1e3, p.z() * 1e3);
  }

  /**
   * The text of the case file.
   *
   * @param name of the part
   * @param mesh path as the case file states it
   */
  public String text(String name, String mesh, LengthUnit unit) {
    String word = unit.name().toLowerCase(Locale.ROOT);
    return mouth.isPresent()
        ? StarterCase.withFeed(name, mesh, word, mouth.get(), gate)
        : StarterCase.text(name, mesh, word, gate, direction, gateSize, sprueSize);
  }
}
