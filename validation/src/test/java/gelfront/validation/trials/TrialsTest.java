// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.trials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.calibrate.TrialFit;
import gelfront.calibrate.TrialShot;
import gelfront.evidence.Check;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Logs of gates that froze before or after a time, made by the network of cooled tubes; the tool's
 * own closing times are what they are fitted with. trials.json holds both, written by {@link
 * TrialsRun}; one of each is calculated anew on every build.
 */
final class TrialsTest {
  /** Of a time, between machines and roundings. */
  private static final double SHARE = 0.02;

  private static final String NETWORK = "network of cooled tubes";

  private static final double[] WATCHED = {1, 1.5, 2, 3, 4, 5, 6, 8, 10, 13};

  private JsonNode stored;

  @BeforeEach
  void read() throws IOException {
    try (InputStream in = TrialsRun.class.getResourceAsStream("/gelfront/validation/trials.json")) {
      stored = new ObjectMapper().readTree(in);
    }
  }

  private double at(double gate, String by, double noFlow) {
    return stored
        .get(String.valueOf(gate))
        .get(by)
        .get(String.valueOf(Math.round(noFlow)))
        .asDouble();
  }

  @Test
  void oneOfEachIsAsStored() {
    double tool = at(4, "tool", 130);
    assertEquals(tool, TrialsRun.tool(4, 130), SHARE * tool);
    double network = at(4, "network", 130);
    assertEquals(network, TrialsRun.network(4, 130), SHARE * network);
  }

  /** s that the network closes at, between its temperatures in proportion. */
  private double network(double gate, double noFlow) {
    double low = TrialsRun.STEP * Math.floor(noFlow / TrialsRun.STEP);
    double share = (noFlow - low) / TrialsRun.STEP;
    double a = at(gate, "network", low);
    return a + share * (at(gate, "network", low + TrialsRun.STEP) - a);
  }

  private TrialFit.Predicted predicted(double gate, double watched) {
    double[] closes = Arrays.stream(TrialsRun.KNOTS).map(t -> at(gate, "tool", t)).toArray();
    double[] none = new double[closes.length];
    return new TrialFit.Predicted(none, none, closes, watched);
  }

  private TrialFit.Result fit(Random random, double truth, int count) {
    List<TrialShot> shots = new ArrayList<>();
    List<TrialFit.Predicted> predicted = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double gate = TrialsRun.GATES[random.nextInt(TrialsRun.GATES.length)];
      double watched = WATCHED[random.nextInt(WATCHED.length)];
      boolean froze = network(gate, truth) < watched;
      shots.add(
          new TrialShot(
              i + 1,
              "",
              List.of(),
              0,
              Optional.empty(),
              OptionalDouble.empty(),
              Optional.of(froze)));
      predicted.add(predicted(gate, watched));
    }
    return new TrialFit(TrialsRun.KNOTS, t -> 1, 0.2e-3).of(shots, predicted);
  }

  /** 100 logs of 12 shots, gates of 4 and 5 mm, no-flow from 105 to 145 °C. */
  @Test
  void ninetyPercentIntervalsHoldTheNetworksNoFlow() {
    Random random = new Random(3);
    int held = 0;
    double off = 0;
    double wide = 0;
    for (int n = 0; n < 100; n++) {
      double truth = 105 + 40 * random.nextDouble();
      TrialFit.Result r = fit(random, truth, 12);
      held += r.noFlow().low() <= truth && truth <= r.noFlow().high() ? 1 : 0;
      off += (r.noFlow().value() - truth) / 100;
      wide += (r.noFlow().high() - r.noFlow().low()) / 100;
    }
    assertTrue(held >= 85, held + " of 100, " + off + " K off in the mean, " + wide + " K wide");
    Check.of("no-flow fitted to 100 logs of 12 shots, K off in the mean", NETWORK)
        .expected(0)
        .got(off)
        .within(4, 1);
    assertTrue(wide < 32, wide + " K of the 45 that were known before");
  }
}
