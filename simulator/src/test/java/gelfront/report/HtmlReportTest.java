// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Caution;
import gelfront.base.Changed;
import gelfront.finding.Findings;
import gelfront.finding.Opening;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import gelfront.result.Provenance;
import gelfront.result.StoredRun;
import gelfront.result.SyntheticRun;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class HtmlReportTest {
  private static final StoredRun RUN = SyntheticRun.small();
  private static String page;

  @BeforeAll
  static void write() throws IOException {
    page = pageOf(RUN);
  }

  static String pageOf(StoredRun run) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new HtmlReport().write(run, out);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static int count(String regex, String in) {
    return (int) Pattern.compile(regex).matcher(in).results().count();
  }

  @Test
  void sameRunSameBytes() throws IOException {
    assertEquals(page, pageOf(RUN));
  }

  @Test
  void saysNothingOfWhenAndWhereItWasMade() throws IOException {
    Provenance later = new Provenance(RUN.provenance().version(), "2031-02-03", "elsewhere", 7);

    assertEquals(page, pageOf(Changed.of(RUN, "provenance", later)));
  }

  @Test
  void aPocketWithoutDentsHasARowToo() throws IOException {
    Findings f = RUN.findings();
    Pocket first = SyntheticRun.withoutDents(f.pockets().get(0));

    String flat = pageOf(SyntheticRun.withPockets(RUN, List.of(first, f.pockets().get(1))));

    assertTrue(flat.contains(Html.escape(first.sentence())));
    assertTrue(flat.contains("<td class=\"n\">none</td>"));
  }

  @Test
  void loadsNothingFromOutside() {
    assertEquals(0, count("(?i)https?:|url\\(|@import|<(iframe|object|embed|link|base)\\b", page));
    assertEquals(0, count("(?:src|href)=\"(?!data:image/png;base64,)", page));
    assertTrue(page.contains("default-src &#39;none&#39;"), "a policy that blocks all else");
    assertEquals(0, count("\\s(?:style|on[a-z]+)=\"", page));
  }

  @Test
  void policyNamesTheStyleThatIsThere() throws Exception {
    Matcher m = Pattern.compile("(?s)<style>(.*?)</style>").matcher(page);
    assertTrue(m.find());
    byte[] hash =
        MessageDigest.getInstance("SHA-256").digest(m.group(1).getBytes(StandardCharsets.UTF_8));

    assertTrue(
        page.contains("sha256-" + Html.escape(Base64.getEncoder().encodeToString(hash))),
        "the hash in the policy");
    assertFalse(m.find(), "one style only");
  }

  @Test
  void policyNamesTheScriptThatIsThere() {
    Matcher m = Pattern.compile("(?s)<script>(.*?)</script>").matcher(page);
    assertTrue(m.find());
    assertTrue(page.contains("script-src " + Html.escape(PageParts.hash(m.group(1)))));
    assertFalse(m.find(), "one script only");
    assertEquals(1, count("<script type=\"application/json\"", page), "and one block of numbers");
  }

  @Test
  void idsAreUniqueAndFieldsHaveLabels() {
    List<String> ids =
        Pattern.compile(" id=\"([^\"]+)\"").matcher(page).results().map(r -> r.group(1)).toList();

    assertEquals(Set.copyOf(ids).size(), ids.size(), ids.toString());
    assertEquals(count("<(?:input|select) ", page), count("<label[ >]", page));
  }

  @Test
  void saysWhatMatters() {
    Findings f = RUN.findings();
    assertTrue(page.contains("<h1>" + Html.escape(f.verdict()) + "</h1>"));
    f.advice().forEach(a -> assertTrue(page.contains(Html.escape(a))));
    f.pockets().forEach(p -> assertTrue(page.contains(Html.escape(p.sentence()))));
    RUN.cautions().forEach(c -> assertTrue(page.contains(Html.escape(c.metric()))));
    Cautions.ALL.forEach(c -> assertTrue(page.contains(Html.escape(c))));
    RUN.health().lines().forEach(l -> assertTrue(page.contains(Html.escape(l.result()))));
  }

  @Test
  void anOvalHasItsOwnFigureAndWordsApartFromTheDents() throws IOException {
    Opening early =
        new Opening(
            6, Severity.WILL_DENT, 2e-6, 6.4e-4, 5e-4, Vec3.ZERO, 11, "It goes oval.", "Flat.");

    String open = pageOf(SyntheticRun.opened(RUN, early));

    assertTrue(open.contains("<b>0.64 mm</b><span>oval, opened after 6.0 s</span>"));
    assertTrue(open.contains("It goes oval.") && open.contains("Flat."));
    assertFalse(page.contains("oval, opened"), "opened when firm");
  }

  @Test
  void picturesAndTablesCanBeReadAloud() {
    assertEquals(count("<svg ", page), count("<svg [^>]*aria-(?:label|hidden)=\"[^\"]+\"", page));
    assertEquals(count("<th[ >]", page), count("<th [^>]*scope=\"(?:row|col)\"", page));
    assertTrue(page.contains("<html lang=\"en\">"));
  }

  @Test
  void hostileNamesStayText() throws IOException {
    String evil = "</title><script>alert(1)</script>\"><img src=x onerror=y>'&\u202Egnp.\u0007";

    String hurt = pageOf(Changed.of(RUN, "name", evil, "cautions", List.of(Caution.of(evil))));

    assertEquals(count("<script|<img", page), count("<script|<img", hurt), "its own two alone");
    assertEquals(0, count("[\u202E\u0007]", hurt));
    assertTrue(hurt.contains("&lt;script&gt;alert(1)"));
  }

  @Test
  void aCleanPartHasAPageToo() throws IOException {
    double never = Double.POSITIVE_INFINITY;
    Findings clean =
        Changed.of(
            RUN.findings(),
            "severity",
            Severity.CLEAN,
            "verdict",
            "No dents.",
            "explanation",
            "",
            "advice",
            List.of(),
            "pockets",
            List.of(),
            "gateSets",
            never,
            "sprueSets",
            never,
            "firmAt",
            never);

    String good = pageOf(Changed.of(RUN, "findings", clean));

    assertTrue(good.contains("<h1>No dents.</h1>"));
    assertTrue(good.contains("comes out clean"));
    assertFalse(good.contains("Infinity"), "never is said in words");
  }
}
