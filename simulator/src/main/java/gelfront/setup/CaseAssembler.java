// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Caution;
import gelfront.base.Caution.Figure;
import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.material.MaterialTable;
import gelfront.material.Plastisol;
import gelfront.mesh.Vec3;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/** Puts a case together from its tables; what is left out is filled in and told. */
final class CaseAssembler {
  /** °C above which a shot gets a warning. */
  private static final double HOT_SHOT = 190;

  /** °C above which a mould gets a warning. */
  private static final double HOT_MOULD = 100;

  private final CaseTable root;
  private final String file;
  private final Path folder;
  private final List<Statement> assumed;
  private final BooleanSupplier sound;
  private final List<Caution> warnings = new ArrayList<>();
  private final MaterialTable materials;

  /**
   * @param assumed collects what is filled in
   * @param sound whether no mistake has been found so far
   */
  CaseAssembler(
      CaseTable root, String file, Path folder, List<Statement> assumed, BooleanSupplier sound) {
    this.root = root;
    this.file = file;
    this.folder = folder;
    this.materials = new MaterialsReader(root, folder).read();
    this.assumed = assumed;
    this.sound = sound;
  }

  /** What the case may name. */
  MaterialTable materials() {
    return materials;
  }

  /** The case; null where mistakes were found. */
  @Nullable Case assemble() {
    String name = root.text("name").orElse(file.replaceFirst("\\.[^.]*$", ""));
    Optional<Vec3> up = root.direction("up");
    if (!root.has("up")) {
      assumed.add(new Statement("up", "where the mouth looks", "common practice, no source"));
    }
    @Nullable PartShape part = new PartReader(root, folder).read();
    List<Placement> copies = new CopyReader(root, up, assumed).read();
    @Nullable FeedSystem feed = new FeedReader(root, assumed, sound).read();
    List<Growth> growths = growths();
    CaseTable stuff = root.sub("plastisol");
    Plastisol mix = new PlastisolReader(stuff, materials, assumed, warnings).read();
    @Nullable Shot shot = shot(root.sub("shot"));
    Fill fill = new FillReader(root.sub("fill"), assumed).read();
    Block block =
        new BlockReader(root.sub("block"), folder, up.or(() -> mouth(feed)), materials, assumed)
            .read();
    Optional<FeedSystem.Extender> tube =
        new ExtenderReader(root.sub("extender"), materials, assumed).read(block);
    OptionalDouble clamping = root.quantity("clamping_force", Dimension.FORCE, 1, 1e6);
    int cavities = cavities(Case.drawn(feed, copies));
    OptionalDouble visible = root.quantity("visible_dent", Dimension.LENGTH, 0.01e-3, 5e-3);
    if (visible.isEmpty()) {
      assumed.add(
          new Statement("visible dent", Quantities.mm(Case.VISIBLE), "own judgement, no source"));
    }
    Numerics numerics = numerics(root.sub("numerics"));
    Limits limits = new LimitsReader(root.sub("limits")).read();
    Rhythm rhythm = new RhythmReader(root.sub("series"), assumed).read();
    if (part == null || feed == null || shot == null || !sound.getAsBoolean()) {
      return null;
    }
    warn(shot, block, mix);
    contradict(shot, block, mix);
    contradict(shot, rhythm);
    FillReader.contradict(root.sub("shot"), fill, shot);
    return sound.getAsBoolean()
        ? new Case(
            name,
            part,
            copies,
            with(tube, feed),
            growths,
            block,
            mix,
            shot,
            fill,
            up,
            clamping,
            cavities,
            numerics,
            rhythm,
            visible.orElse(Case.VISIBLE),
            limits,
            warnings)
        : null;
  }

  /**
   * @param drawn that lie in the block
   */
  private int cavities(int drawn) {
    int stated = root.count("cavities", drawn);
    if (drawn > 1 && stated != drawn) {
      String words = "cavities = %d, but %d lie in the block: leave the key out";
      root.mistake("cavities", Quantities.say(words, stated, drawn));
    }
    return stated;
  }

  /** Where the mouth looks, as far as that can be told without the mesh. */
  private static Optional<Vec3> mouth(@Nullable FeedSystem feed) {
    return feed instanceof FeedSystem.Declared d
        ? Optional.of(d.sprue().direction())
        : Optional.empty();
  }

  private static FeedSystem with(Optional<FeedSystem.Extender> tube, FeedSystem feed) {
    return feed instanceof FeedSystem.Declared d && tube.isPresent() ? d.with(tube.get()) : feed;
  }

  private void warn(Shot shot, Block block, Plastisol mix) {
    if (shot.temperature() > HOT_SHOT) {
      warnings.add(
          Caution.of(
              "The shot is hotter than {}: plastisol yellows and gives off hydrogen chloride, which"
                  + " harms eyes and lungs. Stay below {} and use local exhaust.",
              Figure.temperature(HOT_SHOT),
              Figure.temperature(HOT_SHOT)));
    }
    double mould =
        block.warmSpots().stream()
            .mapToDouble(Block.WarmSpot::temperature)
            .reduce(block.startTemperature(), Math::max);
    if (mould > HOT_MOULD) {
      warnings.add(
          Caution.of(
              "The mould is hotter than {}: it burns skin at a touch, any water in it flashes to"
                  + " steam, and hot aluminium looks like cold.",
              Figure.temperature(HOT_MOULD)));
    }
    if (block.startTemperature() >= mix.firm()) {
      warnings.add(
          Caution.of(
              "The mould starts at {}, but the part is firm below {} only: it can't be taken out"
                  + " before the whole block has cooled. Is the temperature stated in the right"
                  + " unit?",
              Figure.temperature(block.startTemperature()),
              Figure.temperature(mix.firm())));
    }
  }

  private void contradict(Shot shot, Block block, Plastisol mix) {
    CaseTable recipe = root.sub("shot");
    if (shot.temperature() <= mix.noFlow()) {
      CaseTable stuff = root.sub("plastisol");
      boolean own = stuff.has("no_flow");
      (own ? stuff : recipe)
          .mistake(
              own ? "no_flow" : "temperature",
              Quantities.say(
                  "the shot (%.0f °C) is no hotter than the no-flow temperature (%.0f °C): it can't be injected; is it stated in the right unit?",
                  shot.temperature(), mix.noFlow()));
    }
    double pressed = shot.fillTime() + shot.holdTime();
    if (shot.openAt().isPresent() && shot.openAt().getAsDouble() < pressed) {
      recipe.mistake(
          "open_at",
          Quantities.say(
              "the mould is opened at %.0f s, while the injector is still on it until %.0f s",
              shot.openAt().getAsDouble(), pressed));
    }
    if (block.airTemperature() >= mix.firm()) {
      root.sub("block")
          .mistake(
              "air",
              Quantities.say(
                  "the air (%.0f °C) must be colder than %.0f °C, at which the part is firm: it would never be; is it stated in the right unit?",
                  block.airTemperature(), mix.firm()));
    }
    coolants(block, mix);
  }

  private void contradict(Shot shot, Rhythm rhythm) {
    if (rhythm.cycle().isEmpty()) {
      return;
    }
    CaseTable series = root.sub("series");
    if (shot.openAt().isPresent()) {
      series.mistake("cycle", "shot.open_at says when the mould is opened: state one of both");
    }
    double pressed = shot.fillTime() + shot.holdTime();
    double opens = rhythm.opensAt().getAsDouble();
    if (opens < pressed) {
      String words =
          "the cycle less its idle time opens the mould at %.0f s, while the injector is still on it until %.0f s";
      series.mistake("cycle", Quantities.say(words, opens, pressed));
    }
  }

  private void coolants(Block block, Plastisol mix) {
    List<CaseTable> tables = root.sub("block").list("face");
    for (int i = 0; i < tables.size(); i++) {
      double t = block.faces().get(i).temperature();
      if (t >= mix.firm()) {
        String words =
            "what cools a face (%.0f °C) must be colder than %.0f °C, at which the part is firm";
        tables.get(i).mistake("temperature", Quantities.say(words, t, mix.firm()));
      }
    }
    List<CaseTable> channels = root.sub("block").list("channel");
    for (int i = 0; i < channels.size(); i++) {
      double t = block.channels().get(i).temperature();
      if (t >= mix.firm()) {
        String words =
            "what runs through a channel (%.0f °C) must be colder than %.0f °C, at which the part is firm";
        channels.get(i).mistake("temperature", Quantities.say(words, t, mix.firm()));
      }
    }
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

  private @Nullable Shot shot(CaseTable t) {
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

  private Numerics numerics(CaseTable t) {
    if (!t.has("level")) {
      assumed.add(new Statement("numerics: level", "normal", "a fair balance of time and detail"));
    }
    String level = t.choice("level", List.of("quick", "normal", "fine")).orElse("normal");
    return new Numerics(
        Numerics.Level.valueOf(level.toUpperCase(Locale.ROOT)),
        t.quantity("voxel", Dimension.LENGTH, 0.02e-3, 5e-3),
        true,
        t.flag("whole"));
  }
}
