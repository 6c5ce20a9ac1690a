// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Units;
import gelfront.mesh.example.Examples;
import gelfront.setup.Change;
import gelfront.viewer.work.Backgrounds;
import gelfront.viewer.work.Session;
import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
    assertTrue(
        told.stream().filter(t -> t.matches("(?s).*\\d\u00a0in\\b.*")).count() > 5, "" + told);
    assertTrue(facts(Units.METRIC).stream().filter(PreferredUnitsTest::metric).count() > 5);
  }
}
