// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.answer.RunStore;
import gelfront.answer.Sizing;
import gelfront.answer.SomeRun;
import gelfront.base.Progress;
import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.finding.Constriction;
import gelfront.finding.Opening;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.setup.CaseFile;
import gelfront.setup.Change;
import gelfront.setup.FeedSystem;
import gelfront.setup.Limits;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import gelfront.voxelize.FeedSolids;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class SizerTest {
  private final ExecutorService pool = Executors.newFixedThreadPool(4);

  @AfterEach
  void end() {
    pool.shutdownNow();
  }

  private static LoadedCase load(String text) {
    LoadedCase read = CaseFile.parse("bean.toml", text, Path.of("").toAbsolutePath());
    return read.with(read.setup().numerics().withoutFlow()); // a third of the time
  }

  private Sizer sizer(LoadedCase base, int runs) {
    TriangleMesh part = PartLoader.load(base.setup().part()).mesh();
    return new Sizer(
        Study.of(base, part, "1", RunStore.inMemory(), pool, 2), runs, 2, Progress.NONE);
  }

  @Test
  void theSmallestGateThatDoesIsBracketedAndRoundedUp() {
    // where a dent of 0.1 mm is seen, 2 mm are too little for a bean
    Sizer sizer = sizer(load("visible_dent = \"0.1 mm\"\n" + StudyCases.BEAN), 12);
    Sizing s = sizer.run(0);

    Sizing.Place place = s.best().orElseThrow();
    assertTrue(s.runs() <= 12, s.runs() + " runs");
    assertFalse(place.choices().get(0).gate() <= 2e-3);
    double gate = place.choices().get(0).gate();
    List<Sizing.Point> below = place.curve().stream().filter(p -> p.gate() < gate - 1e-9).toList();
    Sizing.Point last = below.get(below.size() - 1);
    assertTrue(last.ran().outcome().get().dentHigh() >= s.visible(), "just too small");
    assertTrue(gate - last.gate() <= 1e-3, gate + " after " + last.gate());
    assertTrue(place.choices().get(1).gate() >= gate && place.choices().get(2).gate() >= gate);
    assertEquals(place.choices().size(), sizer.chosenCases().size());
    FeedSystem.Declared feed = (FeedSystem.Declared) sizer.chosenCases().get(0).setup().feed();
    assertEquals(gate, feed.gate().section().width(), 1e-9);
    assertTrue(feed.sprue().innerDiameter() >= gate);
  }

  @Test
  void withinLimitsNoGateMayDoAndTheReasonIsGiven() {
    String text =
        "visible_dent = \"0.1 mm\"\n"
            + StudyCases.BEAN
            + """
            [limits]
            gate_widest = "2.2 mm"
            [[limits.gate_place]]
            at = ["0 mm", "0 mm", "0 mm"]
            direction = [-1, 0, 0]
            """;

    Sizing s = sizer(load(text), 6).run(0);

    assertEquals(-1, s.chosen());
    assertEquals(1, s.places().size());
    assertTrue(s.verdict().contains("doesn't do it here"), s.verdict());
    assertTrue(s.verdict().contains("the gate still sets first"), s.verdict());
    String inches = s.told().in(new Units(true, false));
    double dent = last(s.places().get(0).curve()).ran().outcome().orElseThrow().defect();
    String depth = Quantities.say("(%.3f in deep", dent / 0.0254);
    assertTrue(inches.startsWith("A gate of 0.087 in doesn't do it here " + depth), inches);
  }

  @Test
  void aSprueWiderThanIsAcceptedIsToldWithItsLine() {
    LoadedCase bean = load(StudyCases.BEAN + "[limits]\nsprue_widest = \"6 mm\"\n");

    String told = assertThrows(IllegalArgumentException.class, () -> sizer(bean, 12)).getMessage();

    String words = "the widest sprue that is accepted (6.0 mm) is narrower than the case's own";
    assertTrue(told.matches("bean.toml:\\d+:1: .*") && told.contains(words), told);
  }

  private static LoadedCase drawn(Path folder) throws IOException {
    Files.createFile(folder.resolve("drawn.stl")); // never read
    String text =
        """
        visible_dent = "0.1 mm"
        [part]
        mesh = "drawn.stl"
        [feed]
        in_mesh = true
        gate = ["-1 mm", "0 mm", "0 mm"]
        mouth = ["-22 mm", "0 mm", "0 mm"]
        [block]
        wall = "10 mm"
        [shot]
        temperature = "165 degC"
        [numerics]
        level = "quick"
        """;
    LoadedCase read = CaseFile.parse("drawn.toml", text, folder);
    return read.with(read.setup().numerics().withoutFlow());
  }

  @Test
  void aGateInTheMeshIsFiledOpen(@TempDir Path folder) throws IOException {
    LoadedCase described = load(StudyCases.BEAN);
    TriangleMesh part = PartLoader.load(described.setup().part()).mesh();
    TriangleMesh feed =
        FeedSolids.of(described.setup(), (FeedSystem.Declared) described.setup().feed(), part);
    LoadedCase drawn = drawn(folder);
    Study study = Study.of(drawn, part.plus(feed), "1", RunStore.inMemory(), pool, 2);

    FiledGate gate = new FiledGate(study, 12, Progress.NONE);
    Sizing s = gate.run();

    assertEquals(0, s.chosen(), s.verdict());
    Sizing.Choice does = s.best().orElseThrow().choices().get(0);
    assertTrue(does.gate() > 2.1e-3 && does.gate() < 7e-3, does.gate() + " m");
    assertTrue(s.verdict().contains("when filed to "), s.verdict());
    double depth = gate.chosenCases().get(0).setup().growths().get(0).depth();
    double was = does.gate() - 2 * depth;
    assertEquals(2e-3, was, 0.3e-3, "the gate as it was, by its cells");
    assertTrue(s.runs() <= 12, s.runs() + " runs");
    assertThrows(
        IllegalArgumentException.class, () -> new Sizer(study, 12, 2, Progress.NONE).run(0));
  }

  /** A study in which nothing is calculated: all of its runs come out alike. */
  private Study allCome(RunOutcome outcome, LoadedCase base, TriangleMesh part) {
    RunStore told = new ToldRuns(hash -> Ran.well(outcome));
    return Study.of(base, part, "1", told, pool, 2);
  }

  private Sizing sized(RunOutcome all) {
    LoadedCase bean = load(StudyCases.BEAN);
    TriangleMesh part = PartLoader.load(bean.setup().part()).mesh();
    return new Sizer(allCome(all, bean, part), 12, 2, Progress.NONE).run(0);
  }

  @Test
  void openedTooEarlyNoGateDoesAndTheTimeIsSaid() {
    RunOutcome oval = SomeRun.opened(SomeRun.dent(0.1, Constriction.Kind.GATE), 0.75, 11.3);

    Sizing s = sized(oval);

    assertEquals(-1, s.chosen());
    assertEquals(1, s.places().size(), "another place doesn't set the core");
    assertTrue(s.verdict().contains("0.75 mm oval at the least"), s.verdict());
    assertTrue(s.verdict().contains("which no gate mends: open later, from 12 s on;"), s.verdict());
    assertTrue(s.verdict().contains("; left shut, 2 mm leaves no dent"), s.verdict());
  }

  @Test
  void whatDentsApartFromTheOpeningIsSaidToo() {
    RunOutcome both = SomeRun.opened(SomeRun.dent(0.5, Constriction.Kind.GATE), 0.3, 11.3);

    Sizing s = sized(both);

    assertTrue(s.verdict().contains("0.50 mm deep at the least"), s.verdict());
    assertTrue(s.verdict().contains("from 12 s on; apart from that, the gate"), s.verdict());
  }

  @Test
  void anOvalThatIsNotSeenIsSaidBesideTheDent() {
    RunOutcome does = SomeRun.opened(SomeRun.dent(0.1, Constriction.Kind.GATE), 0.15, 6);

    Sizing s = sized(does);

    assertEquals(0, s.chosen());
    String said =
        "under 0.10 mm and the part, opened after 6 s, goes oval by less than 0.16 mm, 0.05 mm less";
    assertTrue(s.verdict().contains(said), s.verdict());
  }

  @Test
  void aMarginTooThinToTellIsNotToldAsNothing() {
    Sizing s = sized(SomeRun.dent(0.198, Constriction.Kind.GATE));

    assertTrue(
        s.verdict().contains("stays under 0.20 mm, hardly less than is seen, a close"),
        s.verdict());
  }

  @Test
  void aGateInTheMeshIsNotFiledWhereOpeningMakesTheOval(@TempDir Path folder) throws IOException {
    RunOutcome both = SomeRun.opened(SomeRun.dent(0.3, Constriction.Kind.GATE), 0.75, 11.3);
    LoadedCase base = drawn(folder);
    TriangleMesh part = PartLoader.load(load(StudyCases.BEAN).setup().part()).mesh();

    Sizing s = new FiledGate(allCome(both, base, part), 12, Progress.NONE).run();

    assertEquals(-1, s.chosen());
    assertEquals(1, s.runs(), "the case as it is");
    assertTrue(s.verdict().contains("(0.75 mm oval at level quick)"), s.verdict());
    assertTrue(s.verdict().contains("from 12 s on; apart from that, the gate"), s.verdict());
  }

  /** With the gate filed as wide as may be a neck is to blame, and that is thickened, too. */
  @Test
  void aNeckBehindAFiledGateIsToldAndTried(@TempDir Path folder) throws IOException {
    LoadedCase base = drawn(folder);
    TriangleMesh part = PartLoader.load(load(StudyCases.BEAN).setup().part()).mesh();
    Study none = Study.of(base, part, "1", RunStore.inMemory(), pool, 2);
    String asItIs = none.hash(Job.of("as it is", base, List.of()).quick());
    Ran gate = Ran.well(SomeRun.dent(0.6, Constriction.Kind.GATE));
    Ran neck = Ran.well(SomeRun.dent(0.3, Constriction.Kind.NECK));
    RunStore told = new ToldRuns(hash -> hash.equals(asItIs) ? gate : neck);

    Sizing s = new FiledGate(Study.of(base, part, "1", told, pool, 2), 12, Progress.NONE).run();

    assertEquals(-1, s.chosen());
    assertTrue(s.verdict().contains("starves what lies behind it"), s.verdict());
    double filed = 1e4 * s.places().get(0).cure().orElseThrow().gate();
    assertEquals(Math.rint(filed), filed, 1e-9, "tenths of a millimetre, as a file goes");
    assertTrue(s.runs() <= 12, s.runs() + " runs");
  }

  @Test
  void theBeanOpenedHotIsNoMatterOfItsGate() {
    String early = "165 degC\"\nopen_at = \"OPEN\"\nfill_time = \"1 s\"\nhold_time = \"2 s\"";
    String text = StudyCases.BEAN.replace("165 degC\"", early);
    Sizing s = sizer(load(text.replace("OPEN", "4 s")), 9).run(0);

    Opening widest = last(s.places().get(0).curve()).ran().outcome().orElseThrow().opening();
    assertEquals(-1, s.chosen(), s.verdict());
    assertTrue(widest.oval() >= s.visible(), s.verdict());
    assertTrue(s.verdict().contains("open later, from"), s.verdict());

    double later = Math.ceil(widest.shutUntil()) + 1;
    LoadedCase base = load(text.replace("OPEN", later + " s"));
    Study study =
        Study.of(
            base, PartLoader.load(base.setup().part()).mesh(), "1", RunStore.inMemory(), pool, 2);
    Job wide =
        Job.of("wide", base, new FeedChange(last(s.places().get(0).curve()).gate(), 8e-3).of(base));
    Ran left = study.run("opened later", List.of(wide.quick()), Progress.NONE).get(0);
    assertFalse(left.outcome().orElseThrow().goesOval(s.visible()), "after " + later + " s");
  }

  private static <T> T last(List<T> list) {
    return list.get(list.size() - 1);
  }

  @Test
  void placesAreProposedWhereThePartIsThickest() {
    LoadedCase base = load(StudyCases.BEAN);
    GatePlaces places = new GatePlaces(PartLoader.load(base.setup().part()).mesh());

    Vec3 first = places.propose(2, new Vec3(-1, 0, 0)).get(0).at();

    assertEquals(8, first.x() * 1e3, 2.5); // 12 mm thick at x = 8 mm
    assertTrue(first.z() > 4e-3, "across the sprue: " + first);
    assertTrue(places.propose(1, new Vec3(0, 0, 1)).get(0).at().y() > 4e-3, "across that one");
    assertTrue(places.thickness(first) > 10e-3 && places.thickness(first) < 12.5e-3);
  }

  /**
   * The bean's skin slopes nearly everywhere; all the same the sprue must end at the block's face.
   */
  @Test
  void theyLookAlongAnAxisOfTheBlockHoweverTheSkinSlopes() {
    LoadedCase base = load(StudyCases.BEAN);
    GatePlaces places = new GatePlaces(PartLoader.load(base.setup().part()).mesh());

    for (Limits.GatePlace p : places.propose(4, new Vec3(-1, 0, 0))) {
      Vec3 d = p.direction();
      double most = Math.max(Math.abs(d.x()), Math.max(Math.abs(d.y()), Math.abs(d.z())));
      assertEquals(1, most, 1e-12, "along an axis: " + d);
      assertTrue(places.thickness(p.at()) > 3e-3, "on the part: " + p.at());
    }
  }

  @Test
  void rectangularSectionsKeepTheirProportionsAndRunnersKeepUp() {
    LoadedCase base =
        load(
            StudyCases.BEAN.replace(
                    "size = \"2 mm\"",
                    "shape = \"rectangular\"\nsize = \"2 mm\"\nheight = \"1 mm\"")
                + "[runner]\nsize = \"3 mm\"\nlength = \"5 mm\"\n");

    FeedSystem.Declared feed =
        (FeedSystem.Declared) base.with(new FeedChange(5e-3, 9e-3).of(base)).setup().feed();

    assertEquals(2.5e-3, feed.gate().section().height(), 1e-9);
    assertEquals(5e-3, feed.runner().get().section().width(), 1e-9);
    assertEquals(9e-3, feed.sprue().innerDiameter(), 1e-9);
  }

  @Test
  void runnerAndMouthAreRoundedToTheSameCutters() {
    String mouth = "diameter = \"8 mm\"\nmouth_diameter = \"9.7 mm\"";
    LoadedCase base =
        load(
            StudyCases.BEAN.replace("diameter = \"8 mm\"", mouth)
                + "[runner]\nsize = \"6 mm\"\nlength = \"5 mm\"\n");
    double inch = 0.0254;
    FeedChange cut = new FeedChange(inch / 8, 0.374 * inch, Optional.of(Cutters.INCH));
    LoadedCase limited = base.with(List.of(new Change.Set("limits.sprue_widest", "\"10 mm\"")));

    FeedSystem.Declared feed = feed(base, cut);

    assertEquals(inch / 4, feed.runner().get().section().width(), 1e-8);
    assertEquals(7 * inch / 16, feed.sprue().mouthDiameter(), 1e-8);
    assertEquals(
        0.375 * inch, feed(limited, cut).sprue().mouthDiameter(), 1e-8, "7/16 in is too wide");
    assertEquals(9.7e-3, feed(base, new FeedChange(2e-3, 8e-3)).sprue().mouthDiameter(), 1e-9);
  }

  private static FeedSystem.Declared feed(LoadedCase base, FeedChange change) {
    return (FeedSystem.Declared) base.with(change.of(base)).setup().feed();
  }
}
