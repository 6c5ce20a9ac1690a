package gelfront.report;

import gelfront.finding.Amounts;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import gelfront.result.ArtifactWriter;
import gelfront.result.Health;
import gelfront.result.Inputs;
import gelfront.result.StoredRun;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

/**
 * The report: one page that opens anywhere, prints, and loads nothing. Order: verdict, what to
 * change, where, pockets, curves, inputs, trust, cautions.
 */
public final class HtmlReport implements ArtifactWriter {
  private static final int MOST_PICTURED = 4;

  @Override
  public String fileName() {
    return "report.html";
  }

  @Override
  public void write(StoredRun run, OutputStream out) throws IOException {
    out.write(page(run).getBytes(StandardCharsets.UTF_8));
  }

  private static String page(StoredRun run) {
    String css = css();
    Html h = new Html().trusted("<!DOCTYPE html>\n");
    h.open("html", "lang", "en").open("head").empty("meta", "charset", "utf-8");
    h.empty(
        "meta",
        "http-equiv",
        "Content-Security-Policy",
        "content",
        "default-src 'none'; img-src data:; style-src 'sha256-" + sha256(css) + "'");
    h.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    h.element("title", run.name() + ": " + Say.severity(run.findings().severity()));
    h.open("style").trusted(css).close().close();
    h.open("body").open("main");
    head(h, run);
    Scene scene = new Scene(run);
    where(h, run, scene);
    during(h, run, scene);
    melt(h, run.findings());
    inputs(h, run.inputs());
    trust(h, run.health());
    cautions(h, run.cautions());
    return h.close().close().close().toString();
  }

  private static String css() {
    try (InputStream in = HtmlReport.class.getResourceAsStream("report.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String sha256(String s) {
    try {
      byte[] d = MessageDigest.getInstance("SHA-256").digest(s.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(d);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String tone(Severity s) {
    return switch (s) {
      case CLEAN -> "clean";
      case MAY_DENT -> "may";
      case WILL_DENT -> "will";
    };
  }

  private static void head(Html h, StoredRun run) {
    Findings f = run.findings();
    h.open("div", "class", "bar").element("b", run.name());
    h.element("span", "calculated " + run.provenance().calculatedAt());
    h.element("span", "gelfront " + run.provenance().version()).close();
    h.element("div", mark(f.severity()), "class", "stamp " + tone(f.severity()));
    h.element("h1", f.verdict()).element("p", f.explanation());
    h.open("div", "class", "facts");
    if (!f.pockets().isEmpty()) {
      var d = f.pockets().get(0).dents().get(0);
      fact(
          h,
          Say.depth(d.depthLow(), d.depthHigh()),
          "deepest dent (" + Say.depthInch(d.depthLow(), d.depthHigh()) + ")");
    }
    fact(h, Say.time(f.gateSets()), "gate closes");
    fact(h, Say.time(f.partSets()), "last place sets");
    fact(h, Say.time(f.firmAt()), "firm enough to open");
    fact(h, Say.fixed(f.linearShrinkage() * 100, 1) + " %", "smaller in length than the cavity");
    h.close();
    if (!f.advice().isEmpty()) {
      h.open("section").element("h2", "What to change, best first").open("ol", "class", "todo");
      f.advice().forEach(a -> h.element("li", a));
      h.close()
          .element("p", "These are directions, not sizes: change the case file and run it again.")
          .close();
    }
  }

  private static String mark(Severity s) {
    return switch (s) {
      case CLEAN -> "✓ comes out clean";
      case MAY_DENT -> "? may dent";
      case WILL_DENT -> "✗ will dent";
    };
  }

  private static void fact(Html h, String value, String what) {
    h.open("div").element("b", value).element("span", what).close();
  }

  private static void where(Html h, StoredRun run, Scene scene) {
    Findings f = run.findings();
    Pictures pictures = new Pictures(scene);
    h.open("section").element("h2", "Where it happens");
    h.element(
        "p",
        "Cut open lengthwise. Light places stay soft longest. What lies inside the white line was still liquid when nothing could flow to it any more.");
    h.open("figure");
    Overlay.cutOpen(h, pictures.cutOpen(), f, scene.timeScale());
    h.close().close();
    if (f.pockets().isEmpty()) {
      return;
    }
    h.open("section")
        .element("h3", "Pockets, deepest dent first")
        .open("div", "class", "scroll")
        .open("table")
        .open("thead")
        .open("tr");
    for (String s : List.of("No.", "Verdict", "Where, x y z in mm", "Cut off by")) {
      h.element("th", s, "scope", "col");
    }
    for (String s : List.of("closed at", "sets at", "liquid then", "can't be fed", "dent")) {
      h.element("th", s, "scope", "col", "class", "n");
    }
    h.close().close().open("tbody");
    f.pockets().forEach(p -> row(h, p));
    h.close().close().close().close();
    h.open("div", "class", "two");
    for (Pocket p : f.pockets().subList(0, Math.min(MOST_PICTURED, f.pockets().size()))) {
      h.open("figure");
      Overlay.plain(h, pictures.across(p), "pocket " + p.number() + " cut across");
      h.element(
          "figcaption",
          "Pocket "
              + p.number()
              + ", cut across at "
              + Say.place(p.centre())
              + " mm. "
              + p.sentence());
      h.close();
    }
    h.close();
  }

  private static void row(Html h, Pocket p) {
    var d = p.dents().get(0);
    h.open("tr").open("td").element("span", String.valueOf(p.number()), "class", "number").close();
    h.element("td", Say.severity(p.severity()), "class", tone(p.severity()));
    h.element("td", Say.place(p.centre()));
    h.element(
        "td",
        Say.culprit(p.constriction().kind())
            + ", "
            + Say.mm(p.constriction().width())
            + " wide, at "
            + Say.place(p.constriction().place()));
    number(h, Say.time(p.cutOff()));
    number(h, Say.time(p.lastSet()));
    number(h, Say.ml(p.volume()));
    number(h, Say.ml(p.unfedLow()) + " to " + Say.ml(p.unfedHigh()));
    number(h, Say.depth(d.depthLow(), d.depthHigh()));
    h.close();
  }

  private static void number(Html h, String s) {
    h.element("td", s, "class", "n");
  }

  private static void during(Html h, StoredRun run, Scene scene) {
    h.open("section").element("h2", "While it cools").open("figure");
    List<Chart.Mark> marks = new ArrayList<>();
    if (Double.isFinite(run.findings().gateSets())) {
      marks.add(new Chart.Mark(run.findings().gateSets(), "gate closes"));
    }
    if (Double.isFinite(run.findings().firmAt())) {
      marks.add(new Chart.Mark(run.findings().firmAt(), "firm"));
    }
    Chart.temperatures(h, run.series(), marks);
    h.element(
            "figcaption",
            "Temperatures in the middle of the gate, where the pockets set last, and of the mould at its wall.")
        .close()
        .close();
    h.open("section").open("div", "class", "two");
    for (Pictures.Moment m : new Pictures(scene).moments()) {
      h.open("figure");
      Overlay.plain(h, m.picture(), "temperature after " + Say.time(m.time()));
      h.element(
              "figcaption",
              "After "
                  + Say.time(m.time())
                  + ": light is hot, inside the white line it still flows.")
          .close();
    }
    h.close().close();
  }

  private static void melt(Html h, Findings f) {
    Amounts a = f.amounts();
    h.open("section").element("h2", "What to melt").open("table").open("tbody");
    line(
        h,
        "Part" + (a.cavities() > 1 ? ", each of " + a.cavities() : ""),
        Say.ml(a.partVolume()) + ", " + Say.grams(a.partMass()));
    line(h, "Gate, runner, sprue", Say.ml(a.feedVolume()) + ", " + Say.grams(a.feedMass()));
    line(
        h,
        "Drawn in while it shrinks (top-up)",
        Say.ml(a.topUpVolume()) + ", " + Say.grams(a.topUpMass()));
    line(h, "One shot with all of it", Say.ml(a.shotVolume()));
    a.injectorCapacity()
        .ifPresent(
            c ->
                line(
                    h,
                    "Injector",
                    Say.ml(c) + (a.injectorHoldsIt() ? ": holds it" : ": too small")));
    h.close().close().close();
  }

  private static void line(Html h, String name, String value) {
    h.open("tr").element("th", name, "scope", "row").element("td", value).close();
  }

  private static void inputs(Html h, Inputs in) {
    h.open("section", "class", "long")
        .element("h2", "What went in")
        .element("h3", "You gave")
        .open("table")
        .open("tbody");
    in.given().forEach(l -> line(h, l.name(), l.value()));
    h.close().close().element("h3", "Assumed, because not given").open("table").open("tbody");
    for (Inputs.Line l : in.assumed()) {
      h.open("tr")
          .element("th", l.name(), "scope", "row")
          .element("td", l.value())
          .element("td", l.source())
          .close();
    }
    h.close().close();
    h.element(
            "p",
            "Sources: S and number: published, listed in the material table; E: estimate; C: computed; M: from memory.")
        .close();
  }

  private static void trust(Html h, Health health) {
    h.open("section").element("h2", "Can you trust this run?").open("table").open("tbody");
    for (Health.Line l : health.lines()) {
      String tone =
          l.mark() == Health.Mark.GOOD ? "clean" : l.mark() == Health.Mark.BAD ? "will" : "may";
      String word =
          l.mark() == Health.Mark.GOOD
              ? "good"
              : l.mark() == Health.Mark.BAD ? "bad" : "look at it";
      h.open("tr")
          .element("th", l.check(), "scope", "row")
          .element("td", l.result())
          .element("td", word, "class", tone)
          .close();
    }
    h.close().close();
    h.element("h3", "Dent or trapped air?");
    h.element(
            "p",
            "A dent still shows the cavity's texture: the skin was pulled in after it had touched the wall. Trapped air leaves a polished hollow with rounded rims and no texture: the plastisol never got there. This page is about dents.")
        .close();
  }

  private static void cautions(Html h, List<String> own) {
    h.open("section").element("h2", "Cautions").open("ul", "class", "cautions");
    own.forEach(c -> h.element("li", c));
    Cautions.ALL.forEach(c -> h.element("li", c));
    h.close().close();
  }
}
