// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.base.Dimension;
import gelfront.setup.Case;
import gelfront.setup.FeedSystem;
import gelfront.setup.LoadedCase;
import gelfront.setup.Section;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The lines of the form, by heading. Ranges are what is usual: common practice, no source. */
public final class Form {
  private static final List<String> SHAPES = List.of("round", "half-round", "rectangular");

  /** Headings of further gates; more of them are changed in the case file. */
  public static final List<String> FURTHER = List.of("Second gate", "Third gate", "Fourth gate");

  private Form() {}

  /** All lines in their order. */
  public static Map<String, List<FormField>> sections() {
    Map<String, List<FormField>> all = new LinkedHashMap<>();
    all.put("Gate", gate());
    for (int n = 1; n <= FURTHER.size(); n++) {
      all.put(FURTHER.get(n - 1), further(n));
    }
    all.put("Runner", runner());
    all.put("Sprue", sprue());
    all.put("Block", block());
    all.put("Plastisol", plastisol());
    all.put("Shot", shot());
    all.put("Calculation", calculation());
    return all;
  }

  /** Whether a heading is about a feed that is drawn by numbers. */
  public static boolean needsDeclaredFeed(String heading) {
    return List.of("Gate", "Runner", "Sprue").contains(heading) || FURTHER.contains(heading);
  }

  private static List<FormField> gate() {
    return List.of(
        FormField.choice("gate.shape", "Shape", c -> SHAPES, c -> shape(gateSection(c.setup()))),
        length("gate.size", "Size", 2, 6, c -> gateSection(c).width()),
        FormField.quantity(
            "gate.height",
            "Height",
            Dimension.LENGTH,
            1e-3,
            4e-3,
            c -> height(c.feed() instanceof FeedSystem.Declared d ? d.gate().section() : null)),
        length("gate.land", "Land", 1, 5, c -> declared(c).gate().land()));
  }

  /** Of the n-th further gate; without values where the case has none. */
  private static List<FormField> further(int n) {
    String table = Gates.table(n) + ".";
    return List.of(
        FormField.choice(
            table + "shape",
            "Shape",
            c -> SHAPES,
            c -> branch(c.setup(), n).map(b -> shape(b.gate().section())).orElse("")),
        optional(table + "size", "Size", 2, 6, c -> of(c, n, b -> b.gate().section().width())),
        FormField.quantity(
            table + "height",
            "Height",
            Dimension.LENGTH,
            1e-3,
            4e-3,
            c -> height(branch(c, n).map(b -> b.gate().section()).orElse(null))),
        optional(table + "land", "Land", 1, 5, c -> of(c, n, b -> b.gate().land())),
        optional(table + "runner", "Its runner", 3, 10, c -> of(c, n, b -> b.runner().width())));
  }

  private static Optional<FeedSystem.Branch> branch(Case c, int n) {
    return c.feed() instanceof FeedSystem.Declared d && d.others().size() >= n
        ? Optional.of(d.others().get(n - 1))
        : Optional.empty();
  }

  private static OptionalDouble of(Case c, int n, Function<FeedSystem.Branch, Double> value) {
    return branch(c, n).map(b -> OptionalDouble.of(value.apply(b))).orElse(OptionalDouble.empty());
  }

  private static OptionalDouble height(@Nullable Section s) {
    return s != null && s.kind() == Section.Kind.RECTANGULAR
        ? OptionalDouble.of(s.height())
        : OptionalDouble.empty();
  }

  private static List<FormField> runner() {
    return List.of(
        optional("runner.size", "Size", 4, 10, c -> runner(c, r -> r.section().width())),
        optional("runner.length", "Length", 3, 60, c -> runner(c, FeedSystem.Runner::length)));
  }

  private static OptionalDouble runner(Case c, Function<FeedSystem.Runner, Double> of) {
    return c.feed() instanceof FeedSystem.Declared d && d.runner().isPresent()
        ? OptionalDouble.of(of.apply(d.runner().get()))
        : OptionalDouble.empty();
  }

  private static List<FormField> sprue() {
    return List.of(
        length("sprue.diameter", "Diameter", 6, 16, c -> declared(c).sprue().innerDiameter()),
        length(
            "sprue.mouth_diameter",
            "At the mouth",
            6,
            20,
            c -> declared(c).sprue().mouthDiameter()),
        length("sprue.length", "Length", 10, 60, c -> declared(c).sprue().length()));
  }

  private static List<FormField> block() {
    return List.of(
        FormField.choice(
            "block.material",
            "Metal",
            c -> c.materials().names("mould"),
            c -> c.word("block.material").orElse("aluminium-6061")),
        optional("block.wall", "Wall", 8, 40, Form::wall),
        temperature("block.start", "Before the shot", 15, 80, c -> c.block().startTemperature()),
        temperature("block.air", "Air", 5, 40, c -> c.block().airTemperature()));
  }

  /** A mould by its own solids, or in a stated box, has no wall to be said. */
  private static OptionalDouble wall(Case c) {
    return c.block().outer().isPresent()
        ? OptionalDouble.empty()
        : OptionalDouble.of(c.block().wall());
  }

  private static List<FormField> plastisol() {
    return List.of(
        FormField.choice(
            "plastisol.grade",
            "Grade",
            c -> c.materials().names("plastisol"),
            c -> c.word("plastisol.grade").orElse("soft")),
        temperature(
            "plastisol.no_flow", "Stops flowing at", 100, 150, c -> c.plastisol().noFlow()));
  }

  private static List<FormField> shot() {
    return List.of(
        FormField.choice(
            "fill.on",
            "Calculate filling",
            c -> List.of("no", "yes"),
            c -> c.setup().fill().on() ? "yes" : "no"),
        temperature("shot.temperature", "Temperature", 155, 180, c -> c.shot().temperature()),
        FormField.quantity(
            "shot.hold_time",
            "Hold the plunger",
            Dimension.TIME,
            2,
            30,
            c -> OptionalDouble.of(c.shot().holdTime())),
        FormField.quantity(
            "shot.hold_pressure",
            "With a pressure of",
            Dimension.PRESSURE,
            5e3,
            60e3,
            c -> OptionalDouble.of(c.shot().holdPressure())),
        FormField.quantity(
            "shot.injector",
            "Injector holds",
            Dimension.VOLUME,
            30e-6,
            300e-6,
            c -> c.shot().injectorCapacity()));
  }

  private static List<FormField> calculation() {
    return List.of(
        FormField.choice(
            "numerics.level",
            "Check at level",
            c -> List.of("quick", "normal", "fine"),
            c -> c.setup().numerics().level().name().toLowerCase(Locale.ROOT)),
        length("visible_dent", "A dent is seen from", 0.1, 0.5, Case::visibleDent));
  }

  /** For fields of a declared feed alone. */
  private static FeedSystem.Declared declared(Case c) {
    return (FeedSystem.Declared) c.feed();
  }

  private static Section gateSection(Case c) {
    return declared(c).gate().section();
  }

  private static String shape(Section s) {
    return s.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static FormField optional(
      String key, String label, double low, double high, Function<Case, OptionalDouble> value) {
    return FormField.quantity(key, label, Dimension.LENGTH, 1e-3 * low, 1e-3 * high, value);
  }

  private static FormField length(
      String key, String label, double low, double high, Function<Case, Double> value) {
    return optional(key, label, low, high, c -> OptionalDouble.of(value.apply(c)));
  }

  private static FormField temperature(
      String key, String label, double low, double high, Function<Case, Double> value) {
    return FormField.quantity(
        key, label, Dimension.TEMPERATURE, low, high, c -> OptionalDouble.of(value.apply(c)));
  }

  /** Lines that make sense for a case: none of gate and sprue where these are in the mesh. */
  public static boolean fits(String heading, LoadedCase loaded) {
    int further = FURTHER.indexOf(heading) + 1;
    return further > 0
        ? branch(loaded.setup(), further).isPresent()
        : loaded.setup().feed() instanceof FeedSystem.Declared || !needsDeclaredFeed(heading);
  }
}
