// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Logs made by the model that the fit has: the truth is known, and so is how often it is held. */
final class TrialFitTest {
  private static final double[] KNOTS = {100, 110, 120, 130, 140, 150};
  private static final double VISIBLE = 0.2e-3;

  /** Closes sooner, and dents less, the higher no-flow is; as the tool finds (physics.md, 2.8). */
  private static TrialFit.Predicted shot(double gate, double released) {
    double[] closes = Arrays.stream(KNOTS).map(t -> gate * gate * (165 - t) / 40).toArray();
    double[] high = Arrays.stream(KNOTS).map(t -> 4e-3 / gate / gate * (165 - t) / 40).toArray();
    double[] low = Arrays.stream(high).map(d -> 0.2 * d).toArray();
    return new TrialFit.Predicted(low, high, closes, released);
  }

  private static TrialFit fit() {
    return new TrialFit(KNOTS, t -> 1, VISIBLE);
  }

  private static TrialShot seen(
      Optional<Boolean> dented, OptionalDouble depth, Optional<Boolean> froze) {
    return new TrialShot(1, "", List.of(), 0, dented, depth, froze);
  }

  /** A shot drawn by the chances of the model. */
  private static TrialShot drawn(
      Random random, TrialFit.Predicted p, double noFlow, double skin, boolean deep) {
    TrialShot yes = seen(Optional.of(true), OptionalDouble.empty(), Optional.empty());
    boolean dented = random.nextDouble() < fit().chance(yes, p, noFlow, skin);
    TrialShot before = seen(Optional.empty(), OptionalDouble.empty(), Optional.of(true));
    boolean froze = random.nextDouble() < fit().chance(before, p, noFlow, skin);
    double read = fit().depth(p, noFlow, skin) * Math.exp(TrialFit.DEPTH * random.nextGaussian());
    return deep
        ? seen(Optional.empty(), OptionalDouble.of(read), Optional.of(froze))
        : seen(Optional.of(dented), OptionalDouble.empty(), Optional.of(froze));
  }

  @Test
  void intervalsOfNinetyPercentHoldTheTruthAsOften() {
    Random random = new Random(5);
    int held = 0;
    int skins = 0;
    int repeats = 200;
    for (int n = 0; n < repeats; n++) {
      double truth = 100 + 50 * random.nextDouble();
      double skin = random.nextDouble();
      List<TrialShot> shots = new ArrayList<>();
      List<TrialFit.Predicted> predicted = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        TrialFit.Predicted p = shot(2 + 0.5 * i, 4 + 3 * random.nextInt(6));
        shots.add(drawn(random, p, truth, skin, i % 2 == 0));
        predicted.add(p);
      }
      TrialFit.Result r = fit().of(shots, predicted);
      held += r.noFlow().low() <= truth && truth <= r.noFlow().high() ? 1 : 0;
      skins += r.skin().low() <= skin && skin <= r.skin().high() ? 1 : 0;
    }
    assertTrue(held >= 0.85 * repeats && held <= 0.96 * repeats, "no-flow: " + held);
    assertTrue(skins >= 0.85 * repeats && skins <= 0.96 * repeats, "skin: " + skins);
  }

  @Test
  void dentsAloneDontPartNoFlowFromTheSkin() {
    List<TrialShot> shots = new ArrayList<>();
    List<TrialFit.Predicted> predicted = new ArrayList<>();
    for (double gate : new double[] {2, 3, 4, 5}) {
      predicted.add(shot(gate, 8));
      shots.add(seen(Optional.of(gate < 3.5), OptionalDouble.empty(), Optional.empty()));
    }
    assertTrue(fit().of(shots, predicted).inseparable());

    for (int i = 0; i < 4; i++) {
      for (double released : new double[] {4, 6, 8, 10, 12, 15, 20, 30}) {
        TrialFit.Predicted p = shot(2 + i, released);
        predicted.add(p);
        boolean froze = fit().closes(p, 128) < released;
        shots.add(seen(Optional.empty(), OptionalDouble.empty(), Optional.of(froze)));
      }
    }
    TrialFit.Result parted = fit().of(shots, predicted);
    assertFalse(parted.inseparable(), "correlation " + parted.correlation());
    assertTrue(parted.noFlow().told());
    assertEquals(128, parted.noFlow().value(), 4);
  }

  @Test
  void aShotThatSaysNothingNewLeavesWhatWasKnown() {
    TrialFit.Predicted open = shot(2, 200);
    TrialShot froze = seen(Optional.empty(), OptionalDouble.empty(), Optional.of(true));
    TrialFit.Result r = fit().of(List.of(froze), List.of(open));
    assertFalse(r.noFlow().told());
    assertEquals(125, r.noFlow().value(), 1);
    assertEquals(102.5, r.noFlow().low(), 1);
    assertEquals(0.98, r.likely()[0], 1e-6);
  }
}
