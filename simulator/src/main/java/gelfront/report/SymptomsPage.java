// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.answer.Diagnosis;
import gelfront.answer.Fault;
import gelfront.answer.Symptom;
import gelfront.answer.SymptomTable;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What symptoms mean, as a page and as JSON. */
public final class SymptomsPage {
  private SymptomsPage() {}

  /**
   * The page; loads nothing.
   *
   * @param bearing findings that bear on it; empty without a result
   */
  public static String of(Diagnosis d, List<String> bearing) {
    return AnswerPage.of("Is it a dent at all?", h -> content(h, d, bearing));
  }

  private static void content(Html h, Diagnosis d, List<String> bearing) {
    h.open("p").element("b", d.verdict()).close();
    list(h, "What was seen", seen(d));
    list(
        h,
        "What speaks for " + d.fault().words(),
        d.pro().stream().map(SymptomsPage::told).toList());
    list(
        h,
        "What speaks against " + d.fault().words(),
        d.contra().stream().map(SymptomsPage::told).toList());
    list(h, "Look again", d.clashes());
    if (d.certainty() != Diagnosis.Certainty.OPEN) {
      list(h, "What to try, first things first", d.steps());
    }
    list(h, "What the result says to it", bearing);
    h.open("section").element("h2", "How far to trust this");
    h.element(
        "p", "All rules behind this page: " + SymptomTable.SOURCE + "; the weights are ours.");
    h.close();
    Cautions.section(h);
  }

  private static void list(Html h, String title, List<String> lines) {
    if (!lines.isEmpty()) {
      h.open("section").element("h2", title).open("ul");
      lines.forEach(l -> h.element("li", l));
      h.close().close();
    }
  }

  /** What was seen, in the aspects' order. */
  public static List<String> seen(Diagnosis d) {
    return Arrays.stream(Symptom.values()).filter(d.seen()::contains).map(Symptom::words).toList();
  }

  /** A rule in words. */
  public static String told(SymptomTable.Rule r) {
    return r.seen().words() + ": " + r.because();
  }

  /** {@code gelfront symptoms 1}. */
  public static String json(Diagnosis d, List<String> bearing) {
    ObjectNode n = Answers.open("gelfront symptoms 1");
    n.put("verdict", d.verdict());
    n.put("fault", lower(d.fault()));
    n.put("certainty", lower(d.certainty()));
    n.put("source", SymptomTable.SOURCE);
    ObjectNode scores = n.putObject("scores");
    for (Fault f : Fault.values()) {
      scores.put(lower(f), d.scores().get(f));
    }
    texts(n.putArray("seen"), seen(d));
    texts(n.putArray("for"), d.pro().stream().map(SymptomsPage::told).toList());
    texts(n.putArray("against"), d.contra().stream().map(SymptomsPage::told).toList());
    texts(n.putArray("look_again"), d.clashes());
    texts(n.putArray("try"), d.steps());
    texts(n.putArray("result"), bearing);
    texts(n.putArray("cautions"), Cautions.ALL);
    return Answers.text(n);
  }

  private static String lower(Enum<?> e) {
    return e.name().toLowerCase(Locale.ROOT);
  }

  private static void texts(ArrayNode to, List<String> texts) {
    texts.forEach(to::add);
  }
}
