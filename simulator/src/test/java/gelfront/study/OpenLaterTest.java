// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.Ran;
import gelfront.answer.Remedies;
import gelfront.answer.Remedies.Effort;
import gelfront.answer.RunOutcome;
import gelfront.answer.RunStore;
import gelfront.answer.SomeRun;
import gelfront.base.Progress;
import gelfront.finding.Constriction;
import gelfront.mesh.TriangleMesh;
import gelfront.setup.Case;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** Leaving the mould shut as a remedy: where it is one, what it changes, what comes of it. */
final class OpenLaterTest {
  private static final ExecutorService POOL = Executors.newFixedThreadPool(2);

  @AfterAll
  static void close() {
    POOL.shutdownNow();
  }

  /** The bean, injected and held for 3 s, with more of a recipe. */
  private static LoadedCase bean(String gate, String more) {
    String text =
        StudyCases.BEAN
            .replace("size = \"2 mm\"", "size = \"" + gate + "\"")
            .replace("165 degC\"", "165 degC\"\nfill_time = \"1 s\"\nhold_time = \"2 s\"" + more);
    return CaseFile.parse("bean.toml", text, Path.of("").toAbsolutePath());
  }

  private static TriangleMesh part(LoadedCase c) {
    return PartLoader.load(c.setup().part()).mesh();
  }

  private static List<Remedy> shelf(LoadedCase c, RunOutcome before) {
    return RemedyShelf.of(c, Optional.of(before), new GatePlaces(part(c))).remedies();
  }

  private static Case changed(LoadedCase c, Remedy r) {
    return Job.of(r.label(), c, r.changes()).setup();
  }

  private static RunOutcome oval(double mm) {
    return SomeRun.opened(SomeRun.dent(0.1, Constriction.Kind.GATE), mm, 11.3);
  }

  /** 11.3 s and a tenth, in whole seconds; the least that a maker can do stands first. */
  @Test
  void aPartThatGoesOvalIsLeftShutFirstOfAll() {
    LoadedCase c = bean("2 mm", "\nopen_at = \"6 s\"");
    List<Remedy> all = shelf(c, oval(0.75));

    assertEquals("open after 13 s instead of 6 s", all.get(0).label());
    assertEquals(13, changed(c, all.get(0)).opensAt().orElseThrow(), 1e-9);
    assertEquals("open when the part is firm instead of after 6 s", all.get(1).label());
    assertTrue(changed(c, all.get(1)).opensAt().isEmpty());
    assertEquals(Effort.RECIPE, all.get(1).effort());
    assertFalse(all.get(0).fitsWith(all.get(1)), "one clock");
  }

  @Test
  void aCycleIsMadeLongerByAsMuch() {
    LoadedCase c = bean("2 mm", "\n[series]\nidle = \"40 s\"\ncycle = \"46 s\"");
    List<Remedy> all = shelf(c, oval(0.75));

    assertEquals("open after 13 s instead of 6 s", all.get(0).label());
    assertEquals(53, changed(c, all.get(0)).rhythm().cycle().orElseThrow(), 1e-9);
    assertTrue(changed(c, all.get(1)).rhythm().cycle().isEmpty());
  }

  @Test
  void whatStaysRoundOrIsOpenedFirmIsNotLeftShutForLonger() {
    RunOutcome dent = SomeRun.dent(0.6, Constriction.Kind.GATE);

    for (List<Remedy> all :
        List.of(
            shelf(bean("2 mm", ""), dent),
            shelf(bean("2 mm", "\nopen_at = \"6 s\""), SomeRun.opened(dent, 0.19, 6)))) {
      assertTrue(all.stream().noneMatch(r -> r.label().startsWith("open")), "" + all);
    }
  }

  @Test
  void whatIsToppedUpAfterTheMouldIsOpenedIsLeftOut() {
    LoadedCase c = bean("2 mm", "\nopen_at = \"6 s\"");

    RemedyShelf shelf = RemedyShelf.of(c, Optional.of(oval(0.75)), new GatePlaces(part(c)));

    assertTrue(shelf.notRun().stream().anyMatch(l -> l.why().equals("the mould is opened before")));
    assertTrue(shelf.remedies().stream().noneMatch(r -> r.knob().equals("top-up")));
  }

  @Test
  void openedWhenItIsToldThePartStaysRoundAndTheShotTakesAsMuchLonger() {
    LoadedCase c = bean("4 mm", "\nopen_at = \"4 s\"");
    Study study = Study.of(c, part(c), "1", RunStore.inMemory(), POOL, 2);
    Job early = Job.of("as it is", c, List.of());
    RunOutcome was = one(study, early.quick());
    double visible = c.setup().visibleDent();
    assertTrue(was.goesOval(visible) && was.dentHigh() < visible, was.verdict());

    for (Remedy r : new OpenLater(c.setup()).than(was)) {
      RunOutcome is = one(study, Job.of(r.label(), c, r.changes()).normal());
      assertTrue(is.clean(visible), is.verdict());
      assertEquals(was.dentHigh(), is.dentHigh(), 0.03e-3, "the clock feeds nothing");
      assertTrue(is.cycle() > was.cycle() + 2, "opened after " + is.cycle() + " s");
    }
    assertEquals(4, was.cycle(), 1e-9, "opened by the clock, not when firm");
  }

  private static RunOutcome one(Study study, Job job) {
    return study.run("one", List.of(job), Progress.NONE).get(0).outcome().orElseThrow();
  }

  /** A wider gate alone cures the dent, the clock alone the oval: the answer is both. */
  @Test
  void whatCuresTheDentButLeavesThePartOvalIsNotTheAnswer() {
    LoadedCase c = bean("2 mm", "\nopen_at = \"4 s\"");
    Remedies r =
        new RemedyStudy(
                Study.of(c, part(c), "1", RunStore.inMemory(), POOL, 2), Job::quick, Progress.NONE)
            .run();

    RunOutcome gate = line(r.lines(), "gate 4 mm instead of 2 mm");
    assertTrue(gate.dentHigh() < r.visible() && gate.goesOval(r.visible()), gate.verdict());
    RunOutcome clock = line(r.lines(), "open when the part is firm instead of after 4 s");
    assertTrue(clock.dentHigh() >= r.visible() && clock.opening().oval() == 0, clock.verdict());
    String chosen = r.chosen().orElseThrow().label();
    assertTrue(chosen.matches("open after \\d+ s instead of 4 s \\+ gate .*"), chosen);
    assertTrue(r.chosen().get().best().outcome().orElseThrow().clean(r.visible()));
    assertTrue(r.verdict().contains(" and an oval of 0."), r.verdict());
    assertTrue(r.verdict().contains("and nothing is seen any more"), r.verdict());
    assertTrue(r.verdict().matches(".*It opens \\d s later.*"), r.verdict());
  }

  private static RunOutcome line(List<Remedies.Line> lines, String label) {
    return lines.stream()
        .filter(l -> l.label().equals(label))
        .findFirst()
        .flatMap(l -> l.quick().outcome())
        .orElseThrow();
  }

  /** With the moment that the case itself asks for this pair would still go oval. */
  @Test
  void aPairIsLeftShutForAsLongAsItsOwnRunAsksFor() {
    LoadedCase c = bean("2 mm", "\nopen_at = \"6 s\"");
    RunOutcome dent = SomeRun.dent(0.6, Constriction.Kind.GATE);
    Map<Remedy, Remedies.Line> lines = new LinkedHashMap<>();
    for (Remedy r : shelf(c, SomeRun.opened(dent, 0.75, 11.3))) {
      boolean cures = r.label().startsWith("gate 4 mm");
      RunOutcome left = cures ? SomeRun.dent(0.1, Constriction.Kind.GATE) : dent;
      lines.put(r, line(r, SomeRun.opened(left, 0.8, cures ? 15 : 11.3)));
    }

    List<String> pairs =
        new RemedyPairs(c.setup(), lines)
            .of(SomeRun.opened(dent, 0.75, 11.3)).stream()
                .flatMap(List::stream)
                .map(Remedy::label)
                .toList();

    assertEquals(List.of("open after 17 s instead of 6 s + gate 4 mm instead of 2 mm"), pairs);
  }

  private static Remedies.Line line(Remedy r, RunOutcome came) {
    return new Remedies.Line(
        r.effort(), r.what(), r.caution(), Ran.well(came), Optional.empty(), "");
  }
}
