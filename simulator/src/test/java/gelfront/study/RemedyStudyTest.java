// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.Ran;
import gelfront.answer.Remedies;
import gelfront.answer.RunOutcome;
import gelfront.answer.RunOutcome.Filling;
import gelfront.answer.RunOutcome.Pressing;
import gelfront.answer.RunStore;
import gelfront.answer.SomeRun;
import gelfront.base.Changed;
import gelfront.base.Progress;
import gelfront.base.Told;
import gelfront.base.Units;
import gelfront.finding.Constriction;
import gelfront.mesh.TriangleMesh;
import gelfront.setup.CaseFile;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Remedies: what is listed, what is run, what is recommended. */
final class RemedyStudyTest {
  private static final ExecutorService POOL = Executors.newFixedThreadPool(2);
  private static final LoadedCase BEAN =
      load(StudyCases.BEAN + "[limits]\ngate_widest = \"3.5 mm\"\n");

  private static final TriangleMesh PART = PartLoader.load(BEAN.setup().part()).mesh();
  private static final String NORMAL = "normal: ";
  private static final GatePlaces PLACES = new GatePlaces(PART);

  private static LoadedCase load(String text) {
    return CaseFile.parse("bean.toml", text, Path.of(""));
  }

  @AfterAll
  static void close() {
    POOL.shutdownNow();
  }

  private static RunOutcome outcome(double dentMm, Constriction.Kind kind, Filling f, double held) {
    Pressing pressing = new Pressing(20e3, 50, 0, OptionalDouble.of(held));
    return Changed.of(SomeRun.dent(dentMm, kind), "filling", f, "pressing", pressing);
  }

  private static RunOutcome gate(double dentMm) {
    return outcome(dentMm, Constriction.Kind.GATE, Filling.UNKNOWN, 100);
  }

  /** Label of each job that may be asked for, by its hash; behind it the level. */
  private static final Map<String, String> JOBS = jobs();

  private static Study study(RunStore store) {
    return Study.of(BEAN, PART, "test", store, POOL, 2);
  }

  private static Map<String, String> jobs() {
    Study study = study(RunStore.inMemory());
    Map<String, String> jobs = new HashMap<>();
    put(study, jobs, "as it is", List.of());
    List<Remedy> all = RemedyShelf.of(BEAN, Optional.of(gate(0.6)), PLACES).remedies();
    for (Remedy r : all) {
      put(study, jobs, r.label(), r.changes());
      boolean paired = List.of("gate", "hold", "shot").contains(r.knob());
      for (Remedy other : paired ? all : List.<Remedy>of()) {
        if (r.fitsWith(other)) {
          put(study, jobs, r.and(other).label(), r.and(other).changes());
        }
      }
    }
    return jobs;
  }

  private static void put(
      Study study, Map<String, String> jobs, String label, List<Change> changes) {
    Job job = Job.of(label, BEAN, changes);
    jobs.put(study.hash(job.quick()), label);
    jobs.put(study.hash(job.normal()), NORMAL + label);
  }

  /**
   * A study in which nothing is calculated.
   *
   * @param quick what comes of a remedy by its label, at level quick
   * @param normal the same at level normal
   */
  private static Remedies study(Function<String, Ran> quick, Function<String, Ran> normal) {
    return remedies(quick, normal).run();
  }

  private static RemedyStudy remedies(Function<String, Ran> quick, Function<String, Ran> normal) {
    RunStore told =
        new RunStore() {
          @Override
          public Optional<Ran> find(String hash) {
            String label = JOBS.get(hash);
            return Optional.of(
                label.startsWith(NORMAL)
                    ? normal.apply(label.substring(NORMAL.length()))
                    : quick.apply(label));
          }

          @Override
          public void keep(String hash, String label, Ran ran) {
            throw new AssertionError("calculated: " + label);
          }
        };
    return new RemedyStudy(study(told), Job::quick, Progress.NONE);
  }

  @Test
  void everyLineIsACaseThatCanBeGoneOnWith() {
    Function<String, Ran> all = label -> Ran.well(gate(label.equals("as it is") ? 0.6 : 0.5));
    RemedyStudy study = remedies(all, all);
    Remedies r = study.run();
    Study any = study(RunStore.inMemory());

    assertFalse(r.lines().isEmpty());
    for (Remedies.Line l : r.lines()) {
      LoadedCase changed = study.changed(l).orElseThrow();
      assertEquals(l.label(), JOBS.get(any.hash(new Job("", changed).quick())));
    }
    Remedies.Line never =
        new Remedies.Line(
            Remedies.Effort.RECIPE, Told.of("pray"), "", r.before(), Optional.empty(), "");
    assertTrue(study.changed(never).isEmpty());
  }

  private static Function<String, Ran> dents(double otherwise, Map<String, Double> byStart) {
    return label ->
        Ran.well(
            gate(
                byStart.entrySet().stream()
                    .filter(e -> label.startsWith(e.getKey()))
                    .mapToDouble(Map.Entry::getValue)
                    .min()
                    .orElse(otherwise)));
  }

  @Test
  void theLeastEffortThatCuresIsTheAnswer() {
    Function<String, Ran> f =
        dents(
            0.6, Map.of("gate 3 mm", 0.1, "sprue 13", 0.05, "hold the plunger 20 s instead", 0.5));
    Remedies r = study(f, f);
    assertEquals("gate 3 mm instead of 2 mm", r.chosen().orElseThrow().label());
    assertTrue(r.verdict().contains("from 0.60 mm to 0.10 mm"), r.verdict());
    assertTrue(r.chosen().get().normal().isPresent());
  }

  @Test
  void whatFailsAtLevelNormalIsNotTheAnswer() {
    Function<String, Ran> quick = dents(0.6, Map.of("gate 2.5", 0.15, "gate 3 mm", 0.1));
    Function<String, Ran> normal = dents(0.6, Map.of("gate 2.5", 0.3, "gate 3 mm", 0.12));
    assertEquals("gate 3 mm instead of 2 mm", study(quick, normal).chosen().orElseThrow().label());
    Remedies none = study(quick, dents(0.6, Map.of("gate 3 mm", 0.4)));
    assertTrue(none.chosen().isEmpty());
    assertTrue(none.verdict().startsWith("Nothing that was run cures it."), none.verdict());
    assertTrue(none.verdict().contains("gate 3 mm instead of 2 mm, from 0.60 mm to 0.40 mm"));
  }

  @Test
  void aCoolerShotThatMayNotFillIsNeverTheAnswer() {
    Function<String, Ran> f = dents(0.6, Map.of("shoot at 155", 0.05, "gate 3 mm", 0.15));
    Remedies r = study(f, f);
    assertEquals("gate 3 mm instead of 2 mm", r.chosen().orElseThrow().label());
    Remedies.Line cooler =
        r.lines().stream().filter(l -> l.label().startsWith("shoot")).findFirst().orElseThrow();
    assertTrue(cooler.doubt().contains("fills"), cooler.doubt());
    assertFalse(r.pairs().stream().anyMatch(l -> l.label().contains("shoot at")));

    Function<String, Ran> fills =
        label ->
            label.startsWith("shoot at 155 °C instead of 165 °C")
                ? Ran.well(outcome(0.05, Constriction.Kind.GATE, Filling.FILLS, 100))
                : f.apply(label);
    assertTrue(study(fills, fills).chosen().orElseThrow().label().startsWith("shoot"));
  }

  @Test
  void whatOpensTheMouldIsNeverTheAnswer() {
    Function<String, Ran> f = dents(0.6, Map.of("gate 3 mm", 0.15));
    Function<String, Ran> opens =
        label ->
            label.startsWith("hold the plunger")
                ? Ran.well(outcome(0.05, Constriction.Kind.GATE, Filling.UNKNOWN, 40))
                : f.apply(label);
    Remedies r = study(opens, opens);
    assertEquals("gate 3 mm instead of 2 mm", r.chosen().orElseThrow().label());
  }

  @Test
  void oneBadRunLeavesTheOthersAlone() {
    Function<String, Ran> f = dents(0.6, Map.of("gate 3 mm", 0.15));
    Function<String, Ran> bad =
        label -> label.startsWith("mould at") ? Ran.failed("no luck") : f.apply(label);
    Remedies r = study(bad, bad);
    assertEquals("gate 3 mm instead of 2 mm", r.chosen().orElseThrow().label());
    assertTrue(r.lines().stream().anyMatch(l -> l.quick().error().equals("no luck")));
  }

  @Test
  void aPairCuresWhereNothingAloneDoes() {
    Function<String, Ran> f =
        label ->
            Ran.well(
                gate(
                    label.contains(" + ") && label.contains("hold") && label.contains("gate 3.5")
                        ? 0.1
                        : label.startsWith("gate 3.5") ? 0.3 : 0.6));
    Remedies r = study(f, f);
    String chosen = r.chosen().orElseThrow().label();
    assertTrue(chosen.contains("hold the plunger") && chosen.contains("gate 3.5"), chosen);
    assertTrue(r.lines().stream().noneMatch(l -> l.label().equals(chosen)));
  }

  /** Both halves of it are work: it is for where nothing else cures. */
  @Test
  void workOnTheMouldIsPairedWhereNoRecipeCures() {
    Function<String, Ran> none = dents(0.6, Map.of("gate 3.5", 0.3));
    Function<String, Ran> held =
        label ->
            label.contains(" + ") && label.contains("hold")
                ? Ran.well(gate(0.1))
                : none.apply(label);
    Function<String, Ran> alone = dents(0.6, Map.of("gate 3.5", 0.15));

    assertEquals(List.of(false, true), kinds(study(none, none)));
    assertEquals(List.of(false), kinds(study(held, held)));
    assertEquals(List.of(false), kinds(study(alone, alone)));
    assertEquals(List.of(false, true), kinds(study(held, none)), "at level normal nothing cures");
  }

  /** Another design may leave less, but file work that cures with a hold is the lesser effort. */
  @Test
  void fileWorkIsPairedBeforeAnotherDesignIs() {
    Function<String, Ran> f =
        label ->
            label.contains(" + ") && label.contains("hold") && label.contains("gate 3.5")
                ? Ran.well(gate(0.15))
                : dents(0.6, Map.of("gate 3.5", 0.3, "a second gate", 0.25)).apply(label);

    Remedies r = study(f, f);

    String chosen = r.chosen().orElseThrow().label();
    assertTrue(chosen.startsWith("hold the plunger") && chosen.contains("gate 3.5"), chosen);
    assertEquals(List.of(false), kinds(r), "no pair with another design was run");
  }

  /** Whether there are pairs with a second gate: without one first, as they were run. */
  private static List<Boolean> kinds(Remedies r) {
    return r.pairs().stream().map(l -> l.label().contains("a second gate")).distinct().toList();
  }

  @Test
  void withoutADentThereIsNothingToDo() {
    Remedies r = study(dents(0.1, Map.of()), dents(0.12, Map.of()));
    assertTrue(r.lines().isEmpty() && r.verdict().contains("nothing to cure"), r.verdict());
    Remedies finer = study(dents(0.22, Map.of()), dents(0.19, Map.of()));
    assertTrue(finer.lines().isEmpty() && finer.verdict().contains("nothing to cure"));
    Remedies close = study(dents(0.1, Map.of()), dents(0.3, Map.of()));
    assertTrue(close.verdict().contains("too close to call"), close.verdict());
  }

  private static List<String> labels(RemedyShelf shelf) {
    return shelf.remedies().stream().map(Remedy::label).toList();
  }

  @Test
  void aDrawnFeedHasRecipeFileWorkAndRedesignInOrderOfEffort() {
    RemedyShelf shelf = RemedyShelf.of(BEAN, Optional.of(gate(0.6)), PLACES);
    List<Remedies.Effort> efforts = shelf.remedies().stream().map(Remedy::effort).toList();
    assertEquals(efforts.stream().sorted().toList(), efforts);
    assertEquals(3, efforts.stream().distinct().count());
    assertTrue(labels(shelf).contains("gate 3.5 mm instead of 2 mm"));
    // wider than [limits] accepts, and what a case can't say
    assertTrue(shelf.notRun().stream().anyMatch(l -> l.label().startsWith("gate 4 mm")));
    assertTrue(labels(shelf).stream().anyMatch(l -> l.startsWith("a second gate, ")), "tried");
    assertEquals(labels(shelf).size(), labels(shelf).stream().distinct().count());
  }

  @Test
  void inInchesAndFahrenheitNoRemedyIsNamedInMillimetresOrCelsius() {
    Units shop = new Units(true, true);
    RemedyShelf shelf = RemedyShelf.of(BEAN, Optional.of(gate(0.6)), PLACES);
    List<String> told =
        Stream.concat(
                shelf.remedies().stream().map(r -> r.what().in(shop)),
                shelf.notRun().stream().map(l -> l.what().in(shop)))
            .toList();

    assertTrue(told.contains("gate 0.138 in instead of 0.079 in"), "" + told);
    assertTrue(told.stream().anyMatch(t -> t.startsWith("shoot at 311 °F")), "" + told);
    assertTrue(told.stream().noneMatch(t -> t.matches(".* (mm|°C|K)\\b.*|.*°C.*")), "" + told);
  }

  @Test
  void whatIsHardlyUnseenIsACloseCall() {
    Function<String, Ran> hardly = dents(0.6, Map.of("gate 2.5", 0.19));
    Function<String, Ran> well = dents(0.6, Map.of("gate 2.5", 0.15));

    String close = "isn't seen any more, a close call (run at level normal).";
    assertTrue(study(hardly, hardly).verdict().contains(close));
    assertTrue(study(well, well).verdict().contains("isn't seen any more (run at level normal)."));
  }

  @Test
  void halfSecondsAreTold() {
    LoadedCase half = BEAN.with(List.of(Change.seconds("shot.hold_time", 2.5)));
    List<String> told = labels(RemedyShelf.of(half, Optional.of(gate(0.6)), PLACES));
    assertTrue(told.contains("hold the plunger 17.5 s instead of 2.5 s"), told.toString());
    assertTrue(told.contains("top the sprue up at 7.5 s and 17.5 s"), told.toString());
  }

  /** The gate isn't moved on top of another, and two are taken for enough. */
  @Test
  void aFurtherGateIsReckonedWith() {
    Remedy second =
        RemedyShelf.of(BEAN, Optional.of(gate(0.6)), PLACES).remedies().stream()
            .filter(r -> r.label().startsWith("a second gate"))
            .findFirst()
            .orElseThrow();
    LoadedCase two = Job.of("two", BEAN, second.changes()).loaded();

    RemedyShelf shelf = RemedyShelf.of(two, Optional.of(gate(0.6)), PLACES);

    assertTrue(labels(shelf).stream().noneMatch(l -> l.startsWith("the gate at the thick place")));
    assertTrue(labels(shelf).stream().noneMatch(l -> l.startsWith("a second gate")));
    assertTrue(shelf.notRun().stream().anyMatch(l -> l.why().contains("two or more already")));
  }

  @Test
  void everyRemedyIsACaseThatReads() {
    for (Remedy r : RemedyShelf.of(BEAN, Optional.of(gate(0.6)), PLACES).remedies()) {
      Job job = Job.of(r.label(), BEAN, r.changes());
      assertFalse(job.setup().equals(BEAN.setup()), r.label());
    }
  }

  @Test
  void aFeedInTheMeshIsFiledAndTheRestIsSaid(@TempDir Path folder) throws IOException {
    Files.createFile(folder.resolve("a.stl")); // never read
    String meshed =
        """
        [part]
        mesh = "a.stl"
        [feed]
        in_mesh = true
        mouth = ["-31 mm", "0 mm", "0 mm"]
        [shot]
        temperature = "165 degC"
        """;
    LoadedCase base = CaseFile.parse("a.toml", meshed, folder);
    RemedyShelf shelf = RemedyShelf.of(base, Optional.of(gate(0.6)), PLACES);
    assertTrue(labels(shelf).contains("the gate filed 1.5 mm wider"), labels(shelf).toString());
    Remedy filed =
        shelf.remedies().stream()
            .filter(r -> r.label().startsWith("the gate filed 1.0"))
            .findFirst()
            .orElseThrow();
    LoadedCase changed = Job.of("filed", base, filed.changes()).loaded();
    assertEquals(0.5e-3, changed.setup().growths().get(0).depth(), 1e-9);
    assertTrue(shelf.notRun().stream().anyMatch(l -> l.why().contains("part of the mesh")));

    RunOutcome three = outcome(0.6, Constriction.Kind.GATE, Filling.UNKNOWN, 100);
    double widest = three.blamed().orElseThrow().width() + 1.2e-3;
    LoadedCase limited = base.with(List.of(Change.mm("limits.gate_widest", widest)));
    RemedyShelf narrow = RemedyShelf.of(limited, Optional.of(three), PLACES);
    assertTrue(labels(narrow).contains("the gate filed 1.0 mm wider"));
    assertTrue(narrow.notRun().stream().anyMatch(l -> l.label().contains("1.5 mm wider")));

    RunOutcome neck = outcome(0.6, Constriction.Kind.NECK, Filling.UNKNOWN, 100);
    RemedyShelf other = RemedyShelf.of(base, Optional.of(neck), PLACES);
    assertTrue(labels(other).stream().anyMatch(l -> l.endsWith("1 mm thicker")));
    assertTrue(other.notRun().stream().anyMatch(l -> l.label().equals("a wider gate")));
  }
}
