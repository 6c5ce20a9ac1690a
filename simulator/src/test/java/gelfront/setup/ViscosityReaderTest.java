// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.material.ViscosityCurve;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A measured viscosity: points become a curve, and curves that no plastisol has are refused. */
final class ViscosityReaderTest {
  private static String points(String... temperaturesAndValues) {
    StringBuilder s = new StringBuilder(Cases.SOUND);
    for (String p : temperaturesAndValues) {
      String[] halves = p.split(", ", -1);
      s.append("[[plastisol.viscosity]]\ntemperature = \"").append(halves[0]).append(" degC\"\n");
      s.append("value = \"").append(halves[1]).append(" Pas\"\n");
    }
    return s.toString();
  }

  @Test
  void pointsInAnyOrderMakeTheCurveThatTheFlowGoesBy() {
    ViscosityCurve c = ViscosityCurve.of(Cases.read(points("165, 1", "125, 1e4")).plastisol());

    assertEquals(Math.log(1), c.logarithm(170), 1e-12);
    assertEquals(Math.log(1e2), c.logarithm(145), 1e-12, "half way, in decades");
    assertEquals(Math.log(1e4), c.logarithm(100), 1e-12);
  }

  @Test
  void theReportDoesNotClaimTheBuiltInValueThen() {
    List<Statement> assumed = Cases.load(points("165, 1", "125, 1e4")).assumed();

    assertTrue(assumed.stream().noneMatch(s -> s.name().contains("viscosity")), "" + assumed);
  }

  @Test
  void oneThatThinsOnCoolingIsRefusedAtThePointThatDoes() {
    String text = points("165, 1.5", "140, 0.5", "125, 1e4");

    Mistake m = Cases.mistakes(text).get(0);

    assertTrue(m.message().contains("thickens as it cools"), m.message());
    assertTrue(m.message().contains("140 °C") && m.message().contains("165 °C"), m.message());
    assertEquals("value = \"0.5 Pas\"", text.lines().toList().get(m.line() - 1));
  }

  @Test
  void whatIsNoCurveIsRefused() {
    String both =
        points("165, 1", "125, 9").replace("grade =", "viscosity_165 = \"1 Pas\"\ngrade =");

    assertTrue(Cases.words(Cases.mistakes(points("165, 1"))).contains("one point is no curve"));
    assertTrue(Cases.words(Cases.mistakes(points("165, 1", "165, 2"))).contains("keep one"));
    assertTrue(Cases.words(Cases.mistakes(both)).contains("both viscosity_165 and a measured"));
  }
}
