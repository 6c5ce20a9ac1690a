// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.answer.Remedies;
import gelfront.answer.SeriesAnswer;
import gelfront.answer.Sizing;
import gelfront.base.Progress;
import gelfront.mesh.TriangleMesh;
import gelfront.run.SeriesRun;
import gelfront.setup.LoadedCase;
import gelfront.study.Job;
import gelfront.study.RemedyStudy;
import gelfront.study.Sizer;
import gelfront.study.Study;
import gelfront.voxelize.CaseVoxels;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Answers to "what helps?", each with the designs that it proposes. */
public sealed interface Help {
  /** Runs a gate's sizing may take. */
  int RUNS = 12;

  /** Shots that are made one by one before the settled one. */
  int SHOTS = 5;

  /**
   * @param designs one a line, remedies first, then pairs; absent where none can be made
   */
  record OfRemedies(Remedies answer, List<Optional<LoadedCase>> designs) implements Help {}

  /**
   * @param designs one a choice of the best place
   */
  record OfSizes(Sizing answer, List<LoadedCase> designs) implements Help {}

  /** Shots in a row. */
  record OfShots(SeriesAnswer answer) implements Help {}

  private static Study study(LoadedCase base, TriangleMesh part, Backgrounds b) {
    return Study.of(base, part, Runs.version(), b.outcomes(), b.pool(), b.threads());
  }

  /** What can be done about the dent, least effort first. */
  static Help remedies(LoadedCase base, TriangleMesh part, Backgrounds b, Progress progress) {
    RemedyStudy study = new RemedyStudy(study(base, part, b), Job::quick, progress);
    Remedies answer = study.run();
    List<Optional<LoadedCase>> designs = new ArrayList<>();
    answer.lines().forEach(l -> designs.add(study.changed(l)));
    answer.pairs().forEach(l -> designs.add(study.changed(l)));
    return new OfRemedies(answer, designs);
  }

  /** The smallest gate that leaves no dent to be seen. */
  static Help sizes(LoadedCase base, TriangleMesh part, Backgrounds b, Progress progress) {
    Sizer sizer = new Sizer(study(base, part, b), RUNS, b.threads(), progress);
    Sizing answer = sizer.run(0);
    return new OfSizes(answer, sizer.chosenCases());
  }

  /** One shot after the other into the warming mould. */
  static Help shots(LoadedCase base, TriangleMesh part, Backgrounds b, Progress progress) {
    Job job = Job.of("series", base, List.of()).quick();
    CaseVoxels voxels = CaseVoxels.of(job.setup(), part, progress);
    return new OfShots(new SeriesRun(job.setup(), voxels, b.workers(), progress).run(SHOTS));
  }
}
