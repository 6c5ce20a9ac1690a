// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.result.ArtifactWriter;
import java.util.ArrayList;
import java.util.List;

/** Every file of a result that is made for people or other programs. */
public final class Artifacts {
  private Artifacts() {}

  /** One writer a file. */
  public static List<ArtifactWriter> all() {
    return all(Beside.NOTHING);
  }

  /**
   * As above.
   *
   * @param beside what else is known of the verdict
   */
  public static List<ArtifactWriter> all(Beside beside) {
    List<ArtifactWriter> all =
        new ArrayList<>(
            List.of(
                new HtmlReport(beside),
                new FindingsJson(beside.voxels()),
                new PocketsCsv(),
                new AirCsv(),
                new FillingCsv(),
                new VoxelsVti(),
                new SeriesCsv(),
                new DentsGlb()));
    beside.doubt().ifPresent(d -> all.addAll(DoubtArtifact.all(d)));
    return all;
  }
}
