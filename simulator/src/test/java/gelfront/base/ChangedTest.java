// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What tests change in a record, and nothing else, is changed. */
final class ChangedTest {
  private record Shot(String name, double seconds, List<Integer> cavities) {}

  private static final Shot SHOT = new Shot("first", 3, List.of(1, 2));

  @Test
  void onlyWhatIsNamedIsChanged() {
    assertEquals(
        new Shot("second", 3, List.of()),
        Changed.of(SHOT, "name", "second", "cavities", List.of()));
    assertEquals(SHOT, Changed.of(SHOT));
  }

  @Test
  void whatTheRecordLacksOrCantTakeIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Changed.of(SHOT, "minutes", 3.0));
    assertThrows(IllegalArgumentException.class, () -> Changed.of(SHOT, "seconds", "three"));
  }
}
