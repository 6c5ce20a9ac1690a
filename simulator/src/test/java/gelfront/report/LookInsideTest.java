// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Changed;
import gelfront.mesh.Vec3;
import gelfront.result.FieldProbe;
import gelfront.result.FieldProbe.Reading;
import gelfront.result.Fields;
import gelfront.result.StoredRun;
import gelfront.result.SyntheticRun;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page in a real browser, without a display, drawn by software. */
class LookInsideTest {
  private static final StoredRun RUN = SyntheticRun.small();

  /** Of the part's box: its axis of revolution, part coordinates, millimetres. */
  private static final double Y = -5;

  private static final double Z = 3;

  @TempDir static Path folder;
  private static Tool chromium;
  private static Browser browser;
  private static Gatekeeper gate;
  private static String page;

  @BeforeAll
  static void open() throws Exception {
    chromium = Tool.orSkip("chromium", "chromium-browser", "google-chrome", "chrome");
    page = HtmlReportTest.pageOf(RUN);
    gate = new Gatekeeper();
    browser = Browser.start(chromium, folder, "--proxy-server=127.0.0.1:" + gate.port());
  }

  @AfterAll
  static void close() throws Exception {
    if (gate != null) {
      browser.close();
      gate.close();
    }
  }

  private static String browse(String html, String fragment) throws Exception {
    return browser.dom(URI.create(file(html) + fragment));
  }

  private static URI file(String html) throws IOException {
    Path file = Files.createTempFile(folder, "page", ".html");
    Files.writeString(file, html);
    return file.toUri();
  }

  /** An attribute that the page set on itself. */
  private static String said(String dom, String key) {
    Matcher m = Pattern.compile("<html[^>]* data-" + key + "=\"([^\"]*)\"").matcher(dom);
    assertTrue(m.find(), () -> key + " in " + dom.substring(0, Math.min(300, dom.length())));
    return m.group(1);
  }

  private static double figure(String dom, String key) {
    return Double.parseDouble(said(dom, key));
  }

  private static boolean hidden(String dom, String id) {
    Matcher m = Pattern.compile("<[a-z]+ [^>]*id=\"" + id + "\"[^>]*>").matcher(dom);
    assertTrue(m.find(), id);
    return m.group().contains("hidden=");
  }

  @Test
  void drawsTheCutAndTheTimeAskedFor() throws Exception {
    String dom = browse(page, "#axis=x&cut=42.5&time=12");

    assertTrue(figure(dom, "frames") >= 1);
    assertEquals(0, figure(dom, "errors"));
    assertEquals("x", said(dom, "axis"));
    assertEquals(42.5, figure(dom, "cut"), 1e-9);
    assertEquals(12, figure(dom, "time"), 1e-9);
    assertFalse(hidden(dom, "inside-stage"));
    assertTrue(hidden(dom, "inside-note"));
    assertTrue(dom.contains("The gate closed after 6.9 s"), "says so in words");
  }

  /** Cut across, the middle of the picture is a place that the stored run knows. */
  private static Reading reading(double xMm) {
    return new FieldProbe(RUN.fields()).at(new Vec3(xMm, Y, Z).times(1e-3)).orElseThrow();
  }

  private static void assertColour(Scale scale, double value, String dom) {
    int want = ColourRamp.STANDARD.at(scale.share(value));
    String[] got = said(dom, "middle").split(" ", -1);
    for (int c = 0; c < 3; c++) {
      // Half floats and 8-bit weights of a texture unit: a few of 256 steps; linear there, a few
      // more.
      assertEquals((want >> (16 - 8 * c)) & 255, Integer.parseInt(got[c]), 10, "colour " + c);
    }
  }

  @Test
  void theCutFaceHasTheColourOfItsSetTime() throws Exception {
    String dom = browse(page, "#axis=x&cut=58&time=0&colour=set");

    assertColour(new Scene(RUN).timeScale(), reading(58).setTime(), dom);
  }

  @Test
  void theCutFaceHasTheColourOfItsTemperatureBetweenTwoMoments() throws Exception {
    Reading r = reading(58);
    assertEquals(36, r.times()[7]);
    assertEquals(48, r.times()[8]);

    String dom = browse(page, "#axis=x&cut=58&time=45&colour=heat");

    double want = 0.25 * r.temperatures()[7] + 0.75 * r.temperatures()[8];
    assertColour(new Scene(RUN).heatScale(), want, dom);
  }

  /**
   * The page with words added to its script, and the policy changed to allow just that. A browser
   * that runs ahead of the clock shows no frames, so they come by timer.
   */
  private static String withHands(String words) {
    String frames =
        "window.requestAnimationFrame = (f) => setTimeout(() => f(performance.now()), 400);";
    String script = PageParts.text("inside.js");
    String longer = frames + script + words;
    return page.replace(script, longer)
        .replace(Html.escape(PageParts.hash(script)), Html.escape(PageParts.hash(longer)));
  }

  @Test
  void slidersChoicesAndKeysDrawAnew() throws Exception {
    String hands =
        """
        setTimeout(() => {
          const get = (id) => document.getElementById("inside-" + id);
          const set = (id, value, kind) => { get(id).value = value; get(id).dispatchEvent(new Event(kind)); };
          set("axis", "z", "change");
          set("cut", 250, "input");
          set("time", 500, "input");
          setTimeout(() => get("canvas").dispatchEvent(new KeyboardEvent("keydown", { key: "ArrowLeft" })), 2000);
        }, 2000);
        """;

    String dom = browse(withHands(hands), "");

    double end = new Scene(RUN).timeScale().high();
    assertEquals(0, figure(dom, "errors"));
    assertEquals(3, figure(dom, "frames"), "at first, after the sliders, after the key");
    assertEquals("z", said(dom, "axis"));
    assertEquals(-6.5 + 0.25 * 19, figure(dom, "cut"), 0.1);
    assertEquals(end / 4, figure(dom, "time"), 0.01);
  }

  @Test
  void playRunsToTheEnd() throws Exception {
    String hands = "setTimeout(() => document.getElementById('inside-play').click(), 500);";

    String dom = browse(withHands(hands), "#time=0");

    assertEquals(0, figure(dom, "errors"));
    assertTrue(figure(dom, "frames") > 15, said(dom, "frames"));
    assertEquals(new Scene(RUN).timeScale().high(), figure(dom, "time"), 0.01);
  }

  @Test
  void aRunWithoutMomentsShowsItsSetTimes() throws Exception {
    Fields noHeat = Changed.of(RUN.fields(), "snapshots", List.of());
    StoredRun bare = Changed.of(RUN, "fields", noHeat);
    String dom = browse(HtmlReportTest.pageOf(bare), "#colour=heat");

    assertEquals(1, figure(dom, "frames"));
    assertEquals(0, figure(dom, "errors"));
    assertEquals("set", said(dom, "colour"));
  }

  @Test
  void withoutWebGlThePicturesRemain() throws Exception {
    String dom;
    try (Browser flat = Browser.start(chromium, folder, "--disable-3d-apis")) {
      dom = flat.dom(file(page));
    }

    assertEquals(0, figure(dom, "frames"));
    assertEquals(0, figure(dom, "errors"));
    assertTrue(hidden(dom, "inside-stage"));
    assertFalse(hidden(dom, "inside-note"));
  }

  @Test
  void withoutScriptThePicturesRemain() throws Exception {
    String hash = Html.escape(PageParts.hash(PageParts.text("inside.js")));

    String dom = browse(page.replace(hash, "&#39;none&#39;"), "");

    assertFalse(dom.contains("data-frames"), "no script ran");
    assertTrue(hidden(dom, "inside-stage"));
    assertFalse(hidden(dom, "inside-note"));
  }

  @Test
  void printsOnAFewPages() throws Exception {
    Tool pdfinfo = Tool.orSkip("pdfinfo");
    Path pdf = folder.resolve("page.pdf");

    Files.write(pdf, browser.pdf(file(page)));
    String info = pdfinfo.run(folder, List.of(pdf.toString()));

    Matcher m = Pattern.compile("Pages:\\s+(\\d+)").matcher(info);
    assertTrue(m.find(), info);
    int pages = Integer.parseInt(m.group(1));
    assertTrue(pages >= 1 && pages <= 8, "pages: " + pages);
  }

  private static List<String> callsOutside(String html) throws Exception {
    gate.forget();
    browse(html, "");
    return gate.calls();
  }

  @Test
  void loadsNothingFromOutside() throws Exception {
    String evil = page.replace("<main>", "<main><img src=\"http://example.invalid/x.png\">");
    String unguarded = evil.replace("http-equiv", "data-was");

    assertEquals(List.of(), callsOutside(page));
    assertEquals(List.of(), callsOutside(evil), "the policy holds");
    assertTrue(callsOutside(unguarded).toString().contains("example.invalid"), "the probe works");
  }
}
