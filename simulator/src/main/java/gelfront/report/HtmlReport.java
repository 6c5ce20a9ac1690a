// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.Band;
import gelfront.answer.Doubt;
import gelfront.result.ArtifactWriter;
import gelfront.result.StoredRun;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The report: one page that opens anywhere, prints, and loads nothing. Order: verdict, what to
 * change, where, pockets, how sure where that is known, filling, look inside, curves, amounts,
 * inputs, trust, cautions. It says nothing of when it was made: the same run gives the same bytes.
 */
public final class HtmlReport implements ArtifactWriter {
  private final Beside beside;

  /** The run alone. */
  public HtmlReport() {
    this(Beside.NOTHING);
  }

  /**
   * @param beside what else is known of the verdict
   */
  public HtmlReport(Beside beside) {
    this.beside = beside;
  }

  @Override
  public String fileName() {
    return "report.html";
  }

  @Override
  public void write(StoredRun run, OutputStream out) throws IOException {
    out.write(page(run).getBytes(StandardCharsets.UTF_8));
  }

  private String page(StoredRun run) {
    String css = PageParts.text("report.css");
    String script = PageParts.text("inside.js");
    Html h = new Html().trusted("<!DOCTYPE html>\n");
    h.open("html", "lang", "en").open("head").empty("meta", "charset", "utf-8");
    h.empty(
        "meta",
        "http-equiv",
        "Content-Security-Policy",
        "content",
        "default-src 'none'; img-src data:; style-src "
            + PageParts.hash(css)
            + "; script-src "
            + PageParts.hash(script));
    h.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    h.element("title", run.name() + ": " + Say.outcome(run.findings()));
    h.open("style").trusted(css).close().close();
    h.open("body").open("main");
    sections(h, run);
    h.close().open("script").trusted(script).close();
    return h.close().close().toString();
  }

  private void sections(Html h, StoredRun run) {
    Scene scene = new Scene(run);
    Pictures pictures = new Pictures(scene);
    HeadSection.write(h, run, beside.voxels());
    WhereSection.write(h, run.findings(), scene, pictures);
    beside.doubt().ifPresent(d -> doubt(h, d));
    FillSection.write(h, run, scene, pictures);
    InsideSection.write(h, scene);
    List<Band> bands = beside.doubt().map(Band::of).orElse(List.of());
    CoolingSection.write(h, run, bands, scene, pictures);
    MeltSection.write(h, run.findings().amounts());
    BasisSection.write(h, run);
  }

  private static void doubt(Html h, Doubt d) {
    h.open("section").element("h2", "How sure is that?");
    DoubtPage.figures(h, d);
    h.close();
  }
}
