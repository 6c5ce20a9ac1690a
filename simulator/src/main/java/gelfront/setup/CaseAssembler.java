package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.material.MaterialTable;
import gelfront.mesh.Vec3;
import gelfront.mesh.io.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;

/** Puts a case together from its tables; what is left out is filled in and told. */
final class CaseAssembler {
  /** °C above which a shot gets a warning. */
  private static final double HOT_SHOT = 190;

  /** °C above which a mould gets a warning. */
  private static final double HOT_MOULD = 100;

  private static final double METRE = 1;

  private final CaseTable root;
  private final String file;
  private final Path folder;
  private final List<Statement> assumed;
  private final BooleanSupplier sound;
  private final List<String> warnings = new ArrayList<>();
  private final MaterialTable materials = MaterialTable.builtIn();

  /**
   * @param assumed collects what is filled in
   * @param sound whether no mistake has been found so far
   */
  CaseAssembler(
      CaseTable root, String file, Path folder, List<Statement> assumed, BooleanSupplier sound) {
    this.root = root;
    this.file = file;
    this.folder = folder;
    this.assumed = assumed;
    this.sound = sound;
  }

  /** The case; null where mistakes were found. */
  Case assemble() {
    String name = root.text("name").orElse(file.replaceFirst("\\.[^.]*$", ""));
    PartShape part = part(root.sub("part"));
    FeedSystem feed = feed();
    List<Growth> growths = growths();
    PlastisolReader plastisol = new PlastisolReader(root.sub("plastisol"), materials, assumed);
    var mix = plastisol.read();
    Shot shot = shot(root.sub("shot"));
    Block block = new BlockReader(root.sub("block"), materials, assumed).read();
    Vec3 up = root.direction("up").orElse(new Vec3(0, 0, 1));
    OptionalDouble clamping = root.quantity("clamping_force", Dimension.FORCE, 1, 1e6);
    int cavities = root.count("cavities", 1);
    Numerics numerics = numerics(root.sub("numerics"));
    if (!sound.getAsBoolean()) {
      return null;
    }
    warn(shot, block);
    contradict(shot, block, mix.noFlow(), mix.firm());
    return sound.getAsBoolean()
        ? new Case(
            name, part, feed, growths, block, mix, shot, up, clamping, cavities, numerics, warnings)
        : null;
  }

  private void warn(Shot shot, Block block) {
    if (shot.temperature() > HOT_SHOT) {
      warnings.add(
          "The shot is hotter than 190 °C: plastisol yellows and gives off hydrogen chloride, which"
              + " harms eyes and lungs. Stay below 190 °C and use local exhaust.");
    }
    double mould =
        block.warmSpots().stream()
            .mapToDouble(Block.WarmSpot::temperature)
            .reduce(block.startTemperature(), Math::max);
    if (mould > HOT_MOULD) {
      warnings.add(
          "The mould is hotter than 100 °C: it burns skin at a touch, any water in it flashes to"
              + " steam, and hot aluminium looks like cold.");
    }
  }

  private void contradict(Shot shot, Block block, double noFlow, double firm) {
    if (shot.temperature() <= noFlow) {
      root.sub("shot")
          .mistake(
              "temperature",
              Quantities.say(
                  "the shot (%.0f °C) is colder than the no-flow temperature (%.0f °C): it can't be injected; is it stated in the right unit?",
                  shot.temperature(), noFlow));
    }
    if (block.startTemperature() >= firm || block.airTemperature() >= firm) {
      root.sub("block")
          .mistake(
              "start",
              Quantities.say(
                  "mould (%.0f °C) and air (%.0f °C) must be colder than %.0f °C, at which the part is firm: it would never be; is it stated in the right unit?",
                  block.startTemperature(), block.airTemperature(), firm));
    }
  }

  private PartShape part(CaseTable t) {
    if (!t.present()) {
      root.mistake("", "the case needs a [part] with mesh = \"file.stl\" or [[part.caliper]] rows");
      return null;
    }
    List<String> files = t.texts("mesh");
    List<CaseTable> rows = t.list("caliper");
    if (files.isEmpty() == rows.isEmpty()) {
      t.mistake(
          files.isEmpty() ? "" : "mesh",
          files.isEmpty()
              ? "[part] needs mesh = \"file.stl\" or [[part.caliper]] rows"
              : "[part] has both mesh and caliper rows: keep one");
      return null;
    }
    Optional<LengthUnit> unit =
        t.choice("unit", List.of("mm", "cm", "m", "inch"))
            .map(u -> LengthUnit.valueOf(u.toUpperCase(Locale.ROOT)));
    return files.isEmpty() ? calipers(t, rows) : new PartShape.Meshes(paths(t, files), unit);
  }

  private List<Path> paths(CaseTable t, List<String> files) {
    List<Path> paths = new ArrayList<>();
    for (String f : files) {
      Path p = folder.resolve(f);
      if (!Files.isRegularFile(p)) {
        t.mistake("mesh", "there is no file " + f + " in " + folder);
      }
      paths.add(p);
    }
    return paths;
  }

  private static PartShape calipers(CaseTable t, List<CaseTable> tables) {
    List<PartShape.Row> rows = new ArrayList<>();
    double last = Double.NEGATIVE_INFINITY;
    for (CaseTable row : tables) {
      double d = row.need("distance", Dimension.LENGTH, 0, METRE);
      double w = row.need("width", Dimension.LENGTH, 1e-4, METRE);
      double h = row.need("height", Dimension.LENGTH, 1e-4, METRE);
      if (d <= last) {
        row.mistake("distance", "caliper rows go from the nose to the tail: distances must rise");
      }
      last = d;
      rows.add(new PartShape.Row(d, w, h));
    }
    if (rows.size() < 2) {
      t.mistake("caliper", "two caliper rows are needed at least");
    }
    return new PartShape.Calipers(List.copyOf(rows));
  }

  private FeedSystem feed() {
    CaseTable feed = root.sub("feed");
    CaseTable gate = root.sub("gate");
    if (feed.present() && gate.present()) {
      feed.mistake("", "both [feed] (gate in the mesh) and [gate] (declared): keep one");
      return null;
    }
    if (feed.present()) {
      if (!feed.flag("in_mesh")) {
        feed.mistake("", "[feed] needs in_mesh = true; a declared gate goes into [gate]");
      }
      return new FeedSystem.InMesh(feed.place("gate"), feed.place("mouth"));
    }
    if (!gate.present()) {
      root.mistake("", "the case needs a [gate] and a [sprue], or [feed] in_mesh = true");
      return null;
    }
    return declared(gate, root.sub("sprue"));
  }

  private FeedSystem declared(CaseTable gate, CaseTable sprue) {
    Optional<Vec3> at = gate.place("at");
    Optional<Vec3> direction = gate.direction("direction");
    need(gate, "at", "[\"0 mm\", \"0 mm\", \"0 mm\"], a point on the part");
    need(gate, "direction", "[-1, 0, 0], away from the part");
    Section section = section(gate);
    double land = gate.need("land", Dimension.LENGTH, 0.2e-3, 0.1);
    Optional<FeedSystem.Runner> runner = runner(root.sub("runner"));
    Optional<FeedSystem.Reservoir> reservoir = reservoir(root.sub("reservoir"));
    if (!sprue.present()) {
      root.mistake("", "the case needs a [sprue] with diameter and length");
    }
    double inner = sprue.need("diameter", Dimension.LENGTH, 1e-3, 0.1);
    double length = sprue.need("length", Dimension.LENGTH, 1e-3, 0.5);
    double mouth = mouth(sprue, inner, length);
    Optional<Vec3> towards = sprue.direction("direction");
    if (!sound.getAsBoolean()) {
      return null;
    }
    return new FeedSystem.Declared(
        new FeedSystem.Gate(at.get(), direction.get(), section, land),
        runner,
        reservoir,
        new FeedSystem.Sprue(inner, mouth, length, towards.orElse(direction.get())));
  }

  private static void need(CaseTable t, String key, String example) {
    if (!t.has(key)) {
      t.mistake("", "[gate] needs " + key + ", for example " + key + " = " + example);
    }
  }

  private static double mouth(CaseTable sprue, double inner, double length) {
    OptionalDouble stated = sprue.quantity("mouth_diameter", Dimension.LENGTH, 1e-3, 0.1);
    OptionalDouble taper = sprue.quantity("taper", Dimension.ANGLE, 0, 0.6);
    if (stated.isPresent() && taper.isPresent()) {
      sprue.mistake("taper", "[sprue] has both mouth_diameter and taper: keep one");
    }
    double opening = taper.isPresent() ? 2 * length * Math.tan(taper.getAsDouble() / 2) : 0;
    return stated.orElse(inner + opening);
  }

  private static Section section(CaseTable t) {
    String shape = t.choice("shape", List.of("round", "half-round", "rectangular")).orElse("round");
    double size = t.need("size", Dimension.LENGTH, 0.3e-3, 0.05);
    OptionalDouble height = t.quantity("height", Dimension.LENGTH, 0.3e-3, 0.05);
    if (shape.equals("rectangular") && height.isEmpty()) {
      t.mistake("shape", "a rectangular section needs a height");
    }
    if (!(size > 0) || (shape.equals("rectangular") && height.isEmpty())) {
      return Section.round(1e-3); // stands in: the mistake is noted
    }
    return switch (shape) {
      case "half-round" -> Section.halfRound(size);
      case "rectangular" -> new Section(Section.Kind.RECTANGULAR, size, height.getAsDouble());
      default -> Section.round(size);
    };
  }

  private static Optional<FeedSystem.Runner> runner(CaseTable t) {
    if (!t.present()) {
      return Optional.empty();
    }
    double length = t.need("length", Dimension.LENGTH, 0.5e-3, 0.5);
    Section section = section(t);
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

  private List<Growth> growths() {
    List<Growth> all = new ArrayList<>();
    for (CaseTable t : root.list("filing")) {
      Optional<Vec3> at = t.place("at");
      if (at.isEmpty()) {
        t.mistake("", "[[filing]] needs at = [x, y, z]");
      }
      double reach = t.need("reach", Dimension.LENGTH, 0.5e-3, 0.1);
      double depth = t.need("depth", Dimension.LENGTH, 0.05e-3, 0.02);
      if (at.isPresent() && reach > 0 && depth > 0) {
        all.add(new Growth(at.get(), reach, depth));
      }
    }
    return all;
  }

  private Shot shot(CaseTable t) {
    if (!t.present()) {
      root.mistake("", "the case needs a [shot] with temperature = \"165 degC\"");
      return null;
    }
    double temperature = t.need("temperature", Dimension.TEMPERATURE, 100, 240);
    double fill = or(t, "fill_time", Dimension.TIME, 0, 120, 2, "2 s");
    double hold = or(t, "hold_time", Dimension.TIME, 0, 600, 5, "5 s");
    double pressure = or(t, "hold_pressure", Dimension.PRESSURE, 0, 2e6, 20e3, "20 kPa");
    List<Double> topUps = t.quantities("top_up", Dimension.TIME);
    if (topUps.stream().anyMatch(s -> !(s > 0 && s < 3600))) {
      t.mistake("top_up", "times of topping up lie between 0 and an hour after the shot");
    }
    OptionalDouble injector = t.quantity("injector", Dimension.VOLUME, 1e-6, 0.01);
    OptionalDouble open = t.quantity("open_at", Dimension.TIME, 1, 7200);
    return new Shot(
        temperature,
        nonNegative(fill),
        nonNegative(hold),
        nonNegative(pressure),
        topUps,
        injector,
        open);
  }

  private static double nonNegative(double v) {
    return v >= 0 ? v : 0;
  }

  private double or(
      CaseTable t,
      String key,
      Dimension d,
      double low,
      double high,
      double otherwise,
      String shown) {
    if (!t.has(key)) {
      assumed.add(
          new Statement("shot: " + key.replace('_', ' '), shown, "common practice, no source"));
      return otherwise;
    }
    return t.quantity(key, d, low, high).orElse(otherwise);
  }

  private static Numerics numerics(CaseTable t) {
    String level = t.choice("level", List.of("quick", "normal", "fine")).orElse("normal");
    return new Numerics(
        Numerics.Level.valueOf(level.toUpperCase(Locale.ROOT)),
        t.quantity("voxel", Dimension.LENGTH, 0.02e-3, 5e-3));
  }
}
