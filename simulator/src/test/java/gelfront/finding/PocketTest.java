// SPDX-License-Identifier: Apache-2.0
package gelfront.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import gelfront.mesh.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PocketTest {
  private static final Constriction GATE =
      new Constriction(Constriction.Kind.GATE, Vec3.ZERO, 3e-3, 10);

  private static Pocket openUntil(double s) {
    return new Pocket(
        1,
        List.of(),
        Severity.WILL_DENT,
        Vec3.ZERO,
        1e-6,
        10,
        30,
        140,
        GATE,
        1e-8,
        2e-8,
        List.of(),
        List.of(),
        s,
        1e-8,
        Sunk.UNKNOWN,
        "it dents",
        "it sinks");
  }

  @Test
  void itsMarginIsFromCutOffUntilNoDentIsSeen() {
    assertEquals(4, openUntil(14).margin());
    assertEquals(0, openUntil(10).margin());
    assertEquals(0, openUntil(6).margin(), "less than nothing is not asked for");
  }

  @Test
  void otherWordsChangeNothingElse() {
    Pocket was = openUntil(14);

    Pocket told = was.told("the gate sets too early", "the sprue stays level");

    assertNotEquals(was, told);
    assertEquals("the gate sets too early", told.sentence());
    assertEquals("the sprue stays level", told.sign());
    assertEquals(was, told.told(was.sentence(), was.sign()));
  }

  @Test
  void trappedAirGoesByLetters() {
    assertEquals("A", air(1));
    assertEquals("Z", air(26));
    assertNotEquals(air(1), air(27));
  }

  private static String air(int number) {
    return new Filled.TrappedAir(number, Vec3.ZERO, 1, 1, 1, 1, Vec3.ZERO, 0, 1, "").letter();
  }
}
