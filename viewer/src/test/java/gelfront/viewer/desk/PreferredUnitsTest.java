// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.Ran;
import gelfront.answer.SeriesAnswer;
import gelfront.answer.ShotRow;
import gelfront.answer.Sizing;
import gelfront.base.Units;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import gelfront.mesh.example.Examples;
import gelfront.setup.Change;
import gelfront.viewer.work.Backgrounds;
import gelfront.viewer.work.Help;
import gelfront.viewer.work.Session;
import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The shipped example, checked, in panes that no window holds. This test's thread is theirs. */
@Timeout(300)
final class PreferredUnitsTest {
  private static final Units SHOP = new Units(true, true);
  private static final Pattern METRIC = Pattern.compile("\\d[)]?[\\s\u00a0](mm|K|°C)(?!\\w)");
  private static final LinkedBlockingQueue<Runnable> EVENTS = new LinkedBlockingQueue<>();

  @TempDir static Path folder;

  private static Backgrounds threads;
  private static Session session;

  @BeforeAll
  static void check() throws IOException, InterruptedException {
    threads = new Backgrounds(1);
    session = new Session(threads, EVENTS::add);
    for (String file : List.of("two-bulbs-neck.stl", "two-bulbs-neck.toml")) {
      try (InputStream in = Examples.class.getResourceAsStream("/gelfront/examples/" + file)) {
        Files.write(folder.resolve(file), in.readAllBytes());
      }
    }
    session.open(folder.resolve("two-bulbs-neck.toml"));
    until(() -> session.project().isPresent());
    session.change(
        List.of(
            Change.word("numerics.level", "quick"),
            new Change.Set("fill.on", "true"),
            Change.degC("shot.temperature", 195),
            Change.seconds("shot.open_at", 15)));
    session.check();
    until(() -> session.result().isPresent());
    session.change(List.of(Change.mm("gate.size", 3.5e-3)));
    until(() -> session.verdict().findings().isPresent());
  }

  @AfterAll
  static void end() {
    threads.close();
  }

  private static void until(BooleanSupplier there) throws InterruptedException {
    while (!there.getAsBoolean()) {
      Runnable next = EVENTS.poll(120, TimeUnit.SECONDS);
      assertTrue(next != null, "waited in vain: " + session.message());
      next.run();
    }
  }

  /** All that can be read in it, tips of the mouse included. */
  private static List<String> texts(Component c) {
    List<String> all = new ArrayList<>();
    if (c instanceof JTextComponent t) {
      all.add(t.getText());
    } else if (c instanceof JLabel l) {
      all.add(String.valueOf(l.getText()));
    } else if (c instanceof AbstractButton b) {
      all.add(b.getText());
    }
    if (c instanceof JComponent j && j.getToolTipText() != null) {
      all.add(j.getToolTipText());
    }
    if (c instanceof Container parent) {
      for (Component child : parent.getComponents()) {
        all.addAll(texts(child));
      }
    }
    return all;
  }

  private static List<String> facts(Units units) {
    FindingsPane pane = new FindingsPane(session, () -> units, p -> {}, a -> {});
    pane.follow();
    return texts(pane);
  }

  /** Sizes of a gate where one does, and how near they come where none does. */
  private static Sizing sizes(int chosen) {
    Ran none = Ran.failed("too narrow");
    Vec3 x = new Vec3(1, 0, 0);
    Sizing.Place place =
        new Sizing.Place(
            "thickest place",
            Vec3.ZERO,
            x,
            8e-3,
            List.of(new Sizing.Point(3e-3, 8e-3, "quick", none)),
            chosen < 0
                ? List.of()
                : List.of(
                    new Sizing.Choice(
                        "as calculated", 3e-3, u -> u.plain(3e-3), 8e-3, none, List.of())),
            u -> "A gate of " + u.plain(3e-3) + " does.",
            Optional.empty());
    return new Sizing("a", 2e-4, List.of(place), chosen, u -> "Up to " + u.plain(4e-3), 1);
  }

  private static SeriesAnswer row() {
    ShotRow shot = new ShotRow(1, 23, 30, Severity.WILL_DENT, 0.3e-3, 0.5e-3, 4, 100, 100, 160);
    return new SeriesAnswer(
        "a",
        "quick",
        2e-4,
        60,
        20,
        OptionalDouble.empty(),
        List.of(shot),
        Optional.of(shot.numbered(0)),
        Optional.empty(),
        0);
  }

  private static List<String> helped(Help answer, Units units) throws InterruptedException {
    session.ask((l, p, t, pr) -> answer);
    until(() -> session.checking().isEmpty() && session.help().filter(answer::equals).isPresent());
    HelpPane pane = new HelpPane(session, () -> units);
    pane.follow();
    return texts(pane);
  }

  @Test
  void soAreAnswersToWhatHelps() throws InterruptedException {
    List<Help> answers =
        List.of(
            new Help.OfSizes(sizes(0), List.of()),
            new Help.OfSizes(sizes(-1), List.of()),
            new Help.OfShots(row()));
    for (Help h : answers) {
      List<String> told = helped(h, SHOP);
      assertTrue(told.stream().noneMatch(PreferredUnitsTest::metric), "" + told);
      assertTrue(helped(h, Units.METRIC).stream().anyMatch(PreferredUnitsTest::metric), "" + h);
    }
    String strip = new ShotsPane(row(), SHOP).says(row().shots().get(0));
    assertEquals("mould 73 °F, dent up to 0.020 in", strip);
  }

  private static boolean metric(String text) {
    return METRIC.matcher(text).find();
  }

  @Test
  void theFactsOfTheExampleAreInInchesAndFahrenheitForWhoeverWantsThem() {
    List<String> told = facts(SHOP);

    for (String t : told) {
      assertFalse(metric(t), t);
    }
    assertTrue(told.stream().anyMatch(t -> t.contains("°F in the mean at cut-off")), "" + told);
    assertTrue(told.stream().anyMatch(t -> t.contains("hotter than 374")), "" + told);
    assertTrue(
        told.stream().filter(t -> t.matches("(?s).*\\d\u00a0in\\b.*")).count() > 5, "" + told);
    assertTrue(facts(Units.METRIC).stream().filter(PreferredUnitsTest::metric).count() > 5);
  }
}
