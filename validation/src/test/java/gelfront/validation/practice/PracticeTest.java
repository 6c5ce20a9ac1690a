// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.evidence.Check;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Common practice, no source: practices.json says what is claimed, practice.json holds the figures
 * of the last run, practice.md what they say. {@code -Dslow=true} computes all of it again, some
 * ten minutes. After a change that moves figures run {@link PracticeRun}, then this; the table that
 * belongs to the stored figures is at {@code target/practice.md}.
 */
final class PracticeTest {
  /** Of a figure, between machines and roundings. */
  private static final double SHARE = 0.02;

  private final Book book = new Book();
  private final Figured stored = new Figured();

  @Test
  void theTableSaysWhatTheFiguresSay() throws IOException {
    Files.write(Path.of("target", "practice.md"), stored.table());
    try (InputStream in = Book.class.getResourceAsStream("/gelfront/validation/practice.md")) {
      String want = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(want.lines().toList(), stored.table());
    }
  }

  /** In how many of the designs and conditions practice is borne out: told, not asked for. */
  @Test
  void eachClaimIsTold() {
    for (Practice p : book.practices()) {
      for (Claim claim : p.claims()) {
        for (Measure by : p.measures()) {
          told(p, claim, by);
        }
      }
    }
  }

  private void told(Practice p, Claim claim, Measure by) {
    int[] n = new int[Claim.Outcome.values().length];
    for (String design : book.designs()) {
      for (String condition : book.conditions(p)) {
        n[claim.outcome(stored.found(p, design, condition), by).ordinal()]++;
      }
    }
    int all = Arrays.stream(n).sum();
    String found = n[0] + " agree, " + n[1] + " indifferent, " + n[2] + " against";
    String name = p.says() + ": " + claim.words() + ", by " + by.name().toLowerCase(Locale.ROOT);
    Check.of(name, "common practice, no source")
        .stored("practice.json", "`PracticeRun`")
        .told("all " + all + " agree", found, verdict(n));
  }

  private static String verdict(int[] agreeIndifferentAgainst) {
    int[] n = agreeIndifferentAgainst;
    String no = n[2] == 0 && n[0] > 0 ? "agrees in part" : "differs";
    return n[1] + n[2] == 0 ? "agrees" : no;
  }

  /**
   * One of them anew on every build: a cooler shot, at the no-flow temperature that sets soonest.
   */
  @Test
  void aCoolerShotComesOutAsRecorded() {
    Practice cooler =
        book.practices().stream().filter(p -> p.says().contains("cooled")).findFirst().get();
    holds(cooler, book.designs().get(0), "no-flow 150 °C", new HashMap<>());
  }

  @Test
  @EnabledIfSystemProperty(named = "slow", matches = "true")
  void everyPracticeComesOutAsRecorded() {
    Map<String, Figures> known = new HashMap<>();
    for (Practice p : book.practices()) {
      for (String design : book.designs()) {
        book.conditions(p).forEach(condition -> holds(p, design, condition, known));
      }
    }
  }

  private void holds(Practice p, String design, String condition, Map<String, Figures> known) {
    Map<String, Figures> now = PracticeRun.found(book.cases(p, design, condition), known);
    Map<String, Figures> then = stored.found(p, design, condition);
    String where = p.says() + ": " + design + ", " + condition;
    assertEquals(then.keySet(), now.keySet(), where);
    now.forEach((name, f) -> same(then.get(name), f, where + ", " + name));
    for (Claim claim : p.claims()) {
      for (Measure by : p.measures()) {
        assertEquals(claim.outcome(then, by), claim.outcome(now, by), where + ", " + claim.words());
      }
    }
  }

  private static void same(Figures then, Figures now, String where) {
    assertEquals(then.cause(), now.cause(), where);
    assertEquals(then.unfedPercent(), now.unfedPercent(), SHARE * then.unfedPercent(), where);
    assertEquals(then.dentMm(), now.dentMm(), 0.01 + SHARE * then.dentMm(), where);
  }

  private static Map<String, Figures> dents(double a, double b, double c) {
    return Map.of("a", dent(a), "b", dent(b), "c", dent(c));
  }

  private static Figures dent(double mm) {
    return new Figures(1, mm, mm, "gate", 5, 0);
  }

  @Test
  void claimsAreJudgedByWhatCounts() {
    Claim less = new Claim("less", List.of("a", "b"));
    assertEquals(Claim.Outcome.AGREES, less.outcome(dents(0.5, 0.6, 0), Measure.DENT));
    assertEquals(Claim.Outcome.INDIFFERENT, less.outcome(dents(0.58, 0.6, 0), Measure.DENT));
    assertEquals(Claim.Outcome.INDIFFERENT, less.outcome(dents(0.03, 0.045, 0), Measure.DENT));
    assertEquals(Claim.Outcome.DISAGREES, less.outcome(dents(0.7, 0.6, 0), Measure.DENT));
    Claim close = new Claim("close", List.of("a", "b"));
    assertEquals(Claim.Outcome.AGREES, close.outcome(dents(0.55, 0.6, 0), Measure.DENT));
    assertEquals(Claim.Outcome.DISAGREES, close.outcome(dents(0.5, 0.6, 0), Measure.DENT));
    Claim most = new Claim("most", List.of("a", "b", "c"));
    assertEquals(Claim.Outcome.AGREES, most.outcome(dents(1, 0.6, 0.5), Measure.DENT));
    assertEquals(Claim.Outcome.DISAGREES, most.outcome(dents(1, 0.9, 0.5), Measure.DENT));
  }
}
