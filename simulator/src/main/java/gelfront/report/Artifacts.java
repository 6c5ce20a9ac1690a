package gelfront.report;

import gelfront.result.ArtifactWriter;
import java.util.List;

/** Every file of a result that is made for people or other programs. */
public final class Artifacts {
  private Artifacts() {}

  /** One writer a file. */
  public static List<ArtifactWriter> all() {
    return List.of(
        new HtmlReport(),
        new FindingsJson(),
        new PocketsCsv(),
        new AirCsv(),
        new VoxelsVti(),
        new SeriesCsv(),
        new DentsGlb());
  }
}
