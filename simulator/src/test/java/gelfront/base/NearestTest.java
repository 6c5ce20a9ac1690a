// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class NearestTest {
  private static final List<String> KNOWN =
      List.of("at", "direction", "shape", "size", "height", "land", "hold_time", "box_min");

  @ParameterizedTest
  @CsvSource({
    "hieght,height",
    "heigth,height",
    "Size,size",
    "SHAPE,shape",
    "holdtime,hold_time",
    "hold-time,hold_time",
    "dir,direction",
    "box,box_min",
    "lnd,land",
    "a,at",
    "at,at"
  })
  void findsWhatWasMeant(String written, String meant) {
    assertEquals(meant, Nearest.to(written, KNOWN).orElse("nothing"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "viscosity", "colour", "xyz", "\u0000", "temperature"})
  void staysSilentWhereNothingIsNear(String written) {
    assertEquals("", Nearest.question(written, KNOWN));
  }

  @Test
  void asksInWords() {
    assertEquals("; did you mean \"land\"?", Nearest.question("lant", KNOWN));
    assertEquals("", Nearest.question("land", List.of()));
  }
}
