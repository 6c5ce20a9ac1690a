// SPDX-License-Identifier: Apache-2.0
package gelfront.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.base.Workers;
import gelfront.evidence.Check;
import gelfront.grid.VoxelModel;
import gelfront.setup.Numerics;
import gelfront.state.ThermalState;
import gelfront.timing.StandardCase;
import gelfront.timing.StandardErrors;
import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The standard case, a body of revolution with gate and sprue in an aluminium block, against an
 * axisymmetric finite-element reference with error bars (standard-case.json says how it was got).
 * At the normal level: voxels of 0.5 mm, the gate in cells of 0.25 mm.
 */
class StandardCaseTest {
  private static final String REFERENCE = "axisymmetric finite elements, standard-case.json";

  private static JsonNode reference;
  private static StandardErrors errors;
  private static ThermalState state;

  @BeforeAll
  static void run() throws IOException {
    try (InputStream in = StandardCaseTest.class.getResourceAsStream("standard-case.json")) {
      reference = new ObjectMapper().readTree(in).get("reference");
    }
    VoxelModel model = StandardCase.model(Numerics.Level.NORMAL);
    StandardCase.Run run = StandardCase.run(model, Workers.SERIAL);
    state = run.state();
    errors = StandardErrors.of(model.cavity(), run);
  }

  @Test
  void errorsAreFromTheReference() {
    JsonNode probes = reference.get("probes");
    assertEquals(probes.size(), StandardErrors.probes().size());
    for (int i = 0; i < probes.size(); i++) {
      JsonNode p = probes.get(i);
      StandardErrors.Probe same =
          new StandardErrors.Probe(
              p.get("x").asDouble(),
              p.get("axis_set_time_s").asDouble(),
              p.get("radius_half").asDouble(),
              p.get("half_radius_set_time_s").asDouble());
      assertEquals(same, StandardErrors.probes().get(i));
    }
    JsonNode last = reference.get("last_plastisol_below_90degC");
    assertEquals(last.get("time_s").asDouble(), StandardErrors.LAST);
  }

  @Test
  void setTimesOnTheAxis() {
    Check outside = Check.of("set times on the axis but in the gate, s", REFERENCE);
    for (int i = 0; i < errors.axis().length; i++) {
      StandardErrors.Probe p = StandardErrors.probes().get(i);
      Check check =
          i == StandardErrors.GATE ? Check.of("the gate's middle sets, s", REFERENCE) : outside;
      check.at(p.xMm()).expected(p.axisSet()).got(p.axisSet() * (1 + errors.axis()[i]));
      if (i == StandardErrors.GATE) {
        check.within(0.015);
      }
    }
    outside.plot("mm", "s").within(0.01);
  }

  @Test
  void setTimesHalfWayToTheWall() {
    Check check = Check.of("set times half way to the wall, s", REFERENCE);
    for (int i = 0; i < errors.half().length; i++) {
      StandardErrors.Probe p = StandardErrors.probes().get(i);
      check.at(p.xMm()).expected(p.halfSet()).got(p.halfSet() * (1 + errors.half()[i]));
    }
    check.plot("mm", "s").within(0.015);
  }

  @Test
  void lastBelowNinety() {
    Check.of("the last plastisol is below 90 degC", REFERENCE).error(errors.last()).within(0.003);
  }

  @Test
  void whereTheHeatWent() {
    JsonNode e = reference.get("energy_at_139.625_s_J");
    double plastisol = e.get("plastisol").asDouble();

    Check.of("joules from the plastisol, into the mould, to the air", REFERENCE)
        .expected(plastisol)
        .got(state.ledger.plastisolGain())
        .expected(e.get("mould").asDouble())
        .got(state.ledger.mouldGain())
        .expected(e.get("to_air").asDouble())
        .got(state.ledger.toAir())
        .within(0.005, -plastisol);
    assertTrue(state.ledger.imbalance() < 1e-6);
  }
}
