// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.base.Caution;
import gelfront.base.Progress;
import gelfront.base.Quantities;
import gelfront.base.Workers;
import gelfront.finding.Filled;
import gelfront.finding.Findings;
import gelfront.mesh.check.PreparedMesh;
import gelfront.result.Health;
import gelfront.result.Inputs;
import gelfront.result.Provenance;
import gelfront.result.StoredRun;
import gelfront.setup.Case;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import gelfront.setup.Statement;
import gelfront.voxelize.CaseVoxels;
import java.util.ArrayList;
import java.util.List;

/** From a loaded case to a run that can be stored. */
public final class StoredRuns {
  /** What this version leaves out, told in every result. */
  private static final String CONDUCTION_ONLY =
      "Conduction and gelling only: the heat that plastisol carries while it is drawn in is left"
          + " out. A real gate stays open longer than here, so dents may come out smaller than"
          + " shown.";

  private static final String FILLING =
      " calculated: the cavity starts full, all of it at the shot's temperature.";

  private static final String ROW =
      "This is shot %d of a row: the mould starts as the ones before have left it.";

  private static final String INERTIA =
      "In the gate the shot runs at %.2f m/s, Reynolds number %.2g. Inertia and jetting are not"
          + " calculated; from some 10 to 30 on (from memory, no source) a jet may shoot into a wide"
          + " cavity, fold up and enclose air that is not in the list.";

  private static final String VENTS =
      "Hot plastisol can spit out of a vent: keep it shallow, let it end away from hands and face,"
          + " and stand aside while you press.";

  private StoredRuns() {}

  /**
   * @param provenance where and when; its seconds are replaced by what the run took
   * @throws gelfront.mesh.MeshException if the part's mesh can't be trusted
   * @throws gelfront.voxelize.VoxelException if shape and feed make no sound model
   * @throws gelfront.base.CancelledException if the watcher wants to stop
   */
  public static StoredRun run(
      LoadedCase loaded, Workers workers, Progress progress, Provenance provenance) {
    return run(loaded, workers, progress, provenance, Watch.NOBODY);
  }

  /**
   * As above, watched.
   *
   * @param watch over the shot
   */
  public static StoredRun run(
      LoadedCase loaded, Workers workers, Progress progress, Provenance provenance, Watch watch) {
    return judged(loaded, workers, progress, watch).stored(provenance);
  }

  /** As {@link #run}, up to what whoever waits wants to read first. */
  public static Judged judged(LoadedCase loaded, Workers workers, Progress progress, Watch watch) {
    long start = System.nanoTime();
    progress.check("reading the mesh", 0);
    PreparedMesh part = PartLoader.load(loaded.setup().part());
    CaseRunner.Outcome o =
        CaseRunner.run(
            loaded.setup(),
            CaseVoxels.of(loaded.setup(), part.mesh(), progress),
            workers,
            progress,
            watch);
    return new Judged(loaded, part, o, cautions(loaded, o), (System.nanoTime() - start) * 1e-9);
  }

  /**
   * What a case came to, before pictures of it are made.
   *
   * @param seconds that it took
   */
  public record Judged(
      LoadedCase loaded,
      PreparedMesh part,
      CaseRunner.Outcome outcome,
      List<Caution> cautions,
      double seconds) {
    public Judged {
      cautions = List.copyOf(cautions);
    }

    public Findings findings() {
      return outcome.judgement().findings();
    }

    /** With values on voxels and mesh. */
    public StoredRun stored(Provenance p) {
      return new StoredRun(
          loaded.setup().name(),
          loaded.text(),
          new Inputs(lines(loaded.given()), lines(loaded.assumed())),
          findings(),
          Storing.series(outcome),
          health(outcome, part),
          cautions,
          new Provenance(p.version(), p.calculatedAt(), p.host(), seconds),
          Storing.fields(outcome),
          outcome.voxels().surface(),
          DentPainting.of(outcome));
    }
  }

  private static List<Caution> cautions(LoadedCase loaded, CaseRunner.Outcome o) {
    List<Caution> cautions = new ArrayList<>(loaded.setup().warnings());
    if (!o.judgement().findings().amounts().injectorHoldsIt()) {
      cautions.add(Caution.of("The injector does not hold the shot with its top-up."));
    }
    Clamping.warning(loaded.setup(), o)
        .ifPresent(w -> cautions.add(w.words().at(loaded.where(w.key()))));
    if (!loaded.setup().numerics().flow()) {
      cautions.add(Caution.of(CONDUCTION_ONLY));
    }
    SlowFill.warning(loaded.setup(), loaded.states("shot.fill_time"), o)
        .ifPresent(w -> cautions.add(w.at(loaded.where("shot.fill_time"))));
    shots(loaded.setup(), o).forEach(w -> cautions.add(Caution.of(w)));
    return cautions;
  }

  private static List<String> shots(Case c, CaseRunner.Outcome o) {
    int shots = c.rhythm().shots();
    List<String> told = new ArrayList<>();
    if (!c.fill().on()) {
      told.add(
          shots == 1
              ? "Filling and earlier shots are not" + FILLING
              : Quantities.say(
                  "This is shot %d of a row: the mould starts as the ones before have left it."
                      + " Filling is not%s",
                  shots, FILLING));
      return told;
    }
    told.add(shots == 1 ? "Earlier shots are not calculated." : Quantities.say(ROW, shots));
    Filled f = o.judgement().findings().filled();
    told.add(Quantities.say(INERTIA, f.speed(), f.reynolds()));
    if (!f.air().isEmpty() || !c.fill().vents().isEmpty()) {
      told.add(VENTS);
    }
    return told;
  }

  private static List<Inputs.Line> lines(List<Statement> statements) {
    return statements.stream().map(s -> new Inputs.Line(s.name(), s.value(), s.source())).toList();
  }

  private static Health health(CaseRunner.Outcome o, PreparedMesh part) {
    List<Health.Line> lines = new ArrayList<>(Storing.health(o).lines());
    String shells =
        part.report().shells().size() == 1
            ? "1 shell"
            : part.report().shells().size() + " shells, united";
    lines.add(
        new Health.Line(
            "Mesh of the part",
            String.format(
                java.util.Locale.ROOT,
                "closed, %,d triangles, %s",
                part.mesh().triangleCount(),
                shells),
            Health.Mark.GOOD));
    part.repairs()
        .forEach(r -> lines.add(new Health.Line("Mesh repaired", r, Health.Mark.LOOK_AT_IT)));
    return new Health(lines);
  }
}
