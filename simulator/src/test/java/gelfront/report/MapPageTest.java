// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.DentMap;
import gelfront.answer.Ran;
import gelfront.answer.SomeRun;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A map in words. */
final class MapPageTest {
  private static final Ran CLEAN = Ran.well(SomeRun.dent(0.05, 0.1));
  private static final Ran DENTED = Ran.well(SomeRun.dent(0.3, 0.5));
  private static final Ran FAILED = Ran.failed("no gate");

  private static DentMap map(Ran... four) {
    DentMap.Axis gate =
        new DentMap.Axis("gate size", "mm", List.of(2.0, 4.0), OptionalDouble.of(2));
    DentMap.Axis hot =
        new DentMap.Axis("expansion hot", "1/K", List.of(6.5e-4, 7e-4), OptionalDouble.empty());
    List<List<Ran>> rows = List.of(List.of(four[0], four[1]), List.of(four[2], four[3]));
    return new DentMap("Bean", "quick", 0.2e-3, gate, hot, rows, DENTED);
  }

  @Test
  void oneRunIsSaidAsOne() {
    String one = MapPage.summary(map(CLEAN, DENTED, DENTED, FAILED));
    assertTrue(one.startsWith("1 of 4 runs is free of a dent that may be seen."), one);
    assertTrue(one.contains(" 1 run gave no result."), one);
    String two = MapPage.summary(map(CLEAN, CLEAN, FAILED, FAILED));
    assertTrue(two.startsWith("2 of 4 runs are free"), two);
    assertTrue(two.contains(" 2 runs gave no result."), two);
  }

  @Test
  void whereNoPairGivesAResultTheReasonIsSaid() {
    String why = "No pair of these values gives a result: no gate. As it is";

    String said = MapPage.summary(map(FAILED, FAILED, FAILED, FAILED));

    assertEquals(why, said.substring(0, why.length()));
  }

  @Test
  void smallValuesKeepTheirDigits() {
    String page = MapPage.of(map(CLEAN, CLEAN, DENTED, DENTED));
    assertTrue(page.contains(">0.00065<") && page.contains(">0.0007<"), page);
  }
}
