// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a study may propose, as it is stated. */
final class LimitsReaderTest {
  private static final String PLACE =
      "[[limits.gate_place]]\nat = [\"1 mm\", \"2 mm\", \"3 mm\"]\ndirection = [0, -2, 0]\n";

  private static void told(String text, String words) {
    String found = Cases.words(Cases.mistakes(text));
    assertTrue(found.contains(words), () -> words + "\nis not in\n" + found);
  }

  @Test
  void limitsAreThoseStated() {
    String text =
        Cases.with(
            "limits", "gate_least = \"2 mm\"", "gate_widest = \"4 mm\"", "sprue_widest = \"1 cm\"");
    Limits l = Cases.read(text + PLACE).limits();

    assertEquals(2e-3, l.gateLeast().getAsDouble(), 1e-12);
    assertEquals(4e-3, l.gateWidest().getAsDouble(), 1e-12);
    assertEquals(10e-3, l.sprueWidest().getAsDouble(), 1e-12);
    assertEquals(
        List.of(new Limits.GatePlace(new Vec3(1e-3, 2e-3, 3e-3), new Vec3(0, -1, 0))),
        l.gatePlaces());
    assertEquals(Limits.NONE, Cases.read(Cases.SOUND).limits());
  }

  @Test
  void limitsThatLeaveNoGateAreTold() {
    String words = "the widest gate (2.0 mm) must be wider than the thinnest (2.0 mm): no gate";

    told(Cases.with("limits", "gate_least = \"2 mm\"", "gate_widest = \"2 mm\""), words);
    told(
        Cases.with("limits", "gate_least = \"6 mm\"", "sprue_widest = \"6 mm\""),
        "the widest sprue (6.0 mm) must be wider than the thinnest gate (6.0 mm): no gate");
    told(Cases.SOUND + PLACE.replaceAll("direction.*\n", ""), "[[limits.gate_place]] needs at = ");
    told(Cases.SOUND + PLACE.replaceAll("at = .*\n", ""), "[[limits.gate_place]] needs at = ");
  }
}
