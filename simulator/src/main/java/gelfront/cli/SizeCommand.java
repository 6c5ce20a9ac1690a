// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.answer.RunOutcome;
import gelfront.answer.Sizing;
import gelfront.base.Quantities;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.report.SizeFiles;
import gelfront.report.SizePage;
import gelfront.setup.Case;
import gelfront.setup.Change;
import gelfront.setup.FeedSystem;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartShape;
import gelfront.study.FiledGate;
import gelfront.study.Sizer;
import gelfront.voxelize.FeedSolids;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sizes gate, runner and sprue. */
@Command(
    name = "size",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Finds the smallest gate, with runner and sprue, whose deepest dent isn't seen, nor an oval where"
          + " open_at opens the mould, at the case's gate or at each place of its list ([[limits.gate_place]]), within the limits of the"
          + " case ([limits]). Where none will do there, the thickest places are tried. A gate that"
          + " is part of the mesh is filed open; its sprue stays.",
      "Writes size.json, size.html, size-sheet.csv with what to cut, size-case.toml with"
          + " the changed case, and the feed as STL in the part's coordinates: as calculated,"
          + " and rounded up to cutters in mm and inch. Runs of an earlier study are used again; what was stopped goes on where it was."
    })
final class SizeCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "CASE", description = "The case file.")
  private Path caseFile;

  @Option(
      names = "--runs",
      paramLabel = "N",
      defaultValue = "12",
      description = "Runs a place at most; left out: ${DEFAULT-VALUE}.")
  private int runs;

  @Option(
      names = "--propose",
      paramLabel = "N",
      defaultValue = "0",
      description = "Also sizes a gate at the N thickest places.")
  private int propose;

  @Mixin private StudyPlace place;

  @Option(
      names = "--no-flow",
      description = "Leaves out that liquid is drawn in and carries heat: conduction alone.")
  private boolean noFlow;

  @Mixin private Answers answers;
  @Mixin private Threads threads;

  SizeCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    try (StudyDesk desk =
        new StudyDesk(console, answers, threads.count(), caseFile, place.folder(), !noFlow)) {
      Sized sized = sized(desk);
      Sizing sizing = sized.sizing();
      desk.write("size.json", SizeFiles.json(sizing));
      Path page = desk.write("size.html", SizePage.of(sizing));
      if (sizing.chosen() >= 0) {
        desk.write("size-sheet.csv", SizeFiles.sheet(sizing));
        feeds(desk, sizing, sized.cases());
        changed(desk, sizing, sized.cases());
      }
      print(sizing, page, desk);
    } catch (IllegalArgumentException e) {
      throw new InputFailure(String.valueOf(e.getMessage()), e);
    }
    return ExitCode.OK;
  }

  /**
   * @param cases of the choices, in their order
   */
  private record Sized(Sizing sizing, List<LoadedCase> cases) {}

  private Sized sized(StudyDesk desk) {
    if (desk.base().setup().feed() instanceof FeedSystem.InMesh) {
      FiledGate gate = new FiledGate(desk.study(), runs, desk.progress());
      return new Sized(gate.run(), gate.chosenCases());
    }
    Sizer sizer = new Sizer(desk.study(), runs, threads.count(), desk.progress());
    return new Sized(sizer.run(Math.max(0, propose)), sizer.chosenCases());
  }

  private static void feeds(StudyDesk desk, Sizing s, List<LoadedCase> cases) throws IOException {
    List<Sizing.Choice> choices = s.best().orElseThrow().choices();
    for (int i = 0; i < cases.size(); i++) {
      Case c = cases.get(i).setup();
      if (c.feed() instanceof FeedSystem.Declared d) {
        TriangleMesh feed = FeedSolids.of(c, d, desk.study().part());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        MeshFiles.writeStl(feed, out, LengthUnit.MM);
        desk.folder().write(stl(choices.subList(0, i + 1)), out.toByteArray());
      }
    }
  }

  /** The file of the last of these. */
  private static String stl(List<Sizing.Choice> choices) {
    String label = choices.get(choices.size() - 1).label();
    long before = choices.stream().filter(c -> c.label().equals(label)).count() - 1;
    return switch (label) {
      case "as calculated" -> "size-feed.stl";
      case "cutters in mm" -> "size-feed-mm.stl";
      case "cutters in inch" -> "size-feed-inch.stl";
      default -> before == 0 ? "size-feed-next.stl" : "size-feed-after-next.stl";
    };
  }

  /** The case with the smallest feed that holds, to be checked and changed further. */
  private static void changed(StudyDesk desk, Sizing s, List<LoadedCase> cases) {
    List<Sizing.Choice> choices = s.best().orElseThrow().choices();
    int least = -1;
    for (int i = 0; i < choices.size(); i++) {
      boolean smaller = least < 0 || choices.get(i).gate() < choices.get(least).gate();
      least = choices.get(i).holds(s.visible()) && smaller ? i : least;
    }
    desk.write("size-case.toml", wherever(cases.get(least)).text());
  }

  /** The same from any folder: its meshes are named by their whole paths. */
  static LoadedCase wherever(LoadedCase c) {
    if (!(c.setup().part() instanceof PartShape.Meshes m)) {
      return c;
    }
    String files =
        m.files().stream()
            .map(f -> Change.text(f.toAbsolutePath().normalize().toString()))
            .collect(Collectors.joining(", ", "[", "]"));
    return c.with(List.of(new Change.Set("part.mesh", files)));
  }

  private void print(Sizing s, Path page, StudyDesk desk) {
    if (answers.json()) {
      console.out().print(SizeFiles.json(s));
      return;
    }
    if (!answers.quiet()) {
      s.places().forEach(p -> place(p, s.visible()));
      s.best().ifPresent(p -> sheet(p, s.visible()));
      console.out().println(desk.runs() + ".");
    }
    console.out().println(s.name() + ": " + s.verdict());
    console.out().println("Page: " + page);
  }

  private void place(Sizing.Place p, double visible) {
    console
        .out()
        .println(
            Quantities.say(
                "Gate %s, at (%.1f, %.1f, %.1f) mm, the part %.1f mm thick:",
                p.label(),
                p.at().x() * 1e3,
                p.at().y() * 1e3,
                p.at().z() * 1e3,
                p.thickness() * 1e3));
    console.out().println("   gate mm  sprue mm  level     dent mm              to open s  blamed");
    p.curve().forEach(c -> console.out().println(line(c, visible)));
    console.out().println("  " + p.words());
    console.out().println();
  }

  private static String line(Sizing.Point c, double visible) {
    String sprue =
        Double.isNaN(c.sprue()) ? "  as drawn" : Quantities.say("%10.1f", c.sprue() * 1e3);
    String sizes =
        Quantities.say("%10.1f", c.gate() * 1e3) + sprue + Quantities.say("  %-7s", c.level());
    if (c.ran().outcome().isEmpty()) {
      return sizes + "  no result: " + c.ran().error();
    }
    RunOutcome o = c.ran().outcome().get();
    return sizes
        + Quantities.say(
            "%7.2f to %.2f  %-9s%9.0f  %s",
            o.dentLow() * 1e3,
            o.dentHigh() * 1e3,
            seen(o, visible),
            o.cycle(),
            o.blamed()
                .map(b -> b.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '))
                .orElse(""));
  }

  private static String seen(RunOutcome o, double visible) {
    String defect = o.dentHigh() < visible ? "goes oval" : "may show";
    return o.clean(visible) ? "not seen" : defect;
  }

  private void sheet(Sizing.Place p, double visible) {
    StringBuilder head = new StringBuilder(Quantities.say("%-32s", "What to cut"));
    p.choices().forEach(c -> head.append(Quantities.say("%24s", c.label())));
    console.out().println(head);
    for (int i = 0; i < p.choices().get(0).sheet().size(); i++) {
      StringBuilder line =
          new StringBuilder(
              Quantities.say("%-32s", "  " + p.choices().get(0).sheet().get(i).name()));
      for (Sizing.Choice c : p.choices()) {
        double v = c.sheet().get(i).value();
        line.append(
            Quantities.say("%24s", Quantities.say("%.2f mm (%.3f in)", v * 1e3, v / 0.0254)));
      }
      console.out().println(line);
    }
    StringBuilder dents = new StringBuilder(Quantities.say("%-32s", "  dent at level normal"));
    p.choices().forEach(c -> dents.append(Quantities.say("%24s", dent(c, visible))));
    console.out().println(dents);
    console.out().println();
  }

  private static String dent(Sizing.Choice c, double visible) {
    return c.normal()
        .outcome()
        .map(
            o ->
                Quantities.say(
                    "%.2f mm%s, %s",
                    o.defect() * 1e3,
                    o.opening().oval() > o.dentHigh() ? " oval" : "",
                    c.holds(visible) ? "does" : "no"))
        .orElse("no result");
  }
}
