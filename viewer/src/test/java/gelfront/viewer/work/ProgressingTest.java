// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ProgressingTest {
  @Test
  void theTimeLeftFollowsFromWhatHasPassed() {
    assertEquals("", Progressing.left(0.1, 0.5));
    assertEquals("", Progressing.left(10, 0.01));
    assertEquals(", about 10 s left", Progressing.left(10, 0.5));
    assertEquals(", about 4 min left", Progressing.left(120, 1 / 3.0));
    assertEquals(", nearly done", Progressing.left(10, 0.9));
  }

  @Test
  void itNeverGoesBackAndCoolingIsMostOfIt() {
    Progressing p = new Progressing(() -> {});
    p.at("reading the mesh", 1);
    double before = p.share();
    p.at("cooling", 0.5);
    double half = p.share();
    p.at("judging", 0.1);

    assertTrue(before < 0.1 && half > 0.4 && half < 0.6, before + " " + half);
    assertEquals(half, p.share());
  }

  @Test
  void oneThatIsStoppedSaysSoAtTheNextQuestion() {
    Progressing p = new Progressing(() -> {});
    assertTrue(p.at("cooling", 0.1));

    p.stop();

    assertFalse(p.at("cooling", 0.2));
    assertFalse(p.plain().at("remedies", 0.2));
  }
}
