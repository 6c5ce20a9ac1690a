// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.trials;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.material.Plastisol;
import gelfront.material.ViscosityCurve;
import gelfront.run.CaseRunner;
import gelfront.setup.Case;
import gelfront.setup.CaseFile;
import gelfront.setup.PartLoader;
import gelfront.validation.network.FeedDesign;
import gelfront.validation.network.FeedNetwork;
import gelfront.validation.network.Melt;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * When a rod of 12 mm no longer gets half of what it needs, for several gates and no-flow
 * temperatures, by the tool (level quick) and by the network. Some minutes on one thread.
 */
public final class TrialsRun {
  static final double[] GATES = {4, 5};
  static final double[] KNOTS = {100, 110, 120, 130, 140, 150};

  /** °C between the network's temperatures, from the first knot to the last. */
  static final double STEP = 5;

  private static final double MM = 1e-3;
  private static final ObjectMapper JSON = new ObjectMapper();

  private TrialsRun() {}

  /**
   * @param args file to write to; what it holds already is left as it is
   */
  public static void main(String[] args) throws IOException {
    Path file = Path.of(args[0]);
    ObjectNode all =
        Files.exists(file) ? (ObjectNode) JSON.readTree(file.toFile()) : JSON.createObjectNode();
    for (double gate : GATES) {
      ObjectNode of = all.withObject("/" + gate);
      for (double t = KNOTS[0]; t <= KNOTS[KNOTS.length - 1]; t += STEP) {
        String name = String.format(Locale.ROOT, "%.0f", t);
        if (!of.withObject("/network").has(name)) {
          of.withObject("/network").put(name, network(gate, t));
        }
        boolean knot = Math.abs(t / 10 - Math.rint(t / 10)) < 1e-9;
        if (knot && !of.withObject("/tool").has(name)) {
          of.withObject("/tool").put(name, tool(gate, t));
        }
        Files.writeString(file, all.toPrettyString() + "\n");
      }
    }
  }

  private static Case setup(double gate, double noFlow) {
    String text =
        String.format(
            Locale.ROOT,
            """
            up = [0, 0, 1]
            [[part.caliper]]
            distance = "0 mm"
            width = "12 mm"
            height = "12 mm"
            [[part.caliper]]
            distance = "45 mm"
            width = "12 mm"
            height = "12 mm"
            [gate]
            at = ["0 mm", "0 mm", "0 mm"]
            direction = [-1, 0, 0]
            size = "%.1f mm"
            land = "3 mm"
            [sprue]
            diameter = "10 mm"
            length = "30 mm"
            [block]
            wall = "12 mm"
            start = "30 degC"
            [plastisol]
            grade = "soft"
            no_flow = "%.0f degC"
            [shot]
            temperature = "165 degC"
            hold_time = "0 s"
            [numerics]
            level = "quick"
            """,
            gate,
            noFlow);
    return CaseFile.parse("trial", text, Path.of("")).setup();
  }

  /** s, by the tool. */
  static double tool(double gate, double noFlow) {
    Case c = setup(gate, noFlow);
    return rounded(
        CaseRunner.run(c, PartLoader.load(c.part()).mesh(), Workers.SERIAL, Progress.NONE)
            .judgement()
            .findings()
            .fed()
            .halfAt());
  }

  /** s, by the network. */
  static double network(double gate, double noFlow) {
    Plastisol p = setup(gate, noFlow).plastisol();
    double[] x = {0, 45 * MM};
    double[] r = {6 * MM, 6 * MM};
    FeedDesign design = new FeedDesign(x, r, gate * MM, 3 * MM, 10 * MM, 30 * MM);
    Melt melt =
        new Melt(
            0.145,
            935.0 * 1900,
            7.5e-4,
            165,
            30,
            2500,
            noFlow,
            500,
            ViscosityCurve.of(p)::logarithm);
    return rounded(new FeedNetwork(design, melt, true).run().half());
  }

  private static double rounded(double s) {
    return Math.rint(1e3 * s) / 1e3;
  }
}
