// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.material.ViscosityCurve;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The points [[plastisol.viscosity]] of a measured curve. */
final class ViscosityReader {
  private final CaseTable plastisol;

  ViscosityReader(CaseTable plastisol) {
    this.plastisol = plastisol;
  }

  private record Point(CaseTable table, double temperature, double value) {}

  /** The curve; empty where none is stated or mistakes were found. */
  Optional<ViscosityCurve> read() {
    List<Point> points = new ArrayList<>();
    List<CaseTable> tables = plastisol.list("viscosity");
    for (CaseTable t : tables) {
      double at = t.need("temperature", Dimension.TEMPERATURE, 20, 240);
      double value = t.need("value", Dimension.VISCOSITY, 1e-3, 1e9);
      if (!Double.isNaN(at + value)) {
        points.add(new Point(t, at, value));
      }
    }
    if (!tables.isEmpty() && plastisol.has("viscosity_165")) {
      plastisol.mistake(
          "viscosity_165", "[plastisol] has both viscosity_165 and a measured curve: keep one");
    }
    if (points.size() == 1 && tables.size() == 1) {
      points.get(0).table.mistake("", "one point is no curve: state two at least");
    }
    points.sort(Comparator.comparingDouble(Point::temperature));
    boolean sound = points.size() >= 2 && points.size() == tables.size();
    for (int i = 1; i < points.size(); i++) {
      sound &= follows(points.get(i - 1), points.get(i));
    }
    return sound ? Optional.of(curve(points)) : Optional.empty();
  }

  private static boolean follows(Point cold, Point hot) {
    if (cold.temperature == hot.temperature) {
      String words = "two viscosities at %.0f °C: keep one";
      hot.table.mistake("temperature", Quantities.say(words, hot.temperature));
      return false;
    }
    if (cold.value < hot.value) {
      cold.table.mistake(
          "value",
          Quantities.say(
              "%.4g Pas at %.0f °C, but %.4g Pas at %.0f °C: a plastisol thickens as it cools; are the"
                  + " two exchanged?",
              cold.value, cold.temperature, hot.value, hot.temperature));
      return false;
    }
    return true;
  }

  private static ViscosityCurve curve(List<Point> points) {
    return new ViscosityCurve(
        points.stream().mapToDouble(Point::temperature).toArray(),
        points.stream().mapToDouble(p -> Math.log10(p.value)).toArray());
  }
}
