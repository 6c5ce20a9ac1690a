// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.evidence.Check;
import gelfront.grid.MouldCells;
import gelfront.setup.Case;
import gelfront.setup.CaseFile;
import gelfront.setup.PartLoader;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.VoxelException;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Coolant channels drilled into a block of 100 x 40 x 40 mm, whose cavity is a thin sprue in a
 * corner, against the drawing and, steady, against a round hole in the middle of a square:
 *
 * <pre>  S / L = 2 pi / ln(1.08 w / D)      (Incropera and DeWitt, table 4.1, from memory)
 *  1 / U = 1 / (4 w h_o) + 1 / (k S / L) + 1 / (pi D h)</pre>
 */
final class ChannelTest {
  private static final double LENGTH = 0.1;
  private static final double WIDTH = 0.04;
  private static final double OUTER = 20_000;
  private static final double WARM = 50;
  private static final double COLD = 15;

  private static final String CASE =
      """
      [[part.caliper]]
      distance = "0 mm"
      width = "3 mm"
      height = "3 mm"
      [[part.caliper]]
      distance = "4 mm"
      width = "3 mm"
      height = "3 mm"
      [gate]
      at = ["0 mm", "0 mm", "0 mm"]
      direction = [-1, 0, 0]
      size = "2 mm"
      land = "1 mm"
      [sprue]
      diameter = "4 mm"
      length = "14 mm"
      [shot]
      temperature = "165 degC"
      [block]
      material = "MATERIAL"
      box_min = ["-15 mm", "-34 mm", "-34 mm"]
      box_max = ["85 mm", "6 mm", "6 mm"]
      face = [
        { side = "-x", film = "0 W/m2K" },
        { side = "+x", film = "0 W/m2K" },
        { side = "-y", film = "20000 W/m2K", temperature = "50 degC" },
        { side = "+y", film = "20000 W/m2K", temperature = "50 degC" },
        { side = "-z", film = "20000 W/m2K", temperature = "50 degC" },
        { side = "+z", film = "20000 W/m2K", temperature = "50 degC" },
      ]
      """;

  private static MouldCells mould(String material, String channel) {
    String text = CASE.replace("MATERIAL", material) + channel;
    Case c = CaseFile.parse("bait.toml", text, Path.of("")).setup();
    return CaseVoxels.of(c, PartLoader.load(c.part()).mesh(), Progress.NONE).model().mould();
  }

  private static String channel(String from, String to, double diameterMm, double film) {
    return "[[block.channel]]\nfrom = [%s]\nto = [%s]\ndiameter = \"%s mm\"\nfilm = \"%s W/m2K\"\n"
            .formatted(from, to, diameterMm, film)
        + "temperature = \"15 degC\"\n";
  }

  private static String along(double diameterMm, double film) {
    return channel(
        "\"-20 mm\", \"-14 mm\", \"-14 mm\"",
        "\"90 mm\", \"-14 mm\", \"-14 mm\"",
        diameterMm,
        film);
  }

  private static double sum(double[] of) {
    return Arrays.stream(of).sum();
  }

  /** W/K to the coolant: of cells whose outside is colder than the faces'. */
  private static double wall(MouldCells m, MouldCells solid) {
    return sum(m.airConductance()) - sum(solid.airConductance());
  }

  @ParameterizedTest
  @CsvSource({"8, -14, -14", "6, -24, -8", "10, -10, -20"})
  void wallAndMetalAreThoseOfTheDrawing(double diameterMm, double from, double to) {
    String way =
        channel(
            "\"-15 mm\", \"" + from + " mm\", \"-14 mm\"",
            "\"85 mm\", \"" + to + " mm\", \"-16 mm\"",
            diameterMm,
            10);
    MouldCells solid = mould("aluminium-6061", "");
    MouldCells drilled = mould("aluminium-6061", way);

    double d = diameterMm * 1e-3;
    double length = Math.hypot(Math.hypot(LENGTH, (to - from) * 1e-3), 2e-3);
    Check.of("slanting channel of " + diameterMm + " mm: wall's film, W/K", "the drawing")
        .expected(10 * Math.PI * d * length)
        .got(wall(drilled, solid))
        .within(0.01);
    Check.of("slanting channel of " + diameterMm + " mm: metal gone, J/K", "the drawing")
        .expected(2700.0 * 896 * Math.PI / 4 * d * d * length)
        .got(sum(solid.capacity()) - sum(drilled.capacity()))
        .within(0.02);
  }

  @ParameterizedTest
  @CsvSource({
    "aluminium-6061, 167, 8, 3000",
    "aluminium-6061, 167, 8, 20000",
    "aluminium-6061, 167, 12, 20000",
    "carbon-steel, 50, 8, 3000",
    "carbon-steel, 50, 8, 20000",
    "carbon-steel, 50, 12, 20000"
  })
  void heatToAChannelInTheMiddleOfASquare(
      String material, double k, double diameterMm, double film) {
    MouldCells m = mould(material, along(diameterMm, film));
    double d = diameterMm * 1e-3;
    double shape = 2 * Math.PI / Math.log(1.08 * WIDTH / d);
    double series = 1 / (4 * WIDTH * OUTER) + 1 / (k * shape) + 1 / (Math.PI * d * film);

    Check.of(
            "channel of %s mm, %s W/m2K, in a square of 40 mm of %s, W"
                .formatted(diameterMm, film, material),
            "Incropera and DeWitt, table 4.1, from memory")
        .expected(LENGTH * (WARM - COLD) / series)
        .got(drawn(m, steady(m)))
        .within(0.015);
  }

  /** Relaxed until nothing moves. */
  private static double[] steady(MouldCells m) {
    double[] t = new double[m.count()];
    Arrays.fill(t, 0.5 * (WARM + COLD));
    double moved = 1;
    while (moved > 1e-7) {
      moved = 0;
      double[] g = m.airConductance().clone();
      double[] heat = new double[g.length];
      for (int i = 0; i < g.length; i++) {
        heat[i] = g[i] * m.airTemperature()[i];
      }
      moved = sweep(m, t, g, heat);
    }
    return t;
  }

  /** One step of Gauss and Seidel, overrelaxed; upward neighbours are gathered beforehand. */
  private static double sweep(MouldCells m, double[] t, double[] g, double[] heat) {
    double moved = 0;
    double[] from = heat.clone();
    double[] all = g.clone();
    for (int i = 0; i < t.length; i++) {
      for (int a = 0; a < 3; a++) {
        int next = m.neighbour()[3 * i + a];
        double c = m.conductance()[3 * i + a];
        if (next >= 0) {
          from[i] += c * t[next];
          all[i] += c;
          all[next] += c;
        }
      }
    }
    for (int i = 0; i < t.length; i++) {
      double by = 1.9 * (from[i] / all[i] - t[i]);
      t[i] += by;
      moved = Math.max(moved, Math.abs(by));
      for (int a = 0; a < 3; a++) {
        int next = m.neighbour()[3 * i + a];
        if (next >= 0) {
          from[next] += m.conductance()[3 * i + a] * t[i];
        }
      }
    }
    return moved;
  }

  private static double drawn(MouldCells m, double[] t) {
    double sum = 0;
    for (int i = 0; i < t.length; i++) {
      boolean cold = m.airTemperature()[i] < COLD + 1;
      sum += cold ? m.airConductance()[i] * (t[i] - m.airTemperature()[i]) : 0;
    }
    return sum;
  }

  @Test
  void whatCantBeIsToldInWords() {
    String through =
        channel("\"-20 mm\", 0, 0", "\"90 mm\", 0, 0", 8, 3000).replace(" 0", " \"0 mm\"");
    assertTrue(refused(through).contains("runs into part or feed system at (-"), refused(through));
    String beside =
        channel("\"-20 mm\", \"60 mm\", \"0 mm\"", "\"90 mm\", \"60 mm\", \"0 mm\"", 8, 3000);
    assertEquals(
        "the channel from (-20.00, 60.00, 0.00) mm to (90.00, 60.00, 0.00) mm lies outside the block",
        refused(beside));
  }

  private static String refused(String channel) {
    return assertThrows(VoxelException.class, () -> mould("aluminium-6061", channel)).getMessage();
  }
}
