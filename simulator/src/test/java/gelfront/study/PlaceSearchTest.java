// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.Ran;
import gelfront.answer.SomeRun;
import gelfront.finding.Constriction;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import java.nio.file.Path;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What a search asks for where both a dent and an oval can be seen; nothing is calculated. */
final class PlaceSearchTest {
  private static final LoadedCase BEAN =
      CaseFile.parse("bean.toml", StudyCases.BEAN, Path.of("").toAbsolutePath());

  /** Dent and oval, mm, over the gate, mm; shut until 14 s no oval is seen. */
  private static PlaceSearch searched(DoubleUnaryOperator dent, DoubleUnaryOperator oval) {
    PlaceSearch.Sizes sizes = new PlaceSearch.Sizes(1e-3, 3e-3, 8e-3);
    PlaceSearch search = new PlaceSearch(BEAN, false, sizes, 10e-3, 12);
    List<Double> next = search.next(2);
    for (; !next.isEmpty(); next = search.next(2)) {
      for (double gate : next) {
        double mm = gate * 1e3;
        search.know(
            gate,
            Ran.well(
                SomeRun.opened(
                    SomeRun.dent(dent.applyAsDouble(mm), Constriction.Kind.GATE),
                    oval.applyAsDouble(mm),
                    14)));
      }
    }
    return search;
  }

  /** Where a neck makes a wider gate no better, level normal needn't be asked about that one. */
  @Test
  void ofGatesThatANeckLimitsTheThinnestIsCloseEnough() {
    assertEquals(List.of(5e-3), close(Constriction.Kind.NECK, 0.22, 0.218));
    assertEquals(List.of(5e-3, 8e-3), close(Constriction.Kind.NECK, 0.228, 0.21));
    assertEquals(List.of(5e-3, 8e-3), close(Constriction.Kind.GATE, 0.22, 0.218));
  }

  private static List<Double> close(Constriction.Kind blamed, double atFive, double atEight) {
    PlaceSearch search =
        new PlaceSearch(BEAN, false, new PlaceSearch.Sizes(1e-3, 3e-3, 8e-3), 10e-3, 12);
    search.know(5e-3, Ran.well(SomeRun.dent(atFive, blamed)));
    search.know(8e-3, Ran.well(SomeRun.dent(atEight, blamed)));
    return search.close();
  }

  @Test
  void aGateThatLeavesNoDentButAnOvalIsNoAnswer() {
    PlaceSearch search = searched(g -> 0.05, g -> 0.3);

    assertTrue(Double.isNaN(search.does()), "does at " + search.does());
    assertEquals(14, search.openedTooEarly().orElseThrow().shutUntil());
    assertEquals(3, search.points().size(), "the present gate, a wider one, the widest: enough");
  }

  /** A dent is seen below 4.2 mm, an oval above 4.7 mm: between them a gate does. */
  @Test
  void betweenADentAndAnOvalTheGateIsFoundThatLeavesNeither() {
    PlaceSearch search = searched(g -> 0.2 + 0.05 * (4.2 - g), g -> 0.2 + 0.05 * (g - 4.7));

    assertEquals(4.3, search.does() * 1e3, 0.251, "the smallest, to the tolerance of a cutter");
    assertTrue(search.does() > 4.2e-3 && search.does() < 4.7e-3, "does at " + search.does());
    assertTrue(search.openedTooEarly().isEmpty());
  }

  /** A dent is seen below 5 mm, an oval above 4 mm: none does, and the search ends. */
  @Test
  void whereTheyOverlapTheOpeningIsToBlame() {
    PlaceSearch search = searched(g -> 0.2 + 0.05 * (5 - g), g -> 0.2 + 0.05 * (g - 4));

    assertTrue(Double.isNaN(search.does()));
    assertTrue(search.openedTooEarly().isPresent());
  }

  @Test
  void anOvalThatIsNotSeenChangesNothing() {
    PlaceSearch with = searched(g -> 0.2 + 0.05 * (3.4 - g), g -> 0.1);
    PlaceSearch without = searched(g -> 0.2 + 0.05 * (3.4 - g), g -> 0);

    assertEquals(without.does(), with.does());
    assertEquals(without.points().size(), with.points().size());
    assertTrue(with.openedTooEarly().isEmpty());
  }
}
