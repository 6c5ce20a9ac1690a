// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Units;
import gelfront.finding.Constriction;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import gelfront.finding.Sunk;
import gelfront.mesh.Vec3;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

final class BenchSignTest {
  private static Pocket pocket(Severity severity, Constriction.Kind kind, Sunk sunk) {
    return new Pocket(
        1,
        List.of(),
        severity,
        Vec3.ZERO,
        1e-6,
        8,
        60,
        150,
        new Constriction(kind, Vec3.ZERO, 3e-3, 8),
        1e-8,
        2e-8,
        List.of(),
        List.of(),
        8,
        0,
        sunk,
        "",
        "");
  }

  private static Sunk sinking(double... levels) {
    double[] time = new double[levels.length];
    Arrays.setAll(time, i -> 4.0 * i);
    double[] any = new double[levels.length];
    return new FlowRecord.Trace(time, any, any, any, levels, any).sunk(8);
  }

  private static String sign(Sunk sunk, Constriction.Kind kind) {
    return new BenchSign(Units.METRIC).of(pocket(Severity.WILL_DENT, kind, sunk));
  }

  /** Common practice, no source: it keeps sinking: the sprue; it stays level: the gate. */
  @Test
  void sprueAndGateAreToldApartByWhetherTheSurfaceSinks() {
    String gate = sign(Sunk.UNKNOWN, Constriction.Kind.GATE);
    String dry = sign(Sunk.UNKNOWN, Constriction.Kind.DRY_SPRUE);

    assertTrue(gate.startsWith("The sprue stays level while the part still dents"), gate);
    assertTrue(dry.startsWith("The sprue keeps sinking while the part still dents"), dry);
  }

  @Test
  void everyFaultHasASignOfItsOwn() {
    List<String> signs =
        Arrays.stream(Constriction.Kind.values()).map(k -> sign(Sunk.UNKNOWN, k)).toList();

    assertEquals(signs.size(), signs.stream().distinct().count());
    assertTrue(signs.stream().noneMatch(String::isBlank));
  }

  @Test
  void theMillimetresOfThisRunStandBesideIt() {
    String stays = sign(sinking(0, 1e-3, 2.5e-3, 2.6e-3, 2.6e-3), Constriction.Kind.GATE);
    String goesOn = sign(sinking(0, 1e-3, 2.5e-3, 4e-3, 7e-3), Constriction.Kind.DRY_SPRUE);
    String level = sign(sinking(0, 0, 1e-4, 1e-4, 1e-4), Constriction.Kind.GATE);

    assertTrue(stays.endsWith("Here it has sunk 2.5 mm by 8 s and stays there."), stays);
    assertTrue(goesOn.endsWith("Here it has sunk 2.5 mm by 8 s, and 7.0 mm in the end."), goesOn);
    assertTrue(level.endsWith("Here the sprue stays level to within 0.3 mm."), level);
  }

  @Test
  void aHollowIsNotCalledLevelNorASprueThatSinksOn() {
    String hollow = sign(sinking(0, 0, 1e-4, 1e-4, 1e-4), Constriction.Kind.SPRUE);
    String neck = sign(sinking(0, 1e-3, 2.5e-3, 4e-3, 7e-3), Constriction.Kind.NECK);

    assertTrue(hollow.endsWith("Here the hollow stays shallower than 0.3 mm."), hollow);
    assertFalse(neck.contains("stays level"), neck);
    assertTrue(neck.contains("feeds other places. Here it has sunk 2.5 mm"), neck);
  }

  @Test
  void aRulerInInchesReadsInches() {
    Pocket p = pocket(Severity.WILL_DENT, Constriction.Kind.GATE, sinking(0, 1e-3, 2.54e-3));

    String sign = new BenchSign(new Units(true, false)).of(p);

    assertTrue(sign.endsWith("Here it has sunk 0.100 in by 8 s and stays there."), sign);
  }

  @Test
  void aCleanPartHasNone() {
    assertEquals(
        "",
        new BenchSign(Units.METRIC)
            .of(pocket(Severity.CLEAN, Constriction.Kind.GATE, Sunk.UNKNOWN)));
  }
}
