// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.feed;

import com.fasterxml.jackson.databind.JsonNode;
import gelfront.evidence.Check;
import gelfront.validation.network.FeedDesign;
import gelfront.validation.network.FeedNetwork;
import gelfront.validation.network.Melt;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Two opinions on what an axisymmetric part is fed and when that falls below half: a chain of
 * cooled tubes, and the tool in 3-D. {@code -Dslow=true} runs five designs, some minutes; the table
 * goes to {@code target/network.md}, and that of the last time lies beside this module's data.
 */
final class NetworkTest {
  private static final String STOKES = "axisymmetric Stokes flow and heat, feeding-rod.json";
  private static final double MM = 1e-3;

  private static Melt melt() {
    return new Melt(
        0.145,
        935 * 1900,
        Rod.BETA,
        Rod.SHOT,
        Rod.WALL,
        Rod.FILM,
        Rod.NO_FLOW,
        500,
        Rod.viscosity()::logarithm);
  }

  private static FeedNetwork.Outcome network(FeedDesign design, boolean carries) {
    return new FeedNetwork(design, melt(), carries).run();
  }

  /** Stokes flow and heat, axisymmetric: feeding-rod.json says how it was made. */
  @Test
  void withinAFifteenthOfStokes() throws IOException {
    for (double[] rod : new double[][] {{3, 10}, {4, 10}, {4, 5}}) {
      JsonNode want = FeedingRodTest.reference(rod[0], rod[1], true);
      FeedNetwork.Outcome o = network(Rod.design(rod[0] * MM, rod[1] * MM), true);
      double fed = want.get("fed_share").get("value").asDouble();
      double half = want.get("share_through_50_percent_s").get("value").asDouble();
      String what = "network, gate " + rod[0] + " sprue " + rod[1];
      Check.of(what + ": fed share", STOKES).expected(fed).got(o.fedShare()).within(1 / 15.0);
      Check.of(what + ": below half, s", STOKES).expected(half).got(o.half()).within(0.1);
    }
  }

  @Test
  void withNoHeatCarriedWithinATwentiethOfStokes() throws IOException {
    JsonNode want = FeedingRodTest.reference(3, 10, false);
    FeedNetwork.Outcome o = network(Rod.design(3 * MM, 10 * MM), false);
    double fed = want.get("fed_share").get("value").asDouble();
    double half = want.get("share_through_50_percent_s").get("value").asDouble();
    Check.of("network, no heat carried: fed share", STOKES)
        .expected(fed)
        .got(o.fedShare())
        .within(0.05);
    Check.of("network, no heat carried: below half, s", STOKES)
        .expected(half)
        .got(o.half())
        .within(0.05);
  }

  private static Map<String, FeedDesign> designs() {
    Map<String, FeedDesign> all = new LinkedHashMap<>();
    all.put("rod 12 mm, gate 4 x 3, sprue 10 x 30", Rod.design(4 * MM, 10 * MM));
    all.put("rod 12 mm, gate 3 x 3, sprue 10 x 30", Rod.design(3 * MM, 10 * MM));
    all.put("rod 12 mm, gate 4 x 3, sprue 5 x 30", Rod.design(4 * MM, 5 * MM));
    double[] bulbX = {0, 10 * MM, 22 * MM, 36 * MM, 50 * MM};
    double[] bulbR = {4 * MM, 8 * MM, 8 * MM, 3.5 * MM, 2 * MM};
    all.put(
        "bulb 16 mm, gate 6 x 2, sprue 8 x 25",
        new FeedDesign(bulbX, bulbR, 6 * MM, 2 * MM, 8 * MM, 25 * MM));
    double[] stickX = {0, 40 * MM};
    double[] stickR = {5 * MM, 5 * MM};
    all.put(
        "stick 10 mm, gate 5 x 6, sprue 12 x 20",
        new FeedDesign(stickX, stickR, 5 * MM, 6 * MM, 12 * MM, 20 * MM));
    return all;
  }

  /** Eight cells across the gate. */
  @Test
  void theToolAgreesOnTheFirstDesign() {
    FeedDesign design = designs().values().iterator().next();
    FeedNetwork.Outcome o = network(design, true);
    Rod rod = new Rod(design, 0.5 * MM, true, true);
    rod.run((state, from) -> {});
    String source = "network of cooled tubes";
    Check.of("tool, rod with gate of 4 mm: fed share", source)
        .expected(o.fedShare())
        .got(fedShare(rod))
        .within(0.15);
    Check.of("tool, rod with gate of 4 mm: below half, s", source)
        .expected(o.half())
        .got(rod.shareFallsThrough(0.5))
        .within(0.15);
  }

  private static double fedShare(Rod rod) {
    return 1 - rod.percent(rod.feeding.unfed()) / rod.percent(rod.feeding.demand());
  }

  @Test
  @EnabledIfSystemProperty(named = "slow", matches = "true")
  void theToolAgreesOnFiveDesigns() throws IOException {
    List<String> table = new ArrayList<>();
    table.add("| design, mm | fed share %, network / tool | below half at s, network / tool |");
    table.add("|---|---|---|");
    Check fed = Check.of("network, five designs: fed share", "the tool in 3-D, 0.4 mm voxels");
    Check half = Check.of("network, five designs: below half, s", "the tool in 3-D, 0.4 mm voxels");
    designs().forEach((name, design) -> table.add(row(name, design, fed, half)));
    Files.write(Path.of("target", "network.md"), table);
    fed.within(0.15);
    half.within(0.15);
  }

  private static String row(String name, FeedDesign design, Check fed, Check half) {
    FeedNetwork.Outcome o = network(design, true);
    Rod rod = new Rod(design, 0.4 * MM, true, true);
    rod.run((state, from) -> {});
    double share = fedShare(rod);
    double falls = rod.shareFallsThrough(0.5);
    fed.expected(share).got(o.fedShare());
    half.expected(falls).got(o.half());
    return String.format(
        Locale.ROOT,
        "| %s | %.1f / %.1f, %+.0f %% | %.2f / %.2f, %+.0f %% |",
        name,
        100 * o.fedShare(),
        100 * share,
        100 * (o.fedShare() / share - 1),
        o.half(),
        falls,
        100 * (o.half() / falls - 1));
  }
}
