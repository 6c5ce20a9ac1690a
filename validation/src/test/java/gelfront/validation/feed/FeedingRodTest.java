// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.evidence.Check;
import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;

/** The rod against feeding-rod.json: axisymmetric Stokes flow and heat. */
final class FeedingRodTest {
  private static final String STOKES = "axisymmetric Stokes flow and heat, feeding-rod.json";
  private static final double BALANCE = 1e-4;

  static JsonNode reference(double gate, double sprue, boolean heat) throws IOException {
    try (InputStream in =
        FeedingRodTest.class.getResourceAsStream("/gelfront/validation/feeding-rod.json")) {
      for (JsonNode c : new ObjectMapper().readTree(in).get("cases")) {
        if (c.get("gate_mm").asDouble() == gate
            && c.get("sprue_mm").asDouble() == sprue
            && c.get("heat_carried").asBoolean() == heat) {
          return c.get("reference");
        }
      }
    }
    throw new IllegalStateException("no such case");
  }

  private static void holds(double gate, boolean heat, double dxMm) throws IOException {
    Rod rod = new Rod(gate * 1e-3, 10e-3, dxMm * 1e-3, heat);
    rod.run((state, from) -> {});
    JsonNode want = reference(gate, 10, heat);
    double unfed = want.get("unfed_percent").get("value").asDouble();
    String what = "rod fed through " + gate + " mm" + (heat ? "" : ", no heat carried");
    Check.of(what + ": unfed, %", STOKES)
        .expected(unfed)
        .got(rod.percent(rod.feeding.unfed()))
        .within(0.1);
    double demand = want.get("demand_percent").get("value").asDouble();
    Check.of(what + ": demand, %", STOKES)
        .expected(demand)
        .got(rod.percent(rod.feeding.demand()))
        .within(0.02);
    assertTrue(rod.feeding.sums().worstImbalance() <= BALANCE);
    assertTrue(rod.state.ledger.imbalance() < 1e-6);
    assertTrue(rod.feeding.sums().mostIterations() <= 40);
  }

  /** Six and eight cells across the gate. */
  @Test
  void unfedVolumeWithinATenthOfStokes() throws IOException {
    holds(3, true, 0.5);
    holds(3, false, 0.5);
    holds(4, true, 0.5);
  }

  /** What blocks change, against every cell on its own. */
  @Test
  void blocksChangeUnfedVolumeByLessThanThreePerCent() {
    Rod blocks = new Rod(3e-3, 10e-3, 0.5e-3, true);
    Rod cells = new Rod(3e-3, 10e-3, 0.5e-3, true, false);
    blocks.run((state, from) -> {});
    cells.run((state, from) -> {});
    double each = cells.percent(cells.feeding.unfed());
    assertEquals(each, blocks.percent(blocks.feeding.unfed()), 0.03 * each);
    assertTrue(blocks.liquid.count() < cells.liquid.count() / 5);
  }

  /** At 1 mm only what doesn't depend on the gate's shape: balances and the demand. */
  @Test
  void balancesCloseOnACoarseGrid() {
    Rod rod = new Rod(4e-3, 10e-3, 1e-3, true);
    rod.run((state, from) -> {});
    double unfed = rod.percent(rod.feeding.unfed());
    assertTrue(rod.feeding.sums().worstImbalance() <= BALANCE);
    assertTrue(rod.state.ledger.imbalance() < 1e-6);
    assertEquals(4.23, rod.percent(rod.feeding.demand()), 0.06);
    assertTrue(unfed > 1 && unfed < 3, "unfed " + unfed);
    assertTrue(rod.feeding.ended() < 40, "ended " + rod.feeding.ended());
  }
}
