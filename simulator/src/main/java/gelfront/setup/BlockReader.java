// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.material.MaterialTable;
import gelfront.material.Ranged;
import gelfront.mesh.Box;
import gelfront.mesh.MeshException;
import gelfront.mesh.Vec3;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The [block] table. */
final class BlockReader {
  private static final double COLDEST = -30;
  private static final double HOTTEST = 180;

  private final CaseTable table;
  private final Optional<Vec3> up;
  private final MaterialTable materials;
  private final List<Statement> assumed;
  private final Path folder;

  /**
   * @param folder that mesh files are looked for in
   * @param up which way is up, length one
   * @param assumed collects what is filled in
   */
  BlockReader(
      CaseTable table,
      Path folder,
      Optional<Vec3> up,
      MaterialTable materials,
      List<Statement> assumed) {
    this.folder = folder;
    this.table = table;
    this.up = up;
    this.materials = materials;
    this.assumed = assumed;
  }

  Block read() {
    List<String> known = materials.names("mould");
    String material = table.choice("material", known).orElse("aluminium-6061");
    if (!table.has("material")) {
      assumed.add(new Statement("block: material", material, "the most common one"));
    }
    Optional<MouldMesh> mesh = new MouldMeshReader(table, folder).read();
    Optional<Box> outer = box(table);
    if (outer.isPresent() && table.has("wall")) {
      table.mistake("wall", "[block] has both wall and box_min, box_max: keep one");
    } else if (table.has("mesh") && table.has("wall")) {
      table.mistake("wall", "[block] has both wall and mesh: keep one");
    } else if (mesh.isPresent() && outer.isEmpty()) {
      outer = round(mesh.get());
    }
    double wall =
        outer.isPresent()
            ? 0.015
            : or(
                "wall",
                Dimension.LENGTH,
                1e-3,
                0.5,
                0.015,
                Quantities.mm(0.015),
                "common practice, no source");
    double start =
        or("start", Dimension.TEMPERATURE, COLDEST, HOTTEST, 30, "30 °C", "a mould in use");
    double air = or("air", Dimension.TEMPERATURE, COLDEST, 60, 23, "23 °C", "a workshop");
    double film = film("air_film", 0, 5000, materials.film("still-air"));
    double contact = film("contact", 10, 1e6, materials.film("contact"));
    double off = film("contact_shrunk_off", 1, 1e6, materials.film("contact-shrunk-off"));
    if (off > contact && table.has("contact_shrunk_off")) {
      table.mistake("contact_shrunk_off", "shrunk off, there is less contact than pressed on");
    }
    List<Block.WarmSpot> spots = new ArrayList<>();
    for (CaseTable t : table.list("warm_spot")) {
      double temperature = t.need("temperature", Dimension.TEMPERATURE, COLDEST, HOTTEST);
      region(t).ifPresent(r -> spots.add(new Block.WarmSpot(r, temperature)));
    }
    List<Block.Insert> inserts = new ArrayList<>();
    for (CaseTable t : table.list("insert")) {
      String of = t.needChoice("material", known);
      region(t).ifPresent(r -> inserts.add(new Block.Insert(r, materials.mould(of))));
    }
    List<Block.Face> faces = new FaceReader(up, air, materials, assumed).read(table.list("face"));
    return new Block(
        materials.mould(material),
        wall,
        outer,
        start,
        air,
        film,
        contact,
        spots,
        inserts,
        faces,
        Math.min(off, contact),
        mesh,
        ChannelReader.read(table.list("channel")));
  }

  /** The box round the solids. */
  private Optional<Box> round(MouldMesh mesh) {
    try {
      return Optional.of(mesh.load().box());
    } catch (MeshException e) {
      table.mistake("mesh", String.valueOf(e.getMessage()));
      return Optional.empty();
    }
  }

  private double film(String key, double low, double high, Ranged built) {
    String shown =
        Quantities.say("%.0f W/m2 K (%.0f to %.0f)", built.typical(), built.low(), built.high());
    return or(key, Dimension.FILM, low, high, built.typical(), shown, built.source());
  }

  private double or(
      String key,
      Dimension d,
      double low,
      double high,
      double otherwise,
      String shown,
      String why) {
    if (!table.has(key)) {
      assumed.add(new Statement("block: " + key.replace('_', ' '), shown, why));
      return otherwise;
    }
    return table.quantity(key, d, low, high).orElse(otherwise);
  }

  private static Optional<Box> box(CaseTable t) {
    Optional<Vec3> min = t.place("box_min");
    Optional<Vec3> max = t.place("box_max");
    if (min.isPresent() != max.isPresent()) {
      t.mistake(min.isPresent() ? "box_min" : "box_max", "box_min and box_max go together");
      return Optional.empty();
    }
    if (min.isEmpty()) {
      return Optional.empty();
    }
    Vec3 d = max.get().minus(min.get());
    if (!(d.x() > 0 && d.y() > 0 && d.z() > 0)) {
      t.mistake("box_max", "box_max must lie above box_min on every axis");
      return Optional.empty();
    }
    return Optional.of(new Box(min.get(), max.get()));
  }

  private static Optional<Block.Region> region(CaseTable t) {
    boolean ball = t.has("centre") || t.has("radius");
    boolean cuboid = t.has("box_min") || t.has("box_max");
    if (ball == cuboid) {
      t.mistake("", "a place needs either centre and radius, or box_min and box_max");
    }
    Optional<Block.Region> box = box(t).map(Block.Region.Cuboid::new);
    return ball ? ball(t) : box;
  }

  private static Optional<Block.Region> ball(CaseTable t) {
    Optional<Vec3> centre = t.place("centre");
    double radius = t.need("radius", Dimension.LENGTH, 1e-4, 1);
    if (!t.has("centre")) {
      t.mistake("radius", "a ball needs centre = [\"0 mm\", \"0 mm\", \"0 mm\"] too");
    }
    return centre.isPresent() && radius > 0
        ? Optional.of(new Block.Region.Ball(centre.get(), radius))
        : Optional.empty();
  }
}
