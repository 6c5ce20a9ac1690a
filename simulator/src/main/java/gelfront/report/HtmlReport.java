package gelfront.report;

import gelfront.result.ArtifactWriter;
import gelfront.result.StoredRun;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * The report: one page that opens anywhere, prints, and loads nothing. Order: verdict, what to
 * change, where, pockets, filling, look inside, curves, amounts, inputs, trust, cautions. It says
 * nothing of when it was made: the same run gives the same bytes.
 */
public final class HtmlReport implements ArtifactWriter {
  @Override
  public String fileName() {
    return "report.html";
  }

  @Override
  public void write(StoredRun run, OutputStream out) throws IOException {
    out.write(page(run).getBytes(StandardCharsets.UTF_8));
  }

  private static String page(StoredRun run) {
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
    h.element("title", run.name() + ": " + Say.severity(run.findings().severity()));
    h.open("style").trusted(css).close().close();
    h.open("body").open("main");
    sections(h, run);
    h.close().open("script").trusted(script).close();
    return h.close().close().toString();
  }

  private static void sections(Html h, StoredRun run) {
    Scene scene = new Scene(run);
    Pictures pictures = new Pictures(scene);
    HeadSection.write(h, run);
    WhereSection.write(h, run.findings(), scene, pictures);
    FillSection.write(h, run, scene, pictures);
    InsideSection.write(h, scene);
    CoolingSection.write(h, run, scene, pictures);
    MeltSection.write(h, run.findings().amounts());
    BasisSection.write(h, run);
  }
}
