package gelfront.report;

import gelfront.answer.Doubt;
import gelfront.result.ArtifactWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every file of a result that is made for people or other programs. */
public final class Artifacts {
  private Artifacts() {}

  /** One writer a file. */
  public static List<ArtifactWriter> all() {
    return all(Optional.empty());
  }

  /**
   * As above.
   *
   * @param doubt how sure the verdict is, where it was calculated
   */
  public static List<ArtifactWriter> all(Optional<Doubt> doubt) {
    List<ArtifactWriter> all =
        new ArrayList<>(
            List.of(
                new HtmlReport(doubt),
                new FindingsJson(),
                new PocketsCsv(),
                new AirCsv(),
                new VoxelsVti(),
                new SeriesCsv(),
                new DentsGlb()));
    doubt.ifPresent(d -> all.add(new DoubtArtifact(d)));
    return all;
  }
}
